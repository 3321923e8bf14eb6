import { afterEach, beforeAll, describe, expect, it } from 'vitest'
import { PlantedTree, runScript } from './planted-tree.ts'

/** What, in which layer, breaks which rule, and how. */
const planted = [
  ['the clock', 'documents', 'clock', 'export const now = Date.now()'],
  ['today as a date', 'documents', 'clock', 'export const now = new Date()'],
  ['the clock as text', 'core', 'clock', 'export const now = Date()'],
  ['the time zone of the machine', 'core', 'clock', "import { Temporal } from 'x'\nexport const now = Temporal.Now"],
  ['a stop watch', 'core', 'clock', 'export const began = performance.now()'],
  ['a timer', 'actions', 'clock', 'setTimeout(() => {}, 1)'],
  ['chance', 'content', 'chance', 'export const roll = Math.random()'],
  ['chance from the system', 'demo', 'chance', 'export const id = crypto.randomUUID()'],
  ['the environment', 'core', 'machine', 'export const home = process.env.HOME'],
  ['the network', 'actions', 'machine', "export const page = fetch('https://example.org')"],
  ['the local hour', 'documents', 'local-zone', 'export const hour = (date: Date) => date.getHours()'],
  ['a date built in the local zone', 'core', 'local-zone', 'export const day = new Date(2026, 2, 1)'],
  ['the local language', 'core', 'local-language', 'export const order = (a: string, b: string) => a.localeCompare(b)'],
  ['the local number style', 'documents', 'local-language', 'export const shown = (1.5).toLocaleString()'],
] as const

let tree: PlantedTree | undefined
afterEach(() => {
  tree?.remove()
  tree = undefined
})

function check(files: Record<string, string>) {
  tree = new PlantedTree(files)
  return runScript('check-purity.mjs', ['--root', tree.root])
}

describe('purity', () => {
  let all: ReturnType<typeof runScript>
  const pathOf = (layer: string, place: number) => `src/${layer}/wrong-${place}.ts`
  beforeAll(() => {
    all = check(Object.fromEntries(planted.map(([, layer, , text], place) => [pathOf(layer, place), `${text}\n`])))
    tree?.remove()
  })

  it.each(planted.map(([what, layer, rule], place) => ({ what, rule, path: pathOf(layer, place) })))(
    'does not let a pure layer read $what ($rule)',
    ({ rule, path }) => expect(all.said).toMatch(new RegExp(`^${path}:\\d ${rule}: `, 'm')),
  )

  it('names nothing but what was planted', () => {
    expect(all.said).toContain(`${planted.length} pure files read, ${planted.length} violations`)
    expect(all.status).toBe(1)
  })

  it('lets a date be made from an argument, and a member be called like the forbidden thing', () => {
    const { status, said } = check({
      'src/core/fine.ts': [
        'export const at = (text: string) => new Date(text).toISOString()',
        "export const compare = (a: string, b: string) => a.localeCompare(b, 'en')",
        'export const steps = { process: 1, performance: 2 }',
        'export const one = steps.process + steps.performance',
        "// Date.now() in a comment and 'Math.random()' in a text are no call",
        "export const text = 'Math.random()'",
      ].join('\n'),
    })
    expect(said).toContain('1 pure files read, 0 violations')
    expect(status).toBe(0)
  })

  it('leaves storage and server alone', () => {
    const files = { 'src/core/fine.ts': 'export {}\n', 'src/storage/clock.ts': 'export const now = Date.now()\n' }
    expect(check(files).status).toBe(0)
  })

  it('fails when it found no file to read', () => {
    const { status, said } = check({ 'src/storage/clock.ts': 'export {}\n' })
    expect(said).toContain('reads nothing proves nothing')
    expect(status).toBe(1)
  })

  it('holds in the real tree', () => {
    expect(runScript('check-purity.mjs', [])).toMatchObject({ status: 0 })
  })
})
