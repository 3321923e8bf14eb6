import type { Action } from './action.ts'
import { acceptEntries } from './journal/accept-entries.ts'

/** What a person can do with the clinic's data, sorted by name; the server offers every one. */
export const actions: readonly Action[] = [acceptEntries]
