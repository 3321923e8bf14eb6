import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import type { DoseRequest, PlannedLine } from '#core/dosing/request.ts'
import type { Drug } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

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

/** Half and nineteen in twenty of `rounds` plans are worked out within so many milliseconds, after a warm-up. */
export function benchDosePlan(size = 25, rounds = 200) {
  const request = planOf(size)
  const knowledge = { drugs, rules: dosingRules, plans: [], policies: [] }
  const times: number[] = []
  for (let round = -20; round < rounds; round += 1) {
    const began = performance.now()
    doseLines(request, knowledge)
    if (round >= 0) times.push(performance.now() - began)
  }
  times.sort((a, b) => a - b)
  const at = (share: number) => times[Math.min(rounds - 1, Math.floor(rounds * share))] ?? 0
  return { size, half: at(0.5), most: at(0.95) }
}
