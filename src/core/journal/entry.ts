import { z } from 'zod'
import { sides } from '#core/animal/species.ts'
import { isZone, precisions } from '#core/time/moment.ts'
import { canonical, hashText, type Json } from './canonical.ts'

/** An instant in UTC with milliseconds, exactly as the journal writes it. */
export const instantSchema = z
  .string()
  .regex(
    /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/,
    'must be UTC with milliseconds, like 2026-03-01T08:00:00.000Z',
  )
  .refine(isInstant, 'must be a day and time that exist, like 2026-03-01T08:00:00.000Z')

/** False for 30 February or 24:00, which JavaScript would quietly move to another day. */
function isInstant(text: string): boolean {
  const ms = Date.parse(text)
  return !Number.isNaN(ms) && new Date(ms).toISOString() === text
}

/** UUIDs in lower case only: the same id in other letters would be a second entry, or a target that never arrives. */
export const entryIdSchema = z.uuid().regex(/^[^A-Z]*$/, 'must be written in lower-case letters')

export const momentSchema = z.object({
  at: instantSchema,
  zone: z.string().refine(isZone, 'must be an IANA zone, like Europe/London'),
  precision: z.enum(precisions),
  by: z.enum(['clock', 'person']),
})

const id = z
  .string()
  .min(1)
  .max(80)
  .regex(/^\P{Cc}+$/u, 'must hold no control characters')

export const subjectSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('clinic') }),
  z.object({ kind: z.literal('household'), household: id }),
  z.object({ kind: z.literal('animal'), animal: id }),
  z.object({ kind: z.literal('ear'), animal: id, side: z.enum(sides) }),
  z.object({ kind: z.literal('operation'), animal: id, operation: id }),
])
export type Subject = z.infer<typeof subjectSchema>

export const authorSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('person'), person: id }),
  z.object({ kind: z.literal('owner-link'), contact: id }),
  z.object({ kind: z.literal('referring-vet'), contact: id }),
  z.object({ kind: z.literal('import'), from: z.string().min(1) }),
])
export type Author = z.infer<typeof authorSchema>

/** The clock of the device, as it stood when the entry was written. `offset` is server minus device, last measured. */
export const deviceSchema = z.object({
  id,
  boot: id,
  wallClock: instantSchema,
  monotonicMs: z.int().min(0),
  offset: z.object({ ms: z.int(), ageMs: z.int().min(0) }).nullable(),
})

export const attachmentSchema = z.object({
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  mediaType: z.string().min(3),
  bytes: z.int().min(1),
  name: z.string().min(1).max(200),
})

/** More sides than any conflict has; a longer list is a fault of the device and would be walked on every tap. */
const mostTargets = 1_000

const json: z.ZodType<Json> = z.lazy(() =>
  z.union([z.null(), z.boolean(), z.int(), z.string(), z.array(json), z.record(z.string(), json)]),
)

/** One immutable line of the journal, as its author made it. */
export const entrySchema = z.strictObject({
  /** UUID version 7, made on the device; never read as a time. */
  id: entryIdSchema,
  clinic: id,
  /** `clinic`, `tray`, `case:<id>` or `register:<drug>|<strength>|<form>`. */
  stream: z
    .string()
    .max(200)
    .regex(
      /^(clinic|tray|case:[\w.-]+|register:\P{Cc}+)$/u,
      'must be clinic, tray, case:<id> or register:<drug>|<strength>|<form>',
    ),
  subject: subjectSchema,
  kind: z.string().regex(/^[a-z][a-z0-9-]*$/),
  version: z.int().min(1),
  body: json,
  happenedAt: momentSchema,
  writtenAt: instantSchema,
  author: authorSchema,
  device: deviceSchema,
  supersedes: z.array(entryIdSchema).max(mostTargets),
  withdraws: entryIdSchema.nullable(),
  /** Set on the copy in the right place when an entry was filed to the wrong animal. */
  refiledFrom: entryIdSchema.nullable(),
  attachments: z.array(attachmentSchema),
  reason: z.string().min(1).nullable(),
})
export type Entry = z.infer<typeof entrySchema>

/** An entry without its body: what stays, with the body's hash, when the law makes us erase the body. */
export type Header = Omit<Entry, 'body'>

/** What the server adds when it accepts an entry. */
export type Envelope = {
  /** Clinic-wide, from 1 without gaps. */
  readonly position: number
  /** In the stream, from 1 without gaps. */
  readonly sequence: number
  readonly receivedAt: string
  /** happenedAt moved by the device's measured offset; the fold's order. */
  readonly correctedAt: string
  /** False when a device clock gave the time and nobody had measured it: "order uncertain". */
  readonly orderCertain: boolean
  /** Why the entry counts as late already when it was accepted. */
  readonly late: 'session-expired' | null
  /** Hash of the envelope before in the same stream; null for the first. */
  readonly previous: string | null
  readonly hash: string
}

/** An accepted entry as it is stored and exported. `body` is null only when it was erased. */
export type StoredEntry = {
  readonly header: Header
  readonly body: Json | null
  readonly bodyHash: string
  readonly envelope: Envelope
  readonly erased: { readonly on: string; readonly by: string } | null
}

export function headerOf(entry: Entry): Header {
  const { body: _, ...header } = entry
  return header
}

export function bodyHashOf(entry: Entry): string {
  return hashText(canonical(entry.body))
}

/** The hash that decides whether two entries with one id are the same: over the header and the hash of the body. */
export function entryHash(header: Header, bodyHash: string): string {
  return hashText(canonical({ header: header as unknown as Json, bodyHash }))
}

/** The instant that orders an entry: a device's own time moved by its measured offset, a person's time as given. */
export function correctedInstant(entry: Pick<Header, 'happenedAt' | 'device'>): { at: string; certain: boolean } {
  const { at, by } = entry.happenedAt
  if (by === 'person') return { at, certain: true }
  const { offset } = entry.device
  if (offset === null) return { at, certain: false }
  const ms = Date.parse(at) + offset.ms
  // An offset that leads out of the years that sort as text is no measurement: the time stands as given, uncertain.
  if (!(ms >= firstInstant && ms <= lastInstant)) return { at, certain: false }
  return { at: new Date(ms).toISOString(), certain: true }
}

const firstInstant = Date.parse('0000-01-01T00:00:00.000Z')
const lastInstant = Date.parse('9999-12-31T23:59:59.999Z')
