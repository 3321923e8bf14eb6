import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { drugPairs } from '#content/protocols/drug-pairs.ts'
import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { labelBands } from '#content/protocols/label-bands.ts'
import type { Interaction } from '#core/dosing/rules.ts'
import { type DoseRange, type Drug, drugById } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert } from '#core/units/quantity.ts'

const drugs: readonly Drug[] = formulary
const pairs: readonly Interaction[] = drugPairs
const sheet = emergencyFacts.groups.flatMap(({ call, rows }) =>
  rows.flatMap((row) => row.species.map((species) => ({ call, row, species }))),
)

/** Names that stand for no active substance of the formulary. */
function unknown(names: readonly string[], held: readonly Drug[] = drugs): string[] {
  return [...new Set(names)].filter((name) => drugById(held, name)?.id !== name)
}

/** Low and high ends in the unit of a dose; undefined when they are of another kind. */
function holds({ low, high }: DoseRange, dose: AnyQuantity): boolean {
  const [least, most] = [convert(low, dose.unit), convert(high, dose.unit)]
  return Boolean(least && most && dose.value.gte(least.value) && dose.value.lte(most.value))
}

describe('substances join on one id', () => {
  it('of the emergency sheet', () => {
    expect(unknown(sheet.map(({ row }) => row.drug))).toEqual([])
  })

  it('of the washouts of interactions', () => {
    expect(unknown(pairs.flatMap(({ washouts }) => washouts.flatMap(({ drug }) => (drug ? [drug] : []))))).toEqual([])
  })

  it('of the label bands of calc', () => {
    expect(unknown(Object.keys(labelBands).map((product) => product.split(' ')[0] ?? ''))).toEqual([])
  })

  it('and would list one that is spelled another way', () => {
    expect(unknown(['adrenaline', 'vasopresin', 'meloxicam'])).toEqual(['adrenaline', 'vasopresin'])
  })

  it('and every group that a rule speaks of has a drug in it', () => {
    const { leanWeightGroups, leanWeightInfusions, secondPersonGroups, rounding } = dosingRules
    const named = [
      ...pairs.flatMap(({ between, washouts }) => [...between, ...washouts.flatMap(({ group }) => group ?? [])]),
      ...[leanWeightGroups, leanWeightInfusions, secondPersonGroups].flatMap(({ value }) => value),
      ...rounding.value.classes.flatMap(({ groups }) => groups),
    ]
    expect([...new Set(named)].filter((group) => !drugs.some((drug) => drug.groups.includes(group)))).toEqual([])
  })
})

describe('a number of the emergency sheet', () => {
  const joined = sheet.map(({ call, row, species }) => {
    const rows = drugById(drugs, row.drug)?.doses.filter((one) => one.species === species) ?? []
    return { name: `${call}: ${row.drug}, ${species}`, row, rows }
  })

  it('lies inside a row of the formulary for the same drug and species', () => {
    const outside = joined.filter(({ row, rows }) => {
      const ranges = rows.flatMap((one) => [one.range, ...(one.otherRanges ?? [])])
      return !ranges.some((range) => holds(range.value, row.dose.value))
    })
    expect(outside.map(({ name }) => name)).toEqual([])
    expect(joined.length).toBeGreaterThan(20)
  })

  it('is drawn from a strength that the formulary lists', () => {
    const odd = joined.filter(({ row: { stock }, rows }) => {
      const listed = rows.flatMap(({ stocks }) => stocks.value.flatMap(({ strength }) => strength ?? []))
      return stock && !listed.some((one) => convert(one, stock.unit)?.value.eq(stock.value))
    })
    expect(odd.map(({ name }) => name)).toEqual([])
  })

  it('and its infusion are the very numbers of the formulary', () => {
    const apart = joined.filter(
      ({ row, rows }) => row.follow && !rows.some((one) => row.follow && holds(one.range.value, row.follow.value.rate)),
    )
    expect(apart.map(({ name }) => name)).toEqual([])
  })
})
