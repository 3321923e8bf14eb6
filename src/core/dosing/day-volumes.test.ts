import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { Given, PlannedLine } from './request.ts'

const at = Temporal.Instant.from('2026-03-02T09:00:00Z')
const dog = { species: 'dog', weight: quantity('10', 'kg'), conditions: [] } as const

function judge(lines: readonly PlannedLine[], given: readonly Given[] = [], animal: object = dog) {
  const request = { animal: { ...dog, ...animal }, at, given, lines }
  return doseLines(request, { drugs: formulary, rules: dosingRules, plans: [], policies: [] }).lines.map(
    ({ findings }) => findings.filter(({ code }) => code.startsWith('over-daily')),
  )
}
const codes = (...asked: Parameters<typeof judge>) =>
  judge(...asked).map((findings) => findings.map(({ level, code }) => `${level} ${code}`))

// AAHA/AAFP 2013, page 10: colloid up to 20 mL/kg in 24 h in dogs, 10 to 20 in cats.
describe('millilitres of a day', () => {
  const starch = (id: string, perKg: string): PlannedLine => ({
    id,
    drug: 'hydroxyethyl-starch',
    use: 'fluid_bolus',
    dose: quantity(perKg, 'mL/kg'),
  })
  const given = (millilitres: string, hoursAgo: number): Given => ({
    drug: 'hydroxyethyl-starch',
    amount: quantity(millilitres, 'mL'),
    at: at.subtract({ hours: hoursAgo }),
  })
  const block = ['block over-daily-maximum']

  it('are summed over the lines of a plan, to the very millilitre', () => {
    expect(codes([starch('a', '10'), starch('b', '10')])).toEqual([[], []])
    expect(codes([starch('a', '10'), starch('b', '10.01')])).toEqual([block, block])
  })

  it('count what was given in the last day, and not what was given before', () => {
    expect(codes([starch('a', '5')], [given('160', 3)])).toEqual([block])
    expect(codes([starch('a', '5')], [given('150', 3)])).toEqual([[]])
    expect(codes([starch('a', '5')], [given('160', 25)])).toEqual([[]])
    expect(judge([starch('a', '5')], [given('160', 3)])[0]?.[0]?.about).toMatchObject({ sum: '210 mL', most: '200 mL' })
  })

  it('end at half of it in a cat', () => {
    const cat = { species: 'cat', weight: quantity('4', 'kg') }
    expect(codes([starch('a', '3')], [given('29', 3)], cat)).toEqual([block])
    expect(codes([starch('a', '3')], [given('28', 3)], cat)).toEqual([[]])
  })

  it('are never counted as little when nobody wrote down how much was given', () => {
    expect(codes([starch('a', '5')], [{ drug: 'hydroxyethyl-starch' }])).toEqual([block])
  })
})

// Caulfield 2022: 1.5 mL/kg, then 0.25 mL/kg/min; about 8 mL/kg in a day (one source).
describe('a bolus and its infusion', () => {
  const bolus: PlannedLine = { id: 'b', drug: 'lipid-emulsion', use: 'emergency', dose: quantity('1.5', 'mL/kg') }
  const infusion = (minutes?: string): PlannedLine => ({
    id: 'i',
    drug: 'lipid-emulsion',
    use: 'cri',
    dose: quantity('0.25', 'mL/kg/min'),
    ...(minutes !== undefined && { over: quantity(minutes, 'min') }),
  })

  it('are one sum: 26 minutes fit beside the bolus, 27 do not; the sheet itself is only told', () => {
    expect(codes([bolus, infusion('26')])).toEqual([[], []])
    expect(codes([bolus, infusion('27')])).toEqual([['note over-daily-maximum'], ['block over-daily-maximum']])
  })

  it('without an end say when the most of the day is reached', () => {
    const findings = judge([bolus, infusion()])
    expect(findings[1]?.map(({ level, code }) => `${level} ${code}`)).toEqual(['confirm over-daily-maximum-in-time'])
    expect(findings[1]?.[0]?.about).toMatchObject({ after: '26 min', most: '80 mL' })
  })
})
