import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import { planNow } from '#core/dosing/plan-now.ts'
import { plannedBody } from '#core/dosing/planned-body.ts'
import type { DoseRequest, PlannedLine } from '#core/dosing/request.ts'
import type { Drug } from '#core/formulary/drug.ts'
import { caseFileOf } from '#core/journal/case-file.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { quantity } from '#core/units/quantity.ts'
import { practiceChart, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'

const drugs: readonly Drug[] = formulary

/** The lowest listed dose and first strength of so many rows for dogs: work for the engine, no plan for an animal. */
function planOf(size: number): DoseRequest {
  const rows = drugs
    .flatMap((drug) => drug.doses.map((row) => ({ drug, row })))
    .filter(({ row }) => row.species === 'dog')
  const every = Math.max(1, Math.floor(rows.length / size))
  const lines = Array.from({ length: size }, (_, index): PlannedLine => {
    const one = rows[index * every]
    if (!one) throw new Error('The formulary has too few rows for this plan.')
    const { drug, row } = one
    const stock = row.stocks.value.find(({ strength }) => strength)?.strength
    return {
      id: `line-${index}`,
      drug: drug.id,
      use: row.use,
      dose: row.range.value.low,
      ...(row.routes[0] && { route: row.routes[0] }),
      ...(row.qualifier && { qualifier: row.qualifier }),
      ...(row.formulation && { formulation: row.formulation }),
      ...(stock && { stock }),
    }
  })
  return { animal: { species: 'dog', weight: quantity('8.2', 'kg'), conditions: [] }, given: [], lines }
}

const knowledge = { drugs, rules: dosingRules, plans: [], policies: [] }

/** Half and nineteen in twenty of `rounds` plans are worked out within so many milliseconds, after a warm-up. */
export function benchDosePlan(size = 25, rounds = 200) {
  const request = planOf(size)
  return { size, ...timed(rounds, () => doseLines(request, knowledge)) }
}

/**
 * The same for the dose plan of one operation as its page recomputes it: the invented dog’s whole year in the case, so
 * many lines that the engine allowed kept as entries, judged again with everything given.
 */
export function benchPlanNow(size = 25, rounds = 200) {
  const { file, operation, at, lines } = caseWith(size)
  const around = knowledgeOf(file)
  return { size: lines, ...timed(rounds, () => planNow(file, operation, at, around)) }
}

function caseWith(size: number) {
  const { entries, stream, clinic } = tansy()
  const checked = entries.filter(({ kind }) => kind !== 'planned-line' && kind !== 'second-check')
  const planned = entries.find(({ kind }) => kind === 'planned-line')
  const booked = entries.find(({ kind }) => kind === 'booking')
  if (!planned || !booked) throw new Error('The invented dog has a booking and a plan.')
  const { lines } = planOf(size * 4)
  const animal = { species: 'dog', weight: quantity('18.4', 'kg'), conditions: [] } as const
  const judged = lines.flatMap((asked) => {
    const [line] = doseLines({ animal, given: [], lines: [asked] }, knowledge).lines
    return line && line.verdict !== 'refused' ? [{ asked, line }] : []
  })
  const make = entryMaker({ clinic, stream, subject: planned.subject, happenedAt: planned.happenedAt }, 7)
  const kept = judged.slice(0, size).map(({ asked, line }) => {
    const around = { asked, because: 'For the measurement.', plan: null, shelfItem: null, weight: animal.weight }
    return make({ kind: 'planned-line', body: plannedBody(line, around) })
  })
  const whole = [...practiceChart().entries, ...checked, ...kept]
  const file = caseFileOf({ clinic, rows: registerRows(), entries: whole }, stream)
  const operation = file && operationsOf(file)[0]
  if (!file || !operation) throw new Error('The invented dog is operated on.')
  const found = planNow(file, operation, planned.writtenAt, knowledgeOf(file)).lines.length
  if (found !== size) throw new Error(`The plan has ${found} lines instead of ${size}.`)
  return { file, operation, at: planned.writtenAt, lines: found }
}

function timed(rounds: number, work: () => unknown): { readonly half: number; readonly most: number } {
  const times: number[] = []
  for (let round = -20; round < rounds; round += 1) {
    const began = performance.now()
    work()
    if (round >= 0) times.push(performance.now() - began)
  }
  times.sort((a, b) => a - b)
  const at = (share: number) => times[Math.min(rounds - 1, Math.floor(rounds * share))] ?? 0
  return { half: at(0.5), most: at(0.95) }
}
