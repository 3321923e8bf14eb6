import { procedures } from '#content/procedures/index.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import { foundIn } from '#core/evidence/published.ts'
import { rounded, wholeOfHundred } from '#core/evidence/say-published.ts'
import { type SaidTold, sayTold } from '#core/evidence/say-told.ts'
import type { StudyOutcome } from '#core/evidence/study.ts'
import type { Told } from '#core/evidence/told.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import type { Interval } from '#core/stats/proportion-interval.ts'
import { evidenceOf } from '../case/evidence-of.ts'
import { knownFor, uncountedName } from '../leaflet/figures.ts'
import type { Dots } from './dots.ts'
import type { OwnerPageWords } from './words.ts'

/** One outcome of one operation, counted in one unit: animals, ears and operations never share a square. */
export type Figure = {
  readonly outcome: OutcomeCode
  /** "A weak face on that side". */
  readonly name: string
  /** "Of 100 dogs". */
  readonly group: string
  readonly dots: Dots
  /** Both framings: how many had it, how many had not. */
  readonly framing: string
  readonly range: string | null
  /** "One study, 309 dogs." */
  readonly studies: string
  /** Every sentence of the counts, for whoever opens it. */
  readonly details: readonly string[]
  readonly rows: readonly StudyOutcome[]
  /** For a table: "about 26". */
  readonly short: string
}

export type Figures = { readonly counted: readonly Figure[]; readonly uncounted: readonly string[] }

/** What is told after one operation in one species, as squares of 100; and what nobody counted. */
export function figuresFor(
  procedure: ProcedureId,
  of: { readonly species: Species; readonly house: Case },
  words: OwnerPageWords,
): Figures {
  const evidence = evidenceOf(of.house)
  const known = procedureNamed(procedure, procedures).risks.map(({ outcome }) => {
    const question = { species: of.species, procedure, outcome }
    return { question, found: knownFor(question, evidence).filter(saysNumber) }
  })
  return {
    counted: known.flatMap(({ question, found }) => found.map((one) => figureOf(question.outcome, one, words))),
    uncounted: known.filter(({ found }) => found.length === 0).map(({ question }) => uncountedName(question, words)),
  }
}

/** Our own count alone says a number only where it is not withheld. */
function saysNumber({ published, ownRate }: Told): boolean {
  return published.kind !== 'unknown' || ownRate.kind === 'shown' || ownRate.kind === 'none-yet'
}

function figureOf(outcome: OutcomeCode, told: Told, words: OwnerPageWords): Figure {
  const { page, odds } = words
  const { published } = told
  const said = sayTold(told, words)
  const { species, unit } = published.question
  const animals = { animals: page.animals[species] }
  const found = foundIn(published)
  const [first] = found
  const total = { ...animals, total: String(first?.count.total ?? 0) }
  const studies = {
    'one-study': fill(page.study, { group: fill(page.groups[unit], total) }),
    'several-studies': fill(page.studies, { number: String(found.length) }),
    'two-readings': page.readings,
    unknown: '',
  }[published.kind]
  return {
    outcome,
    name: odds.outcomes[outcome].operated,
    group: fill(page.figuresPer[unit], animals),
    ...numbersOf(told, said, words),
    studies: [studies, ...said.own].filter((part) => part !== '').join(' '),
    details: [said.sentence, ...said.lines, ...said.notes],
    rows: found.map(({ row }) => row),
  }
}

type Numbers = Pick<Figure, 'dots' | 'framing' | 'range' | 'short'>

/** The one place where a count becomes the numbers that an owner reads, in every language. */
function numbersOf({ published, updated, ownRate }: Told, said: SaidTold, words: OwnerPageWords): Numbers {
  const { page } = words
  const [low, high] = [said.low ?? 0, said.high ?? 100]
  const text = (one: number) => String(one)
  if (published.kind === 'unknown') {
    if (ownRate.kind === 'none-yet') return noneNumbers(Math.ceil(100 * ownRate.upTo), words)
    if (ownRate.kind !== 'shown') throw new Error('What is withheld has no number.')
    return middleNumbers(wholeOfHundred(ownRate.share), rounded(ownRate.interval), words)
  }
  if (published.kind === 'two-readings') {
    const about = { low: text(low), high: text(high), rest: text(100 - high), most: text(100 - low) }
    const dots = { full: low, between: high - low }
    return { dots, framing: fill(page.span, about), range: null, short: `${low}–${high}` }
  }
  if (published.kind === 'one-study' && !updated) {
    const { events, total } = published.found.count
    if (events === 0) return noneNumbers(high, words)
    if (events === total) {
      const framing = fill(page.all, { low: text(low) })
      return { dots: { full: low, between: 100 - low }, framing, range: null, short: `${low}–100` }
    }
  }
  return middleNumbers(said.middle ?? 0, { low, high }, words)
}

function noneNumbers(high: number, { page }: OwnerPageWords): Numbers {
  const framing = fill(page.none, { high: String(high), rest: String(100 - high) })
  return { dots: { full: 0, between: high }, framing, range: null, short: `0–${high}` }
}

function middleNumbers(middle: number, { low, high }: Interval, { page }: OwnerPageWords): Numbers {
  const had = { had: String(middle), without: String(100 - middle) }
  const framing = middle === 0 ? page.middleFewer : fill(page.middle, had)
  const range = fill(low === 0 ? page.rangeFrom : page.range, { low: String(low), high: String(high) })
  return { dots: { full: middle, between: 0 }, framing, range, short: middle === 0 ? `0–${high}` : String(middle) }
}
