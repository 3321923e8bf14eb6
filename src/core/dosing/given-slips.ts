import { convert, Decimal, plain } from '#core/units/quantity.ts'
import { massGiven, saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { drugsGiven } from './given-drug.ts'
import type { DoseRequest, DosingKnowledge, Given } from './request.ts'
import { listsStrength } from './volume.ts'

/**
 * A slip in what was given makes room that is not there: 0.5 % written as 0.5 mg/mL counts a tenth, micrograms for
 * milligrams a thousandth. What was done is never refused; that it may be counted as too little is said.
 *
 * @example judgeGivenSlips({ given: [4 mL of bupivacaine of 0.5 mg/mL], … }, knowledge)[0]?.code // 'given-strength-doubted'
 */
export function judgeGivenSlips(
  request: DoseRequest,
  { drugs, rules }: Pick<DosingKnowledge, 'drugs' | 'rules'>,
): DoseFinding[] {
  return request.given.flatMap((given) => {
    const [drug, second] = drugsGiven(drugs, given.drug)
    if (!drug || second) return []
    const rows = drug.doses.filter(({ species }) => species === request.animal.species)
    const { stock } = given
    const weakest = stock && !drug.doses.some((row) => listsStrength(row, stock)) && isMuchWeaker(given, rows, rules)
    if (weakest) {
      const about = { given: saidOf(given), stock: stock.toString(), known: weakest }
      return [found('confirm', 'given-strength-doubted', about, [rules.strengthOff])]
    }
    const mass = massGiven(given)
    const { weight } = request.animal
    if (!mass || !weight) return []
    const lows = rows.flatMap(({ range }) => convert(range.value.low, 'mg/kg')?.value ?? [])
    const least = lows.length > 0 && Decimal.min(...lows)
    const { unitSlip } = rules.overRange.value
    if (!least || mass.value.div(weight.value).times(unitSlip).gt(least)) return []
    const about = { given: saidOf(given), low: `${plain(least)} mg/kg` }
    return [found('confirm', 'given-amount-doubted', about, [rules.overRange])]
  })
}

/** The listed strengths, when the stated one is a tenth of one of them or less than a tenth of all. */
function isMuchWeaker(
  { stock }: Given,
  rows: DosingKnowledge['drugs'][number]['doses'],
  { strengthOff }: Pick<DosingKnowledge['rules'], 'strengthOff'>,
): string | undefined {
  if (!stock) return undefined
  const listed = rows.flatMap(({ stocks }) =>
    stocks.value.flatMap(({ strength }) => (strength && convert(strength, stock.unit)) ?? []),
  )
  const times = listed.map(({ value }) => value.div(stock.value))
  const isSlip =
    times.some((one) => one.eq(10)) || (times.length > 0 && times.every((one) => one.gte(strengthOff.value.confirm)))
  return isSlip ? [...new Set(listed.map(String))].join('; ') : undefined
}
