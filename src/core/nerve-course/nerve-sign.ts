import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import type { OwedRules } from '#core/procedures/follow-up.ts'
import { compare } from '#core/units/quantity.ts'

/** What is followed of an operated ear. The first four are of nerves, the last two of the eye. */
export const nerveSigns = ['blink', 'droop', 'horner', 'balance', 'tears', 'cornea'] as const
export type NerveSign = (typeof nerveSigns)[number]

/** How many steps a sign has; step 0 is normal. */
export const stepsOf: Readonly<Record<NerveSign, 2 | 3>> = {
  blink: 3,
  droop: 2,
  horner: 2,
  balance: 2,
  tears: 3,
  cornea: 2,
}

/** Signs that a local anaesthetic at the ear may cause by itself. */
export const heldByBlock: ReadonlySet<NerveSign> = new Set(['blink', 'droop'])
/** Signs that can be lasting by the rule; an eye is treated until it is well. */
export const canLast: ReadonlySet<NerveSign> = new Set(['blink', 'droop', 'horner', 'balance'])

/** One sign at one look: its step, 0 normal; null where an eye was seen to blink and nobody said how well. */
export type Reading = { readonly step: number | null; readonly value: string | null }
export type Readings = Readonly<Partial<Record<NerveSign, Reading>>>

type Face = Pick<BodyOf<'check'>, 'blink' | 'lipOrEarDroop' | 'tearTest' | 'fluorescein'>
/** From which tears on an eye has enough, and below which it has too few. */
export type TearLimits = Pick<OwedRules['face'], 'lowTears' | 'normalTears'>

const blinkSteps = { normal: 0, weak: 1, absent: 2 } as const
const yesNoSteps = { no: 0, yes: 1 } as const
const stainSteps = { negative: 0, positive: 1 } as const

function plain<Code extends string>(
  sign: NerveSign,
  code: Code | 'not-assessed',
  steps: Readonly<Record<Code, number>>,
): Readings {
  return code === 'not-assessed' ? {} : { [sign]: { step: steps[code], value: null } }
}

/** A blink by itself, as a round of the ward or the answer after a year has it. */
export function blinkReading(blink: BodyOf<'check'>['blink']): Readings {
  return plain('blink', blink, blinkSteps)
}

/** A sign that is there or not. */
export function signReading(sign: NerveSign, answer: 'yes' | 'no' | 'not-assessed'): Readings {
  return plain(sign, answer, yesNoSteps)
}

/**
 * What a look says of one face and eye; what was not assessed is left out, and so never counts as normal.
 *
 * @example faceReadings(check.body, owedRules.face).tears // { step: 1, value: '14 mm/min' }
 * Reference: the limits of the tear test are content, with their sources.
 */
export function faceReadings(face: Face, limits: TearLimits): Readings {
  return {
    ...blinkReading(face.blink),
    ...signReading('droop', face.lipOrEarDroop),
    ...tearReading(face.tearTest, limits),
    ...plain('cornea', face.fluorescein, stainSteps),
  }
}

function tearReading(test: Face['tearTest'], { lowTears, normalTears }: TearLimits): Readings {
  if (test === null) return {}
  const tears = fromStored(test)
  const under = (limit: Sourced<typeof tears>) => compare(tears, limit.value) < 0
  return { tears: { step: under(lowTears) ? 2 : under(normalTears) ? 1 : 0, value: tears.toString() } }
}
