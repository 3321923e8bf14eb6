import { spawnSync } from 'node:child_process'
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { house, PlantedTree, runScript } from './planted-tree.ts'

/** The files that the pages of docs/how-to tell a newcomer to write: each block begins with its path. */
const pages = readdirSync(join(house, 'docs/how-to')).filter((page) => page.startsWith('add-'))
const files = pages.flatMap((page) => {
  const text = readFileSync(join(house, 'docs/how-to', page), 'utf8')
  return [...text.matchAll(/^```ts\n\/\/ (src\/\S+)\n([\s\S]*?)^```$/gm)].map(([, path = '', body = '']) => ({
    page,
    path,
    body,
  }))
})

const listOfOperations = 'src/core/animal/procedure.ts'
/** The tables in which every kind must stand, and the line that the invented one gets there. */
const kindTables = {
  'src/core/people/may-write.ts': "'example-look': staff,",
  'src/core/chapters/chapter-of-kind.ts': "'example-look': 'Work-up',",
  'src/core/reading/gist.ts': "'example-look': ['seen'],",
  'src/content/wording/app-kinds.ts': "'example-look': 'An invented look',",
}
const oddsPage = 'src/content/wording/odds.ts'
/** The invented operation in the words of every language. */
const oddsPages = { [oddsPage]: 'an invented operation', 'src/content/wording/spanish/odds.ts': 'una prueba inventada' }

describe('the recipes', () => {
  let tree: PlantedTree
  beforeAll(() => {
    tree = new PlantedTree(Object.fromEntries(files.map(({ path, body }) => [path, body])))
    for (const part of ['src', 'tests/content', 'tests/types']) {
      cpSync(join(house, part), join(tree.root, part), { recursive: true })
    }
    for (const part of ['tsconfig.pure.json', 'vitest.config.ts', 'biome.json', 'tests/build-once.ts']) {
      cpSync(join(house, part), join(tree.root, part))
    }
    cpSync(join(house, 'scripts'), join(tree.root, 'scripts'), { recursive: true })
    const known = readFileSync(join(house, listOfOperations), 'utf8')
    writeFileSync(
      join(tree.root, listOfOperations),
      known.replace('\n] as const', "\n  'example-osteotomy',\n] as const"),
    )
  })
  afterAll(() => tree.remove())

  const run = (...command: readonly string[]) => {
    const done = spawnSync(process.execPath, command, {
      cwd: tree.root,
      encoding: 'utf8',
      env: { ...process.env, NO_COLOR: '1' },
    })
    return { status: done.status, said: `${done.stdout}${done.stderr}` }
  }

  it.each(pages)('of %s hold at least one file, and fit on a page', (page) => {
    expect(files.filter((file) => file.page === page).length).toBeGreaterThan(0)
    expect(readFileSync(join(house, 'docs/how-to', page), 'utf8').split('\n').length).toBeLessThanOrEqual(61)
  })

  it('are written in the style of the house', () => {
    const { status, said } = run('node_modules/@biomejs/biome/bin/biome', 'check', ...files.map(({ path }) => path))
    expect(said).toContain(`Checked ${files.length} files`)
    expect(status).toBe(0)
  })

  it('keep to the layers and stay pure', () => {
    expect(runScript('check-imports.mjs', ['--root', tree.root])).toMatchObject({ status: 0 })
    expect(runScript('check-purity.mjs', ['--root', tree.root])).toMatchObject({ status: 0 })
  })

  it('lead to every place that must take a stand on a new operation or kind', () => {
    expect(runScript('write-indexes.mjs', [], tree.root).status).toBe(0)
    const { said } = run('node_modules/ts7/bin/tsc', '-p', 'tsconfig.json')
    const places = [...said.matchAll(/^(src\S+|tests\S+)\(\d+,\d+\): error/gm)].map(([, place]) => place)
    expect(places).toContain(oddsPage)
    for (const [table, line] of Object.entries(kindTables)) {
      expect(places).toContain(table)
      const before = readFileSync(join(tree.root, table), 'utf8')
      writeFileSync(join(tree.root, table), before.replace('\n  note:', `\n  ${line}\n  note:`))
    }
    expect(places).not.toContain('src/content/procedures/example-osteotomy.ts')
    expect(said).toContain("'example-osteotomy'")
    for (const [page, operation] of Object.entries(oddsPages)) {
      expect(places).toContain(page)
      const words = readFileSync(join(tree.root, page), 'utf8')
      const added = `    'example-osteotomy': '${operation}',\n    traction: '`
      writeFileSync(join(tree.root, page), words.replace("    traction: '", added))
    }
  })

  it('satisfy the rules that every fact and every kind must satisfy', () => {
    const tests = ['tests/content', 'src/core/journal/kind.test.ts']
    const { status, said } = run('node_modules/vitest/vitest.mjs', 'run', '--project', 'unit', ...tests)
    expect(said).toMatch(/Tests {2}\d+ passed \(/)
    expect(status).toBe(0)
  })

  it('appear in the reference pages, which the check then finds out of date or complete', () => {
    const docs = join(tree.root, 'scripts/docs.mjs')
    expect(run(docs, '--check')).toMatchObject({ status: 1, said: expect.stringContaining('is out of date') })
    expect(run(docs).status).toBe(0)
    const page = readFileSync(join(tree.root, 'docs/reference/formulary.md'), 'utf8')
    expect(page).toContain('| dose range | 1 to 2 mg/kg | read; study; high confidence | [author-2020]')
    expect(readFileSync(join(tree.root, 'docs/reference/kinds.md'), 'utf8')).toContain('## example-look')
    expect(run(docs, '--check').status).toBe(0)
    writeFileSync(join(tree.root, 'docs/reference/formulary.md'), page.replace('1 to 2 mg/kg', '1 to 3 mg/kg'))
    expect(run(docs, '--check').said).toContain('docs/reference/formulary.md is out of date')
  })

  it('compile, each without the unanswered operation', () => {
    for (const path of [listOfOperations, ...Object.keys(oddsPages)]) cpSync(join(house, path), join(tree.root, path))
    rmSync(join(tree.root, 'src/content/procedures/example-osteotomy.ts'))
    expect(runScript('write-indexes.mjs', [], tree.root).status).toBe(0)
    expect(run('node_modules/ts7/bin/tsc', '-p', 'tsconfig.json')).toEqual({ status: 0, said: '' })
    expect(run('node_modules/ts7/bin/tsc', '-p', 'tsconfig.pure.json')).toEqual({ status: 0, said: '' })
  })
})
