import type { EntryAnswer } from '#actions/journal/accept-entries.ts'
import type { Entry } from '#core/journal/entry.ts'
import { callAny, refusedBy, sendFile, Unreachable } from './api.ts'
import { database, type Waiting, type WaitingRow } from './database.ts'
import { aside } from './drafts.ts'
import { type Found, isWaiting, isWaitingRow, textOf, type Unreadable } from './readable.ts'
import { Signal } from './signal.ts'

/**
 * Entries written here and not yet acknowledged, in the order of writing. They are on this device's disk before the
 * screen says "kept", and leave it only when the server has them on its own.
 */
export const outbox = new Signal<readonly Waiting[]>([])

/** Rows of registers written here and not yet acknowledged: a new owner, a new vet. They go before the entries that name them. */
export const waitingRows = new Signal<readonly WaitingRow[]>([])

/** Called with the entries that the server has just acknowledged; resolves to whether it answered the reading of them too. */
export const onAcknowledged = new Set<(entries: readonly Entry[]) => Promise<boolean>>()

/** Called when the server has a row; awaited before this device lets go of its own copy. */
export const onRowAcknowledged = new Set<() => Promise<void>>()

/** What stands on this device among them and cannot be read: nothing else waits for it. */
export const unreadable = new Signal<readonly Unreadable[]>([])

const mostAtOnce = 100
const pauses = [1_000, 2_000, 5_000, 10_000, 20_000]
let failures = 0
let sending: Promise<void> | undefined
let timer: ReturnType<typeof setTimeout> | undefined

/** Reads what a former visit left unsent. */
export async function openOutbox(): Promise<void> {
  await refresh()
  addEventListener('online', () => void sendNow())
  void sendNow()
}

/** Rises with whatever is kept: what was read from the disk before that is read again, and never hides it. */
let keptSoFar = 0

async function refresh(): Promise<void> {
  const begun = keptSoFar
  const entries = await foundIn('outbox')
  const rows = await foundIn('rows')
  if (begun !== keptSoFar) return refresh()
  outbox.set(
    entries
      .map(({ value }) => value)
      .filter(isWaiting)
      .sort((a, b) => a.order - b.order),
  )
  waitingRows.set(rows.map(({ value }) => value).filter(isWaitingRow))
  unreadable.set([
    ...entries.filter(({ value }) => !isWaiting(value)).map(asText('outbox')),
    ...rows.filter(({ value }) => !isWaitingRow(value)).map(asText('rows')),
  ])
}

async function foundIn(store: 'outbox' | 'rows'): Promise<Found[]> {
  const tx = (await database()).transaction(store)
  const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()])
  return keys.map((key, at) => ({ key, value: values[at] }))
}

function asText(store: 'outbox' | 'rows') {
  return ({ key, value }: Found): Unreadable => ({ store, key, text: textOf(value) })
}

/** Under another name it stays on this device, where nothing reads it, and no longer stands among what waits. */
export async function setUnreadableAside({ store, key }: Unreadable): Promise<void> {
  const tx = (await database()).transaction([store, 'drafts'], 'readwrite', { durability: 'strict' })
  const draft: unknown = await tx.objectStore(store).get(key)
  const at = new Date().toISOString()
  await tx.objectStore('drafts').put({ draft, at, person: '' }, `${aside}${at} ${store} ${key}`)
  await tx.objectStore(store).delete(key)
  await tx.done
  await refresh()
}

/**
 * Keeps entries on this device, and rows of registers that they name, all or none; then sends them. Resolves when they
 * are on this device's disk. A refused entry that they are written instead of goes in the same stroke.
 */
export async function keepEntries(
  entries: readonly Entry[],
  rows: readonly WaitingRow[] = [],
  insteadOf: string | null = null,
): Promise<void> {
  const tx = (await database()).transaction(['outbox', 'rows'], 'readwrite', { durability: 'strict' })
  const begin = Date.now()
  const added = entries.map((entry, index) => {
    return { entry, state: 'waiting', because: null, order: begin + index / 1_000 } as const
  })
  for (const row of rows) await tx.objectStore('rows').put(row, row.id)
  for (const waiting of added) await tx.objectStore('outbox').put(waiting, waiting.entry.id)
  if (insteadOf !== null) await tx.objectStore('outbox').delete(insteadOf)
  await tx.done
  // Nothing is read back: a tap must not take longer because hundreds wait already.
  keptSoFar += 1
  const gone = new Set([insteadOf, ...entries.map(({ id }) => id), ...rows.map(({ id }) => id)])
  outbox.set([...outbox.get().filter(({ entry }) => !gone.has(entry.id)), ...added])
  if (rows.length > 0) waitingRows.set([...waitingRows.get().filter(({ id }) => !gone.has(id)), ...rows])
  void sendNow()
}

/** A person wants the server asked again, because something was put right there. */
export async function sendRefused(id: string): Promise<void> {
  const db = await database()
  const entry = await db.get('outbox', id)
  if (entry) await db.put('outbox', { ...entry, state: 'waiting', because: null }, id)
  const row = await db.get('rows', id)
  if (row) await db.put('rows', { ...row, state: 'waiting', because: null }, id)
  await refresh()
  await sendNow()
}

/** A person looked at a refused entry and lets it go; its text was offered to them before. */
export async function dropRefused(id: string): Promise<void> {
  await (await database()).delete('outbox', id)
  await refresh()
}

/** A person looked at a refused row of a register and lets it go. */
export async function dropRefusedRow(id: string): Promise<void> {
  await (await database()).delete('rows', id)
  await refresh()
}

/** Tries now whatever waits; one attempt at a time. */
export function sendNow(): Promise<void> {
  clearTimeout(timer)
  sending ??= sendAll().finally(() => {
    sending = undefined
  })
  return sending
}

async function sendAll(): Promise<void> {
  // Tried once each time: their author is signed out here, and nobody else's entries wait for them.
  const held = new Set<string>()
  for (;;) {
    if (!(await sendRowsOrLater())) return
    const batch = outbox
      .get()
      .filter(({ entry, state }) => state !== 'refused' && !held.has(entry.id))
      .slice(0, mostAtOnce)
      .map(({ entry }) => entry)
    if (batch.length === 0) return
    try {
      await sendFiles(batch)
      if (!(await sendBatch(batch, held))) return
      failures = 0
    } catch (error) {
      if (!(error instanceof Unreachable)) throw error
      tryLater()
      return
    }
  }
}

function tryLater(): void {
  timer = setTimeout(() => void sendNow(), pauses[Math.min(failures, pauses.length - 1)])
  failures += 1
}

/** False when nobody answers or nobody is signed in: the entries wait with them. A row that is refused holds nothing back. */
async function sendRowsOrLater(): Promise<boolean> {
  try {
    for (const row of waitingRows.get().filter(({ state }) => state !== 'refused')) {
      if (!(await sendRow(row))) return false
    }
    return true
  } catch (error) {
    if (!(error instanceof Unreachable)) throw error
    tryLater()
    return false
  }
}

async function sendRow(row: WaitingRow): Promise<boolean> {
  const { register, id, body, after, by } = row
  const answer = await callAny('put-row', { register, id, body, after }, by)
  if (answer.status < 300) {
    await Promise.all([...onRowAcknowledged].map((listener) => listener()))
    const { revision } = answer.body as { revision: number }
    // What was typed meanwhile stands upon what the server has now.
    await settleRow(row, null, { after: revision })
    return true
  }
  const refusal = refusedBy(answer.status, answer.body)
  if (answer.status >= 500 || answer.status === 429) throw new Unreachable(refusal)
  const state = answer.status === 401 ? 'sign-in' : 'refused'
  await settleRow(row, { ...row, state, because: refusal.message }, {})
  return state === 'refused'
}

/** What became of a row that was sent; one that was written anew while it was under way stays and is sent as well. */
async function settleRow(
  sent: WaitingRow,
  become: WaitingRow | null,
  newer: { readonly after?: number },
): Promise<void> {
  const tx = (await database()).transaction('rows', 'readwrite')
  const now = await tx.store.get(sent.id)
  const isSent = now !== undefined && JSON.stringify(now.body) === JSON.stringify(sent.body)
  if (isSent && become === null) await tx.store.delete(sent.id)
  else if (isSent && become !== null) await tx.store.put(become, sent.id)
  else if (now?.after !== undefined) await tx.store.put({ ...now, ...newer }, sent.id)
  await tx.done
  await refresh()
}

/** Pictures go first; an entry may also arrive before its file, so a file that fails does not hold it back. */
async function sendFiles(batch: readonly Entry[]): Promise<void> {
  const db = await database()
  for (const hash of batch.flatMap(({ attachments }) => attachments.map((file) => file.hash))) {
    const file = await db.get('files', hash)
    if (!file) continue
    try {
      await sendFile(file.bytes, file.mediaType)
      await db.delete('files', hash)
    } catch (error) {
      if (error instanceof Unreachable) throw error
    }
  }
}

/** False when sending must wait for a person: signing in again, or a server that says no to everything. */
async function sendBatch(batch: readonly Entry[], held: Set<string>): Promise<boolean> {
  const { status, body } = await callAny('accept-entries', { clinic: batch[0]?.clinic, entries: batch })
  const answers = (body as { entries?: readonly EntryAnswer[] } | null)?.entries
  if (answers) {
    await settle(batch, answers)
    return true
  }
  const refusal = refusedBy(status, body)
  if (status === 401) {
    await mark(batch, 'sign-in', refusal.message)
    return false
  }
  const wrong = /^entries\[(\d+)\]/.exec(refusal.path)
  const at = wrong ? batch[Number(wrong[1])] : undefined
  if (at && refusal.code === 'author-signed-out') {
    held.add(at.id)
    await mark([at], 'sign-in', refusal.message)
    return true
  }
  if (at) {
    await mark([at], 'refused', refusal.message)
    return true
  }
  if (status >= 500 || status === 429) throw new Unreachable(refusal)
  await mark(batch, 'refused', refusal.message)
  return true
}

async function settle(batch: readonly Entry[], answers: readonly EntryAnswer[]): Promise<void> {
  const byId = new Map(answers.map((answer) => [answer.id, answer]))
  const done = batch.filter(({ id }) => ['accepted', 'already'].includes(byId.get(id)?.outcome ?? ''))
  for (const entry of batch) {
    const answer = byId.get(entry.id)
    if (answer?.outcome === 'refused') await mark([entry], 'refused', answer.refusal.message)
    if (answer?.outcome === 'kept-aside') await mark([entry], 'refused', null)
  }
  // First to whoever shows them: an entry that is on the server is never missing from the screen, not for a moment and
  // not while the line is down again. Until it was read back it stays here, and sending it twice changes nothing.
  const readBack = await Promise.all([...onAcknowledged].map((listener) => listener(done)))
  if (readBack.includes(false)) throw new Unreachable()
  const tx = (await database()).transaction('outbox', 'readwrite')
  for (const { id } of done) await tx.store.delete(id)
  await tx.done
  await refresh()
}

async function mark(entries: readonly Entry[], state: Waiting['state'], because: string | null): Promise<void> {
  const tx = (await database()).transaction('outbox', 'readwrite')
  for (const { id } of entries) {
    const row = await tx.store.get(id)
    if (row) await tx.store.put({ ...row, state, because }, id)
  }
  await tx.done
  await refresh()
}
