import { useCallback, useEffect, useMemo, useState } from 'react'
import type { FiguresOwedAnswer } from '#actions/evidence/read-figures-owed.ts'
import type { RegisterRow } from '#actions/store.ts'
import type { TheatreListAnswer } from '#actions/theatre/read-theatre-list.ts'
import { begunCases } from '#core/identity/begun-cases.ts'
import { caseFileOf } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type Case, fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import type { ClinicRow, PersonRow } from '#core/journal/registers.ts'
import { type Tray, trayOf, trayStream } from '#core/tray/tray.ts'
import { call } from './api.ts'
import { database, type KeptCase, type KeptTray, keep, type Lists, type WaitingRow } from './database.ts'
import { onChange } from './live.ts'
import { onAcknowledged, onRowAcknowledged, outbox, waitingRows } from './outbox.ts'
import { useSignal } from './signal.ts'
import { failed, forgetKeptSources, keptSource, type Reading, Source, useSource } from './source.ts'

/** Everything owed and every case, as lists. */
export const lists = keptSource<Lists>('lists', readLists)

/** Only the rows of cases that changed since the copy at hand are sent; they take the place of all their old rows. */
async function readLists(before: Lists | undefined): Promise<Lists> {
  const news = await call<ListsAnswer>('read-lists', { since: before?.version ?? null })
  const { changed, ...whole } = news
  if (!before || changed === null) return whole
  const touched = new Set(changed)
  const others = <Row extends { readonly stream: string }>(rows: readonly Row[]) =>
    rows.filter(({ stream }) => !touched.has(stream))
  return {
    ...whole,
    owed: [...others(before.owed), ...news.owed],
    cases: [...others(before.cases), ...news.cases],
  }
}

type ListsAnswer = Lists & { readonly changed: readonly string[] | null }

/** What came in and waits for a person to file it. */
export const tray = keptSource<KeptTray>('tray', () => call('read-tray', {}))

/** The controlled-drug registers, with what the cases gave and wasted of those drugs. */
export const registers = keptSource<KeptTray>('registers', () => call('read-registers', {}))

/** Where somebody is owed to look at what owners read; worked out by the server for whoever reads it. */
export const figuresOwed = keptSource<FiguresOwedAnswer>('figures-owed', () => call('read-figures-owed', {}))

/** Every operation that is booked, from two weeks back, so that one that was passed over is not lost from sight. */
export const theatreList = keptSource<TheatreListAnswer>('theatre-list', () =>
  call('read-theatre-list', { from: dayFromNow(-14), until: dayFromNow(366) }),
)

function dayFromNow(days: number): string {
  return new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10)
}

const caseSources = new Map<string, Source<KeptCase>>()

function caseSource(stream: string): Source<KeptCase> {
  const known = caseSources.get(stream)
  if (known) return known
  const made = new Source<KeptCase>({
    kept: async () => (await (await database()).get('cases', stream)) ?? (await begunHere(stream)),
    fetch: (before) => readCase(stream, before),
    put: async (value) => {
      await (await database()).put('cases', value, stream)
    },
  })
  caseSources.set(stream, made)
  return made
}

type Here = {
  readonly clinic: { readonly id: string; readonly row: ClinicRow }
  readonly people: readonly { readonly id: string; readonly name: string; readonly role: PersonRow['role'] }[]
}

/** A case that was begun on this device and that the server has not heard of yet: it can be read and gone on with. */
async function begunHere(stream: string): Promise<KeptCase | undefined> {
  const first = outbox.get().find(({ entry }) => entry.stream === stream)
  const here = await keep<Here>('who')
  if (!first || !here) return undefined
  const at = first.entry.writtenAt
  const row = (register: RegisterRow['register'], id: string, body: object): RegisterRow => {
    return { register, id, revision: 0, body: { ...body }, by: '', at }
  }
  const people = here.people.map(({ id, name, role }) => row('person', id, { name, role, letters: null }))
  const rows = [row('clinic', here.clinic.id, here.clinic.row), ...people]
  return { clinic: here.clinic.id, stream, entries: [], house: [], rows, keptAside: [], asOf: at }
}

type CaseAnswer = Omit<KeptCase, 'asOf'>

/**
 * Only what is new is asked for; the copy of before and the news make the whole. A merge or an erasure reaches back
 * beyond the newest position, so such news make it read the whole again.
 */
async function readCase(stream: string, before: KeptCase | undefined): Promise<KeptCase> {
  const last = before?.entries.reduce((most, { envelope }) => Math.max(most, envelope.position), 0) ?? null
  const asOf = new Date().toISOString()
  const news = await call<CaseAnswer>('read-case', { stream, after: last })
  if (!before || last === null) return { ...news, asOf }
  const reaching = news.entries.some(({ header }) => ['merge', 'withdrawal', 'erasure'].includes(header.kind))
  if (reaching) return { ...(await call<CaseAnswer>('read-case', { stream, after: null })), asOf }
  const known = new Set(before.entries.map(({ header }) => header.id))
  const added = news.entries.filter(({ header }) => !known.has(header.id))
  return { ...news, entries: [...before.entries, ...added], asOf }
}

/** Reads again whatever a change on the server or an acknowledgement touched. */
export function startReading(): void {
  onChange.add((streams) => {
    void lists.refresh()
    if (streams === null || streams.includes(trayStream)) void refreshTray()
    // It is worked out anew for every reader, so only where it stands on the screen.
    void theatreList.refreshWhereShown()
    void registers.refreshWhereShown()
    void figuresOwed.refreshWhereShown()
    for (const [stream, source] of caseSources) {
      if (streams === null || streams.includes(stream) || streams.includes('clinic')) void source.refresh()
      // A change of a linked stream shows in this one too.
      else if (linkedTo(source, streams)) void source.refresh()
      // A phone number may stand in any of them; every other one reads it when it is opened.
      else if (streams.some((one) => one.startsWith('register:'))) void source.refreshWhereShown()
    }
  })
  onRowAcknowledged.add(async () => {
    await Promise.all([...caseSources.values()].map((source) => source.refreshWhereShown()))
    await lists.refresh()
  })
  onAcknowledged.add(async (entries) => {
    const streams = [...new Set(entries.map((entry) => entry.stream))]
    void lists.refresh()
    void theatreList.refreshWhereShown()
    const touched = streams.flatMap((stream) => caseSources.get(stream) ?? [])
    // An entry of the clinic's own stream stands in every case.
    const all = streams.includes('clinic') ? [...caseSources.values()] : touched
    const tried = [...all.map((source) => source.refresh()), ...(streams.includes(trayStream) ? [refreshTray()] : [])]
    await Promise.all([registers.refreshWhereShown(), figuresOwed.refreshWhereShown()])
    return (await Promise.all(tried)).every((fromServer) => fromServer)
  })
}

/** Only where somebody has looked into it: most devices never do. */
function refreshTray(): Promise<boolean> {
  return tray.reading.get().kind === 'loading' ? Promise.resolve(true) : tray.refresh()
}

function linkedTo(source: Source<KeptCase>, streams: readonly string[]): boolean {
  const reading = source.reading.get()
  return reading.kind === 'read' && reading.value.entries.some(({ header }) => streams.includes(header.stream))
}

/** Nothing of a person who left may stand on the screen of the next. */
export function forgetSources(): void {
  caseSources.clear()
  forgetKeptSources()
}

export type OpenCase = {
  readonly file: CaseFile
  readonly keptAside: KeptCase['keptAside']
  readonly rows: readonly RegisterRow[]
  /** Ids of entries that only this device has. */
  readonly unsent: ReadonlySet<string>
}

/** One case: the server's entries and this device's unsent ones, folded by the same code the server runs. */
export function useCase(stream: string): Reading<OpenCase> {
  const source = caseSource(stream)
  const reading = useSource(source)
  const waiting = useSignal(outbox)
  const unsent = useMemo(
    () => waiting.map(({ entry }) => entry).filter((entry) => entry.stream === stream || entry.stream === 'clinic'),
    [waiting, stream],
  )
  const names = useSignal(waitingRows)
  return useMemo(() => openCase(reading, stream, unsent, names), [reading, stream, unsent, names])
}

/** Several cases at once, by stream, each as `useCase` has it; what only this device has counts in all of them. */
export function useCases(streams: readonly string[]): ReadonlyMap<string, Reading<OpenCase>> {
  const waiting = useSignal(outbox)
  const names = useSignal(waitingRows)
  const [turn, setTurn] = useState(0)
  const key = streams.join(' ')
  useEffect(() => {
    const sources = key === '' ? [] : key.split(' ').map(caseSource)
    const ends = sources.flatMap(({ reading }) => reading.subscribe(() => setTurn((before) => before + 1)))
    const shown = sources.map((source) => source.show())
    return () => {
      for (const end of [...ends, ...shown]) end()
    }
  }, [key])
  return useMemo(() => {
    void turn
    const mine = (stream: string) =>
      waiting.map(({ entry }) => entry).filter((entry) => entry.stream === stream || entry.stream === 'clinic')
    const read = (stream: string) => openCase(caseSource(stream).reading.get(), stream, mine(stream), names)
    return new Map(key === '' ? [] : key.split(' ').map((stream) => [stream, read(stream)]))
  }, [key, turn, waiting, names])
}

function openCase(
  reading: Reading<KeptCase>,
  stream: string,
  unsent: readonly Entry[],
  names: readonly WaitingRow[],
): Reading<OpenCase> {
  if (reading.kind !== 'read') return reading
  const { clinic, entries, house, keptAside } = reading.value
  // What was written here of a contact counts here before the server has it; what it refused only where it has nothing.
  const here = names.map(({ register, id, body, by, state }) => {
    const revision = state === 'refused' ? 0 : Number.MAX_SAFE_INTEGER
    return { register, id, revision, body, by, at: reading.asOf }
  })
  const rows = [...here, ...reading.value.rows]
  const file = caseFileOf({ clinic, rows: rows as readonly Row[], entries: [...house, ...entries, ...unsent] }, stream)
  if (!file) return { kind: 'failed', because: 'This clinic has no name and zone yet.', code: 'clinic-missing' }
  const value = { file, keptAside, rows, unsent: new Set(unsent.map(({ id }) => id)) }
  return { ...reading, value }
}

/** The lists as the server has them, with the cases that only this device knows yet. */
export function useLists(): Reading<Lists> {
  const reading = useSource(lists)
  const waiting = useSignal(outbox)
  const names = useSignal(waitingRows)
  return useMemo(() => {
    if (reading.kind !== 'read' || waiting.length + names.length === 0) return reading
    const written = new Map(names.filter(({ state }) => state !== 'refused').map(({ id, body }) => [id, body]))
    const cases = reading.value.cases.map((row) => {
      const owner = written.get(row.contact ?? '')
      return owner ? { ...row, ownerName: owner.name, ownerPhone: owner.phone } : row
    })
    const known = new Set(cases.map(({ stream }) => stream))
    const owners = new Map([
      ...cases.map((row) => [row.contact ?? '', { name: row.ownerName ?? '', phone: row.ownerPhone }] as const),
      ...names.map(({ id, body }) => [id, body] as const),
    ])
    const begun = begunCases(
      waiting.map(({ entry }) => entry),
      known,
      owners,
    )
    return { ...reading, value: { ...reading.value, cases: [...cases, ...begun] } }
  }, [reading, waiting, names])
}

/** The holding tray: what the server has of it, and what only this device has. */
export function useTray(): Reading<Tray> & { readonly unsent: ReadonlySet<string> } {
  const reading = useSource(tray)
  const waiting = useSignal(outbox)
  return useMemo(() => {
    const here = waiting.map(({ entry }) => entry).filter(({ stream }) => stream === trayStream)
    const unsent = new Set(here.map(({ id }) => id))
    if (reading.kind !== 'read') return { ...reading, unsent }
    return { ...reading, value: trayOf(fold([...reading.value.entries, ...here])), unsent }
  }, [reading, waiting])
}

/** The registers: what the server has of them, and what only this device has. */
export function useRegisters(): Reading<Case> & { readonly unsent: ReadonlySet<string> } {
  const reading = useSource(registers)
  const waiting = useSignal(outbox)
  return useMemo(() => {
    const here = waiting.map(({ entry }) => entry).filter(({ kind }) => registerKinds.has(kind))
    const unsent = new Set(here.map(({ id }) => id))
    if (reading.kind !== 'read') return { ...reading, unsent }
    return { ...reading, value: fold([...reading.value.entries, ...here]), unsent }
  }, [reading, waiting])
}

const registerKinds: ReadonlySet<string> = new Set([
  'register-line',
  'drug-given',
  'drug-wasted',
  'withdrawal',
  'refile',
])

export function useFiguresOwed(): Reading<FiguresOwedAnswer> {
  return useSource(figuresOwed)
}

export function useTheatreList(): Reading<TheatreListAnswer> {
  return useSource(theatreList)
}

/** A value read when it is shown, for pages that need no copy on the device. */
export function useAction<Value>(action: string, input: unknown): Reading<Value> & { readonly again: () => void } {
  const [reading, setReading] = useState<Reading<Value>>({ kind: 'loading' })
  const [turn, setTurn] = useState(0)
  const text = JSON.stringify(input)
  useEffect(() => {
    let gone = false
    void turn
    call<Value>(action, JSON.parse(text)).then(
      (value) => gone || setReading({ kind: 'read', value, from: 'server', asOf: new Date().toISOString() }),
      (error: unknown) => gone || setReading(failed(error)),
    )
    return () => {
      gone = true
    }
  }, [action, text, turn])
  // The same function at every drawing, so that an effect may wait for it.
  const again = useCallback(() => setTurn((before) => before + 1), [])
  return { ...reading, again }
}

/** The clinic itself: its registers, and its own entries (shelf, usual plans, policies). */
export function useHouse(): Reading<OpenCase> {
  return useCase('clinic')
}

/** After a row of a register was written here: the answer says so, and the pages should not wait for the news of it. */
export function refreshHouse(): void {
  void caseSource('clinic').refresh()
}
