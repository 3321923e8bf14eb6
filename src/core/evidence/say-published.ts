import type { Species } from '../animal/species.ts'
import { fill } from '../outcome/finding.ts'
import { never } from '../outcome/outcome.ts'
import type { Interval } from '../stats/proportion-interval.ts'
import type { OutcomeCode, OwnerOutcomeWords } from './outcome-code.ts'
import type { Published, PublishedCount } from './published.ts'
import type { CountUnit, StudyProcedure } from './study.ts'

export type OddsSentence =
  | 'one-study'
  | 'one-study-none'
  | 'one-study-all'
  | 'several-studies'
  | 'two-readings'
  | 'unknown'
  | 'unknown-in-this-unit'
  | 'line'
  | 'line-none'
  | 'line-all'
  | 'was-followed-by'
  | 'were-followed-by'
  | 'met-with'
  | 'or'
  | 'about'
  | 'fewer-than-one'
  | 'more-than-99'
  | 'followed'
  | 'follow-up-not-stated'
  | 'both-ears-of-one-animal'

/** The words of one language; content/wording holds them. */
export type OddsWording = {
  readonly sentences: Record<OddsSentence, string>
  readonly groups: Record<CountUnit, { readonly one: string; readonly many: string }>
  readonly units: Record<CountUnit, string>
  readonly animals: Record<Species, { readonly one: string; readonly many: string }>
  readonly procedures: Record<StudyProcedure, string>
  readonly outcomes: Record<OutcomeCode, OwnerOutcomeWords>
  /** How long a study looked, by the English words that stand in the study; what is not named here is said as it stands there. */
  readonly followed: Readonly<Record<string, string>>
}

/** What the owner hears. Everything is out of 100; a number that the evidence does not support is null. */
export type SaidOdds = {
  readonly per: 100
  readonly middle: number | null
  /** Ends of the exact interval of one study or of two readings; with several studies the lowest and highest seen. */
  readonly low: number | null
  readonly high: number | null
  readonly sentence: string
  /** One per study when there are several, one per reading when there are two. */
  readonly lines: readonly string[]
  /** How long they were followed, and what else belongs beside the number. */
  readonly notes: readonly string[]
}

/**
 * Turns published counts into sentences with one denominator, no "1 in x", no relative risk and no more figures
 * than the count supports. An outcome without an event shows how high the true figure could still be.
 *
 * @example sayPublished(publishedFor(question, studies), oddsInEnglish).sentence
 */
export function sayPublished(published: Published, wording: OddsWording): SaidOdds {
  switch (published.kind) {
    case 'unknown':
      return { ...nothingSaid, sentence: unknownSentence(published, wording) }
    case 'one-study': {
      const { found } = published
      const notes = [followUpNote(found, wording), ...bothEarsNote([found], wording)]
      const sentence = countSentence(found, 'one-study', wording)
      return { ...nothingSaid, middle: wholeOfHundred(found.share), ...rounded(found.exact), sentence, notes }
    }
    case 'several-studies':
    case 'two-readings': {
      const { found, span } = published
      const lines = found.map((one) => `${countSentence(one, 'line', wording)} ${followUpNote(one, wording)}`)
      const sentence = spanSentence(published, wording)
      return { ...nothingSaid, ...rounded(span), sentence, lines, notes: bothEarsNote(found, wording) }
    }
    default:
      return never(published)
  }
}

const nothingSaid = { per: 100, middle: null, low: null, high: null, lines: [], notes: [] } as const

function unknownSentence({ question, aside }: Published, wording: OddsWording): string {
  const others = new Set(
    aside.filter(({ because }) => because === 'other-unit').map(({ row }) => wording.units[row.unit]),
  )
  return fill(wording.sentences[others.size > 0 ? 'unknown-in-this-unit' : 'unknown'], {
    animals: wording.animals[question.species].many,
    procedure: wording.procedures[question.procedure],
    what: wording.outcomes[question.outcome].operated,
    unit: wording.units[question.unit],
    others: [...others].join(wording.sentences.or),
  })
}

function spanSentence(
  { kind, question, found, span }: Extract<Published, { kind: 'several-studies' | 'two-readings' }>,
  wording: OddsWording,
): string {
  const shares = found.map(({ share }) => share)
  return fill(wording.sentences[kind], {
    animals: wording.animals[question.species].many,
    number: String(found.length),
    lowest: perHundred(Math.min(...shares), wording),
    highest: perHundred(Math.max(...shares), wording),
    ...endWords(span, wording),
  })
}

/** The words for one study's count: out of 100, with the exact interval, or the bound when nobody or everybody had it. */
function countSentence(found: PublishedCount, start: 'one-study' | 'line', wording: OddsWording): string {
  const { events, total } = found.count
  const ending = events === 0 ? '-none' : events === total ? '-all' : ''
  return fill(wording.sentences[`${start}${ending}`], {
    group: groupWords(found, wording),
    events: String(events),
    happened: happenedWords(found, wording),
    middle: perHundred(found.share, wording),
    ...endWords(found.exact, wording),
  })
}

function happenedWords({ row, count }: PublishedCount, wording: OddsWording): string {
  return happenedIn(row, count.events, wording)
}

/** What happened, after a number of animals, ears or operations: "had a weak face", "were followed by a weak face". */
export function happenedIn(
  { unit, outcome }: { readonly unit: CountUnit; readonly outcome: OutcomeCode },
  events: number,
  wording: OddsWording,
): string {
  const words = wording.outcomes[outcome]
  if (unit === 'animal') return words.animals
  const verb = words.during ? 'met-with' : events <= 1 ? 'was-followed-by' : 'were-followed-by'
  return fill(wording.sentences[verb], { what: words.operated })
}

function groupWords({ row, count }: PublishedCount, wording: OddsWording): string {
  if (row.species === 'mixed') throw new Error(`${row.study}: dogs and cats together cannot be said.`)
  const group = wording.groups[row.unit][count.total === 1 ? 'one' : 'many']
  const animals = wording.animals[row.species]
  return fill(group, { total: String(count.total), animal: animals.one, animals: animals.many })
}

export function endWords(interval: Interval, wording: OddsWording): { low: string; high: string } {
  const { low, high } = rounded(interval)
  const underOne = interval.low > 0 && low === 0
  return { low: underOne ? wording.sentences['fewer-than-one'] : String(low), high: String(high) }
}

export function perHundred(share: number, wording: OddsWording): string {
  if (share < 0.01) return wording.sentences['fewer-than-one']
  if (share > 0.99 && share < 1) return wording.sentences['more-than-99']
  return fill(wording.sentences.about, { number: String(wholeOfHundred(share)) })
}

/** Cut to twelve digits first, so that 57 of 200 is 28.5 and not a hair less. */
export function wholeOfHundred(share: number): number {
  return Math.round(Number((100 * share).toPrecision(12)))
}

function followUpNote({ row }: PublishedCount, wording: OddsWording): string {
  return row.followed.kind === 'stated'
    ? fill(wording.sentences.followed, { followed: wording.followed[row.followed.text] ?? row.followed.text })
    : wording.sentences['follow-up-not-stated']
}

/** Ears of one animal are alike, so an interval over ears is a little too narrow. */
function bothEarsNote(found: readonly PublishedCount[], wording: OddsWording): string[] {
  const row = found.find((one) => one.row.unit === 'ear' && (one.row.animals ?? Infinity) < one.count.total)?.row
  if (row === undefined || row.species === 'mixed') return []
  return [fill(wording.sentences['both-ears-of-one-animal'], { animals: wording.animals[row.species].many })]
}

/** Whole numbers out of 100. The upper end of a bound is never rounded down to "cannot happen". */
export function rounded({ low, high }: Interval): { low: number; high: number } {
  const up = low === 0 ? Math.ceil(100 * high) : Math.max(1, wholeOfHundred(high))
  return { low: high === 1 ? Math.floor(100 * low) : wholeOfHundred(low), high: up }
}
