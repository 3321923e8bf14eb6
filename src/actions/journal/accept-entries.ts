import { z } from 'zod'
import { defineAction } from '#actions/action.ts'
import { callerIn } from '#actions/caller.ts'
import { InputError } from '#actions/input.ts'
import { refuseForeignAuthors } from '#actions/people/authorship.ts'
import { staffOf } from '#actions/people/caller.ts'
import { latenessAt } from '#actions/people/late.ts'
import type { Acceptance } from '#actions/store.ts'
import { entryRefusals, readEntry } from '#core/journal/accept.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { Entry, Envelope } from '#core/journal/entry.ts'
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
 * Accepts entries of the caller's clinic, in the order given. All are read before any is written: one that cannot be
 * read, or that its author may not write, is refused by throwing and nothing is kept. Returns after every accepted
 * entry is on disk. What was written after its author's session had ended is accepted, and marked late.
 */
export const acceptEntries = defineAction({
  name: 'accept-entries',
  summary: 'Accepts entries of the clinic, in the order given, and returns when they are on disk.',
  input,
  output: z.object({ entries: z.array(entryAnswer) }),
  may: 'signed-in',
  // Each entry names its author; who acts at the device just now decides nothing.
  ofDevice: true,
  largest,
  run: async ({ clinic: given, entries }, world) => {
    const { store, accounts, clock } = world
    const { caller, clinic } = callerIn(world)
    // As it will stand in the entries' canonical bytes.
    refuseOtherClinic(given, clinic, 'clinic')
    const read = entries.map((entry, at) => readOne(entry, at, clinic))
    await refuseForeignAuthors(read, caller, await staffOf(store, clinic), { store, accounts, clinic })
    const lateOf = await latenessAt(world, clinic, caller.device, read)
    const answers: EntryAnswer[] = []
    for (const { late, run } of runsOf(read, lateOf)) {
      answers.push(...(await store.accept(clinic, run, clock.now(), late)).map(answerOf))
    }
    return { entries: answers }
  },
  conflict: ({ entries }) => entries.some(({ outcome }) => outcome === 'kept-aside' || outcome === 'refused'),
})

type Run = { readonly late: Envelope['late']; readonly run: Entry[] }

/** Late and timely entries in turn: the store takes each run in one go, in the order given. */
function runsOf(entries: readonly Entry[], lateOf: (entry: Entry) => Envelope['late']): Run[] {
  const runs: Run[] = []
  for (const entry of entries) {
    const late = lateOf(entry)
    const last = runs.at(-1)
    if (last?.late === late) last.run.push(entry)
    else runs.push({ late, run: [entry] })
  }
  return runs
}

function refuseOtherClinic(given: string, clinic: string, path: string): void {
  if (given.normalize('NFC') === clinic) return
  throw new InputError('other-clinic', path, `The entry belongs to clinic ${given}, not ${clinic}.`)
}

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
  refuseOtherClinic(entry.clinic, clinic, `${place}.clinic`)
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
