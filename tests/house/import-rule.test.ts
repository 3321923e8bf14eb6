import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeAll, describe, expect, it } from 'vitest'
import { house, PlantedTree, runScript } from './planted-tree.ts'

const clean = {
  'src/core/units/gram.ts': 'export const gram = 1\n',
  'src/core/dosing/dose.ts': "import { gram } from '#core/units/gram.ts'\nexport const dose = gram\n",
  'src/content/formulary/exampline.ts':
    "import { dose } from '#core/dosing/dose.ts'\nexport const exampline = { dose }\n",
}
const planted = [
  {
    title: 'core that imports content',
    rule: 'core-stays-in-its-layer',
    from: 'src/core/dosing/wrong-1.ts',
    text: "import { exampline } from '#content/formulary/exampline.ts'\nexport const wrong = exampline\n",
  },
  {
    title: 'core that imports only a type of content',
    rule: 'core-stays-in-its-layer',
    from: 'src/core/dosing/wrong-2.ts',
    text: "import type { exampline } from '#content/formulary/exampline.ts'\nexport type Wrong = typeof exampline\n",
  },
  {
    title: 'core that reads the disk',
    rule: 'pure-layers-touch-no-machine',
    from: 'src/core/dosing/wrong-3.ts',
    text: "import { readFileSync } from 'node:fs'\nexport const wrong = readFileSync\n",
  },
  {
    title: 'content that reads the disk',
    rule: 'pure-layers-touch-no-machine',
    from: 'src/content/formulary/wrong-4.ts',
    text: "import { readFileSync } from 'node:fs'\nexport const wrong = readFileSync\n",
  },
  {
    title: 'core that imports a package outside its list',
    rule: 'core-and-content-stand-alone',
    from: 'src/core/dosing/wrong-5.ts',
    text: "import { Hono } from 'hono'\nexport const wrong = Hono\n",
  },
  {
    title: 'a foundation that knows medicine',
    rule: 'foundations-know-no-medicine',
    from: 'src/core/units/wrong-6.ts',
    text: "import { dose } from '#core/dosing/dose.ts'\nexport const wrong = dose\n",
  },
  {
    title: 'content that imports an action',
    rule: 'content-stays-in-its-layer',
    from: 'src/content/formulary/wrong-7.ts',
    text: "import { act } from '#actions/act.ts'\nexport const wrong = act\n",
  },
  {
    title: 'an action that knows which store is plugged in',
    rule: 'actions-stays-in-its-layer',
    from: 'src/actions/wrong-8.ts',
    text: "import { store } from '#storage/store.ts'\nexport const wrong = store\n",
  },
  {
    title: 'storage that asks content',
    rule: 'storage-stays-in-its-layer',
    from: 'src/storage/wrong-9.ts',
    text: "import { exampline } from '#content/formulary/exampline.ts'\nexport const wrong = exampline\n",
  },
]

let tree: PlantedTree | undefined
afterEach(() => {
  tree?.remove()
  tree = undefined
})

function check(files: Record<string, string>) {
  tree = new PlantedTree({ ...clean, ...files })
  return runScript('check-imports.mjs', ['--root', tree.root])
}

describe('the import rule', () => {
  let all: ReturnType<typeof runScript>
  beforeAll(() => {
    all = check({
      'src/actions/act.ts': 'export const act = 1\n',
      'src/storage/store.ts': 'export const store = 1\n',
      ...Object.fromEntries(planted.map(({ from, text }) => [from, text])),
    })
    tree?.remove()
  })

  it('lets a tree pass that keeps to its layers', () => {
    const { status, said } = check({})
    expect(said).toContain('3 modules of 3 files, 0 violations')
    expect(status).toBe(0)
  })

  it.each(planted)('catches $title as $rule', ({ rule, from }) => {
    expect(all.said).toMatch(new RegExp(`^${rule}: ${from} → `, 'm'))
  })

  it('names nothing but what was planted', () => {
    expect(all.said).toContain(`${planted.length} violations`)
    expect(all.status).toBe(1)
  })

  it('catches two files that import each other', () => {
    const { status, said } = check({
      'src/core/dosing/one.ts': "import { two } from './two.ts'\nexport const one = () => two\n",
      'src/core/dosing/two.ts': "import { one } from './one.ts'\nexport const two = () => one\n",
    })
    expect(said).toContain('no-cycles: src/core/dosing/one.ts → src/core/dosing/two.ts')
    expect(status).toBe(1)
  })

  it('lets a test beside core read the disk', () => {
    const text = "import { readFileSync } from 'node:fs'\nexport const read = readFileSync\n"
    expect(check({ 'src/core/dosing/dose.test.ts': text }).status).toBe(0)
  })

  it('fails when it read nothing', () => {
    tree = new PlantedTree({ 'src/readme.txt': 'no module here', 'tests/one.ts': 'export {}\n' })
    const { status, said } = runScript('check-imports.mjs', ['--root', tree.root])
    expect(said).toContain('The cruiser read 0 modules')
    expect(status).toBe(1)
  })

  it('reads every TypeScript file of the real tree and finds nothing', () => {
    const files = readdirSync(join(house, 'src'), { recursive: true, encoding: 'utf8' }).filter((path) =>
      /\.tsx?$/.test(path),
    ).length
    const { status, said } = runScript('check-imports.mjs', [])
    expect(files).toBeGreaterThan(300)
    expect(said).toContain(`${files} modules of ${files} files, 0 violations`)
    expect(status).toBe(0)
  })
})
