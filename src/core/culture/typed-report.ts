import type { BodyOf } from '#core/journal/fold.ts'
import type { isolateTests, StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { emptyReport } from './empty-report.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { readPrinted } from './printed-value.ts'
import { type Recognised, recogniseAgent, recogniseOrganism } from './recognise.ts'

type Body = BodyOf<'specimen-result'>
type TestName = (typeof isolateTests)[number]

/** One drug of a report as it is typed. `agent` is what a person said an unknown name means; never filled in. */
export type TypedRow = {
  readonly drug: string
  readonly agent: string | null
  readonly value: string
  readonly unit: '' | 'mg/L' | 'mm'
  readonly disk: string
  readonly category: string
}
export type TypedIsolate = {
  readonly organism: string
  readonly species: string | null
  readonly amount: string
  readonly rows: readonly TypedRow[]
  readonly tests: Partial<Readonly<Record<TestName, 'positive' | 'negative'>>>
}
/** A report of a culture as it is typed; an empty text is "not said". */
export type TypedReport = {
  readonly status: Body['status'] | null
  readonly growth: 'none' | 'growth' | null
  readonly came: 'typed' | 'from-paper' | null
  readonly laboratory: string
  readonly accession: string
  readonly standard: string
  readonly text: string
  readonly isolates: readonly TypedIsolate[]
}

export const emptyRow: TypedRow = { drug: '', agent: null, value: '', unit: '', disk: '', category: '' }
export const emptyIsolate: TypedIsolate = { organism: '', species: null, amount: '', rows: [], tests: {} }
export const emptyTyped: TypedReport = {
  status: null,
  growth: null,
  came: null,
  laboratory: '',
  accession: '',
  standard: '',
  text: '',
  isolates: [emptyIsolate],
}

export type TypedReportRefusal =
  | { readonly at: 'status' | 'growth' | 'came'; readonly because: 'not-chosen' }
  | { readonly at: 'organism'; readonly isolate: number; readonly because: 'not-written' }
  | {
      readonly at: 'value'
      readonly isolate: number
      readonly row: number
      readonly because: 'not-written' | 'not-read' | 'unit-not-chosen' | 'drug-not-written'
    }

type Names = Pick<SusceptibilityFacts, 'agents' | 'organisms'>

/** What a typed drug is read as: a person's word for an unknown name goes before nothing, never before a known one. */
export function agentTyped({ drug, agent }: TypedRow, { agents }: Names): Recognised {
  const read = recogniseAgent(drug, agents)
  return read.id === null && agent !== null ? { id: agent, near: read.near } : read
}

export function organismTyped({ organism, species }: TypedIsolate, { organisms }: Names): Recognised {
  const read = recogniseOrganism(organism, organisms)
  return read.id === null && species !== null ? { id: species, near: read.near } : read
}

/**
 * The report that a draft stands for, or everything that is missing, in the order of the page. A name nobody knows is
 * kept as it is written, without a meaning; a number without its unit is asked for again.
 *
 * @example readTypedReport(draft, specimen.id, susceptibility).kind // 'answer'
 */
export function readTypedReport(
  draft: TypedReport,
  specimen: string,
  names: Names,
): Outcome<Body, readonly TypedReportRefusal[]> {
  const { status, growth, came } = draft
  const grown = growth === 'growth' ? draft.isolates : []
  const refusals: TypedReportRefusal[] = [
    ...(status === null ? [{ at: 'status', because: 'not-chosen' } as const] : []),
    ...(came === null ? [{ at: 'came', because: 'not-chosen' } as const] : []),
    ...(growth === null ? [{ at: 'growth', because: 'not-chosen' } as const] : []),
    ...grown.flatMap((isolate, place) => faultsOf(isolate, place)),
  ]
  if (refusals.length > 0 || status === null || growth === null || came === null) return refuse(refusals)
  const said = (text: string) => (text.trim() === '' ? null : text.trim())
  return answer({
    ...emptyReport,
    specimen,
    status,
    growth,
    came,
    laboratory: said(draft.laboratory),
    accession: said(draft.accession),
    standard: said(draft.standard),
    text: said(draft.text),
    isolates: grown.map((isolate, place) => storedOf(isolate, place, names)),
  })
}

/** Rows in which anything stands: the last one waits empty for the next drug. */
export function filledRows({ rows }: TypedIsolate): readonly TypedRow[] {
  return rows.filter(({ drug, value, category }) => `${drug}${value}${category}`.trim() !== '')
}

function faultsOf(isolate: TypedIsolate, place: number): TypedReportRefusal[] {
  const unnamed = isolate.organism.trim() === ''
  return [
    ...(unnamed ? [{ at: 'organism', isolate: place, because: 'not-written' } as const] : []),
    ...filledRows(isolate).flatMap((row, index): TypedReportRefusal[] => {
      const because = faultOf(row)
      return because === null ? [] : [{ at: 'value', isolate: place, row: index, because }]
    }),
  ]
}

function faultOf({ drug, value, unit, category }: TypedRow) {
  if (drug.trim() === '') return 'drug-not-written'
  if (value.trim() === '') return category.trim() === '' ? 'not-written' : null
  const read = readPrinted(rawOf(value, unit), null)
  if (read.kind !== 'unreadable') return null
  return read.doubt === 'method-not-stated' ? 'unit-not-chosen' : 'not-read'
}

/** As the laboratory prints it: `<=0.5 mg/L`. */
function rawOf(value: string, unit: TypedRow['unit']): string {
  return unit === '' ? value.trim() : `${value.trim()} ${unit}`
}

function storedOf(isolate: TypedIsolate, place: number, names: Names): StoredIsolate {
  return {
    key: String(place + 1),
    organism: isolate.organism.trim(),
    species: organismTyped(isolate, names).id,
    amount: isolate.amount.trim() || null,
    results: filledRows(isolate).map((row) => storedRow(row, names)),
    tests: Object.entries(isolate.tests).map(([test, result]) => ({ test: test as TestName, result })),
  }
}

function storedRow(row: TypedRow, names: Names): StoredIsolate['results'][number] {
  const category = row.category.trim() || null
  const raw = row.value.trim() === '' ? (category ?? '') : rawOf(row.value, row.unit)
  const read = readPrinted(raw, null)
  return {
    drug: row.drug.trim(),
    agent: agentTyped(row, names).id,
    method: read.kind === 'mic' ? 'MIC' : read.kind === 'zone' ? 'DISK' : null,
    raw,
    disk: row.disk.trim() || null,
    category,
  }
}

/** A kept report as it would be typed again, to be corrected. */
export function typedAgainReport(body: Body): TypedReport {
  return {
    status: body.status,
    growth: body.growth === 'not-a-culture' ? null : body.growth,
    came: body.came === 'from-paper' ? 'from-paper' : 'typed',
    laboratory: body.laboratory ?? '',
    accession: body.accession ?? '',
    standard: body.standard ?? '',
    text: body.text ?? '',
    isolates: body.isolates.map((isolate) => ({
      organism: isolate.organism,
      species: isolate.species,
      amount: isolate.amount ?? '',
      rows: isolate.results.map(rowAgain),
      tests: Object.fromEntries(isolate.tests.map(({ test, result }) => [test, result])),
    })),
  }
}

function rowAgain({ drug, agent, raw, disk, category }: StoredIsolate['results'][number]): TypedRow {
  const unit = /\s(mg\/L|mm)$/.exec(raw)?.[1] as 'mg/L' | 'mm' | undefined
  const value = unit ? raw.slice(0, -unit.length).trim() : raw
  const isCategory = readPrinted(raw, null).kind === 'category'
  return {
    drug,
    agent,
    value: isCategory ? '' : value,
    unit: unit ?? '',
    disk: disk ?? '',
    category: category ?? (isCategory ? raw : ''),
  }
}
