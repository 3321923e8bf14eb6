import { Temporal } from 'temporal-polyfill'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import { dosedAnimalOf, givenOf, linesOfPlan, plansOf } from '#core/dosing/from-journal.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import type { Subject } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import type { AnyQuantity } from '#core/units/quantity.ts'
import { type Chart, moment } from './chart.ts'
import { practiceChart } from './practice.ts'

type Stored = BodyOf<'planned-line'>['dose']

const stored = (quantity: AnyQuantity): Stored => quantity.toJSON() as Stored

/**
 * Works the named plan out with the real engine and writes one entry a line. Nothing here is typed in: a line that
 * the engine refuses stops the demo, so that an invented case can never show what the tool would not allow.
 */
export function writePlannedLines(
  chart: Chart,
  wanted: { readonly operation: Subject; readonly by: string; readonly at: string; readonly plan: string },
): ReadonlyMap<string, string> {
  const at = moment(wanted.at, chart.zone).at
  const theCase = fold(chart.entries)
  const animal = dosedAnimalOf(theCase, at)
  const plans = plansOf(fold(practiceChart().entries))
  const plan = plans.find((one) => one.name === wanted.plan)
  if (!animal?.weight || !plan) throw new Error(`The demo has no weight or no plan "${wanted.plan}".`)
  const { weight } = animal
  const lines = linesOfPlan(plan)
  const request = { animal, given: givenOf(theCase, at), at: Temporal.Instant.from(at), lines }
  const result = doseLines(request, { drugs: formulary, rules: dosingRules, plans, policies: [] })
  const written = new Map<string, string>()
  for (const line of result.lines) {
    const because = plan.lines.find((one) => one.id === line.id)?.reason ?? ''
    const asked = lines.find((one) => one.id === line.id)
    const stock = asked?.stock as AnyQuantity | undefined
    const body = bodyOf(line, {
      because,
      plan: plan.name,
      qualifier: asked?.qualifier ?? null,
      stock: stock ? stored(stock) : null,
      weight: weight.toJSON(),
    })
    written.set(line.id, chart.write('planned-line', { at: wanted.at, by: wanted.by, subject: wanted.operation }, body))
  }
  return written
}

type Rest = Pick<BodyOf<'planned-line'>, 'because' | 'plan' | 'qualifier' | 'stock' | 'weight'>

function bodyOf(line: DoseLine, rest: Rest): BodyOf<'planned-line'> {
  if (line.verdict === 'refused') {
    throw new Error(`The demo's plan is refused: ${line.id} ${line.findings.map((finding) => finding.code).join(', ')}`)
  }
  return {
    line: line.id,
    drug: line.drug,
    use: line.use,
    route: line.route ?? null,
    dose: stored(line.dose as AnyQuantity),
    amount: stored(line.amount),
    volume: line.volume?.toJSON() ?? null,
    drawn: line.drawn?.toJSON() ?? null,
    ...rest,
  }
}
