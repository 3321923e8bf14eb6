import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { bodyHashOf, type Entry, entryHash, entrySchema, type Header, headerOf } from './entry.ts'
import { kindNamed } from './fold.ts'

export type EntryRefusal = {
  readonly because: 'not-an-entry' | 'wrong-body' | 'wrong-subject' | 'reason-missing' | 'cycle'
  /** The field, dotted. */
  readonly path: string
  readonly message: string
}

/**
 * Reads one entry at the door. A known kind must fit its schema; a kind or version from a newer program is kept as
 * it is. Withdrawing, superseding and refiling need a reason.
 */
export function readEntry(input: unknown): Outcome<Entry, EntryRefusal> {
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
  // A body of an older version is taken as it is: it was checked when it was written, and is read through upcasters.
  if (entry.version < kind.version) return answer(entry)
  const body = kind.body.safeParse(entry.body)
  if (!body.success) return refuse(refusalFrom('wrong-body', 'body', body.error.issues))
  return answer(entry)
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
    queue.push(...targetsOf(id))
  }
  return false
}

/** True when the entry is, byte for byte, the one already stored under its id. */
export function sameEntry(entry: Entry, stored: { readonly header: Header; readonly bodyHash: string }): boolean {
  return entryHash(headerOf(entry), bodyHashOf(entry)) === entryHash(stored.header, stored.bodyHash)
}
