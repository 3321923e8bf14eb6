import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import type { World } from '#actions/action.ts'
import { project } from '#actions/journal/project.ts'
import { type ReadLists, readLists } from '#actions/journal/read-lists.ts'
import type { Store } from '#actions/store.ts'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { demoClinic, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { ListRemaking } from '#server/remaking.ts'
import { skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'

/** Milliseconds of the action `read-lists`, from the question to the text the server sends. */
type Spread = { readonly median: number; readonly p95: number; readonly most: number }
export type ListFigures = {
  readonly cases: number
  readonly owed: number
  readonly megabytes: number
  /** Every row there is. */
  readonly whole: Spread
  /** What changed since the last answer, after an entry in one case. */
  readonly news: Spread
  /** That entry itself, on disk, with its lists. */
  readonly accept: Spread
  readonly house: HouseFigures
}

/** A change of the house that all lists read: a policy that moves a date in every case. */
type HouseFigures = {
  /** Milliseconds until the policy itself was on disk. */
  readonly accept: number
  /** Seconds until every list has it, with everything else answered between. */
  readonly seconds: number
  /** Milliseconds that what the server's health reads waited meanwhile. */
  readonly waits: Spread
}

const kept = [
  'household',
  'identity',
  'referral',
  'ear-findings',
  'choice',
  'agreement',
  'booking',
  'operation-summary',
]
const keptLater = ['discharge', 'check', 'twelve-months']

/** How far the generated cases have come, in parts of ten thousand: about ten years of a busy referral practice. */
const stages = [
  { until: 'referral', parts: 2_000 },
  { until: 'booking', parts: 500 },
  { until: 'discharge', parts: 500 },
  { until: 'choice', parts: 2_000 },
  { until: 'twelve-months', parts: 5_000 },
] as const

/** The invented spaniel again and again, each time another animal, household and owner, as far as her stage goes. */
export function manyCases(count: number): { readonly rows: readonly Row[]; readonly entries: readonly Entry[] } {
  const all = tansy().entries.filter(({ kind }) => kept.includes(kind) || keptLater.includes(kind))
  const texts = stages.map(({ until, parts }) => {
    const last = all.findLastIndex(({ kind }) => kind === until)
    return { text: JSON.stringify(all.slice(0, last + 1)), parts }
  })
  const owner = registerRows().find(({ id }) => id === 'contact-okafor')
  if (!owner) throw new Error('The spaniel has an owner.')
  const rows: Row[] = [...registerRows()]
  const entries: Entry[] = []
  for (let number = 0; number < count; number += 1) {
    const name = String(number).padStart(5, '0')
    // A fixed stride through the ten thousand parts, so that every hundred cases hold every stage.
    const { text } = stageAt(texts, (number * 3_571) % 10_000)
    entries.push(...(JSON.parse(renamed(text, name)) as Entry[]))
    rows.push({
      ...owner,
      id: `contact-${name}`,
      body: { ...owner.body, name: `Owner ${name}`, phone: `01632 9${name}` },
    })
  }
  return { rows, entries }
}

function stageAt<Stage extends { readonly parts: number }>(all: readonly Stage[], place: number): Stage {
  let left = place
  for (const stage of all) {
    if (left < stage.parts) return stage
    left -= stage.parts
  }
  throw new Error('The stages cover ten thousand parts.')
}

function renamed(text: string, name: string): string {
  return text
    .replaceAll(/([0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4})-[0-9a-f]{12}/g, `$1-0000000${name}`)
    .replaceAll('tansy', name)
    .replaceAll('"Tansy"', `"Tansy ${name}"`)
    .replaceAll('-okafor', `-${name}`)
    .replaceAll('000000000001701', `0000000001${name}`)
}

/** Everything is written by the store itself, the rows of the lists by its projection; nothing is put in by hand. */
async function fill(store: Store, count: number): Promise<void> {
  const { rows, entries } = manyCases(count)
  async function* sealed() {
    yield* sealAll(entries, (entry) => entry.writtenAt)
  }
  await store.restore(demoClinic, sealed(), rows)
}

async function figures(store: Store, count: number, rounds: number): Promise<ListFigures> {
  await fill(store, count)
  const caller = { session: 's', device: 'd', person: 'p', role: 'nurse', people: ['p'], keeper: false, proved: true }
  const clock = { now: () => new Date().toISOString() }
  const world = { store, clock, caller, clinic: demoClinic } as unknown as World
  const make = entryMaker({ clinic: demoClinic }, 7)
  let version = 0
  let text = ''
  const once = async (since: number | null, times: number[]) => {
    const began = performance.now()
    text = (await readLists.text?.({ since }, world)) ?? ''
    times.push(performance.now() - began)
    const answer = JSON.parse(text) as ReadLists
    version = answer.version
    return answer
  }
  const whole: number[] = []
  const accept: number[] = []
  const news: number[] = []
  const first = await once(null, [])
  for (let round = 0; round < rounds; round += 1) {
    const stream = `case:${String((round * 7_919) % count).padStart(5, '0')}`
    const subject = { kind: 'animal' as const, animal: `animal-${stream.slice(5)}` }
    const began = performance.now()
    await store.accept(demoClinic, [make({ stream, subject })], '2026-11-25T10:00:00.000Z')
    accept.push(performance.now() - began)
    await once(version, news)
    await once(null, whole)
  }
  const megabytes = Number((text.length / 1e6).toFixed(1))
  return {
    cases: first.cases.length,
    owed: first.owed.length,
    megabytes,
    whole: spread(whole),
    news: spread(news),
    accept: spread(accept),
    house: await changeOfHouse(store),
  }
}

async function changeOfHouse(store: Store): Promise<HouseFigures> {
  const remaking = await ListRemaking.open(store, (line) => console.warn(line))
  const make = entryMaker({ clinic: demoClinic, stream: 'clinic', subject: { kind: 'clinic' } }, 8)
  const body = { policy: 'owed.suture-check', value: '8..9 days', because: 'Ours heal quickly.' }
  const began = performance.now()
  await store.accept(demoClinic, [make({ kind: 'house-policy', body })], '2026-11-25T10:00:00.000Z')
  const accept = performance.now() - began
  const waits: number[] = []
  while ((await store.remaking(demoClinic)) !== null) {
    // Also what a busy thread makes the timer itself wait: a request would wait as long before it is even read.
    const asked = performance.now() + 10
    await setTimeout(10)
    await store.clinics()
    waits.push(performance.now() - asked)
  }
  const seconds = (performance.now() - began) / 1000
  await remaking.close()
  return { accept, seconds, waits: spread(waits) }
}

function spread(times: number[]): Spread {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.ceil(sorted.length * share) - 1)] ?? 0
  return { median: at(0.5), p95: at(0.95), most: at(1) }
}

export async function benchListsOnSqlite(count = 10_000, rounds = 60): Promise<ListFigures> {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  const store = await openLockedFolder(folder, { project })
  try {
    return await figures(store, count, rounds)
  } finally {
    await store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Undefined when PostgreSQL was left out on purpose. */
export async function benchListsOnPostgres(count = 10_000, rounds = 60): Promise<ListFigures | undefined> {
  if (skipPostgres) return undefined
  const server = await startPostgres()
  try {
    const store = await openPostgres(await server.newDatabase(), { project })
    const found = await figures(store, count, rounds)
    await store.close()
    return found
  } finally {
    await server.stop()
  }
}
