import { acceptEntries } from './journal/accept-entries.ts'

/** What a person can do with the clinic's data, sorted by name; the server and the command line offer every one. */
export const actions = {
  'accept-entries': acceptEntries,
} as const
