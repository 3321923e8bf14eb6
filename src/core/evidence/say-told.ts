import { fill } from '../outcome/finding.ts'
import type { Interval } from '../stats/proportion-interval.ts'
import type { PublishedQuestion } from './published.ts'
import { type QuotedWording, sayQuoted } from './quoted.ts'
import {
  endWords,
  happenedIn,
  type OddsWording,
  perHundred,
  rounded,
  type SaidOdds,
  sayPublished,
  wholeOfHundred,
} from './say-published.ts'
import type { CountUnit } from './study.ts'
import { answeringCounts, type Expected, middleOf, type Told } from './told.ts'

export type ToldSentence =
  | 'framing'
  | 'expected'
  | 'updated'
  | 'one-study'
  | 'studies'
  | 'own-shown'
  | 'own-none'
  | 'own-withheld'
  | 'own-lost'
  | 'own-alone'
  | 'own-alone-none'
  | 'own-too-few'
  | 'own-untrusted'

/** The words of one language; content/wording holds them. */
export type ToldWording = {
  readonly sentences: Record<ToldSentence, string>
  /** After "Of 100 …": the whole that is spoken of. */
  readonly groups: Record<CountUnit, string>
  /** After "about 74 …". */
  readonly not: Record<'animals' | 'operated' | 'during', string>
  readonly quoted: QuotedWording
}

/** The words of both: what studies say, and what is said together with our own. */
export type AllOddsWording = { readonly odds: OddsWording; readonly told: ToldWording }

/** What an owner hears, with our own results beside it. */
export type SaidTold = SaidOdds & {
  /** Sentences about our own results; none while nothing of ours is approved. */
  readonly own: readonly string[]
}

/**
 * Turns what is known into sentences: out of 100, both framings, the range in words, and our own n always named.
 *
 * @example sayTold(toldOf(question, about), { odds: oddsInEnglish, told: toldInEnglish }).sentence
 */
export function sayTold(told: Told, wording: AllOddsWording): SaidTold {
  const { published, updated, expected } = told
  const base = sayPublished(published, wording.odds)
  const own = ownSentences(told, wording)
  if (updated?.trusted && expected) {
    const figure = { middle: updated.mean, interval: updated.interval }
    const sentence = togetherSentence(told, 'updated', figure, wording)
    return { ...base, ...said(figure), sentence, lines: linesOf(told, wording), own }
  }
  switch (published.kind) {
    case 'several-studies':
      return expected ? { ...base, ...expectation(told, expected, wording), own } : { ...base, own }
    case 'one-study':
      return {
        ...base,
        sentence: `${base.sentence} ${framing(published.found.share, published.question, wording)}`,
        own,
      }
    default:
      return { ...base, sentence: [base.sentence, ...sayQuoted(told.quoted, wording.told.quoted)].join(' '), own }
  }
}

type Figure = { readonly middle: number; readonly interval: Interval }

/**
 * Before anybody counted here the middle is the median: with few studies the mean lies beyond all of them, drawn there by
 * how far a clinic may be from them.
 */
function expectation(told: Told, { predictive }: Expected, wording: AllOddsWording) {
  const { median, interval } = middleOf(predictive.distribution)
  const figure = { middle: median, interval }
  return { ...said(figure), sentence: togetherSentence(told, 'expected', figure, wording) }
}

function said({ middle, interval }: Figure) {
  return { middle: wholeOfHundred(middle), ...rounded(interval) }
}

/** Every study by itself, so that what was joined can be seen apart. */
function linesOf({ published }: Told, wording: AllOddsWording): readonly string[] {
  const base = sayPublished(published, wording.odds)
  return published.kind === 'one-study' ? [base.sentence] : base.lines
}

function togetherSentence(
  { published, own, expected }: Told,
  which: 'expected' | 'updated',
  { middle, interval }: Figure,
  wording: AllOddsWording,
): string {
  const { odds, told } = wording
  const { question } = published
  const shares = answeringCounts(published).map(({ share }) => share)
  const studies = expected?.studies ?? 0
  return fill(told.sentences[which], {
    group: groupOf(question, wording),
    middle: perHundred(middle, odds),
    rest: perHundred(1 - middle, odds),
    happened: happenedIn(question, 2, odds),
    not: notWords(question, wording),
    number: String(studies),
    studies: fill(told.sentences[studies === 1 ? 'one-study' : 'studies'], { number: String(studies) }),
    total: String(expected?.total ?? 0),
    own: String(own?.total ?? 0),
    lowest: perHundred(Math.min(...shares), odds),
    highest: perHundred(Math.max(...shares), odds),
    ...endWords(interval, odds),
  })
}

function framing(share: number, question: PublishedQuestion, wording: AllOddsWording): string {
  return fill(wording.told.sentences.framing, {
    rest: perHundred(1 - share, wording.odds),
    not: notWords(question, wording),
  })
}

/** Our own count beside the number: shown, or only how many there are, or how high it could be when nobody had it. */
function ownSentences({ own, ownRate, updated, published }: Told, wording: AllOddsWording): string[] {
  if (!own || own.total + own.lost === 0) return []
  const { odds, told } = wording
  const { question } = published
  const about = {
    total: String(own.total),
    events: String(own.events),
    group: groupOf(question, wording),
    happened: happenedIn(question, own.events, odds),
    lost: String(own.lost),
  }
  const alone = published.kind === 'unknown'
  const untrusted = updated && !updated.trusted ? [fill(told.sentences['own-untrusted'], about)] : []
  const lost = own.lost > 0 ? [fill(told.sentences['own-lost'], about)] : []
  switch (ownRate.kind) {
    case 'nobody':
      return lost
    case 'none-yet': {
      const high = String(Math.ceil(100 * ownRate.upTo))
      const none = { ...about, happened: happenedIn(question, 1, odds), high }
      return [fill(told.sentences[alone ? 'own-alone-none' : 'own-none'], none), ...lost, ...untrusted]
    }
    case 'withheld': {
      const few = fill(told.sentences[alone ? 'own-too-few' : 'own-withheld'], { ...about, from: String(ownRate.from) })
      return [few, ...lost, ...untrusted]
    }
    case 'shown': {
      const ends = { middle: perHundred(ownRate.share, odds), ...endWords(ownRate.interval, odds) }
      return [fill(told.sentences[alone ? 'own-alone' : 'own-shown'], { ...about, ...ends }), ...lost, ...untrusted]
    }
  }
}

function groupOf({ species, unit }: PublishedQuestion, { odds, told }: AllOddsWording): string {
  const { one, many } = odds.animals[species]
  return fill(told.groups[unit], { animal: one, animals: many })
}

function notWords({ unit, outcome }: PublishedQuestion, { odds, told }: AllOddsWording): string {
  if (unit === 'animal') return told.not.animals
  return odds.outcomes[outcome].during ? told.not.during : told.not.operated
}
