import { z } from 'zod'
import { defineAction } from '#actions/action.ts'
import { InputError } from '#actions/input.ts'
import type { Acceptance } from '#actions/store.ts'
import { entryRefusals, readEntry } from '#core/journal/accept.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { Entry } from '#core/journal/entry.ts'
import { never } from '#core/outcome/outcome.ts'

const input = z.strictObject({
  clinic: z.string().min(1).max(80),
  /** Read one by one below, so that a refusal names the entry and the field. */
  entries: z
    .array(z.unknown().meta({ $ref: '#/components/schemas/Entry' }))
    .min(1)
    .max(1_000),
})

const id = z.string()
const envelope = z.object({
  position: z.int(),
  sequence: z.int(),
  receivedAt: z.string(),
  correctedAt: z.string(),
  orderCertain: z.boolean(),
  late: z.enum(['session-expired']).nullable(),
  previous: z.string().nullable(),
  hash: z.string(),
})
const refusal = z.object({ because: z.enum(entryRefusals), path: z.string(), message: z.string() })

/** What became of one entry. `already` and `accepted` both mean: it is on disk. */
const entryAnswer = z.discriminatedUnion('outcome', [
  z.object({ id, outcome: z.literal('accepted'), envelope }),
  z.object({ id, outcome: z.literal('already') }),
  z.object({ id, outcome: z.literal('kept-aside') }),
  z.object({ id, outcome: z.literal('refused'), refusal }),
])
export type EntryAnswer = z.infer<typeof entryAnswer>

const largest = 8 * 1024 * 1024

/**
 * Accepts entries of one clinic, in the order given. All are read before any is written: one that cannot be read
 * throws an InputError and nothing is kept. Returns after every accepted entry is on disk.
 */
export const acceptEntries = defineAction({
  name: 'accept-entries',
  summary: 'Accepts entries of one clinic, in the order given, and returns when they are on disk.',
  input,
  output: z.object({ entries: z.array(entryAnswer) }),
  may: 'anyone',
  largest,
  run: async ({ clinic: given, entries }, { store, clock }) => {
    // As it will stand in the entries' canonical bytes.
    const clinic = given.normalize('NFC')
    const read = entries.map((entry, at) => readOne(entry, at, clinic))
    const acceptances = await store.accept(clinic, read, clock.now())
    return { entries: acceptances.map(answerOf) }
  },
  conflict: ({ entries }) => entries.some(({ outcome }) => outcome === 'kept-aside' || outcome === 'refused'),
})

function answerOf(acceptance: Acceptance): EntryAnswer {
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
