import type { Species } from '#core/animal/species.ts'
import type { OwnOutcome } from '#core/evidence/own/own-outcome.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { Period, Span } from '#core/time/calendar-day.ts'

/** Stands last among the answers of every question that has answers to choose from, and never means "no". */
export const cannotTell = 'cannot-tell'

/** When owners are asked, counted from the operation. */
export const occasionIds = ['early-home', 'month-3', 'month-6', 'month-12'] as const
export type OccasionId = (typeof occasionIds)[number]

/** What an owner may report that somebody of the house has to act on. */
export const reportIds = [
  'swelling',
  'swelling-gone',
  'discharge',
  'discharge-gone',
  'wound-open',
  'touch-hurts',
  'mouth-hurts',
  'eye-open',
  'eye-sore',
  'head-tilt',
  'not-eating',
  'medicines-missed',
  'ear-worse',
  'treated-elsewhere',
] as const
export type ReportId = (typeof reportIds)[number]

/** One question, one idea. Its sentences stand in the wording, under its id. */
export type Question = {
  readonly id: string
  /** `ear`: asked once for each operated ear, with the side in words. */
  readonly about: 'ear' | 'animal'
  readonly species: readonly Species[]
  /** Empty for a question that is answered in the owner's own words. */
  readonly choices: readonly string[]
  /** Which answers somebody of the house has to act on. */
  readonly reports: Readonly<Record<string, ReportId>>
  /** Answers that ask to be phoned. */
  readonly asksForCall: readonly string[]
  /** Outcomes of which the answer may be a first hint. Empty: it is asked for another reason. */
  readonly informs: readonly OwnOutcome[]
}

/** One edition of a list of questions, as it was given out: it never changes afterwards. */
export type Questionnaire = Provenance & {
  readonly id: string
  readonly edition: string
  readonly questions: readonly Question[]
}

/** One time of asking: with which questions, and in which window after the operation. */
export type Occasion = {
  readonly id: OccasionId
  readonly questionnaire: string
  readonly edition: string
  /** The window of a step of the follow-up, which the house may set; or one of its own. */
  readonly when:
    | { readonly kind: 'step'; readonly step: 'recheck-3-months' | 'recheck-6-months' | 'twelve-months' }
    | { readonly kind: 'own'; readonly window: Sourced<Span> }
  /** Asked on after its window, as long as nobody has answered. */
  readonly stillAsked: boolean
  /** Under which word the tries to reach the owner are written down. */
  readonly triesAbout: 'check' | 'twelve-months'
}

/** What is done about one report of an owner: who hears it is phoned, and whether a look is owed as well. */
export type ReportRule = {
  readonly call: Sourced<Period>
  /** Null where a talk is enough. */
  readonly look: Sourced<Period> | null
  /** The owner is told to phone at once and not to wait for us. */
  readonly phoneNow: boolean
  /** What may be written down as a late event: offered, never written by itself. */
  readonly offers: 'swelling' | 'draining-tract' | 'jaw-pain' | null
}

export type QuestionRules = {
  readonly all: readonly Questionnaire[]
  readonly occasions: readonly Occasion[]
  readonly reports: Readonly<Record<ReportId, ReportRule>>
  /** What an owner wrote in words, or asked to be phoned about, is read and answered. */
  readonly answeredWithin: Sourced<Period>
}

/**
 * The questionnaire of that name and edition; undefined for one that this program does not know.
 *
 * @example questionnaireOf(rules, 'twelve-months', '1')?.questions.length
 */
export function questionnaireOf(
  { all }: Pick<QuestionRules, 'all'>,
  id: string,
  edition: string,
): Questionnaire | undefined {
  return all.find((one) => one.id === id && one.edition === edition)
}

/**
 * The questions that fit a species, in their order.
 *
 * @example questionsFor(questionnaire, 'cat').map(({ id }) => id)
 */
export function questionsFor({ questions }: Questionnaire, species: Species): Question[] {
  return questions.filter((question) => question.species.includes(species))
}
