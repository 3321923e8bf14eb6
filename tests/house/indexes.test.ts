import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { house, PlantedTree, runScript } from './planted-tree.ts'

/** The folders as the script itself names them, so that none stays without a test. */
const script = readFileSync(join(house, 'scripts/write-indexes.mjs'), 'utf8')
const folders = [...script.matchAll(/folder: '([^']+)'/g)].map(([, folder = '']) => folder)

let tree: PlantedTree | undefined
afterEach(() => {
  tree?.remove()
  tree = undefined
})

/** One file per indexed folder, and the indexes that our script writes for them. */
function planted(): PlantedTree {
  tree = new PlantedTree(
    Object.fromEntries(folders.map((folder) => [`${folder}/fox-2008.ts`, 'export const fox2008 = 1\n'])),
  )
  expect(runScript('write-indexes.mjs', [], tree.root).status).toBe(0)
  return tree
}

describe('the indexes', () => {
  it('list every file of a folder, sorted, one line each', () => {
    const { root } = planted()
    expect(runScript('write-indexes.mjs', ['--check'], root)).toMatchObject({ status: 0 })
    const index = readFileSync(join(root, 'src/content/studies/index.ts'), 'utf8')
    expect(index).toContain("import { fox2008 } from './fox-2008.ts'")
    expect(index).toContain('export const studies = [\n  fox2008,\n]')
  })

  it.each(folders)('of %s fail when a file is not listed', (folder) => {
    const { root } = planted()
    tree?.write(`${folder}/bacon-2003.ts`, 'export const bacon2003 = 1\n')
    const { status, said } = runScript('write-indexes.mjs', ['--check'], root)
    expect(said).toContain(`${folder}/index.ts is out of date`)
    expect(status).toBe(1)
  })

  it('do not list a test as a fact', () => {
    const { root } = planted()
    tree?.write('src/content/studies/fox-2008.test.ts', 'export {}\n')
    expect(runScript('write-indexes.mjs', ['--check'], root)).toMatchObject({ status: 0 })
  })

  it('are complete in the real tree', () => {
    expect(runScript('write-indexes.mjs', ['--check'])).toMatchObject({ status: 0 })
  })

  it('are kept for content, kinds and commands', () => {
    expect(folders).toEqual(expect.arrayContaining(['src/content/formulary', 'src/core/journal/kinds']))
    expect(folders.length).toBeGreaterThanOrEqual(6)
  })
})
