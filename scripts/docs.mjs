/**
 * Writes docs/reference and docs/disagreements.md from content and core, sorted and the same on every machine. `--check` writes nothing and
 * fails when a page is out of date.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { withSource } from './load-source.mjs'
import { commandsPage } from './reference/commands.mjs'
import { coveragePage } from './reference/coverage.mjs'
import { disagreementsPage } from './reference/disagreements.mjs'
import { emergencyPage } from './reference/emergency.mjs'
import { citedIn, inWords, loadFacts } from './reference/facts.mjs'
import { formularyPage } from './reference/formulary.mjs'
import { kindsPage, rowsOfSchema } from './reference/kinds.mjs'
import { head, table } from './reference/markdown.mjs'
import { proceduresPage } from './reference/procedures.mjs'
import { rulesPage } from './reference/rules.mjs'
import { sourcesPage } from './reference/sources.mjs'
import { studiesPage } from './reference/studies.mjs'
import { unitsPage } from './reference/units.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const folder = join(root, 'docs/reference')
const byId = (a, b) => (a.id < b.id ? -1 : 1)
const byName = (a, b) => (a.name < b.name ? -1 : 1)

/** Every export of the modules of some content folders, as name and value. */
async function exportsOf(load, folders) {
  const found = []
  for (const one of folders) {
    const files = readdirSync(join(root, 'src/content', one)).filter(
      (file) => file.endsWith('.ts') && !/^index\.ts$|\.test\.ts$/.test(file),
    )
    for (const file of files.sort()) {
      for (const [name, value] of Object.entries(await load(`content/${one}/${file}`))) found.push({ name, value })
    }
  }
  return found.sort(byName)
}

/** The comment above the definition of a kind, as one paragraph. */
function purposeOf({ name }) {
  const text = readFileSync(join(root, `src/core/journal/kinds/${name}.ts`), 'utf8')
  const comment = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export const \w+ = defineKind/.exec(text)?.[1]
  if (!comment) throw new Error(`The kind ${name} lacks the comment that says what it is for.`)
  return comment
    .replaceAll(/\n\s*\*/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim()
}

/** Which drugs, studies, operations and rules cite each source. */
function usesOf(parts) {
  const usedBy = new Map()
  for (const { page, id, value } of parts) {
    for (const source of citedIn(value)) {
      usedBy.set(source, [...(usedBy.get(source) ?? []), page ? `[${id}](${page}#${id})` : id])
    }
  }
  return usedBy
}

async function pages(load) {
  await loadFacts(load)
  const { sources } = await load('content/sources/index.ts')
  const { studies } = await load('content/studies/index.ts')
  const { formulary } = await load('content/formulary/index.ts')
  const { disagreements } = await load('content/evidence/disagreements.ts')
  const { rowKey } = await load('core/formulary/drug.ts')
  const { speciesList } = await load('core/animal/species.ts')
  const { dosingRules } = await load('content/protocols/dosing-rules.ts')
  const { procedures } = await load('content/procedures/index.ts')
  const { caution } = await load('content/wording/caution.ts')
  const { outcomeDefinitions } = await load('content/outcomes/outcome-definitions.ts')
  const { asideReasonsInEnglish, countBasisInEnglish } = await load('content/wording/odds.ts')
  const { unitWord } = await load('core/units/unit-words.ts')
  const { exactInterval } = await load('core/stats/proportion-interval.ts')
  const { emergencyCalls } = await load('core/dosing/emergency-row.ts')
  const { kinds } = await load('core/journal/kinds/index.ts')
  const { units } = await load('core/units/unit.ts')
  const { calcList } = await load('actions/dosing/calc.ts')
  const { commands } = await load('cli/commands/index.ts')
  const { Command } = await import('commander')
  const { z } = await import('zod')

  const others = await exportsOf(
    load,
    ['protocols', 'follow-up', 'scores', 'dosing', 'choice', 'options'].filter((one) =>
      existsSync(join(root, 'src/content', one)),
    ),
  )
  const emergency = others
    .filter(({ value }) => value?.call !== undefined && Array.isArray(value.rows))
    .map(({ value }) => value)
  const protocols = others.filter(({ value }) => !emergency.includes(value))
  const usedBy = usesOf([
    ...formulary.map((one) => ({ page: 'formulary.md', id: one.id, value: one })),
    ...studies.map((one) => ({ page: 'studies.md', id: one.id, value: one })),
    ...procedures.map((one) => ({ page: 'procedures.md', id: one.id, value: one })),
    ...emergency.map((one) => ({ page: 'emergency.md', id: one.call, value: one })),
    { id: 'where sources disagree', value: disagreements },
    ...protocols.map(({ name, value }) => ({ page: 'rules.md', id: inWords(name).replaceAll(' ', '-'), value })),
  ])
  const shared = { caution, outcomeDefinitions }
  return {
    'formulary.md': formularyPage({ formulary: [...formulary].sort(byId), ...shared }),
    'coverage.md': coveragePage({ formulary: [...formulary].sort(byId), speciesList, ...shared }),
    '../disagreements.md': fromDocs(
      disagreementsPage({
        formulary: [...formulary].sort(byId),
        emergency,
        disagreements,
        rowKey,
        over: dosingRules.overRange.value,
        ...shared,
      }),
    ),
    'studies.md': studiesPage({
      studies: [...studies].sort(byId),
      citations: new Map(sources.map(({ id, citation }) => [id, citation])),
      exactInterval,
      asideReasons: asideReasonsInEnglish,
      countBases: countBasisInEnglish,
      ...shared,
    }),
    'procedures.md': proceduresPage({ procedures: [...procedures].sort(byId), ...shared }),
    'emergency.md': emergencyPage({ emergency, emergencyCalls, ...shared }),
    'rules.md': rulesPage({ protocols, ...shared }),
    'sources.md': sourcesPage({ sources: [...sources].sort(byId), usedBy, caution }),
    'kinds.md': kindsPage({
      kinds: [...kinds].sort(byName),
      fieldsOf: ({ body }) => rowsOfSchema(z.toJSONSchema(body, { unrepresentable: 'any' })),
      purposeOf,
    }),
    'commands.md': commandsPage({ program: programOf(commands, Command), operations: calcList() }),
    'units.md': unitsPage({ units, sayUnit: unitWord }),
  }
}

/** Lines of a page that stands one folder higher: their links lead into docs/reference. */
function fromDocs(lines) {
  return lines.map((line) => line.replaceAll(/\]\((\w+\.md#)/g, '](reference/$1'))
}

/** The command line as it would be built, without running anything. */
function programOf(commands, Command) {
  const program = new Command('quiet-ear')
  for (const command of commands) command.add(program, { env: {} })
  return program
}

const indexRows = [
  ['[Formulary](formulary.md)', 'every drug, species, use and route'],
  ['[Coverage of the formulary](coverage.md)', 'drugs × species × use, and how much of it was read'],
  ['[Where sources disagree](../disagreements.md)', 'both sides, and what the tool does'],
  ['[Emergency sheet](emergency.md)', 'one number per row, by what is shouted'],
  ['[Published studies](studies.md)', 'what was counted, study by study'],
  ['[Procedures](procedures.md)', 'when, when not, checkpoints, risks, what falls due'],
  ['[Rules and protocols](rules.md)', 'the numbers behind checks, formulas, scores and dates'],
  ['[Sources](sources.md)', 'what every number rests on'],
  ['[Kinds of entry](kinds.md)', 'what the journal can hold'],
  ['[Units](units.md)', 'the closed list'],
  ['[Commands](commands.md)', 'the command line, and the formulas of `calc`'],
]

const checkOnly = process.argv.includes('--check')
const written = await withSource(pages)
written['README.md'] = [
  ...head('Reference', 'Generated pages: everything the tool knows, with its sources.'),
  ...table(['page', 'holds'], indexRows),
]
if (!checkOnly) mkdirSync(folder, { recursive: true })
let stale = 0
for (const [name, lines] of Object.entries(written)) {
  const text = `${lines.join('\n').trimEnd()}\n`
  const path = join(folder, name)
  if (existsSync(path) && readFileSync(path, 'utf8') === text) continue
  stale += 1
  if (checkOnly) console.error(`docs/reference/${name} is out of date: run npm run docs`)
  else writeFileSync(path, text)
}
const standing = existsSync(folder) ? readdirSync(folder) : []
for (const name of standing.filter((file) => !Object.hasOwn(written, file))) {
  stale += 1
  if (checkOnly) console.error(`docs/reference/${name} is not a page of scripts/docs.mjs: run npm run docs`)
  else rmSync(join(folder, name))
}
console.log(`${Object.keys(written).length} reference pages, ${stale} ${checkOnly ? 'out of date' : 'rewritten'}`)
process.exitCode = checkOnly && stale > 0 ? 1 : 0
