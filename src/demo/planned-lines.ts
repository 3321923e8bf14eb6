import { Temporal } from 'temporal-polyfill'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import { dosedAnimalOf, givenOf, linesOfPlan, plansOf } from '#core/dosing/from-journal.ts'
import { plannedBody } from '#core/dosing/planned-body.ts'
import type { DoseLine, DrawnLine } from '#core/dosing/request.ts'
import type { Subject } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { type Chart, moment } from './chart.ts'
import { practiceChart } from './practice.ts'

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
    const chosen = plan.lines.find((one) => one.id === line.id)
    const asked = lines.find((one) => one.id === line.id)
    if (!chosen || !asked) throw new Error(`The demo's plan has no line ${line.id}.`)
    const around = { asked, because: chosen.reason, plan: plan.name, shelfItem: chosen.shelfItem ?? null, weight }
    const body = plannedBody(allowed(line), around)
    written.set(line.id, chart.write('planned-line', { at: wanted.at, by: wanted.by, subject: wanted.operation }, body))
  }
  return written
}

function allowed(line: DoseLine): DrawnLine {
  if (line.verdict === 'refused') {
    throw new Error(`The demo's plan is refused: ${line.id} ${line.findings.map((finding) => finding.code).join(', ')}`)
  }
  return line
}
