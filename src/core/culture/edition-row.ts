import type { BodyOf } from '#core/journal/fold.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { audiences, bodySites, breakpointRoutes, conventions } from './breakpoint.ts'
import type { EditionColumn, EditionFault, EditionInFile } from './edition-column.ts'
import { endsFault } from './ends-fault.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { kindsOfRows, rowHosts } from './own-row.ts'
import { recogniseAgent, recogniseOrganism } from './recognise.ts'
import { readEnds } from './written-ends.ts'

export type FileRow = { readonly line: number; readonly of: (column: EditionColumn) => string }

type Head = Omit<EditionInFile, 'rows'>
type Row = BodyOf<'breakpoint-edition'>['rows'][number]
const sameInAll = ['standard', 'edition', 'year', 'convention', 'audience'] as const

/** What is the same in every row: which edition of which standard this is. */
export function headOf(row: FileRow): Outcome<Head, readonly EditionFault[]> {
  const faults: EditionFault[] = []
  const take = taking(row, faults)
  const year = row.of('year')
  if (!/^20\d\d$/.test(year)) faults.push(fault(row, 'not-a-year', 'year'))
  const head = {
    standard: take.text('standard', 80),
    edition: take.text('edition', 80),
    year: Number(year),
    convention: take.oneOf('convention', conventions),
    audience: take.oneOf('audience', audiences),
  }
  return faults.length > 0 ? refuse(faults) : answer(head as Head)
}

export function rowOf(
  row: FileRow,
  first: FileRow,
  head: Head,
  { agents, organisms }: Pick<SusceptibilityFacts, 'agents' | 'organisms'>,
): Outcome<Row, readonly EditionFault[]> {
  const faults: EditionFault[] = []
  const take = taking(row, faults)
  for (const column of sameInAll) {
    if (row.of(column) !== first.of(column)) faults.push(fault(row, 'not-the-same', column, [first.of(column)]))
  }
  const host = take.oneOf('host', rowHosts)
  if (host && (host === 'human') !== (head.audience === 'people')) faults.push(fault(row, 'host-of-others', 'host'))
  const organism = recogniseOrganism(row.of('organism'), organisms)
  if (organism.id === null) faults.push(fault(row, 'organism-unknown', 'organism', organism.near))
  const agent = recogniseAgent(row.of('drug'), agents)
  if (agent.id === null) faults.push(fault(row, 'drug-unknown', 'drug', agent.near))
  const kinds = kindsOfRows[head.audience]
  const kind = row.of('kind') === '' ? kinds[0] : take.oneOf<string>('kind', kinds)
  const method = take.oneOf('method', ['MIC', 'DISK'])
  const body = {
    kind,
    host,
    organisms: organism.id,
    agent: agent.id,
    sites: sitesOf(row, faults),
    route: row.of('route') === '' ? null : take.oneOf('route', breakpointRoutes),
    method,
    disk: diskOf(row, faults),
    susceptible: row.of('susceptible'),
    between: row.of('between'),
    resistant: row.of('resistant'),
    dose: row.of('dose') === '' ? null : take.text('dose', 300),
    remark: row.of('remark') === '' ? null : take.text('remark', 300),
  }
  if (method) faults.push(...faultsOfEnds(row, head, method, kind === 'none'))
  if (head.audience === 'people' && row.of('dose') !== '') faults.push(fault(row, 'dose-of-people', 'dose'))
  return faults.length > 0 ? refuse(faults) : answer(body as Row)
}

function faultsOfEnds(row: FileRow, head: Head, method: 'MIC' | 'DISK', isNone: boolean): EditionFault[] {
  const written = { susceptible: row.of('susceptible'), between: row.of('between'), resistant: row.of('resistant') }
  const read = readEnds(written, method, head.convention)
  if (read.kind === 'refusal') return [fault(row, 'end-not-understood', read.refusal.end)]
  const { susceptible, between, resistant } = read.answer
  const empty = susceptible === null && between === null && resistant === null
  if (isNone) return empty ? [] : [fault(row, 'ends-of-none', 'susceptible')]
  if (empty) return [fault(row, 'no-ends', 'susceptible')]
  const wrong = endsFault(read.answer, method, head.convention)
  if (wrong) return [fault(row, wrong, 'susceptible', [], Object.values(written).join(' | '))]
  const bare = between?.category === 'SDD' && between.steps.some(({ dose }) => dose === undefined)
  return bare && head.audience === 'animals' ? [fault(row, 'dose-missing', 'between')] : []
}

function sitesOf(row: FileRow, faults: EditionFault[]): string[] {
  const sites = row
    .of('sites')
    .split(/[;+]/)
    .map((site) => site.trim().toLowerCase())
  const known: readonly string[] = bodySites
  if (sites.some((site) => !known.includes(site))) faults.push(fault(row, 'not-one-of', 'sites', bodySites))
  return sites
}

function diskOf(row: FileRow, faults: EditionFault[]): string | null {
  const disk = row.of('disk')
  const isDisk = row.of('method').toUpperCase() === 'DISK'
  if (isDisk && !/\d/.test(disk)) faults.push(fault(row, 'disk-missing', 'disk'))
  if (!isDisk && disk !== '') faults.push(fault(row, 'disk-of-dilution', 'disk'))
  return isDisk ? disk : null
}

/** Reads single cells, and notes beside them what is wrong. */
function taking(row: FileRow, faults: EditionFault[]) {
  return {
    text: (column: EditionColumn, most: number) => {
      const text = row.of(column)
      if (text === '') faults.push(fault(row, 'not-written', column))
      if (text.length > most) faults.push(fault(row, 'too-long', column, [String(most)]))
      return text
    },
    oneOf: <const Option extends string>(column: EditionColumn, options: readonly Option[]): Option | null => {
      const text = row.of(column).toLowerCase()
      const option = options.find((one) => one.toLowerCase() === text)
      if (option === undefined) faults.push(fault(row, 'not-one-of', column, options))
      return option ?? null
    },
  }
}

function fault(
  row: FileRow,
  code: EditionFault['code'],
  column: EditionColumn,
  near: readonly string[] = [],
  found = row.of(column),
): EditionFault {
  return { code, line: row.line, column, found, ...(near.length > 0 ? { near } : {}) }
}
