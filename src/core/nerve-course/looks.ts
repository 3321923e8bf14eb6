import type { OwnCase } from '#core/evidence/own/own-case.ts'
import { daySince } from '#core/evidence/own/own-case.ts'
import type { OwnCountingRules } from '#core/evidence/own/own-outcome.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { laterOf } from '#core/owed/setting.ts'
import type { OwedRules } from '#core/procedures/follow-up.ts'
import { blocksOf } from '#core/theatre/block-lasts.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import {
  animalReadings,
  blinkReading,
  faceReadings,
  type NerveSign,
  onPhotograph,
  type Readings,
  signReading,
} from './nerve-sign.ts'

/** Who looked. `owner-words` is an account and never an examination. */
export const lookSources = ['ward', 'us', 'referring-vet', 'owner-photograph', 'owner-words'] as const
export type LookSource = (typeof lookSources)[number]

/** A local anaesthetic that may still hold the face; `said` by whoever looked, or `hours`: too soon after the cut. */
export type BlockThen = {
  readonly because: 'drug' | 'said' | 'hours'
  readonly drug: string | null
  /** Null where no duration is on record. */
  readonly until: string | null
}

/** One dated look at an operated ear that says anything of a nerve or the eye. */
export type NerveLook = {
  readonly entry: string
  readonly at: string
  /** The calendar day, and how many after the operation. */
  readonly on: string
  readonly day: number
  readonly source: LookSource
  readonly readings: Readings
  readonly block: BlockThen | null
  /** So soon after the cut that the anaesthetic may still act. */
  readonly soon: boolean
}

/** What the course is read by: durations and limits from content, days of our own counting. */
export type NerveRules = Pick<OwedRules, 'face' | 'blockLasts'> & { readonly counting: OwnCountingRules }

type Seen = {
  readonly line: Pick<Line, 'at' | 'header'>
  readonly source: LookSource
  readonly readings: Readings
  readonly said?: boolean
}

/**
 * Every look of an operated ear, oldest first, until the same ear was operated again. One at which nothing was assessed
 * is none.
 *
 * @example nerveLooksOf(own, rules).map(({ source }) => source) // ['ward', 'us', 'owner-words']
 */
export function nerveLooksOf(own: OwnCase, rules: NerveRules): NerveLook[] {
  const { side } = own.operation
  const seen: Seen[] = [
    ...own.rounds.map((line): Seen => ({ line, source: 'ward', readings: blinkReading(line.body[side].blink) })),
    ...firstBlinks(own).map(
      (line): Seen => ({ line, source: 'ward', readings: { blink: { step: null, value: null } } }),
    ),
    ...own.checks.map((line) => ofCheck(line, rules)),
    ...own.statuses.flatMap(ofStatus),
  ]
  return seen
    .filter(({ readings }) => Object.keys(readings).length > 0)
    .sort((a, b) => compareText(a.line.at, b.line.at) || compareText(a.line.header.id, b.line.header.id))
    .map(({ line, source, readings, said = false }) => ({
      entry: line.header.id,
      at: line.at,
      on: dayOf({ at: line.at, zone: own.file.clinic.zone }),
      day: daySince(own, line.at),
      source,
      readings,
      block: blockThen(line.at, said, own, rules),
      soon: line.at < soonestOf(own, rules),
    }))
}

/** A first blink that names no side is this ear's only where no other was operated by then. */
function firstBlinks({ file: { theCase }, operation, again, file }: OwnCase): Line<BodyOf<'observation'>>[] {
  const others = theCase.live('operation-summary').some(({ body }) => body.side !== operation.side)
  return theCase.live('observation').filter(({ at, body }) => {
    const ofThisEar = body.side === null ? !others : body.side === operation.side
    const before = again === null || dayOf({ at, zone: file.clinic.zone }) <= again
    return body.first === 'blink' && ofThisEar && at > operation.moment.at && before
  })
}

function ofCheck(line: Line<BodyOf<'check'>>, { face }: NerveRules): Seen {
  const { body } = line
  const seen: Readings = {
    ...faceReadings(body, face),
    ...signReading('horner', body.horner),
    ...signReading('tilt', body.headTilt),
    ...animalReadings(body),
  }
  // A photograph shows a face and how the head is held, not a cornea, tears or a gait.
  const shown = Object.entries(seen).filter(([sign]) => onPhotograph.has(sign as NerveSign))
  return {
    line,
    source: body.seenBy,
    readings: body.seenBy === 'owner-photograph' ? Object.fromEntries(shown) : seen,
    said: body.possibleBlockEffect,
  }
}

function ofStatus(line: Line<BodyOf<'twelve-months'>>): Seen[] {
  const { source, face } = line.body
  if (source === 'nobody-reached' || face === 'unknown') return []
  const by = { 'our-examination': 'us', 'referring-vet': 'referring-vet', owner: 'owner-words' } as const
  // A face that is normal neither droops; how a weak one looks at rest is not said.
  const droop = face === 'normal' ? signReading('droop', 'no') : {}
  return [{ line, source: by[source], readings: { ...blinkReading(face), ...droop } }]
}

function blockThen(at: string, said: boolean, own: OwnCase, rules: NerveRules): BlockThen | null {
  const given = blocksActing(own, rules)
  const acting = given
    .filter(({ from, until }) => from <= at && until > at)
    .sort((a, b) => compareText(a.until, b.until))
    .at(-1)
  if (acting) return { because: 'drug', drug: acting.drug, until: acting.known ? acting.until : null }
  const soonest = soonestOf(own, rules)
  // A day after the last block, or after the cut, nobody can say it any more: the finding is graded.
  const latest = given.map(({ from }) => hoursAfter(from, rules.counting.nerveFromHours.value)).reduce(laterOf, soonest)
  if (said && at < latest) return { because: 'said', drug: null, until: null }
  return at < soonest ? { because: 'hours', drug: null, until: soonest } : null
}

function soonestOf({ operation }: OwnCase, { counting }: NerveRules): string {
  return hoursAfter(operation.moment.at, counting.nerveFromHours.value)
}

type Acting = { readonly drug: string; readonly from: string; readonly until: string; readonly known: boolean }

/** A drug whose duration is not on record holds as long as nothing is said of a nerve after the cut. */
function blocksActing({ file, operation }: OwnCase, { blockLasts, counting }: NerveRules): Acting[] {
  return blocksOf(file.theCase, [operation.id], blockLasts, file.clinic.zone).map(({ given, wornOff }) => ({
    drug: given.body.drug,
    from: given.at,
    until: wornOff ?? hoursAfter(given.at, counting.nerveFromHours.value),
    known: wornOff !== null,
  }))
}

function hoursAfter(at: string, hours: number): string {
  return new Date(Date.parse(at) + hours * 3_600_000).toISOString()
}

/** Spans in which a missing blink is not graded: around the cut, and while a local anaesthetic may act. */
export function blockSpans(
  own: OwnCase,
  rules: NerveRules,
): readonly { readonly from: string; readonly until: string }[] {
  const { at } = own.operation.moment
  const spans = [
    { from: at, until: hoursAfter(at, rules.counting.nerveFromHours.value) },
    ...blocksActing(own, rules).map(({ from, until }) => ({ from: laterOf(from, at), until })),
  ].filter(({ from, until }) => until > from)
  const joined: { from: string; until: string }[] = []
  for (const span of spans.sort((a, b) => compareText(a.from, b.from))) {
    const last = joined.at(-1)
    if (last && span.from <= last.until) last.until = laterOf(last.until, span.until)
    else joined.push({ ...span })
  }
  return joined
}
