import type { Header } from './entry.ts'

/** One entry in the web of what supersedes and withdraws what; the fold's own working copy. */
export type Revision = {
  readonly header: Header
  readonly supersededBy: Revision[]
  readonly withdrawnBy: Revision[]
  /** Part of a ring of entries that supersede or withdraw each other: none of them counts. */
  cyclic: boolean
  withdrawn: boolean
  superseded: boolean
  /** False for a withdrawn correction that nobody corrected in turn: it no longer joins what it once corrected. */
  carries: boolean
}

export function isLive({ withdrawn, superseded }: Revision): boolean {
  return !withdrawn && !superseded
}

export type Pending = { readonly entry: string; readonly missing: readonly string[] }

/**
 * Ties entries to what they supersede and withdraw, and settles which of them stand. Returns the entries whose target
 * has not arrived. One pass whatever the shape: a chain of thousands of corrections, or of withdrawals of withdrawals,
 * costs no more than as many entries without any.
 */
export function settleRevisions(revisions: readonly Revision[], byId: ReadonlyMap<string, Revision>): Pending[] {
  const pending = link(revisions, byId)
  const pointing = revisions.filter(({ header }) => header.withdraws !== null || header.supersedes.length > 0)
  const targetsFirst = arrangeTargetsFirst(pointing, (revision) => targetsOf(revision, byId))
  // Whoever points is settled before what is pointed at.
  for (const revision of targetsFirst.reverse()) {
    revision.withdrawn = revision.withdrawnBy.some((other) => !other.cyclic && isLive(other))
    revision.superseded = revision.supersededBy.some((other) => !other.cyclic && !other.withdrawn)
    revision.carries = !revision.withdrawn || revision.supersededBy.some((other) => other.carries)
  }
  return pending
}

function link(revisions: readonly Revision[], byId: ReadonlyMap<string, Revision>): Pending[] {
  const pending: Pending[] = []
  for (const revision of revisions) {
    const { id, supersedes, withdraws } = revision.header
    if (supersedes.length === 0 && withdraws === null) continue
    const once = new Set(supersedes)
    for (const target of once) byId.get(target)?.supersededBy.push(revision)
    if (withdraws !== null) byId.get(withdraws)?.withdrawnBy.push(revision)
    const missing = [...once, ...(withdraws === null ? [] : [withdraws])].filter((target) => !byId.has(target))
    if (missing.length > 0) pending.push({ entry: id, missing })
  }
  return pending
}

function targetsOf({ header }: Revision, byId: ReadonlyMap<string, Revision>): Revision[] {
  const ids = header.withdraws === null ? header.supersedes : [...header.supersedes, header.withdraws]
  return ids.map((id) => byId.get(id)).filter((target) => target !== undefined)
}

type Visit = { readonly revision: Revision; readonly targets: readonly Revision[]; next: number }

/**
 * Every revision that can be reached, each after all its targets; rings are marked. Tarjan's strongly connected
 * components (SIAM Journal on Computing 1972;1:146-160), with a list in place of recursion so that no chain is too long.
 */
function arrangeTargetsFirst(from: readonly Revision[], targetsOf: (revision: Revision) => Revision[]): Revision[] {
  const order: Revision[] = []
  const number = new Map<Revision, number>()
  const lowest = new Map<Revision, number>()
  const open: Revision[] = []
  const isOpen = new Set<Revision>()
  const visits: Visit[] = []
  const begin = (revision: Revision) => {
    number.set(revision, number.size)
    lowest.set(revision, number.size - 1)
    open.push(revision)
    isOpen.add(revision)
    visits.push({ revision, targets: targetsOf(revision), next: 0 })
  }
  const lower = (revision: Revision, to: number) => lowest.set(revision, Math.min(lowest.get(revision) ?? to, to))
  const end = ({ revision, targets }: Visit) => {
    const low = lowest.get(revision) ?? 0
    const above = visits.at(-1)
    if (above) lower(above.revision, low)
    if (low !== number.get(revision)) return
    const ring = open.splice(open.lastIndexOf(revision))
    for (const member of ring) {
      member.cyclic = ring.length > 1 || targets.includes(member)
      isOpen.delete(member)
      order.push(member)
    }
  }
  for (const start of from) {
    if (!number.has(start)) begin(start)
    for (let visit = visits.at(-1); visit; visit = visits.at(-1)) {
      const target = visit.targets[visit.next]
      visit.next += 1
      if (target === undefined) end(visits.pop() as Visit)
      else if (!number.has(target)) begin(target)
      else if (isOpen.has(target)) lower(visit.revision, number.get(target) ?? 0)
    }
  }
  return order
}

/** The revision tree around one entry: what supersession joins, over corrections that carry. */
export function treeOf<Of extends Revision>(start: Of, byId: ReadonlyMap<string, Of>, seen: Set<Revision>): Of[] {
  const tree: Of[] = []
  const queue = [start]
  for (let revision = queue.pop(); revision; revision = queue.pop()) {
    if (seen.has(revision)) continue
    seen.add(revision)
    tree.push(revision)
    for (const other of revision.supersededBy) if (other.carries) queue.push(other as Of)
    if (!revision.carries) continue
    for (const id of revision.header.supersedes) {
      const target = byId.get(id)
      if (target) queue.push(target)
    }
  }
  return tree
}
