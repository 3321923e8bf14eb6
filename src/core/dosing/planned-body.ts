import type { BodyOf } from '#core/journal/fold.ts'
import type { AnyQuantity, Quantity } from '#core/units/quantity.ts'
import type { DrawnLine, PlannedLine } from './request.ts'

type Body = BodyOf<'planned-line'>
type Stored = Body['dose']

/** What stands around a line that was worked out: as it was asked, whose words choose the dose, and the weight. */
export type AroundLine = {
  readonly asked: Pick<PlannedLine, 'qualifier' | 'stock'>
  readonly because: string
  readonly plan: string | null
  readonly weight: Quantity<'kg'>
}

const stored = (quantity: AnyQuantity): Stored => quantity.toJSON() as Stored

/**
 * A line that the engine allowed, as the entry that keeps it. A refused line has no amount and can be none.
 *
 * @example plannedBody(line, { asked, because: 'Half of the ceiling.', plan: 'our usual plan, dog', weight }).amount // 18.4 mg
 */
export function plannedBody(line: DrawnLine, { asked, because, plan, weight }: AroundLine): Body {
  return {
    line: line.id,
    drug: line.drug,
    use: line.use,
    route: line.route ?? null,
    qualifier: asked.qualifier ?? null,
    dose: stored(line.dose as AnyQuantity),
    because,
    plan,
    stock: asked.stock ? stored(asked.stock as AnyQuantity) : null,
    amount: stored(line.amount),
    volume: line.volume?.toJSON() ?? null,
    drawn: line.drawn?.toJSON() ?? null,
    weight: weight.toJSON(),
  }
}
