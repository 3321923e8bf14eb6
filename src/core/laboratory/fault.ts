import type { Place } from './report.ts'

/** Why something cannot be read. One fault and nothing of the message is taken: half a report is worse than none. */
export const faultCodes = [
  'empty',
  'too-long',
  'begins-with-no-header',
  'delimiters-unreadable',
  'not-a-segment',
  'not-a-result-message',
  'version-unknown',
  'batch-count',
  'observation-without-order',
  'category-in-wrong-field',
  'category-twice',
  'value-type-missing',
  'value-type-unknown',
  'number-unreadable',
  'several-values',
  'date-unreadable',
  'date-two-readings',
  'status-unknown',
  'wrong-patient',
  'entered-in-error',
  'parent-missing',
  'parent-disagrees',
  'isolate-unclear',
  'isolate-twice',
  'drug-twice',
  'unit-disagrees',
  'no-columns',
  'delimiter-unclear',
  'ragged-row',
  'quote-open',
  'column-twice',
  'column-new',
  'column-missing',
  'drug-without-isolate',
  'animals-differ',
  'not-readable-text',
] as const
export type FaultCode = (typeof faultCodes)[number]

export type Fault = { readonly code: FaultCode; readonly found: string; readonly place: Place }

/** Ends the reading of one message from any depth; caught where the message was begun, never seen outside. */
export class Unreadable extends Error {
  readonly fault: Fault

  constructor(code: FaultCode, found: string, place: Partial<Place> & { readonly line: number }) {
    super(code)
    this.fault = { code, found: found.slice(0, 200), place: { segment: null, field: null, ...place } }
  }
}
