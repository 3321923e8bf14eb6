import type { StoredEntry } from '#core/journal/entry.ts'
import { type BodyOf, type Case, fold, type KindName } from '#core/journal/fold.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { type SpecimenLine, specimenOf } from '#core/owed/specimen-loop.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import type { GrownIsolate } from './isolate.ts'

type Tested = StoredIsolate['results'][number]
/** An isolate of our own record. */
export type RecordedIsolate = GrownIsolate<Tested> & { readonly tests: StoredIsolate['tests'] }
/** Where a sample was taken; one of a second operation on the same ear stands apart, wherever it was taken. */
export type GrownSite = BodyOf<'specimen'>['site'] | 'second-operation'

/** What is read of the record, with what corrects it, takes it back, or joins two files of one animal. */
export const grownKinds = [
  'specimen-result',
  'specimen',
  'identity',
  'operation-summary',
  'merge',
  'withdrawal',
  'refile',
] as const satisfies readonly [KindName, ...KindName[]]

export type Recorded = {
  readonly isolates: readonly RecordedIsolate[]
  /** Isolates that do not count, by reason. */
  readonly preliminary: number
  readonly withoutSpecies: number
}

/**
 * Every isolate of the clinic's own record, oldest first; of one day in the order in which the samples were taken. Files
 * that a merge joins are one animal. What an organism is taken for is told by `organismOf`, so that a name that was
 * unknown when it was written counts once it is known.
 *
 * @example grownInJournal(entries, { zone: 'Europe/London', organismOf }).isolates.length
 */
export function grownInJournal(
  entries: readonly StoredEntry[],
  about: { readonly zone: string; readonly organismOf: (isolate: StoredIsolate) => string },
): Recorded {
  const cases = casesIn(entries).map((theCase) => grownInCase(theCase, about))
  const taken = cases.flatMap(({ found }) => found).sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
  return {
    isolates: taken.map(({ isolate }) => isolate),
    preliminary: cases.reduce((sum, { preliminary }) => sum + preliminary, 0),
    withoutSpecies: cases.reduce((sum, { withoutSpecies }) => sum + withoutSpecies, 0),
  }
}

type Found = { readonly at: string; readonly isolate: RecordedIsolate }

function grownInCase(
  theCase: Case,
  { zone, organismOf }: Parameters<typeof grownInJournal>[1],
): { readonly found: readonly Found[]; readonly preliminary: number; readonly withoutSpecies: number } {
  const results = theCase.live('specimen-result').filter(({ body }) => body.isolates.length > 0)
  const final = results.filter(({ body }) => body.status !== 'preliminary')
  const many = (lines: typeof results) => lines.reduce((sum, { body }) => sum + body.isolates.length, 0)
  const preliminary = many(results) - many(final)
  const identity = theCase.latest('identity')
  if (!identity) return { found: [], preliminary, withoutSpecies: many(final) }
  const { subject } = identity.header
  const animal = 'animal' in subject ? subject.animal : identity.header.stream
  const host = identity.body.species
  const found = final.flatMap(({ header, body }) => {
    const specimen = specimenOf(theCase, body.specimen)
    if (!specimen) return []
    const day = dayOf({ at: specimen.at, zone })
    const site: GrownSite = isOfSecond(theCase, specimen) ? 'second-operation' : specimen.body.site
    return body.isolates.map((isolate): Found => {
      const organism = organismOf(isolate)
      const key = `${header.id} ${isolate.key}`
      const { results: tested, tests } = isolate
      return { at: specimen.at, isolate: { animal, host, organism, day, site, key, tested, tests } }
    })
  })
  return { found, preliminary, withoutSpecies: 0 }
}

/** Known only where the first operation is signed in our own record. */
function isOfSecond(theCase: Case, { header: { subject }, body }: SpecimenLine): boolean {
  if (body.operation === null || subject.kind !== 'ear') return false
  const done = theCase.live('operation-summary').filter(({ body: { side } }) => side === subject.side)
  const own = done.find(
    ({ header }) => header.subject.kind === 'operation' && header.subject.operation === body.operation,
  )
  if (!own) return false
  return done.some((other) => other.body.incisionAt.at < own.body.incisionAt.at)
}

/** Each animal's files together, as live merges join them. */
function casesIn(entries: readonly StoredEntry[]): Case[] {
  const streams = new Map<string, StoredEntry[]>()
  for (const entry of entries) {
    const { stream } = entry.header
    if (!stream.startsWith('case:')) continue
    const before = streams.get(stream)
    if (before) before.push(entry)
    else streams.set(stream, [entry])
  }
  const joined = joins(streams)
  const done = new Set<string>()
  return [...streams.keys()].flatMap((stream) => {
    if (done.has(stream)) return []
    const together = new Set([stream])
    for (const one of together) for (const other of joined.get(one) ?? []) together.add(other)
    for (const one of together) done.add(one)
    const all = [...together].flatMap((one) => streams.get(one) ?? [])
    return all.some(({ header }) => header.kind === 'specimen-result') ? [fold(all)] : []
  })
}

function joins(streams: ReadonlyMap<string, readonly StoredEntry[]>): ReadonlyMap<string, readonly string[]> {
  const joined = new Map<string, string[]>()
  const join = (from: string, to: string) => joined.set(from, [...(joined.get(from) ?? []), to])
  for (const [stream, entries] of streams) {
    if (!entries.some(({ header }) => header.kind === 'merge')) continue
    for (const { body } of fold(entries).live('merge')) {
      join(stream, body.otherStream)
      join(body.otherStream, stream)
    }
  }
  return joined
}
