import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DosedAnimal, PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const cells = { id: 'rc', drug: 'packed-red-cells', use: 'blood_product', dose: quantity('10', 'mL/kg') } as const

function judged(
  animal: Pick<DosedAnimal, 'species' | 'bloodGroup' | 'transfusedBefore'>,
  line: Partial<PlannedLine> = {},
) {
  const request = {
    animal: { weight: quantity('4', 'kg'), conditions: [], ...animal },
    given: [],
    lines: [{ ...cells, ...line }],
  }
  const [answer] = doseLines(request, knowledge).lines
  return {
    verdict: answer?.verdict,
    found: answer?.findings.map(({ code, level }) => `${level} ${code}`),
    answer,
  }
}

describe('red cells into a cat', () => {
  it('are refused while the cat, or the donor, is not typed', () => {
    expect(judged({ species: 'cat' })).toMatchObject({ verdict: 'refused', found: ['block blood-untyped'] })
    expect(judged({ species: 'cat', bloodGroup: 'A' })).toMatchObject({ found: ['block donor-untyped'] })
  })

  it('are allowed from the same group and refused from another; an AB cat may take A with a reason', () => {
    expect(judged({ species: 'cat', bloodGroup: 'B' }, { donor: 'B' })).toMatchObject({ verdict: 'ok', found: [] })
    expect(judged({ species: 'cat', bloodGroup: 'B' }, { donor: 'A' })).toMatchObject({ verdict: 'refused' })
    expect(judged({ species: 'cat', bloodGroup: 'A' }, { donor: 'AB' })).toMatchObject({ verdict: 'refused' })
    expect(judged({ species: 'cat', bloodGroup: 'AB' }, { donor: 'A' }).found).toEqual(['confirm blood-group-other'])
    expect(judged({ species: 'cat', bloodGroup: 'AB' }, { donor: 'B' })).toMatchObject({ verdict: 'refused' })
  })
})

describe('red cells into a dog', () => {
  const typed = { species: 'dog', bloodGroup: 'dea-1-positive' } as const
  const line = { donor: 'dea-1-negative' } as const

  it('are noted the first time, and need a cross-match after any transfusion', () => {
    expect(judged({ ...typed, transfusedBefore: 'no' }, line).found).toEqual(['note first-transfusion'])
    expect(judged({ ...typed, transfusedBefore: 'yes' }, line)).toMatchObject({
      verdict: 'refused',
      found: ['block cross-match-missing'],
    })
    expect(judged({ ...typed, transfusedBefore: 'yes' }, { ...line, crossMatch: 'compatible' }).verdict).toBe('ok')
    expect(judged(typed, line).found).toEqual(['confirm transfusions-unknown'])
  })

  it('ask to confirm an untyped dog, and a positive donor for a negative dog', () => {
    expect(judged({ species: 'dog', transfusedBefore: 'no' }).found).toContain('confirm dog-untyped')
    const negative = { species: 'dog', bloodGroup: 'dea-1-negative', transfusedBefore: 'no' } as const
    expect(judged(negative, { donor: 'dea-1-positive' }).found).toContain('confirm blood-group-other')
  })

  it('are refused when the cross-match does not fit, whatever the groups say', () => {
    expect(judged({ ...typed, transfusedBefore: 'no' }, { ...line, crossMatch: 'incompatible' }).verdict).toBe(
      'refused',
    )
  })

  it('are 40 mL at 10 mL/kg in 4 kg, and never called a large injection', () => {
    const { answer } = judged({ ...typed, transfusedBefore: 'no' }, line)
    expect(answer).toMatchObject({ amount: quantity('40', 'mL'), volume: quantity('40', 'mL') })
  })
})

it('plasma is not asked for a group by this rule', () => {
  const dog = { species: 'dog' } as const
  expect(judged(dog, { drug: 'fresh-frozen-plasma' }).found).toEqual([])
})
