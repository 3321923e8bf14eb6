import { compareText } from '#core/journal/compare-text.ts'
import type { Side } from '../animal/species.ts'
import type { BodyOf, Case, Line } from '../journal/fold.ts'
import { answer, type Outcome, refuse } from '../outcome/outcome.ts'
import { operationsOf } from '../owed/operations.ts'
import {
  type BullaContent,
  type BullaWall,
  bullaWalls,
  type Carriage,
  type Layer,
  layers,
  type Mass,
  type PlateParameters,
  type Surgery,
  type View,
} from './parameters.ts'

export type PlateWish = {
  readonly view: View
  /** The ear before the operation, with the lines of the plan, or as it was left. */
  readonly show: 'as-found' | 'planned' | 'as-left'
  /** Which operation; null takes the last of this side. */
  readonly operation: string | null
  /** How the flap is carried, where somebody who looks at the animal says it; otherwise as the findings say. */
  readonly carriage?: Carriage
  readonly layers?: readonly Layer[]
}

export type PlateRefusal = { readonly because: 'species-not-recorded' } | { readonly because: 'side-has-no-operation' }

/**
 * The parameters of this ear's plate, from the entries that count. Of each finding the latest answer stands that was one:
 * a later look without it does not undo it. What no entry says is "not assessed", never normal.
 *
 * @example plateParametersOf(theCase, 'LEFT', { view: 'transverse', show: 'as-found', operation: null })
 * Reference: the kinds ear-findings, imaging and theatre-stamp; anatomy of the drawing in docs/plate.md.
 */
export function plateParametersOf(theCase: Case, side: Side, wish: PlateWish): Outcome<PlateParameters, PlateRefusal> {
  const animal = theCase.latest('identity')?.body
  if (!animal) return refuse({ because: 'species-not-recorded' })
  const surgery = wish.show === 'as-found' ? ({ kind: 'none' } as const) : surgeryOf(theCase, side, wish)
  if (!surgery) return refuse({ because: 'side-has-no-operation' })
  const looks = theCase.live('ear-findings').filter((line) => isEar(line, side))
  const scans = scansOf(theCase, side)
  const stamps = stampsOf(theCase, side, wish.operation)
  const narrowing = lastThat(looks.map(({ body }) => body.stenosis)) ?? 'not-assessed'
  return answer({
    species: animal.species,
    side,
    view: wish.view,
    carriage: wish.carriage ?? lastThat(looks.map(({ body }) => body.flapCarriage)) ?? 'not-recorded',
    narrowing: { vertical: narrowing, horizontal: narrowing, recorded: 'whole' },
    mineral: lastThat(scans.map(({ said }) => said.canalMineral)) ?? 'not-assessed',
    drum: lastThat(looks.map(({ body }) => body.drum)) ?? 'not-assessed',
    bullaContent: contentOf(scans, stamps),
    bullaWall: wallOf(scans, stamps),
    mass: massOf(looks, scans, stamps),
    surgery,
    layers: wish.layers ?? layers,
  })
}

type Scan = { readonly at: string; readonly said: NonNullable<BodyOf<'imaging'>['LEFT']> }
type Stamp = Line<BodyOf<'theatre-stamp'>>

function isEar(line: Pick<Line<unknown>, 'header'>, side: Side): boolean {
  const { subject } = line.header
  return subject.kind === 'ear' && subject.side === side
}

function lastThat<Said extends string>(
  said: readonly Said[],
): Exclude<Said, 'not-assessed' | 'not-reported'> | undefined {
  return said.findLast(
    (value): value is Exclude<Said, 'not-assessed' | 'not-reported'> =>
      value !== 'not-assessed' && value !== 'not-reported',
  )
}

function scansOf(theCase: Case, side: Side): Scan[] {
  return theCase.live('imaging').flatMap(({ at, body }) => {
    const said = body[side]
    return said ? [{ at, said }] : []
  })
}

function stampsOf(theCase: Case, side: Side, operation: string | null): Stamp[] {
  const ids = operationsOf({ theCase })
    .filter(({ id, side: of }) => of === side && (operation === null || id === operation))
    .map(({ id }) => id)
  return theCase
    .live('theatre-stamp')
    .filter(({ header: { subject } }) => subject.kind === 'operation' && ids.includes(subject.operation))
}

/** The later of what a scan and what the surgeon said, told by when it happened. */
function latest<Said extends string>(said: readonly { readonly at: string; readonly is: Said }[]): Said | undefined {
  return [...said].sort((a, b) => compareText(a.at, b.at)).at(-1)?.is
}

function detailOf(stamps: readonly Stamp[], checkpoint: string, detail: string) {
  return stamps.flatMap(({ at, body }) => {
    const said = body.checkpoint === checkpoint && body.answer === 'done' ? body.detail[detail] : undefined
    return said === undefined ? [] : [{ at, is: said }]
  })
}

function contentOf(scans: readonly Scan[], stamps: readonly Stamp[]): BullaContent {
  const seen = scans.flatMap(({ at, said }) => (said.bulla === 'not-reported' ? [] : [{ at, is: said.bulla }]))
  const met = detailOf(stamps, 'k8-curettage', 'content').map(({ at, is }) => ({
    at,
    is: is === 'dry' ? ('air' as const) : ('filled' as const),
  }))
  return latest([...seen, ...met]) ?? 'not-assessed'
}

function wallOf(scans: readonly Scan[], stamps: readonly Stamp[]): BullaWall {
  const seen = scans.flatMap(({ at, said }) => (said.bullaWall === 'not-reported' ? [] : [{ at, is: said.bullaWall }]))
  const met = detailOf(stamps, 'k6-bulla', 'wall').flatMap(({ at, is }) => {
    const wall = bullaWalls.find((known) => known === is)
    return wall ? [{ at, is: wall }] : []
  })
  return latest<BullaWall>([...seen, ...met]) ?? 'not-assessed'
}

/** A mass that anybody saw is there; its place and size are those said last by a look or a scan that knew them. */
function massOf(
  looks: readonly Line<BodyOf<'ear-findings'>>[],
  scans: readonly Scan[],
  stamps: readonly Stamp[],
): Mass {
  const met = detailOf(stamps, 'k8-curettage', 'content').at(-1)?.is
  if (met === 'mass') return { kind: 'placed', place: 'bulla', size: 'not-recorded' }
  const said = [
    ...looks.map(({ at, body }) => ({ at, mass: body.mass, place: body.massPlace, size: body.massSize })),
    ...scans.map(({ at, said: scan }) => ({ at, mass: scan.mass, place: scan.massPlace, size: scan.massSize })),
  ].sort((a, b) => compareText(a.at, b.at))
  const seen = said.filter(({ mass }) => mass === 'yes')
  if (seen.length === 0) return { kind: said.some(({ mass }) => mass === 'no') ? 'none' : 'not-assessed' }
  const place = lastThat(seen.map((one) => one.place))
  if (place === undefined) return { kind: 'place-not-recorded' }
  const size = lastThat(seen.filter((one) => one.place === place).map((one) => one.size))
  return { kind: 'placed', place, size: size ?? 'not-recorded' }
}

/** Only the ablation with its bulla opening is drawn; any other operation is named as one that is not. */
function surgeryOf(theCase: Case, side: Side, { operation: wanted, show }: PlateWish): Surgery | undefined {
  const found = operationsOf({ theCase })
    .filter(({ id, side: of }) => of === side && (wanted === null || id === wanted))
    .at(-1)
  if (!found) return undefined
  if (found.procedure !== 'teca-lbo') return { kind: 'not-drawn' }
  if (show === 'planned') return { kind: 'planned', incision: 'not-recorded', canal: 'taken-away', bulla: 'opened' }
  const stamps = stampsOf(theCase, side, found.id)
  const done = (checkpoint: string) => stamps.findLast(({ body }) => body.checkpoint === checkpoint)?.body.answer
  const cut = detailOf(stamps, 'k1-skin', 'cut').at(-1)?.is
  const [canal, bulla] = [done('k4-horizontal-canal'), done('k6-bulla')]
  return {
    kind: 'done',
    incision: cut === 't-shaped' ? 'T-shaped' : cut === 'circular' ? 'circular' : 'not-recorded',
    canal: canal === 'done' ? 'taken-away' : canal === 'not-done' ? 'stays' : 'not-recorded',
    bulla: bulla === 'done' ? 'opened' : bulla === 'not-done' ? 'not-opened' : 'not-recorded',
  }
}
