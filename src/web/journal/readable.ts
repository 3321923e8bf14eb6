import {
  attachmentSchema,
  authorSchema,
  deviceSchema,
  type Entry,
  momentSchema,
  subjectSchema,
} from '#core/journal/entry.ts'
import { kindNamed } from '#core/journal/fold.ts'
import { readableBody } from '#core/journal/kind.ts'
import type { Waiting, WaitingRow } from './database.ts'

/** What stands in a store of this device under a key, and whether this program can read it. */
export type Found = { readonly key: string; readonly value: unknown }

/** Something kept on this device that this program cannot read: it is shown as its text, and never sent or dropped by itself. */
export type Unreadable = { readonly store: 'outbox' | 'rows'; readonly key: string; readonly text: string }

type Fields = Readonly<Record<string, unknown>>

/**
 * Whether an entry that was kept has everything that this program reads of it, in the shape it reads. Whether its
 * answers are right is the server's to say: it refuses with a reason, and the form of the kind corrects them.
 */
export function isWaiting(value: unknown): value is Waiting & { readonly order: number } {
  if (!isFields(value) || !hasState(value) || typeof value.order !== 'number') return false
  const { entry } = value
  if (!isFields(entry) || entry.body === undefined) return false
  const texts = [entry.id, entry.clinic, entry.stream, entry.kind].every((one) => typeof one === 'string')
  const lists = [entry.supersedes, entry.attachments].every(Array.isArray)
  const reasoned = entry.reason === null || typeof entry.reason === 'string'
  const written = typeof entry.writtenAt === 'string' && !Number.isNaN(Date.parse(entry.writtenAt))
  const shapes = [
    momentSchema.safeParse(entry.happenedAt),
    subjectSchema.safeParse(entry.subject),
    authorSchema.safeParse(entry.author),
    deviceSchema.safeParse(entry.device),
    attachmentSchema.array().safeParse(entry.attachments),
  ].every(({ success }) => success)
  return texts && lists && reasoned && written && shapes && hasShapeOfKind(entry as Entry)
}

/** One answer too many, too large or of another list is still read in words; a number where words should be is not. */
const readableFaults: readonly string[] = [
  'unrecognized_keys',
  'invalid_value',
  'invalid_format',
  'too_small',
  'too_big',
  'not_multiple_of',
  'custom',
]

/** A kind or version that this program does not know is shown as such, whatever its answers. */
function hasShapeOfKind({ kind: name, version, body }: Entry): boolean {
  const kind = kindNamed(name)
  const known = kind && readableBody(kind, version, body)
  if (!kind || known === undefined) return true
  const { success, error } = kind.body.safeParse(known)
  return success || error.issues.every(({ code }) => readableFaults.includes(code))
}

/** The same for a row of a register. */
export function isWaitingRow(value: unknown): value is WaitingRow {
  if (!isFields(value) || !hasState(value)) return false
  const { id, by, register, body } = value
  if (![id, by, register].every((one) => typeof one === 'string') || !isFields(body)) return false
  const lines = [body.practice, body.phone, body.email].every((one) => one === null || typeof one === 'string')
  const address = Array.isArray(body.address) && body.address.every((one) => typeof one === 'string')
  return typeof body.name === 'string' && lines && address
}

/** Whatever it is, as text that a person can take away. */
export function textOf(value: unknown): string {
  try {
    return JSON.stringify(value, null, 2) ?? String(value)
  } catch {
    return isFields(value)
      ? Object.entries(value)
          .map(([key, part]) => `${key}: ${part}`)
          .join('\n')
      : String(value)
  }
}

function hasState({ state, because }: Fields): boolean {
  return ['waiting', 'sign-in', 'refused'].includes(String(state)) && (because === null || typeof because === 'string')
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
