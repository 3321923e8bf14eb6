import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import type { DrawnLine, PlannedLine } from '#core/dosing/request.ts'
import { type AnyQuantity, convert, Decimal, Quantity, quantity } from '#core/units/quantity.ts'
import { judge, lawsOfOne, lawsOfTwo } from './laws.ts'
import { now, type RandomPlan, randomPlans } from './random-plans.ts'
import { runLaws } from './run-laws.ts'

const law = (says: string) => {
  const found = [...lawsOfOne, ...lawsOfTwo].find((one) => one.says.startsWith(says))
  if (!found) throw new Error(`No law says "${says}".`)
  return found
}

const plan: RandomPlan = {
  request: {
    animal: { species: 'cat', weight: quantity('4', 'kg'), weighedAt: now, conditions: [] },
    at: now,
    given: [],
    lines: [
      {
        id: 'l0',
        drug: 'enrofloxacin',
        use: 'antibiotic_course',
        dose: quantity('4', 'mg/kg'),
        stock: quantity('25', 'mg/mL'),
      },
    ],
  },
  another: { drug: 'carprofen' },
  anotherLine: { id: 'another', drug: 'bupivacaine', use: 'local_block', dose: quantity('1', 'mg/kg') },
  anotherCondition: 'renal-disease',
  heavier: quantity('5', 'kg'),
  pounds: new Decimal('8.8'),
}

/** The engine's answer with one thing in it made wrong. */
function spoilt(change: (line: DrawnLine) => Partial<DrawnLine>): DoseResult {
  const result = judge(plan.request)
  return {
    ...result,
    lines: result.lines.map((line) =>
      line.verdict === 'refused' ? line : ({ ...line, ...change(line) } as DrawnLine),
    ),
  }
}

describe('the laws of a dose plan', () => {
  it('hold for a few random plans; npm test holds a hundred thousand', () => {
    expect(runLaws(150, 20_261_129, () => {})).toBeUndefined()
  })

  it('meet drawn lines and refused ones, so that they are about something', () => {
    const verdicts = fc
      .sample(randomPlans, { numRuns: 60, seed: 3 })
      .flatMap(({ request }) => judge(request).lines.map(({ verdict }) => verdict))
    expect(verdicts.filter((verdict) => verdict !== 'refused').length).toBeGreaterThan(20)
    expect(verdicts.filter((verdict) => verdict === 'refused').length).toBeGreaterThan(20)
  })

  it('notice a dose above its ceiling', () => {
    const more = spoilt((line) => ({
      amount: new Quantity(line.amount.value.times(2), line.amount.unit) as AnyQuantity,
    }))
    expect(() => law('no accepted plan').check(plan, more)).toThrow('enrofloxacin reaches 32 mg in a day')
    expect(() => law('no accepted plan').check(plan, judge(plan.request))).not.toThrow()
  })

  it('notice millilitres above the most of a day (hydroxyethyl starch, 10 mL/kg in a cat)', () => {
    const line = {
      id: 'l0',
      drug: 'hydroxyethyl-starch',
      use: 'fluid_bolus' as const,
      dose: quantity('3', 'mL/kg'),
    }
    const request = { ...plan.request, lines: [line] }
    const answer = judge(request)
    const given = { drug: line.drug, amount: quantity('30', 'mL'), at: now }
    const check = (more: object) => () =>
      law('no accepted plan').check({ ...plan, request: { ...request, ...more } }, answer)
    expect(check({})).not.toThrow()
    expect(check({ given: [given] })).toThrow('hydroxyethyl-starch reaches 42 mL in a day, the most is 40')
  })

  describe('of tablets by their label’s own table: 1 mg of meloxicam to a dog of 8 kg, 0.125 mg/kg', () => {
    const line = {
      id: 'l0',
      drug: 'meloxicam',
      use: 'nsaid',
      qualifier: 'from day 2',
      dose: quantity('0.1', 'mg/kg'),
      tablet: { strength: quantity('1', 'mg') },
    } as const
    const labelled: RandomPlan = {
      ...plan,
      request: {
        ...plan.request,
        animal: { ...plan.request.animal, species: 'dog', weight: quantity('8', 'kg') },
        lines: [line],
      },
    }
    const answer = judge(labelled.request)
    const [given] = answer.lines
    const fault = (asked: PlannedLine, change: object) => () =>
      law('no accepted plan').check(
        { ...labelled, request: { ...labelled.request, lines: [asked] } },
        { ...answer, lines: [{ ...given, ...change } as DrawnLine] },
      )

    it('let the printed count pass', () => {
      expect(fault(line, {})).not.toThrow()
    })

    it('notice another count, another dose, another use and another product, which are held to the maximum', () => {
      const tablets = { each: quantity('1.5', '{tablet}'), strength: quantity('1', 'mg') }
      const faults = [
        fault(line, { tablets, delivered: quantity('0.1875', 'mg/kg') }),
        fault(line, { dosingWeight: quantity('7', 'kg') }),
        fault(line, { dose: quantity('0.09', 'mg/kg') }),
        fault({ ...line, every: quantity('12', 'h') }, {}),
        fault({ ...line, tablet: { ...line.tablet, divides: 'quarters' } }, {}),
        fault({ ...line, tablet: { strength: quantity('2.5', 'mg') } }, {}),
      ]
      for (const one of faults) expect(one).toThrow('the most is 0.1 mg/kg')
    })

    it('notice a count over the label’s own most, one that names one label only, and one beside another dose', () => {
      expect(fault(line, { delivered: quantity('0.16', 'mg/kg') })).toThrow('its label stops')
      const half = given?.findings.map((finding) => ({ ...finding, sources: finding.sources.slice(0, 1) }))
      for (const findings of [[], half]) expect(fault(line, { findings })).toThrow('does not say')
      const twice = { ...labelled.request, lines: [line, { ...line, id: 'l1' }] }
      expect(() =>
        law('no accepted plan').check(
          { ...labelled, request: twice },
          { ...answer, lines: answer.lines.flatMap((one) => [one, { ...one, id: 'l1' }]) },
        ),
      ).toThrow('meloxicam is planned twice: 2 mg')
    })
  })

  it('notice half a tablet of one that is said not to divide', () => {
    const request = {
      ...plan.request,
      lines: [
        {
          id: 'l0',
          drug: 'prednisolone',
          use: 'steroid' as const,
          dose: quantity('0.5', 'mg/kg'),
          tablet: { strength: quantity('5', 'mg'), divides: 'whole' as const },
        },
      ],
    }
    const half = { each: quantity('0.5', '{tablet}'), strength: quantity('5', 'mg') }
    const result = judge(request)
    const lines = result.lines.map((line) => ({ ...line, tablets: half }) as DrawnLine)
    expect(() => law('what is delivered').check({ ...plan, request }, { ...result, lines })).toThrow('divides whole')
  })

  it('notice a refused line that carries an amount', () => {
    const refused = spoilt((line) => ({ verdict: 'refused', findings: line.findings }) as unknown as Partial<DrawnLine>)
    expect(() => law('a refused line').check(plan, refused)).toThrow('l0 is refused with 0 blocks')
  })

  it('notice a syringe that is rounded too far, or says what it does not hold', () => {
    const tooFar = spoilt(() => ({ drawn: quantity('0.7', 'mL') }))
    expect(() => law('what is delivered').check(plan, tooFar)).toThrow('draws 0.7 mL of 0.64 mL')
    const untrue = spoilt((line) => ({ delivered: new Quantity(line.dose.value.times(2), line.dose.unit) as never }))
    expect(() => law('what is delivered').check(plan, untrue)).toThrow('the syringe holds')
  })

  it('notice less drug for more weight', () => {
    const more = spoilt((line) => ({
      amount: new Quantity(line.amount.value.times(3), line.amount.unit) as AnyQuantity,
    }))
    expect(() => law('more weight').check(plan, more)).toThrow('20 mg at 5 kg, 48 mg before')
  })

  it('notice a check that gets weaker when a drug or a condition comes in', () => {
    const barred = {
      ...judge(plan.request),
      lines: judge({ ...plan.request, animal: { ...plan.request.animal, conditions: ['retinal-disease'] } }).lines,
    }
    for (const says of ['a drug more, given', 'a drug more, planned'])
      expect(() => law(says).check(plan, barred)).toThrow('l0 loses block excluded')
  })

  it('read pounds as the pound of 1959', () => {
    expect(convert(quantity('8.8', '[lb_av]'), 'kg')?.toString()).toBe('3.991612856 kg')
    expect(() => law('kilograms and pounds').check(plan, judge(plan.request))).not.toThrow()
  })
})
