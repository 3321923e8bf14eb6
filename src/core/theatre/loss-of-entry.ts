import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import type { Outcome } from '#core/outcome/outcome.ts'
import { bloodLoss, type Lavage, type LossRefusal, type LossSpan } from './blood-loss.ts'
import type { SwabFacts } from './blood-swabs.ts'

/**
 * The loss that one entry tells, as a span; refused where its figures cannot be right together. Lavage that nobody
 * measured stays unknown.
 *
 * @example lossOf(line.body, bloodInSwabs) // at least 20 mL, at most 68 mL
 */
export function lossOf(body: BodyOf<'blood-loss'>, facts: SwabFacts): Outcome<LossSpan, LossRefusal> {
  const swabs = body.swabs.map(
    ({ dry, wet, saline }) =>
      ({ kind: 'weighed', dry: fromStored(dry), wet: fromStored(wet), saline: fromStored(saline) }) as const,
  )
  return bloodLoss({ suction: fromStored(body.jar), lavage: lavageOf(body), swabs }, facts)
}

function lavageOf({ lavageIn, lavageInJar }: BodyOf<'blood-loss'>): Lavage {
  const given = fromStored(lavageIn)
  if (given.value.isZero()) return { kind: 'none' }
  return lavageInJar === null
    ? { kind: 'not-measured', given }
    : { kind: 'recovered', given, recovered: fromStored(lavageInJar) }
}
