import { asDose } from '#core/formulary/drug.ts'
import { doseUnits, routes, stockUnits, uses } from '#core/formulary/words.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import type { AnyQuantity } from '#core/units/quantity.ts'
import { readHow } from './how-given.ts'
import type { PlannedLine } from './request.ts'

/**
 * A kept line as the question it answered, to be asked again; undefined when its words are no longer in the formulary:
 * then it stays in the journal and is shown as it was written.
 *
 * @example askedOfBody(entry.body)?.dose // 1 mg/kg
 */
export function askedOfBody(body: BodyOf<'planned-line'>): PlannedLine | undefined {
  const dose = asDose(fromStored(body.dose) as unknown as AnyQuantity, doseUnits)
  const use = uses.find((word) => word === body.use)
  const route = routes.find((word) => word === body.route)
  const unit = stockUnits.find((word) => word === body.stock?.unit)
  if (!use || !dose) return undefined
  const { blood, deficit } = body
  return {
    id: body.line,
    drug: body.drug,
    use,
    // What blood is to reach chooses its dose: both together would be two choices.
    ...(blood?.goal ? {} : { dose }),
    ...(route && { route }),
    ...(body.qualifier !== null && { qualifier: body.qualifier }),
    ...(body.stock && unit && { stock: fromStored({ ...body.stock, unit }) as NonNullable<PlannedLine['stock']> }),
    ...readHow(body.how),
    ...(deficit && { deficit: { percent: fromStored(deficit.percent), over: fromStored(deficit.over) } }),
    ...(blood && bloodOf(blood)),
  }
}

function bloodOf({ goal, donor, crossMatch }: NonNullable<BodyOf<'planned-line'>['blood']>) {
  return {
    ...(goal && {
      goal: { now: fromStored(goal.now), aim: fromStored(goal.aim), donorPcv: fromStored(goal.donorPcv) },
    }),
    ...(donor && { donor }),
    ...(crossMatch && { crossMatch }),
  }
}
