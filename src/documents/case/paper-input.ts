import type { OwnerLanguage } from '#content/languages/index.ts'
import { type NotYetReason, notYetInEnglish } from '#content/wording/papers.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Moment } from '#core/time/moment.ts'
import type { Paper } from '../render/model.ts'

/** Something somebody still owes, as far as a letter needs it. */
export type OwedLine = {
  readonly id: string
  readonly what: string
  readonly who: string
  readonly dueFrom: string
  readonly dueBy: string
  readonly why: string
}

/** All that a paper is made from. Nothing else is looked up, and the date printed is this one. */
export type PaperInput = {
  readonly file: CaseFile
  readonly on: Moment
  /** The operation a paper is about, when it is about one. */
  readonly operation: string | null
  readonly owed: readonly OwedLine[]
  /** The planned lines of that operation judged again; null when nobody judged them. */
  readonly doses: DoseResult | null
  /** Asked for in place of the language of the household, for the papers of the owner; the others are in English. */
  readonly language?: OwnerLanguage
}

/** The case has not come so far; the reason in words. */
export type NotYet = { readonly kind: 'not-yet'; readonly because: string }

export type PaperDefinition = {
  readonly id: string
  readonly title: string
  /** `operation`: one for each operation of the case. */
  readonly per: 'case' | 'operation'
  readonly of: (input: PaperInput) => Paper | NotYet
}

export function notYet(reason: NotYetReason): NotYet {
  return { kind: 'not-yet', because: notYetInEnglish[reason] }
}

export function isPaper(made: Paper | NotYet): made is Paper {
  return !('kind' in made)
}
