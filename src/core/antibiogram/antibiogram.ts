import { type Species, speciesList } from '#core/animal/species.ts'
import type { IsolateReading } from '#core/culture/reading.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { patternOf } from './counted-category.ts'
import { type DrugFigures, drugFigures, flagOf } from './drug-figures.ts'
import { firstIsolates } from './first-isolates.ts'
import type { Isolated } from './isolate.ts'
import type { AntibiogramMethod, DifferencePoints } from './method.ts'
import { type DrugTally, newTally, type OrganismTally, tallyIsolate } from './tally.ts'

/** Why no share of a drug is told although isolates were tested. */
export type Untold = 'intrinsic' | 'tested-only-on-resistant' | 'below-minimum' | 'no-category'

export type AntibiogramDrug = DrugFigures & {
  readonly drug: string
  readonly untold: Untold | null
  /** Of `n`, how many rest on a category printed without its value. */
  readonly categoryOnly: number
  readonly doses: readonly string[]
}

/** A drug read by a human or other-host breakpoint, because the edition has none for this animal. */
export type FallbackDrug = DrugFigures & { readonly drug: string }

export type AntibiogramRow = {
  readonly host: Species
  /** Null where all places of sampling stand together. */
  readonly site: string | null
  readonly organism: string
  /** Isolates counted. */
  readonly n: number
  readonly flag: string | null
  readonly firstDay: string
  readonly lastDay: string
  readonly drugs: readonly AntibiogramDrug[]
  readonly fallback: readonly FallbackDrug[]
}

/** How an isolate is read: by the engine of results, with one edition for all. */
export type ReadIsolate<Isolate> = (isolate: Isolate) => Pick<IsolateReading, 'results'>

/**
 * What grows: first isolates counted by organism, and of each drug how many are susceptible. Dogs and cats are never in
 * one row. First isolates are chosen before they are told apart by place, unless each place has its own.
 *
 * @example antibiogramOf(isolates, read, { method, points })[0]?.drugs[0]?.percent // 68.8
 */
export function antibiogramOf<Isolate extends Isolated>(
  isolates: readonly Isolate[],
  read: ReadIsolate<Isolate>,
  { method, points }: { readonly method: AntibiogramMethod; readonly points: DifferencePoints },
): AntibiogramRow[] {
  const categories = (isolate: Isolate) =>
    new Map([...patternOf(read(isolate).results)].map(([drug, { category }]) => [drug, category]))
  const rows = new Map<string, { readonly of: RowOf; readonly tally: OrganismTally }>()
  for (const isolate of firstIsolates(isolates, method, { patternOf: categories, points })) {
    const of = rowOf(isolate, method)
    const key = [of.host, of.site ?? '', of.organism].join('\u0000')
    const row = rows.get(key) ?? { of, tally: newTally() }
    rows.set(key, row)
    tallyIsolate(row.tally, isolate.day, read(isolate))
  }
  return [...rows.values()].map(({ of, tally }) => figuresOf(of, tally, method)).sort(inOrder)
}

type RowOf = Pick<AntibiogramRow, 'host' | 'site' | 'organism'>

function rowOf({ host, organism, site }: Isolated, { sites }: AntibiogramMethod): RowOf {
  return { host, organism, site: sites === 'together' ? null : site }
}

function figuresOf(of: RowOf, tally: OrganismTally, method: AntibiogramMethod): AntibiogramRow {
  const { n, firstDay, lastDay } = tally
  const drugs = [...tally.drugs.values()].sort((a, b) => compareText(a.drug, b.drug))
  return {
    ...of,
    n,
    flag: flagOf(n, method.flagBelow),
    firstDay,
    lastDay,
    drugs: drugs.map((drug) => drugOfRow(drug, tally, method)),
    fallback: drugs.flatMap(({ drug, fallback }) => {
      const figures = drugFigures(fallback, method)
      return figures.n + figures.notInterpretable > 0 ? [{ drug, ...figures }] : []
    }),
  }
}

function drugOfRow(one: DrugTally, tally: OrganismTally, method: AntibiogramMethod): AntibiogramDrug {
  const tested = Object.values(one.counts).reduce((sum, count) => sum + count, 0)
  const counts = { ...one.counts, notTested: tally.n - tested }
  const figures = drugFigures(counts, method)
  const untold = whyUntold(one, figures, tally, method)
  const shares = untold === null ? {} : { percent: null, interval: null, percentSdd: null, percentR: null }
  const doses = [...one.doses].sort(compareText)
  return { drug: one.drug, ...figures, ...shares, untold, categoryOnly: one.alone, doses }
}

/** A drug that was tested only because others failed would look worse than it is: its share is counted and not told. */
function whyUntold(
  { intrinsic, withoutOther, withoutAny }: DrugTally,
  { n, notTested }: DrugFigures,
  tally: OrganismTally,
  { minimum }: AntibiogramMethod,
): Untold | null {
  if (intrinsic) return 'intrinsic'
  if (n === 0) return 'no-category'
  const spared = tally.withoutAny > withoutAny
  if (notTested > 0 && withoutOther === 0 && spared) return 'tested-only-on-resistant'
  return n < minimum ? 'below-minimum' : null
}

function inOrder(a: AntibiogramRow, b: AntibiogramRow): number {
  return (
    speciesList.indexOf(a.host) - speciesList.indexOf(b.host) ||
    compareText(a.site ?? '', b.site ?? '') ||
    b.n - a.n ||
    compareText(a.organism, b.organism)
  )
}
