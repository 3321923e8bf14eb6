import { sidesOf } from '#core/chapters/sides.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import type { SignOutCode } from './sign-out-codes.ts'
import { potsOf } from './specimens.ts'
import type { Stamp } from './stamps.ts'

type Count = Line<BodyOf<'count'>>
type Note = Line<BodyOf<'incident-note'>>

/** Where a point is settled. */
export type SettledAt =
  | { readonly kind: 'specimens' }
  | { readonly kind: 'count'; readonly amends: string | null }
  | { readonly kind: 'pause'; readonly item: string }
  | { readonly kind: 'sides' }

/** One thing that keeps an operation from being signed out. */
export type SignOutPoint = {
  readonly code: SignOutCode
  /** Of what: the label of a pot, the count, the thing counted. Null where there is one only. */
  readonly of: string | null
  readonly about: Readonly<Record<string, string>>
  readonly settledAt: SettledAt
  /** The incident note that names this point and says why. */
  readonly note: Note | null
}

/**
 * `open`: nobody signed out. `signed-out`: somebody did, and nothing stands against it. `in-doubt`: somebody did, and
 * entries that came or were changed later stand against it.
 */
export type SignOut = {
  readonly state: 'open' | 'signed-out' | 'in-doubt'
  readonly stamp: Stamp | null
  readonly points: readonly SignOutPoint[]
  /** Those of the points that no incident note explains. */
  readonly unsettled: readonly SignOutPoint[]
}

export const signedOut = 'signed-out'
const confirms = 'procedure-and-side-done'

/**
 * Whether an operation is signed out, and what stands in the way. It never refuses an entry of what was done: it says
 * whether "signed out" is reached.
 *
 * @example signOutOf(theCase, operation.id).unsettled.map(({ code }) => code) // ['specimen-unlabelled']
 */
export function signOutOf(theCase: Case, operation: string): SignOut {
  const stamp =
    linesAbout(theCase, 'theatre-stamp', operation).find(
      ({ body }) => body.checkpoint === signedOut && body.answer === 'done',
    ) ?? null
  const notes = linesAbout(theCase, 'incident-note', operation)
  const points = [
    ...pots(theCase, operation),
    ...counts(linesAbout(theCase, 'count', operation)),
    ...pack(theCase, operation),
    ...side(theCase, operation),
  ].map((point) => ({ ...point, note: notes.findLast((one) => explains(one, point)) ?? null }))
  const unsettled = points.filter(({ note }) => note === null)
  const state = stamp === null ? 'open' : unsettled.length === 0 ? 'signed-out' : 'in-doubt'
  return { state, stamp, points, unsettled }
}

type Found = Omit<SignOutPoint, 'note'>

/** A note without a reason explains nothing. */
function explains({ body }: Note, { code, of }: Found): boolean {
  return body.point === code && body.pointOf === of && (body.text ?? '').trim() !== ''
}

function pots(theCase: Case, operation: string): Found[] {
  const all = potsOf(theCase, operation)
  const settledAt = { kind: 'specimens' } as const
  const of = (label: string) => ({ of: label, about: { label }, settledAt })
  const labels = all.map(({ specimen }) => specimen.body.label)
  const twice = [...new Set(labels.filter((label, place) => labels.indexOf(label) !== place))]
  return [
    ...all
      .filter(({ labelled }) => labelled === null)
      .map(({ specimen }) => ({ code: 'specimen-unlabelled', ...of(specimen.body.label) }) as const),
    ...twice.map((label) => ({ code: 'label-twice', ...of(label) }) as const),
  ]
}

/**
 * What was counted before is compared with what was counted last. The count before closing is not asked for: where it
 * was written and was wrong, the last one settles it.
 */
function counts(all: readonly Count[]): Found[] {
  const finals = all.filter(({ body }) => body.when === 'final')
  const firsts = all.filter(({ body }) => body.when === 'before')
  const missing = (when: 'before' | 'final'): Found => ({
    code: 'count-missing',
    of: when,
    about: { when },
    settledAt: { kind: 'count', amends: null },
  })
  const last = finals.length > 0 ? finals : all.filter(({ body }) => body.when === 'before-closing')
  return [
    ...(firsts.length === 0 ? [missing('before')] : []),
    ...(finals.length === 0 ? [missing('final')] : []),
    ...last.flatMap((one) => unequal(one, finals.length > 0 ? firsts : [])),
  ]
}

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase()

/** What was found is not what is expected, or less is expected than was there before the cut. */
function unequal({ header, body }: Count, firsts: readonly Count[]): Found[] {
  const settledAt = { kind: 'count', amends: header.id } as const
  const point = (what: string, expected: number, found: number): Found => ({
    code: 'count-unequal',
    of: what,
    about: { what, expected: String(expected), found: String(found) },
    settledAt,
  })
  const wrong = body.items.filter(({ expected, found }) => expected !== found)
  const before = firsts.flatMap((one) => one.body.items)
  const fewer = before.flatMap((item): Found[] => {
    const now = body.items.find(({ what }) => same(what, item.what))
    const about = { what: item.what, expected: String(item.found) }
    if (!now) return [{ code: 'count-item-missing', of: item.what, about, settledAt }]
    return now.expected === now.found && now.expected < item.found ? [point(item.what, item.found, now.found)] : []
  })
  return [...wrong.map(({ what, expected, found }) => point(what, expected, found)), ...fewer]
}

/**
 * Only the last count of the anaesthetic says where the pack is, also for the first of two ears: it stays in until both
 * are done. One that was in may not turn into one that was never used.
 */
function pack(theCase: Case, operation: string): Found[] {
  const together = sameAnaesthetic(theCase, operation)
  const all = together.flatMap((one) => linesAbout(theCase, 'count', one))
  const finals = together
    .map((one) => linesAbout(theCase, 'count', one).filter(({ body }) => body.when === 'final'))
    .sort((a, b) => compareText(a.at(-1)?.at ?? '', b.at(-1)?.at ?? ''))
    .at(-1)
  const last = finals?.at(-1)
  const settledAt = { kind: 'count', amends: last?.header.id ?? null } as const
  const unsaid: Found = { code: 'throat-pack-unsaid', of: null, about: {}, settledAt }
  if (!finals || !last) return [unsaid]
  if (finals.some(({ body }) => body.throatPack === 'in')) {
    return [{ code: 'throat-pack-in', of: null, about: {}, settledAt }]
  }
  const wasIn = all.some(({ body }) => body.throatPack === 'in')
  return wasIn && last.body.throatPack === 'none-used' ? [unsaid] : []
}

/** The operations of one anaesthetic; the operation alone where nobody booked it. */
function sameAnaesthetic(theCase: Case, operation: string): readonly string[] {
  const operations = operationsOf({ theCase })
  const own = operations.find(({ id }) => id === operation)
  return own ? anaestheticOf(own, operations, theCase) : [operation]
}

/** The side that was done is said aloud with a yes, and no entry names the other one. */
function side(theCase: Case, operation: string): Found[] {
  const spoken = linesAbout(theCase, 'pause-item', operation).filter(
    ({ body }) => body.pause === 'before-leaving' && body.item === confirms,
  )
  const confirmed = spoken.length > 0 && spoken.every(({ body }) => body.answer === 'yes')
  const disagreement = sidesOf(theCase).disagreements.find(
    (one) => one.operation === operation && one.level === 'block',
  )
  const differs = disagreement && disagreement.LEFT.length > 0 && disagreement.RIGHT.length > 0
  return [
    ...(confirmed
      ? []
      : [
          {
            code: 'side-unconfirmed',
            of: null,
            about: {},
            settledAt: { kind: 'pause', item: confirms },
          } as const,
        ]),
    ...(differs ? [{ code: 'side-differs', of: null, about: {}, settledAt: { kind: 'sides' } } as const] : []),
  ]
}
