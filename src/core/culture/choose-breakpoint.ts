import type { Species } from '#core/animal/species.ts'
import { speciesList } from '#core/animal/species.ts'
import type { BodySite, Breakpoint, BreakpointHost, Edition, TestMethod } from './breakpoint.ts'
import { sameDisk } from './disk.ts'
import type { Organism } from './organism.ts'
import type { ChoiceStep, NoChoice } from './reading.ts'

export type Wanted = {
  readonly host: Species
  readonly site: BodySite
  readonly organism: Organism
  readonly agent: string
  readonly method: TestMethod
  /** Null where the laboratory does not say: then that of the standard is taken, and said. */
  readonly disk: string | null
}
/** Rows that fit equally well: more than one only where the standard itself parts them (by mouth, into a vein). */
export type Chosen = {
  readonly edition: Edition
  readonly step: ChoiceStep
  readonly rows: readonly [Breakpoint, ...Breakpoint[]]
}

/**
 * The row of this animal's own kind, in the stated order: its organism with a soft-tissue value, a group of it with
 * one, then rows without a body site. Values of another site are never taken: a urine value says nothing of an ear.
 */
export function chooseBreakpoint(wanted: Wanted, edition: Edition): Chosen | NoChoice {
  return remembered(wanted, edition, 'own', () => ownRow(wanted, edition))
}

function ownRow(wanted: Wanted, edition: Edition): Chosen | NoChoice {
  const ofHost = rowsOf(edition, wanted).filter(({ host, kind }) => host === wanted.host && gives(kind))
  const atSite = nearest(
    ofHost.filter(({ sites }) => sites.includes(wanted.site)),
    wanted,
  )
  const atAny =
    wanted.site === 'any'
      ? null
      : nearest(
          ofHost.filter(({ sites }) => sites.includes('any')),
          wanted,
        )
  if (atSite) return { edition, step: atSite.nearness === 0 ? 'same-organism' : 'group', rows: atSite.rows }
  if (atAny) return { edition, step: 'no-site', rows: atAny.rows }
  return why(wanted, edition)
}

/**
 * What stands in when this animal's own kind has no row: a human value, then one of the other species of the same
 * edition. It is shown apart and never fills the category.
 */
export function chooseFallback(wanted: Wanted, edition: Edition, people: readonly Edition[]): Chosen | null {
  const beside = people.map(({ id }) => id).join(' ')
  return remembered(wanted, edition, beside, () => standIn(wanted, edition, people))
}

function standIn(wanted: Wanted, edition: Edition, people: readonly Edition[]): Chosen | null {
  const ofPeople = edition.audience === 'people' ? [edition, ...people.filter(({ id }) => id !== edition.id)] : people
  for (const one of ofPeople) {
    const rows = rowsOf(one, wanted).filter(({ host, kind }) => host === 'human' && gives(kind))
    for (const site of [wanted.site, 'any', 'systemic'] as const) {
      const found = nearest(
        rows.filter(({ sites }) => sites.includes(site)),
        wanted,
      )
      if (found) return { edition: one, step: 'human', rows: found.rows }
    }
  }
  for (const host of speciesList.filter((species) => species !== wanted.host)) {
    const chosen = chooseBreakpoint({ ...wanted, host }, edition)
    if (typeof chosen !== 'string') return { ...chosen, step: 'other-host' }
  }
  return null
}

/** Kinds that may give a category; the others are information. */
function gives(kind: Breakpoint['kind']): boolean {
  return kind === 'clinical' || kind === 'human-derived' || kind === 'human' || kind === 'screen'
}

function hostFits(host: BreakpointHost, wanted: Species): boolean {
  return host === wanted || host === 'any'
}

function rowsOf(edition: Edition, { agent, method, disk }: Wanted): readonly Breakpoint[] {
  const rows = indexed(edition).get(agent) ?? []
  return rows.filter(
    (row) =>
      row.method === method && (row.method === 'MIC' || disk === null || row.disk === null || sameDisk(row.disk, disk)),
  )
}

/** The rows of the nearest organism or group that has any; screening tests only where nothing else is there. */
function nearest(
  rows: readonly Breakpoint[],
  { organism }: Wanted,
): { readonly nearness: number; readonly rows: readonly [Breakpoint, ...Breakpoint[]] } | null {
  const order = [organism.id, ...organism.groups, 'any']
  for (const [nearness, named] of order.entries()) {
    const here = rows.filter(({ organisms }) => organisms === named)
    const [first, ...more] = here.some(({ kind }) => kind !== 'screen')
      ? here.filter(({ kind }) => kind !== 'screen')
      : here
    if (first) return { nearness, rows: [first, ...more] }
  }
  return null
}

function why(wanted: Wanted, edition: Edition): NoChoice {
  const named = new Set([wanted.organism.id, ...wanted.organism.groups, 'any'])
  const rows = (indexed(edition).get(wanted.agent) ?? []).filter(
    ({ host, organisms }) => hostFits(host, wanted.host) && named.has(organisms),
  )
  const stated = rows.some(
    ({ kind, organisms, method }) => kind === 'none' && organisms !== 'any' && method === wanted.method,
  )
  if (stated) return 'stated-none'
  const giving = rows.filter(({ kind }) => gives(kind))
  const here = giving.filter(({ sites }) => sites.includes(wanted.site) || sites.includes('any'))
  if (here.some(({ method }) => method === wanted.method)) return 'other-disk'
  if (here.length > 0) return 'other-method'
  return giving.some(({ sites }) => sites.includes('urinary')) ? 'urinary-only' : 'no-row'
}

/** An edition never changes, so neither does a choice from it. The text of a disk is anybody's, and is not kept. */
const choices = new WeakMap<Edition, Map<string, unknown>>()
function remembered<Choice>(
  { host, site, organism, agent, method, disk }: Wanted,
  edition: Edition,
  of: string,
  choose: () => Choice,
): Choice {
  if (disk !== null) return choose()
  const known = choices.get(edition) ?? new Map<string, unknown>()
  choices.set(edition, known)
  const key = `${host} ${site} ${organism.id} ${agent} ${method} ${of}`
  if (!known.has(key)) known.set(key, choose())
  return known.get(key) as Choice
}

const kept = new WeakMap<Edition, Map<string, Breakpoint[]>>()
function indexed(edition: Edition): Map<string, Breakpoint[]> {
  const before = kept.get(edition)
  if (before) return before
  const index = new Map<string, Breakpoint[]>()
  for (const row of edition.rows) index.set(row.agent, [...(index.get(row.agent) ?? []), row])
  kept.set(edition, index)
  return index
}
