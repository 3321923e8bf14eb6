import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored, type StoredQuantity } from '#core/journal/stored.ts'
import type { AnyQuantity, Quantity } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { storedHow } from './how-given.ts'
import type { DoseLine, DrawnLine, PlannedLine } from './request.ts'

type Body = BodyOf<'planned-line'>
type Stored = Body['dose']
type Worked = Pick<Body, 'amount' | 'volume' | 'drawn' | 'worked'>

/** What stands around a line that was worked out: as it was asked, whose words choose the dose, and the weight. */
export type AroundLine = {
  readonly asked: PlannedLine
  readonly because: string
  readonly plan: string | null
  readonly shelfItem: string | null
  readonly weight: Quantity<'kg'>
}

const stored = (quantity: AnyQuantity): Stored => quantity.toJSON() as Stored

/**
 * A line that the engine allowed, as the entry that keeps it. A refused line has no amount and can be none.
 *
 * @example plannedBody(line, { asked, because: 'Half of the ceiling.', plan: null, shelfItem: null, weight }).amount // 18.4 mg
 */
export function plannedBody(line: DrawnLine, { asked, because, plan, shelfItem, weight }: AroundLine): Body {
  const { deficit, goal, donor, crossMatch } = asked
  const isBlood = goal !== undefined || donor !== undefined || crossMatch !== undefined
  return {
    line: line.id,
    drug: line.drug,
    use: line.use,
    route: line.route ?? null,
    qualifier: asked.qualifier ?? null,
    dose: stored(line.dose as AnyQuantity),
    because,
    plan,
    shelfItem,
    stock: asked.stock ? stored(asked.stock as AnyQuantity) : null,
    how: storedHow(asked),
    deficit: deficit ? { percent: deficit.percent.toJSON(), over: deficit.over.toJSON() } : null,
    blood: isBlood
      ? {
          goal: goal ? { now: goal.now.toJSON(), aim: goal.aim.toJSON(), donorPcv: goal.donorPcv.toJSON() } : null,
          donor: donor ?? null,
          crossMatch: crossMatch ?? null,
        }
      : null,
    ...workedOut(line),
    weight: weight.toJSON(),
  }
}

/** What stays to be read beside the entry when the facts behind it have changed. */
function workedOut(line: DrawnLine): Worked {
  const { amount, volume, drawn, rate, poured, loading, tablets, dispense } = line
  const more = rate ?? poured ?? loading ?? tablets ?? dispense
  return {
    amount: stored(amount),
    volume: volume?.toJSON() ?? null,
    drawn: drawn?.toJSON() ?? null,
    worked: more
      ? {
          rate: rate?.toJSON() ?? null,
          label: poured ? stored(poured.mine.amount) : null,
          fluid: poured?.fluid.toJSON() ?? null,
          loading: loading ? { amount: stored(loading.amount), drawn: loading.drawn?.toJSON() ?? null } : null,
          tablets: tablets?.each.toJSON() ?? null,
          dispense: dispense ? (dispense.amount.toJSON() as NonNullable<Body['worked']>['dispense']) : null,
        }
      : null,
  }
}

/**
 * Whether anything that is drawn, counted out or set at the pump differs from what was written; a refused line is not
 * drawn at all. Of a line of old only amount and volume are known.
 *
 * @example isDrawnOtherwise(entry.body, now) // true once the weight is another
 */
export function isDrawnOtherwise(body: Body, now: DoseLine): boolean {
  if (now.verdict === 'refused') return true
  const { amount, drawn, worked } = workedOut(now)
  if (!isSame(body.amount, amount) || !isSame(body.drawn, drawn)) return true
  const then = body.worked
  if (then === null) return false
  return !(
    isSame(then.rate, worked?.rate ?? null) &&
    isSame(then.label, worked?.label ?? null) &&
    isSame(then.fluid, worked?.fluid ?? null) &&
    isSame(then.loading?.amount ?? null, worked?.loading?.amount ?? null) &&
    isSame(then.loading?.drawn ?? null, worked?.loading?.drawn ?? null) &&
    isSame(then.tablets, worked?.tablets ?? null) &&
    isSame(then.dispense, worked?.dispense ?? null)
  )
}

function isSame<U extends Unit>(a: StoredQuantity<U> | null, b: StoredQuantity<U> | null): boolean {
  if (a === null || b === null) return a === b
  return a.unit === b.unit && fromStored(a).value.eq(fromStored(b).value)
}
