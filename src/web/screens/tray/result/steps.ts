import type { Attachment } from '../../../journal/take-in.ts'

/** How a report ended here: in a case, or in the tray. */
export type Ended =
  | { readonly kind: 'filed'; readonly stream: string; readonly said: string }
  | { readonly kind: 'held' }

/** How a report came, and what of the tray it is. */
export type Came = {
  readonly file: Attachment
  readonly came: 'table' | 'hl7' | 'pasted'
  readonly arrived: string | null
}
