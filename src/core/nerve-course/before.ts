import type { OwnCase } from '#core/evidence/own/own-case.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import {
  animalReadings,
  faceReadings,
  type NerveSign,
  nerveSigns,
  ofAnimal,
  type Reading,
  type Readings,
  signReading,
  type TearLimits,
} from './nerve-sign.ts'

/** Why a state before the operation is not known. `after-sedative`: seen, but under a drug that may have caused it. */
export const beforeGaps = ['no-baseline', 'not-assessed', 'after-sedative', 'operation-between'] as const
export type BeforeGap = (typeof beforeGaps)[number]

/** One sign before the operation. */
export type Before =
  | { readonly kind: 'known'; readonly reading: Reading }
  | { readonly kind: 'unknown'; readonly because: BeforeGap }

/** The look that everything after the operation is held against. */
export type BaselineLook = {
  readonly entry: string
  readonly at: string
  readonly beforeSedation: boolean
  readonly signs: Readonly<Record<NerveSign, Before>>
}

function everySign(of: (sign: NerveSign) => Before): Readonly<Record<NerveSign, Before>> {
  return Object.fromEntries(nerveSigns.map((sign) => [sign, of(sign)])) as Record<NerveSign, Before>
}

/** The signs before an operation of which no look at all is on record. */
export const nothingBefore = everySign(() => ({ kind: 'unknown', because: 'no-baseline' }))

/**
 * The last look before the cut, sign by sign. A look from before an earlier operation of this ear says nothing of it;
 * one from before any other operation says nothing of what is of no side. A sign seen only after a sedative is not known.
 *
 * @example baselineLookOf(own, operations, owedRules.face)?.signs.blink // { kind: 'known', reading: { step: 0, … } }
 */
export function baselineLookOf(
  own: OwnCase,
  operations: readonly OperationOnFile[],
  limits: TearLimits,
): BaselineLook | null {
  const { operation, file } = own
  const line = file.theCase.live('baseline').findLast(({ at }) => at <= operation.moment.at)
  if (!line) return null
  const together = anaestheticOf(operation, operations, file.theCase)
  const between = operations.filter(
    ({ id, done, moment }) => done && !together.includes(id) && moment.at > line.at && moment.at < operation.moment.at,
  )
  const readings = readBaseline(line.body, operation.side, limits)
  const ear = between.some(({ side }) => side === operation.side)
  const of = (sign: NerveSign): Before => {
    if (ear || (ofAnimal.has(sign) && between.length > 0)) return { kind: 'unknown', because: 'operation-between' }
    const reading = readings[sign]
    if (!reading) return { kind: 'unknown', because: 'not-assessed' }
    const doubtful = !line.body.beforeSedation && reading.step !== 0
    return doubtful ? { kind: 'unknown', because: 'after-sedative' } : { kind: 'known', reading }
  }
  return {
    entry: line.header.id,
    at: line.at,
    beforeSedation: line.body.beforeSedation,
    signs: everySign(of),
  }
}

function readBaseline(body: BodyOf<'baseline'>, side: 'LEFT' | 'RIGHT', limits: TearLimits): Readings {
  const face = body[side]
  return {
    ...faceReadings(face, limits),
    ...signReading('horner', hornerBefore(face)),
    ...signReading('tilt', body.headTilt === 'none' ? 'no' : body.headTilt === 'not-assessed' ? 'not-assessed' : 'yes'),
    ...animalReadings(body),
  }
}

/** Horner's before the operation, from pupil and third eyelid; free of it only where both were looked at. */
function hornerBefore(
  face: Pick<BodyOf<'baseline'>['LEFT'], 'pupil' | 'thirdEyelidUp'>,
): 'yes' | 'no' | 'not-assessed' {
  if (face.pupil === 'small' || face.thirdEyelidUp === 'yes') return 'yes'
  return face.pupil === 'not-assessed' || face.thirdEyelidUp === 'not-assessed' ? 'not-assessed' : 'no'
}
