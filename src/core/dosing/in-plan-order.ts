import type { BodyOf, Case, Line } from '#core/journal/fold.ts'

type Planned = Line<BodyOf<'planned-line'>>

/**
 * Planned lines in the order of the house's usual plan; lines written in one minute have no order of their own.
 *
 * @example inPlanOrder(planned, file.house).map(({ body }) => body.line) // ['premed', 'induction', 'block']
 */
export function inPlanOrder(planned: readonly Planned[], house: Case): Planned[] {
  const plans = house.live('usual-plan').map(({ body }) => body)
  const place = ({ body }: Planned) => {
    const plan = plans.find((one) => one.plan === body.plan)
    const at = plan?.lines.findIndex(({ line }) => line === body.line) ?? -1
    return at < 0 ? Number.MAX_SAFE_INTEGER : at
  }
  return [...planned].sort((a, b) => place(a) - place(b))
}
