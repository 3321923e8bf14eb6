import { answer, never, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { add, Decimal, Quantity, scale, subtract } from '#core/units/quantity.ts'
import { bloodInSwabs, type SwabFacts, type SwabRefusal, type Swabs, type VolumeSpan } from './blood-swabs.ts'

/** What became of the fluid that was washed in. */
export type Lavage =
  | { readonly kind: 'none' }
  /** So much of it was found again in the jar. */
  | { readonly kind: 'recovered'; readonly given: Quantity<'mL'>; readonly recovered: Quantity<'mL'> }
  | { readonly kind: 'not-measured'; readonly given: Quantity<'mL'> }
  /** The packed cell volume of the jar says how much of it is blood; both in per cent. */
  | { readonly kind: 'jar-pcv'; readonly jar: Decimal; readonly patient: Decimal }

export type LossMeasures = {
  /** All that is in the jar: blood and lavage together. */
  readonly suction: Quantity<'mL'>
  readonly lavage: Lavage
  readonly swabs: readonly Swabs[]
}

/** A loss is a span: at least – at most. The lower end is the measured estimate that marks fire on. */
export type LossSpan = {
  readonly atLeast: Quantity<'mL'>
  readonly atMost: Quantity<'mL'>
  readonly lavage: Lavage['kind']
  /** Some swabs were only counted. */
  readonly estimated: boolean
}

export type LossRefusal =
  | SwabRefusal
  | { readonly because: 'negative-measure' }
  | {
      readonly because: 'recovered-more-than-given'
      readonly given: Quantity<'mL'>
      readonly recovered: Quantity<'mL'>
    }
  | {
      readonly because: 'recovered-more-than-jar'
      readonly suction: Quantity<'mL'>
      readonly recovered: Quantity<'mL'>
    }
  | { readonly because: 'jar-above-patient'; readonly jar: Decimal; readonly patient: Decimal }

const nothing = new Quantity(new Decimal(0), 'mL')

/**
 * Blood lost into jar and swabs. Lavage that was not recovered cannot be subtracted: then the loss is at least
 * jar + swabs − lavage (none of it may be negative) and at most jar + swabs.
 *
 * @example bloodLoss({ suction: 350 mL, lavage: { kind: 'not-measured', given: 300 mL }, swabs: [] }, facts) // 50–350 mL
 */
export function bloodLoss(measures: LossMeasures, facts: SwabFacts): Outcome<LossSpan, LossRefusal> {
  const { suction, lavage } = measures
  if (suction.value.lt(0)) return refuse({ because: 'negative-measure' })
  const swabs = allSwabs(measures.swabs, facts)
  if (swabs.kind === 'refusal') return swabs
  const jar = bloodInJar(suction, lavage)
  if (jar.kind === 'refusal') return jar
  const { low, high } = swabs.answer
  const unmeasured = lavage.kind === 'not-measured' ? lavage.given : nothing
  return answer({
    atLeast: notBelowZero(subtract(add(jar.answer, low), unmeasured)),
    atMost: add(jar.answer, high),
    lavage: lavage.kind,
    estimated: measures.swabs.some(({ kind }) => kind === 'counted'),
  })
}

/**
 * Several losses of one operation as one span. The lower end of the sum is lifted by nothing that was not measured.
 *
 * @example totalLoss([first, second])?.atMost // the sum of both upper ends
 */
export function totalLoss(spans: readonly LossSpan[]): LossSpan | undefined {
  const [first, ...others] = spans
  if (!first) return undefined
  return others.reduce(
    (sum, span) => ({
      atLeast: add(sum.atLeast, span.atLeast),
      atMost: add(sum.atMost, span.atMost),
      // The least certain of the two speaks for the sum.
      lavage: leastCertain.find((kind) => kind === sum.lavage || kind === span.lavage) ?? span.lavage,
      estimated: sum.estimated || span.estimated,
    }),
    first,
  )
}

const leastCertain: readonly Lavage['kind'][] = ['not-measured', 'jar-pcv', 'recovered', 'none']

function allSwabs(swabs: readonly Swabs[], facts: SwabFacts): Outcome<VolumeSpan, SwabRefusal> {
  let sum: VolumeSpan = { low: nothing, high: nothing }
  for (const one of swabs) {
    const blood = bloodInSwabs(one, facts)
    if (blood.kind === 'refusal') return blood
    sum = { low: add(sum.low, blood.answer.low), high: add(sum.high, blood.answer.high) }
  }
  return answer(sum)
}

/** What of the jar can be blood, before lavage that nobody measured is thought of. */
function bloodInJar(suction: Quantity<'mL'>, lavage: Lavage): Outcome<Quantity<'mL'>, LossRefusal> {
  switch (lavage.kind) {
    case 'none':
      return answer(suction)
    case 'not-measured':
      return lavage.given.value.lt(0) ? refuse({ because: 'negative-measure' }) : answer(suction)
    case 'recovered': {
      const { given, recovered } = lavage
      if (given.value.lt(0) || recovered.value.lt(0)) return refuse({ because: 'negative-measure' })
      if (recovered.value.gt(given.value)) return refuse({ because: 'recovered-more-than-given', given, recovered })
      if (recovered.value.gt(suction.value)) return refuse({ because: 'recovered-more-than-jar', suction, recovered })
      return answer(subtract(suction, recovered))
    }
    case 'jar-pcv': {
      const { jar, patient } = lavage
      if (jar.lt(0) || patient.lte(0)) return refuse({ because: 'negative-measure' })
      if (jar.gt(patient)) return refuse({ because: 'jar-above-patient', jar, patient })
      return answer(scale(suction, jar.div(patient)))
    }
    default:
      return never(lavage)
  }
}

function notBelowZero(volume: Quantity<'mL'>): Quantity<'mL'> {
  return volume.value.lt(0) ? nothing : volume
}
