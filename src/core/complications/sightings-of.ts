import { deepEvents, isPastBlock, type OwnCase } from '#core/evidence/own/own-case.ts'
import type { OwnCountingRules } from '#core/evidence/own/own-outcome.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { momentOf, type Sighting } from './sighting.ts'
import { onBaseline, type SignOfBefore } from './state-before.ts'
import type { TroubleEvent, TroubleNeed } from './trouble-codes.ts'

/**
 * What checks, late events, the summary and a death already say of trouble, so that nobody is asked for it again.
 *
 * @example sightingsOf(ownCase, rules).map(({ event }) => event) // ['wound-gap']
 */
export function sightingsOf(own: OwnCase, rules: Pick<OwnCountingRules, 'nerveFromHours'>): Sighting[] {
  return [...ofChecks(own, rules), ...ofLateEvents(own), ...ofSummary(own)]
}

type Check = OwnCase['checks'][number]

const wounds = {
  gap: 'wound-gap',
  seroma: 'seroma',
  infected: 'wound-infection',
  'pinna-edge': 'pinna-edge',
} as const satisfies Partial<Record<Check['body']['wound'], TroubleEvent>>

const woundNeeds = {
  nothing: 'none',
  dressing: 'wound-care-awake',
  drug: 'some-drug',
  'drainage-awake': 'intervention-awake',
  operation: 'some-operation',
  'not-assessed': 'not-known',
} as const satisfies Record<Check['body']['woundNeeded'], TroubleNeed>

function ofChecks(own: OwnCase, rules: Pick<OwnCountingRules, 'nerveFromHours'>): Sighting[] {
  const pastBlock = isPastBlock(own, rules)
  return own.checks.flatMap((line) => {
    const { body } = line
    const at = { unit: 'ear' as const, at: momentOf(line), entry: line.header.id }
    const wound = body.wound === 'closed' || body.wound === 'not-assessed' ? null : wounds[body.wound]
    const face = pastBlock(line) && !body.possibleBlockEffect
    return [
      ...(wound ? [{ ...at, event: wound, needed: woundNeeds[body.woundNeeded], worse: true }] : []),
      ...(face && (body.blink === 'weak' || body.blink === 'absent' || body.lipOrEarDroop === 'yes')
        ? [{ ...at, event: 'facial-weakness' as const, needed: 'not-known' as const, worse: faceWorse(own, line) }]
        : []),
      ...seen(body.horner === 'yes', 'horner', own, at),
      ...seen(body.headTilt === 'yes' || (pastBlock(line) && isDizzy(body)), 'vestibular', own, at),
      ...seen(body.fluorescein === 'positive', 'corneal-ulcer', own, at),
    ]
  })
}

/** So soon after an anaesthetic an animal sways and its eyes may beat by the drugs alone. */
function isDizzy({ nystagmus, unsteady }: Check['body']): boolean {
  return nystagmus === 'yes' || unsteady === 'yes'
}

function seen(
  there: boolean,
  event: SignOfBefore,
  own: OwnCase,
  at: Pick<Sighting, 'unit' | 'at' | 'entry'>,
): Sighting[] {
  if (!there) return []
  const before = onBaseline(event, own.baseline, own.operation.side)
  return [{ ...at, event, needed: 'not-known', worse: before === 'not-known' ? null : before === 'absent' }]
}

const blinks = { normal: 0, weak: 1, absent: 2, 'not-assessed': null } as const

/** Worse when the blink is weaker than it was, or a droop is new; not known where the part that is ill now was not looked at. */
function faceWorse(own: OwnCase, { body }: Check): boolean | null {
  const before = own.baseline?.[own.operation.side]
  if (!before) return null
  const [now, then] = [blinks[body.blink], blinks[before.blink]]
  const blink = now === null || now === 0 ? false : then === null ? null : now > then
  const droop =
    body.lipOrEarDroop !== 'yes'
      ? false
      : before.lipOrEarDroop === 'not-assessed'
        ? null
        : before.lipOrEarDroop === 'no'
  if (blink === true || droop === true) return true
  return blink === null || droop === null ? null : false
}

const lateNeeds = {
  nothing: 'none',
  drug: 'some-drug',
  // A picture is no treatment: what it will need is open.
  imaging: 'not-known',
  operation: 'some-operation',
  'operation-done': 'some-operation',
  'not-decided': 'not-known',
} as const satisfies Record<OwnCase['late'][number]['body']['needed'], TroubleNeed>

function ofLateEvents(own: OwnCase): Sighting[] {
  const deep = new Set(deepEvents(own))
  return own.late.map((line) => {
    const { what, needed, firstSeen } = line.body
    const event = deep.has(line) ? 'deep-infection' : what === 'jaw-pain' || what === 'tumour-again' ? what : 'other'
    return { event, unit: 'ear', at: firstSeen, needed: lateNeeds[needed], worse: true, entry: line.header.id }
  })
}

type Summed = NonNullable<OwnCase['summary']>['complications'][number]

const summed = {
  bleeding: { event: 'haemorrhage', unit: 'ear', needed: 'not-known' },
  'nerve-cut': { event: 'nerve-injured', unit: 'ear', needed: 'not-known' },
  'nerve-stretched': { event: 'nerve-injured', unit: 'ear', needed: 'not-known' },
  'low-pressure': { event: 'anaesthetic-event', unit: 'animal', needed: 'not-known' },
  // A heart that stands still is a life in danger, whatever was done.
  arrest: { event: 'anaesthetic-event', unit: 'animal', needed: 'intensive-care' },
  airway: { event: 'airway', unit: 'animal', needed: 'not-known' },
  other: { event: 'other', unit: 'ear', needed: 'not-known' },
} as const satisfies Record<Summed, Pick<Sighting, 'event' | 'unit' | 'needed'>>

function ofSummary({ file, operation, summary }: OwnCase): Sighting[] {
  const line = linesAbout(file.theCase, 'operation-summary', operation.id).at(-1)
  if (!summary || !line) return []
  return summary.complications.map((code) => ({
    ...summed[code],
    at: operation.moment,
    worse: true,
    entry: line.header.id,
  }))
}
