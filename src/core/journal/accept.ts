import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { bodyHashOf, type Entry, entryHash, entrySchema, type Header, headerOf } from './entry.ts'
import { kindNamed } from './fold.ts'
import { readableBody } from './kind.ts'

export const entryRefusals = [
  'not-an-entry',
  'wrong-body',
  'wrong-subject',
  'wrong-stream',
  'reason-missing',
  'cycle',
] as const

export type EntryRefusal = {
  readonly because: (typeof entryRefusals)[number]
  /** The field, dotted. */
  readonly path: string
  readonly message: string
}

/**
 * Reads one entry at the door. A known kind must fit its schema; a kind or version from a newer program is kept as
 * it is. Withdrawing, superseding and refiling need a reason.
 */
export function readEntry(input: unknown): Outcome<Entry, EntryRefusal> {
  if (deeperThan(input, deepest)) {
    const message = `An entry may be nested ${deepest} deep at most.`
    return refuse({ because: 'not-an-entry', path: 'body', message })
  }
  const parsed = entrySchema.safeParse(input)
  if (!parsed.success) return refuse(refusalFrom('not-an-entry', '', parsed.error.issues))
  const entry = parsed.data
  if (
    (entry.withdraws !== null || entry.supersedes.length > 0 || entry.refiledFrom !== null) &&
    entry.reason === null
  ) {
    return refuse({ because: 'reason-missing', path: 'reason', message: 'A correction or withdrawal says why.' })
  }
  const kind = kindNamed(entry.kind)
  if (!kind || entry.version > kind.version) return answer(entry)
  if (!(kind.subjects as readonly string[]).includes(entry.subject.kind)) {
    const message = `A ${entry.kind} entry is about ${kind.subjects.join(' or ')}, not about ${entry.subject.kind}.`
    return refuse({ because: 'wrong-subject', path: 'subject', message })
  }
  // A body of an older version stays as it was written, but it must be one that its upcasters can read.
  const body = kind.body.safeParse(readableBody(kind, entry.version, entry.body))
  if (!body.success) return refuse(refusalFrom('wrong-body', 'body', body.error.issues))
  return answer(entry)
}

/** Deeper than any body of ours; what is read by recursion later must not be able to exhaust it. */
const deepest = 100

function deeperThan(input: unknown, depth: number): boolean {
  let level: unknown[] = [input]
  for (let at = 0; level.length > 0; at += 1) {
    if (at > depth) return true
    level = level
      .filter((value) => typeof value === 'object' && value !== null)
      .flatMap((value) => Object.values(value as object))
  }
  return false
}

type Issue = { readonly path: readonly PropertyKey[]; readonly message: string }

function refusalFrom(because: EntryRefusal['because'], at: string, issues: readonly Issue[]): EntryRefusal {
  const issue = issues[0]
  const path = [at, ...(issue?.path.map(String) ?? [])].filter((step) => step !== '').join('.')
  return { because, path, message: issue?.message ?? 'cannot be read' }
}

/** True when accepting `entry` would close a ring of entries that supersede or withdraw each other. */
export function closesRing(entry: Entry, targetsOf: (id: string) => readonly string[]): boolean {
  const seen = new Set<string>()
  const queue = [...entry.supersedes, ...(entry.withdraws === null ? [] : [entry.withdraws])]
  while (queue.length > 0) {
    const id = queue.pop() as string
    if (id === entry.id) return true
    if (seen.has(id)) continue
    seen.add(id)
    for (const target of targetsOf(id)) queue.push(target)
  }
  return false
}

/** True when the entry is, byte for byte, the one already stored under its id. */
export function sameEntry(entry: Entry, stored: { readonly header: Header; readonly bodyHash: string }): boolean {
  return entryHash(headerOf(entry), bodyHashOf(entry)) === entryHash(stored.header, stored.bodyHash)
}
