import { canonical, hashText, type Json } from './canonical.ts'
import {
  bodyHashOf,
  correctedInstant,
  type Entry,
  type Envelope,
  entryHash,
  headerOf,
  type StoredEntry,
} from './entry.ts'

type Place = {
  readonly position: number
  readonly sequence: number
  readonly receivedAt: string
  readonly previous: string | null
  readonly late?: Envelope['late']
}

/**
 * Seals an entry into its stream: the envelope's hash covers the entry's header, the hash of its body, and
 * everything else in the envelope including the hash before, so that no byte of history can change unseen.
 */
export function seal(entry: Entry, place: Place): StoredEntry {
  const header = headerOf(entry)
  const bodyHash = bodyHashOf(entry)
  const corrected = correctedInstant(entry)
  const open = {
    position: place.position,
    sequence: place.sequence,
    receivedAt: place.receivedAt,
    correctedAt: corrected.at,
    orderCertain: corrected.certain,
    late: place.late ?? null,
    previous: place.previous,
  }
  return {
    header,
    body: entry.body,
    bodyHash,
    envelope: { ...open, hash: envelopeHash(open, entryHash(header, bodyHash)) },
    erased: null,
  }
}

/** Seals entries one after the other from position 1, each into its stream; `receivedAt` says when each arrived. */
export function sealAll(entries: readonly Entry[], receivedAt: (entry: Entry, place: number) => string): StoredEntry[] {
  const heads = new Map<string, Envelope>()
  return entries.map((entry, place) => {
    const head = heads.get(entry.stream)
    const sequence = (head?.sequence ?? 0) + 1
    const previous = head?.hash ?? null
    const stored = seal(entry, { position: place + 1, sequence, previous, receivedAt: receivedAt(entry, place) })
    heads.set(entry.stream, stored.envelope)
    return stored
  })
}

function envelopeHash(open: Omit<Envelope, 'hash'>, sealed: string): string {
  return hashText(canonical({ ...open, entry: sealed } as unknown as Json))
}

export type Break = {
  readonly entry: string
  readonly stream: string
  readonly position: number
  readonly because:
    | 'body-changed'
    | 'header-or-envelope-changed'
    | 'chain-broken'
    | 'sequence-gap'
    | 'position-gap'
    | 'erased-without-order'
}

/**
 * Walks the hash chains of all streams in order of position and returns the first break, or undefined when every
 * entry verifies. An erased body is no break: its hash stands in the chain.
 */
export function firstBreak(entries: readonly StoredEntry[]): Break | undefined {
  const walk = new ChainWalk()
  for (const stored of entries) {
    const found = walk.next(stored)
    if (found) return found
  }
  return walk.finish()
}

/** The same walk one entry at a time, so that a journal of any length is verified as a stream. */
export class ChainWalk {
  readonly #heads = new Map<string, Envelope>()
  readonly #erased = new Map<string, Break>()
  readonly #ordered = new Set<string>()
  #position = 0

  next(stored: StoredEntry): Break | undefined {
    const { header, envelope } = stored
    const broken = (because: Break['because']): Break => ({
      entry: header.id,
      stream: header.stream,
      position: envelope.position,
      because,
    })
    if (envelope.position !== this.#position + 1) return broken('position-gap')
    // A body may itself be null (a kind from a newer program): only the erased mark says that it was taken away.
    if (!bodyStands(stored)) return broken('body-changed')
    const { hash, ...open } = envelope
    if (envelopeHash(open, entryHash(header, stored.bodyHash)) !== hash) return broken('header-or-envelope-changed')
    const head = this.#heads.get(header.stream)
    if (envelope.sequence !== (head?.sequence ?? 0) + 1) return broken('sequence-gap')
    if (envelope.previous !== (head?.hash ?? null)) return broken('chain-broken')
    if (stored.erased !== null) this.#erased.set(header.id, broken('erased-without-order'))
    if (header.kind === 'erasure') this.#ordered.add(erasedBy(stored.body))
    this.#heads.set(header.stream, envelope)
    this.#position = envelope.position
    return undefined
  }

  /** After the last entry: an erased body needs an erasure entry that names it. */
  finish(): Break | undefined {
    return [...this.#erased].find(([id]) => !this.#ordered.has(id))?.[1]
  }
}

function bodyStands({ body, bodyHash, erased }: StoredEntry): boolean {
  return erased === null ? hashText(canonical(body)) === bodyHash : body === null
}

/** The id that an erasure entry erases. */
function erasedBy(body: Json | null): string {
  return typeof body === 'object' && body !== null && 'entry' in body ? String(body.entry) : ''
}
