import type { Species } from '#core/animal/species.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import type { BodySite, Breakpoint, Edition } from './breakpoint.ts'
import { type Chosen, chooseBreakpoint, chooseFallback, type Wanted } from './choose-breakpoint.ts'
import { editionName } from './edition-name.ts'
import { onLadder } from './ladder.ts'
import type { Organism } from './organism.ts'
import { type PrintedValue, printedCategory, readPrinted, type ValueDoubt } from './printed-value.ts'
import { type Possible, readValue, resistanceOrder } from './read-value.ts'
import type { Category, DrugReading, NoChoice, UsedBreakpoint } from './reading.ts'
import type { PrintedSum } from './rules.ts'

/** What stands beside a reading of one drug, as a code; its sentence is in content/wording. */
export const drugFlags = [
  'drug-not-recognised',
  'laboratory-category-only',
  'laboratory-differs',
  'value-unreadable',
  'between-dilutions',
  'panel-does-not-reach',
  'not-susceptible-either-way',
  'susceptible-at-some-dose',
  'human-derived',
  'human-breakpoint',
  'extrapolated-from-other-host',
  'screening-test',
  'rows-differ',
  'disk-assumed',
  'disk-not-stated',
  'increased-exposure',
  'proposed-value-lower',
  'not-used-in-this-species',
  'd-test-missing',
  'not-to-be-reported-susceptible',
  'low-level-resistance',
  'esbl-suspected',
  'methicillin-possible',
  'not-printed',
  'same-drug-differs',
] as const
export type DrugFlag = (typeof drugFlags)[number]
type NumberPrinted = Extract<PrintedValue, { kind: 'mic' | 'zone' }>
export type Row = StoredIsolate['results'][number]

/** What is read by: one edition for the whole report, human editions only to stand beside it. */
export type ReadBy = {
  readonly host: Species
  readonly site: BodySite
  readonly edition: Edition
  readonly people: readonly Edition[]
  readonly proposals: readonly Edition[]
  /** Whose disks the laboratory uses, where it is known. */
  readonly laboratoryConvention: Edition['convention'] | null
  readonly printedSums: readonly PrintedSum[]
}
/** A reading before the expert rules, with what the isolate says about it. */
export type DrugRead = DrugReading & {
  readonly doubt: ValueDoubt | null
  readonly none: NoChoice | null
  /** A proposed row that would not call S what the edition does. */
  readonly proposal: Breakpoint | null
}

/**
 * One printed line read by one edition: category when every dilution it can mean agrees, `NI` with what is possible when
 * they do not, `no_breakpoint` when this animal's own kind has no row.
 */
export function readDrug(row: Row, organism: Organism, by: ReadBy): DrugRead {
  const value = printedValue(row, by.printedSums)
  const laboratory = row.category ?? (value.kind === 'category' ? row.raw : null)
  const bare: DrugRead = {
    agent: row.agent,
    printed: row.drug,
    raw: row.raw,
    method: row.method,
    category: 'NI',
    before: null,
    changedBy: null,
    possible: [],
    breakpoint: null,
    fallback: null,
    laboratory,
    flags: [],
    doubt: null,
    none: null,
    proposal: null,
  }
  if (row.agent === null) return { ...bare, flags: ['drug-not-recognised'] }
  switch (value.kind) {
    case 'unreadable':
      return { ...bare, flags: ['value-unreadable'], doubt: value.doubt }
    case 'category': {
      const category = printedCategory(laboratory)
      return category === null
        ? { ...bare, flags: ['value-unreadable'], doubt: 'value-not-read' }
        : { ...bare, category, flags: ['laboratory-category-only'] }
    }
    default:
      return compared(
        readNumber(between(value) ? { ...bare, flags: ['between-dilutions'] } : bare, value, row, organism, by),
      )
  }
}

function readNumber(
  bare: DrugRead,
  value: NumberPrinted,
  row: Row & { readonly agent: string | null },
  organism: Organism,
  by: ReadBy,
): DrugRead {
  const method = value.kind === 'mic' ? 'MIC' : 'DISK'
  const wanted = { host: by.host, site: by.site, organism, agent: row.agent ?? '', method, disk: row.disk } as const
  const unsaidDisk = method === 'DISK' && row.disk === null
  const otherSystem = by.laboratoryConvention !== null && by.laboratoryConvention !== by.edition.convention
  const read = { ...bare, method } as const
  if (unsaidDisk && otherSystem) {
    return { ...read, category: 'no_breakpoint', flags: ['disk-not-stated'], none: 'other-disk' }
  }
  const chosen = chooseBreakpoint(wanted, by.edition)
  if (typeof chosen !== 'string') {
    const told = meaning(value, chosen)
    const proposal = told.category === 'S' ? proposed(value, wanted, by) : null
    const flags = [
      ...bare.flags,
      ...told.flags,
      ...(unsaidDisk ? (['disk-assumed'] as const) : []),
      ...(proposal ? (['proposed-value-lower'] as const) : []),
    ]
    return { ...read, ...told, flags, proposal }
  }
  const people = unsaidDisk ? by.people.filter(({ convention }) => convention === by.edition.convention) : by.people
  const standIn = chosen === 'stated-none' ? null : chooseFallback(wanted, by.edition, people)
  const told = standIn && meaning(value, standIn)
  return {
    ...read,
    category: 'no_breakpoint',
    none: chosen,
    // A dose for people or for another species is none for this animal.
    fallback: told?.breakpoint ? { category: told.category, breakpoint: { ...told.breakpoint, dose: null } } : null,
    flags: [
      ...bare.flags,
      ...(chosen === 'stated-none' ? (['not-used-in-this-species'] as const) : []),
      ...(standIn?.step === 'human' ? (['human-breakpoint'] as const) : []),
      ...(standIn?.step === 'other-host' ? (['extrapolated-from-other-host'] as const) : []),
      ...(standIn && unsaidDisk ? (['disk-assumed'] as const) : []),
      ...(told?.flags ?? []),
    ],
  }
}

/** Printed without a sign, and no dilution by itself: taken upwards. */
function between(value: NumberPrinted): boolean {
  return value.kind === 'mic' && value.sign === '=' && onLadder(value.amount)?.exact === false
}

type Meaning = Pick<DrugRead, 'category' | 'possible' | 'breakpoint' | 'doubt'> & {
  readonly flags: readonly DrugFlag[]
}

/** What a value means under the rows that fit it: where they part, no row is preferred. */
function meaning(value: NumberPrinted, chosen: Chosen): Meaning {
  const readings = chosen.rows.map((row) => ({ row, read: readValue(value, row, chosen.edition.convention) }))
  const first = readings[0]
  if (!first) throw new Error('A chosen breakpoint has a row.')
  if (first.read.kind === 'doubt') {
    return {
      category: 'NI',
      possible: [],
      breakpoint: used(chosen, first.row, null),
      doubt: first.read.doubt,
      flags: ['value-unreadable'],
    }
  }
  const all = readings.flatMap(({ read }) => (read.kind === 'read' ? read.possible : []))
  const categories = resistanceOrder.filter((one) => all.some(({ category }) => category === one))
  const certain = categories.length === 1 ? categories[0] : undefined
  const rowsPart = readings.some(({ read }) => named(read) !== named(first.read))
  const doses = new Set(first.read.possible.map(({ dose }) => dose))
  const dose = certain !== undefined && doses.size === 1 ? (first.read.possible[0].dose ?? null) : null
  return {
    category: certain ?? 'NI',
    possible: certain === undefined ? categories : [],
    breakpoint: used(chosen, first.row, dose),
    doubt: null,
    flags: [
      ...(first.row.kind === 'human-derived' ? (['human-derived'] as const) : []),
      ...(first.row.kind === 'screen' ? (['screening-test'] as const) : []),
      ...(rowsPart ? (['rows-differ'] as const) : []),
      ...(certain === 'I' && chosen.edition.convention === 'EUCAST' ? (['increased-exposure'] as const) : []),
      ...(certain === undefined && !rowsPart ? whyOpen(categories) : []),
    ],
  }
}

function named(read: ReturnType<typeof readValue>): string {
  return read.kind === 'read' ? read.possible.map(({ category }) => category).join(' ') : read.doubt
}

function whyOpen(categories: readonly Category[]): DrugFlag[] {
  const only = (...these: Category[]) => categories.every((one) => these.includes(one))
  return [
    'panel-does-not-reach',
    ...(only('I', 'NS', 'R') ? (['not-susceptible-either-way'] as const) : []),
    ...(only('S', 'SDD') ? (['susceptible-at-some-dose'] as const) : []),
  ]
}

/** A proposal is information: said where it would not call S what the edition does. */
function proposed(value: NumberPrinted, wanted: Wanted, { proposals }: ReadBy): Breakpoint | null {
  const names = [wanted.organism.id, ...wanted.organism.groups]
  for (const { rows, convention } of proposals) {
    const row = rows.find(
      ({ host, agent, method, organisms, ends }) =>
        host === wanted.host &&
        agent === wanted.agent &&
        method === wanted.method &&
        names.includes(organisms) &&
        ends.value.susceptible !== null,
    )
    if (row && !surely(readValue(value, row, convention), 'S')) return row
  }
  return null
}

function surely(read: ReturnType<typeof readValue>, category: Category): boolean {
  return read.kind === 'read' && read.possible.every((one: Possible) => one.category === category)
}

/** The laboratory's own word stays beside ours; where the two part, that is said. */
function compared(read: DrugRead): DrugRead {
  const theirs = printedCategory(read.laboratory)
  const differs = theirs !== null && read.category !== 'no_breakpoint' && theirs !== read.category
  return differs ? { ...read, flags: [...read.flags, 'laboratory-differs'] } : read
}

/** A combination printed as the sum of its parts would be read many dilutions too high. */
function printedValue(row: Row, sums: readonly PrintedSum[]): PrintedValue {
  const value = readPrinted(row.raw, row.method)
  const sum = value.kind === 'mic' && sums.find(({ value: one }) => one.agent === row.agent)?.value
  if (value.kind !== 'mic' || !sum) return value
  if (value.partner === null && sum.amounts.some((amount) => Number(amount) === Number(value.amount)))
    return { kind: 'unreadable', doubt: 'sum-of-both-parts' }
  const swapped = value.partner !== null && sum.partnerIsLarger && Number(value.partner) < Number(value.amount)
  return swapped ? { kind: 'unreadable', doubt: 'value-not-read' } : value
}

function used({ edition, step }: Chosen, row: Breakpoint, dose: string | null): UsedBreakpoint {
  const { susceptible, between, resistant } = row.ends.value
  const mic = row.method === 'MIC'
  const beyond = edition.convention === 'CLSI' ? (mic ? '>=' : '<=') : mic ? '>' : '<'
  return {
    edition: edition.id,
    standard: editionName(edition),
    row: row.id,
    step,
    host: row.host,
    site: row.sites.join(' + '),
    organisms: row.organisms,
    susceptible: susceptible === null ? null : `${mic ? '<=' : '>='}${susceptible}`,
    between: between === null ? null : `${between.category} ${between.steps.map(stepName).join('; ')}`,
    resistant: resistant === null ? null : `${beyond}${resistant}`,
    dose,
  }
}

function stepName({ value, upTo }: { readonly value: string; readonly upTo?: string }): string {
  return upTo === undefined ? value : `${value}–${upTo}`
}
