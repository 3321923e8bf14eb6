import type { z } from 'zod'
import type { Json } from './canonical.ts'
import { compareText } from './compare-text.ts'
import { correctedInstant, type Entry, type Envelope, type Header, headerOf, type StoredEntry } from './entry.ts'
import { readableBody } from './kind.ts'
import { kinds } from './kinds/index.ts'
import { isLive, type Revision, settleRevisions, treeOf } from './revisions.ts'

type KnownKind = (typeof kinds)[number]
export type KindName = KnownKind['name']
export type BodyOf<Name extends KindName> = z.infer<Extract<KnownKind, { name: Name }>['body']>

const registry: ReadonlyMap<string, KnownKind> = new Map(kinds.map((kind) => [kind.name, kind]))

export function kindNamed(name: string): KnownKind | undefined {
  return registry.get(name)
}

/** An entry as the fold sees it: accepted, or still only on this device (no envelope yet). */
export type Line<Body = Json | null> = {
  /** As written, but its moment is corrected by the clock of its device: `happenedAt.at` is `at`. */
  readonly header: Header
  /** Brought to today's version of its kind; null when erased. */
  readonly body: Body
  readonly envelope: Envelope | null
  readonly at: string
  readonly orderCertain: boolean
  readonly state: 'live' | 'superseded' | 'withdrawn'
  readonly supersededBy: readonly string[]
  readonly withdrawnBy: readonly string[]
  readonly known: boolean
  readonly erased: boolean
  readonly late: 'session-expired' | 'operation-finished' | 'written-later' | null
}

export type Conflict = {
  readonly because: 'same-target' | 'same-key' | 'cycle'
  readonly kind: string
  readonly key: string | null
  /** Ids of the live entries that stand side by side until a person settles it. */
  readonly between: readonly string[]
}

/**
 * The case as its entries make it: every line in the order (corrected happenedAt, id), and what a reader asks of it.
 * `live(kind)` gives the entries that count; `history` gives all, also superseded and withdrawn ones.
 */
export type Case = {
  readonly lines: readonly Line[]
  live<Name extends KindName>(kind: Name): readonly Line<BodyOf<Name>>[]
  latest<Name extends KindName>(kind: Name): Line<BodyOf<Name>> | undefined
  line(id: string): Line | undefined
  readonly conflicts: readonly Conflict[]
  /** Entries whose target has not arrived yet, with the missing ids. */
  readonly pending: readonly { readonly entry: string; readonly missing: readonly string[] }[]
  /** Entries of a kind or version this code does not know: kept, shown as such. */
  readonly unknown: readonly Line[]
}

type Node = Revision & {
  readonly raw: Json | null
  readonly envelope: Envelope | null
  readonly erased: boolean
  readonly at: string
  readonly certain: boolean
}

export type Foldable = StoredEntry | Entry

/**
 * Folds entries into the case. Pure; the same entries give the same case whatever the order of arrival, and an
 * entry given twice counts once.
 */
export function fold(entries: readonly Foldable[]): Case {
  const nodes = arrange(entries)
  const byId = new Map(nodes.map((node) => [node.header.id, node]))
  const pending = settleRevisions(nodes, byId)
  const finished = operationsFinished(nodes)
  const lines = nodes.map((node) => lineOf(node, finished))
  return new FoldedCase(lines, pending, [...cycles(nodes), ...conflictsOf(nodes, byId, lines)])
}

/**
 * One entry by itself, for reading its own words whatever else is known under its id.
 *
 * @example lineOfOne(entry).body // as the entry says it
 */
export function lineOfOne(entry: Foldable): Line {
  return lineOf(nodeOf(entry), new Map())
}

function nodeOf(entry: Foldable): Node {
  const stored = 'envelope' in entry
  const header = stored ? entry.header : headerOf(entry)
  const corrected = stored
    ? { at: entry.envelope.correctedAt, certain: entry.envelope.orderCertain }
    : correctedInstant(entry)
  return {
    header,
    raw: entry.body,
    envelope: stored ? entry.envelope : null,
    erased: stored && entry.erased !== null,
    at: corrected.at,
    certain: corrected.certain,
    supersededBy: [],
    withdrawnBy: [],
    cyclic: false,
    withdrawn: false,
    superseded: false,
    carries: true,
  }
}

/** Sorted by (corrected happenedAt, id); an accepted copy wins over an unsent copy of the same entry. */
function arrange(entries: readonly Foldable[]): Node[] {
  const unique = new Map<string, Node>()
  for (const entry of entries) {
    const node = nodeOf(entry)
    const before = unique.get(node.header.id)
    if (!before || (before.envelope === null && node.envelope !== null)) unique.set(node.header.id, node)
  }
  return [...unique.values()].sort((a, b) => compareText(a.at, b.at) || compareText(a.header.id, b.header.id))
}

/** When each operation's summary arrived: what arrives later about that operation is marked late. */
function operationsFinished(nodes: readonly Node[]): ReadonlyMap<string, string> {
  const finished = new Map<string, string>()
  for (const node of nodes) {
    const { subject, kind } = node.header
    if (kind !== 'operation-summary' || subject.kind !== 'operation' || !node.envelope) continue
    const before = finished.get(subject.operation)
    if (!before || node.envelope.receivedAt < before) finished.set(subject.operation, node.envelope.receivedAt)
  }
  return finished
}

const theatreKinds = new Set(['theatre-stamp', 'observation', 'blood-loss', 'count', 'drug-given'])
const writtenLaterMs = 15 * 60_000

function latenessOf(node: Node, finished: ReadonlyMap<string, string>): Line['late'] {
  if (node.envelope?.late) return node.envelope.late
  const { subject, kind, happenedAt, writtenAt } = node.header
  if (subject.kind === 'operation' && theatreKinds.has(kind)) {
    const end = finished.get(subject.operation)
    if (end !== undefined && node.envelope && node.envelope.receivedAt > end) return 'operation-finished'
    const fine = happenedAt.precision === 'minute' || happenedAt.precision === 'second'
    if (fine && Date.parse(writtenAt) - Date.parse(happenedAt.at) > writtenLaterMs) return 'written-later'
  }
  return null
}

function lineOf(node: Node, finished: ReadonlyMap<string, string>): Line {
  const kind = registry.get(node.header.kind)
  const body = kind && node.raw !== null ? readableBody(kind, node.header.version, node.raw) : undefined
  const { happenedAt } = node.header
  return {
    // What is said of it is said in corrected time; as it was written stands in the stored entry.
    header: { ...node.header, happenedAt: { ...happenedAt, at: node.at } },
    body: body ?? node.raw,
    envelope: node.envelope,
    at: node.at,
    orderCertain: node.certain,
    state: node.withdrawn ? 'withdrawn' : node.superseded ? 'superseded' : 'live',
    supersededBy: node.supersededBy.map((other) => other.header.id),
    withdrawnBy: node.withdrawnBy.map((other) => other.header.id),
    known: kind !== undefined && node.header.version <= kind.version && (body !== undefined || node.raw === null),
    erased: node.erased,
    late: latenessOf(node, finished),
  }
}

function cycles(nodes: readonly Node[]): Conflict[] {
  const rings = nodes.filter((node) => node.cyclic)
  if (rings.length === 0) return []
  return [
    { because: 'cycle', kind: rings[0]?.header.kind ?? '', key: null, between: rings.map((node) => node.header.id) },
  ]
}

/**
 * Entries joined by supersession form one revision tree; two live ends of one tree are a conflict, and so are two
 * live entries with the same natural key.
 */
function conflictsOf(nodes: readonly Node[], byId: ReadonlyMap<string, Node>, lines: readonly Line[]): Conflict[] {
  const found: Conflict[] = []
  const seen = new Set<Revision>()
  for (const node of nodes) {
    if (seen.has(node) || (node.header.supersedes.length === 0 && node.supersededBy.length === 0)) continue
    const ends = treeOf(node, byId, seen).filter((member) => isLive(member) && !member.cyclic)
    if (ends.length > 1) {
      const between = ends.map((end) => end.header.id).sort()
      found.push({ because: 'same-target', kind: ends[0]?.header.kind ?? '', key: null, between })
    }
  }
  const alreadySideBySide = new Set(found.flatMap((conflict) => conflict.between))
  return [...found, ...keyConflicts(lines, alreadySideBySide)]
}

function keyConflicts(lines: readonly Line[], settledElsewhere: ReadonlySet<string>): Conflict[] {
  const sideBySide = new Map<string, { kind: string; key: string; ids: string[] }>()
  for (const line of lines) {
    if (line.state !== 'live' || !line.known || line.erased || line.body === null) continue
    const naturalKey = registry.get(line.header.kind)?.naturalKey as
      | ((body: unknown, subject: unknown) => string | undefined)
      | undefined
    const key = naturalKey?.(line.body, line.header.subject)
    if (key === undefined) continue
    const place = `${line.header.kind} ${key}`
    const group = sideBySide.get(place)
    if (group) group.ids.push(line.header.id)
    else sideBySide.set(place, { kind: line.header.kind, key, ids: [line.header.id] })
  }
  return [...sideBySide.values()]
    .filter(({ ids }) => ids.length > 1 && !ids.every((id) => settledElsewhere.has(id)))
    .map(({ kind, key, ids }) => ({ because: 'same-key', kind, key, between: ids.sort() }))
}

class FoldedCase implements Case {
  readonly lines: readonly Line[]
  readonly pending: Case['pending']
  readonly conflicts: readonly Conflict[]
  readonly unknown: readonly Line[]
  readonly #live = new Map<string, Line[]>()
  readonly #byId: Map<string, Line>

  constructor(lines: readonly Line[], pending: Case['pending'], conflicts: readonly Conflict[]) {
    this.lines = lines
    this.pending = pending
    this.conflicts = conflicts
    this.unknown = lines.filter((line) => !line.known)
    this.#byId = new Map(lines.map((line) => [line.header.id, line]))
    for (const line of lines) {
      if (line.state !== 'live' || !line.known || line.erased) continue
      const group = this.#live.get(line.header.kind)
      if (group) group.push(line)
      else this.#live.set(line.header.kind, [line])
    }
  }

  live<Name extends KindName>(kind: Name): readonly Line<BodyOf<Name>>[] {
    return (this.#live.get(kind) ?? []) as unknown as readonly Line<BodyOf<Name>>[]
  }

  latest<Name extends KindName>(kind: Name): Line<BodyOf<Name>> | undefined {
    return this.live(kind).at(-1)
  }

  line(id: string): Line | undefined {
    return this.#byId.get(id)
  }
}
