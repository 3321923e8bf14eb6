import { z } from 'zod'
import { InputError, readInput } from '#actions/input.ts'
import type { Clock, Store } from '#actions/store.ts'
import { type EntryRefusal, readEntry } from '#core/journal/accept.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { Entry, Envelope } from '#core/journal/entry.ts'
import { never } from '#core/outcome/outcome.ts'

const inputSchema = z.strictObject({
  clinic: z.string().min(1).max(80),
  /** Read one by one below, so that a refusal names the entry and the field. */
  entries: z.array(z.unknown()).min(1).max(1_000),
})

/** What became of one entry. `already` and `accepted` both mean: it is on disk. */
export type EntryAnswer =
  | { readonly id: string; readonly outcome: 'accepted'; readonly envelope: Envelope }
  | { readonly id: string; readonly outcome: 'already' | 'kept-aside' }
  | { readonly id: string; readonly outcome: 'refused'; readonly refusal: EntryRefusal }

/**
 * Accepts entries of one clinic, in the order given. All are read before any is written: one that cannot be read
 * throws an InputError and nothing is kept. Returns after every accepted entry is on disk.
 */
export async function acceptEntries(
  input: unknown,
  { store, clock }: { readonly store: Store; readonly clock: Clock },
): Promise<EntryAnswer[]> {
  const { clinic: given, entries } = readInput(inputSchema, input)
  // As it will stand in the entries' canonical bytes.
  const clinic = given.normalize('NFC')
  const read = entries.map((entry, at) => readOne(entry, at, clinic))
  const acceptances = await store.accept(clinic, read, clock.now())
  return acceptances.map((acceptance): EntryAnswer => {
    const { id, outcome } = acceptance
    switch (outcome) {
      case 'accepted':
        return { id, outcome, envelope: acceptance.stored.envelope }
      case 'already':
      case 'kept-aside':
        return { id, outcome }
      case 'refused':
        return { id, outcome, refusal: acceptance.refusal }
      default:
        return never(outcome)
    }
  })
}

function readOne(input: unknown, at: number, clinic: string): Entry {
  const place = `entries[${at}]`
  const result = readEntry(input)
  if (result.kind === 'refusal') {
    const { because, path, message } = result.refusal
    throw new InputError(because, path === '' ? place : `${place}.${path}`, message)
  }
  const entry = result.answer
  if (entry.clinic.normalize('NFC') !== clinic) {
    throw new InputError(
      'other-clinic',
      `${place}.clinic`,
      `The entry belongs to clinic ${entry.clinic}, not ${clinic}.`,
    )
  }
  refuseOtherBytes(input, entry, place)
  return entry
}

/** What is kept must be, byte for byte, what the device wrote: a field that reading dropped would change the hash. */
function refuseOtherBytes(input: unknown, entry: Entry, place: string): void {
  let same: boolean
  try {
    same = canonical(input as Json) === canonical(entry as unknown as Json)
  } catch (error) {
    throw new InputError('not-an-entry', place, (error as Error).message)
  }
  if (same) return
  throw new InputError('not-an-entry', place, 'It holds a field that no entry has; leave it out or update this server.')
}
