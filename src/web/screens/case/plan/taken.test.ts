import { describe, expect, it } from 'vitest'
import { found } from '#core/dosing/findings.ts'
import type { JudgedPlan, JudgedPlanLine } from '#core/dosing/plan-for-operation.ts'
import { quantity } from '#core/units/quantity.ts'
import { bodiesOf, faultOf, isTaken, nothingChosen } from './taken.ts'

const dose = quantity('1', 'mg/kg')
const chosen = {
  drug: 'bupivacaine',
  use: 'local_block',
  dose,
  reason: 'Half.',
  person: 'p',
  date: '2025-01-06',
} as const
const drawn = {
  drug: 'bupivacaine',
  use: 'local_block',
  dose,
  amount: quantity('18.4', 'mg'),
  secondPerson: false,
  sources: [],
  cautions: [],
  never: [],
  rows: [],
} as const

function judged(id: string, level: 'note' | 'confirm' | null, more: Partial<JudgedPlanLine> = {}): JudgedPlanLine {
  const findings = level ? [found(level, 'dose-twice-range')] : []
  const line = { ...drawn, id, findings, verdict: level ? 'caution' : 'ok' } as const
  return {
    line,
    asked: { id, drug: 'bupivacaine', use: 'local_block' },
    chosen: { ...chosen, id },
    already: null,
    ...more,
  }
}

const refused: JudgedPlanLine = {
  ...judged('splash', null),
  line: { ...drawn, id: 'splash', findings: [found('block', 'weight-unknown')], verdict: 'refused' },
}
const plan: JudgedPlan = {
  plan: { name: 'ours', title: 'ours', species: 'dog', lines: [] },
  lines: [judged('a', null), judged('b', 'note'), judged('c', 'confirm'), refused],
  weight: quantity('18.4', 'kg'),
  findings: [],
  ceilings: [],
}
const [first, , third] = plan.lines as [JudgedPlanLine, JudgedPlanLine, JudgedPlanLine]

describe('the lines of a plan that are written', () => {
  it('are those the check allows; what asks for a reason and what is refused are not among them', () => {
    expect(bodiesOf(plan, nothingChosen()).map(({ line }) => line)).toEqual(['a', 'b'])
  })

  it('hold one that asks for a reason only when somebody insists, with the reason in its own words', () => {
    const insisted = { ...nothingChosen(), taken: { c: true } }
    expect(isTaken(third, plan, insisted)).toBe(true)
    expect(faultOf(third, insisted)).toMatch(/Say why/)
    const reasoned = { ...insisted, reasons: { c: ' Seen with the owner. ' } }
    expect(faultOf(third, reasoned)).toBeNull()
    expect(bodiesOf(plan, reasoned).at(-1)).toMatchObject({
      line: 'c',
      because: 'Half. Although: Seen with the owner.',
      plan: 'ours',
    })
    expect(faultOf(third, { ...insisted, reasons: { c: 'x'.repeat(290) } })).toMatch(/\d+ characters/)
  })

  it('never hold a refused line, whoever ticks it', () => {
    expect(bodiesOf(plan, { ...nothingChosen(), taken: { splash: true } }).map(({ line }) => line)).toEqual(['a', 'b'])
  })

  it('leave out what somebody left out, and everything while nobody weighed', () => {
    expect(bodiesOf(plan, { ...nothingChosen(), taken: { a: false } }).map(({ line }) => line)).toEqual(['b'])
    expect(bodiesOf({ ...plan, weight: null }, nothingChosen())).toEqual([])
    expect(isTaken(first, { ...plan, weight: null }, nothingChosen())).toBe(false)
  })
})
