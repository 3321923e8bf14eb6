import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import type { OwedRules } from '#core/procedures/follow-up.ts'
import { compare } from '#core/units/quantity.ts'

/** What is followed of an operated ear: face, Horner’s, balance, eye, and what else the look before it holds. */
export const nerveSigns = [
  'blink',
  'droop',
  'nostril',
  'horner',
  'tilt',
  'nystagmus',
  'gait',
  'tears',
  'cornea',
  'throat',
  'hearing',
] as const
export type NerveSign = (typeof nerveSigns)[number]

/** How many steps a sign has; step 0 is normal. */
export const stepsOf: Readonly<Record<NerveSign, 2 | 3>> = {
  blink: 3,
  droop: 2,
  nostril: 2,
  horner: 2,
  tilt: 2,
  nystagmus: 2,
  gait: 2,
  tears: 3,
  cornea: 2,
  throat: 3,
  hearing: 2,
}

/** Signs that a local anaesthetic at the ear may cause by itself. */
export const heldByBlock: ReadonlySet<NerveSign> = new Set(['blink', 'droop'])
/** Signs that the anaesthetic itself causes: swaying, and eyes that beat. */
export const heldByAnaesthetic: ReadonlySet<NerveSign> = new Set(['nystagmus', 'gait'])
/** Signs of the animal and of no side: what is new with both ears operated is nobody’s. */
export const ofAnimal: ReadonlySet<NerveSign> = new Set(['tilt', 'nystagmus', 'gait', 'throat', 'hearing'])
/** What a photograph of an owner can show. */
export const onPhotograph: ReadonlySet<NerveSign> = new Set(['blink', 'droop', 'horner', 'tilt'])
/** The face, Horner’s and the balance can be lasting by the rule; an eye is treated until it is well. */
export const canLast: ReadonlySet<NerveSign> = new Set(['blink', 'droop', 'horner', 'tilt', 'nystagmus', 'gait'])

/** One sign at one look: its step, 0 normal; null where an eye was seen to blink and nobody said how well. */
export type Reading = { readonly step: number | null; readonly value: string | null }
export type Readings = Readonly<Partial<Record<NerveSign, Reading>>>

type Face = Pick<BodyOf<'check'>, 'blink' | 'lipOrEarDroop' | 'nostril' | 'tearTest' | 'fluorescein'>
type Animal = Pick<BodyOf<'check'>, 'nystagmus' | 'unsteady' | 'gag' | 'hears'>
/** From which tears on an eye has enough, and below which it has too few. */
export type TearLimits = Pick<OwedRules['face'], 'lowTears' | 'normalTears'>

const blinkSteps = { normal: 0, weak: 1, absent: 2 } as const
const yesNoSteps = { no: 0, yes: 1 } as const
const stainSteps = { negative: 0, positive: 1 } as const
const nostrilSteps = { moist: 0, dry: 1 } as const
const gagSteps = { present: 0, weak: 1, absent: 2 } as const
const hearsSteps = { yes: 0, no: 1 } as const

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
    ...plain('nostril', face.nostril, nostrilSteps),
    ...tearReading(face.tearTest, limits),
    ...plain('cornea', face.fluorescein, stainSteps),
  }
}

/**
 * What a look says of the animal as a whole, but for the head tilt, which the look before asks with its side.
 *
 * @example animalReadings(check.body).gait // { step: 1, value: null }: unsteady
 */
export function animalReadings({ nystagmus, unsteady, gag, hears }: Animal): Readings {
  return {
    ...signReading('nystagmus', nystagmus),
    ...signReading('gait', unsteady),
    ...plain('throat', gag, gagSteps),
    ...plain('hearing', hears, hearsSteps),
  }
}

function tearReading(test: Face['tearTest'], { lowTears, normalTears }: TearLimits): Readings {
  if (test === null) return {}
  const tears = fromStored(test)
  const under = (limit: Sourced<typeof tears>) => compare(tears, limit.value) < 0
  return { tears: { step: under(lowTears) ? 2 : under(normalTears) ? 1 : 0, value: tears.toString() } }
}
