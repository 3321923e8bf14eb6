import type { Asking } from '#core/questionnaire/askings.ts'
import type { QuestionRules } from '#core/questionnaire/questionnaire.ts'
import type { LinkInput } from '../owner-link/destinations.ts'

/** What was sent and could not be kept as it was; it stands in the form again. */
export type Spoilt = {
  readonly because: 'nothing' | 'too-long' | 'not-kept'
  readonly picked: (field: string) => string | null
}

/** Everything the page of the questions is made from. */
export type QuestionsInput = LinkInput & {
  /** Every time of asking of this animal, oldest first. */
  readonly askings: readonly Asking[]
  /** Which of them this page is about; null when there is none. */
  readonly asking: Asking | null
  readonly rules: QuestionRules
  /** The answers that were sent are opened again to change them. */
  readonly changing: boolean
  readonly done: 'sent' | 'saved' | null
  readonly spoilt: Spoilt | null
  /** Names what is kept of this link on the phone; never the token. */
  readonly link: string
  /** The id under which what is sent from this page is kept: sent twice it is kept once. */
  readonly entry: string
}

/** The longest text that is kept. An owner who needs more is better phoned. */
export const mostLetters = 4_000
