import type { CaseFile } from '#core/journal/clinic.ts'
import type { Moment } from '#core/time/moment.ts'
import type { Asked } from './asked.ts'
import type { OwnerPageWords } from './words.ts'

/** Everything the owner's page is made from. */
export type OwnerPageInput = {
  readonly file: CaseFile
  readonly on: Moment
  readonly contact: string
  readonly use: 'private' | 'in-room'
  readonly until: Moment
  readonly asked: Asked
  readonly words: OwnerPageWords
  /** The id under which what is sent from this page is kept: sent twice it is kept once. */
  readonly entry: string
}
