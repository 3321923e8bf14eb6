import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { rowKey } from '#core/formulary/drug.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { demoFile } from '#demo/index.ts'
import { nothingSaid } from './read-how.ts'
import { type PlanDraft, type PlanRefusal, planDraftOf, readPlan, rowBehind } from './read-plan.ts'

const facts = { drugs: formulary, rules: dosingRules, decimalMark: '.' } as const
const plans = demoFile([])
  .split('\n')
  .filter((line) => line.includes('"kind":"usual-plan"'))
  .map((line) => (JSON.parse(line) as { body: BodyOf<'usual-plan'> }).body)

function refused(draft: PlanDraft, taken: readonly string[] = []): string[] {
  const read = readPlan(draft, facts, taken)
  if (read.kind === 'answer') throw new Error('Nothing was refused.')
  return read.refusal.map(said)
}

function said(refusal: PlanRefusal): string {
  if (refusal.at !== 'chosen' && refusal.at !== 'how') return `${refusal.at} ${refusal.because}`
  return `${refusal.line}: ${refusal.refusal.at} ${refusal.refusal.because}`
}

describe('a usual plan as it is written', () => {
  it('is read back as it stands when it is opened to be changed, with a point and with a comma', () => {
    expect(plans).toHaveLength(3)
    for (const plan of plans) {
      for (const decimalMark of ['.', ','] as const) {
        const here = { ...facts, decimalMark }
        expect(readPlan(planDraftOf(plan, here), here, [])).toEqual({ kind: 'answer', answer: plan })
      }
    }
  })

  it('finds the row of the formulary behind every line of the invented practice', () => {
    for (const { species, lines } of plans) {
      for (const line of lines) expect(rowBehind(line, species, formulary)?.use, line.line).toBe(line.use)
    }
  })

  it('keeps a formulation of its own when it is opened to be changed: never the row of the usual product', () => {
    const rows = formulary.flatMap((drug) =>
      drug.doses.filter(({ formulation }) => formulation !== undefined).map((row) => ({ drug, row })),
    )
    expect(rows.length).toBeGreaterThan(2)
    for (const { drug, row } of rows) {
      const low = row.range.value.low
      const line = {
        ...nothingSaid,
        key: '0',
        line: 'line',
        drug: drug.id,
        row: rowKey(row),
        route: row.routes[0] ?? '',
        dose: `${low.toJSON().value} ${unitWord(low.unit)}`,
        because: 'Chosen.',
        shelfItem: '',
      }
      const draft: PlanDraft = { plan: 'x', species: row.species, lines: [line] }
      const read = readPlan(draft, facts, [])
      if (read.kind === 'refusal') throw new Error(`${rowKey(row)}: ${JSON.stringify(read.refusal)}`)
      expect(planDraftOf(read.answer, facts).lines[0]?.row).toBe(rowKey(row))
    }
  })

  it('has no row where the formulary forbids the drug', () => {
    const line = { drug: 'bupivacaine', use: 'wound_infusion', route: 'wound-catheter', qualifier: null } as const
    const dose = { value: '0.2', unit: 'mg/kg/h' } as const
    expect(rowBehind({ ...line, dose }, 'cat', formulary)).toBeUndefined()
    expect(rowBehind({ ...line, dose }, 'dog', formulary)?.use).toBe('wound_infusion')
  })

  it('names everything that is missing, and fills nothing in', () => {
    expect(refused({ plan: '', species: '', lines: [] })).toEqual([
      'plan not-written',
      'species not-chosen',
      'lines not-chosen',
    ])
    const empty = {
      ...nothingSaid,
      key: 'a',
      line: '',
      drug: '',
      row: '',
      route: '',
      dose: '',
      because: '',
      shelfItem: '',
    }
    expect(refused({ plan: 'x', species: 'dog', lines: [empty] })).toEqual([
      'line not-written',
      'a: drug not-chosen',
      'a: because not-written',
    ])
  })

  it('refuses a name that another plan has, and two lines of one name', () => {
    const [plan] = plans
    if (!plan) throw new Error('The invented practice has no plan.')
    const draft = planDraftOf(plan, facts)
    expect(refused(draft, [plan.plan])).toEqual(['plan taken'])
    const [first] = draft.lines
    if (!first) throw new Error('The plan has no line.')
    const twice = { ...draft, lines: [first, { ...first, key: 'b' }] }
    expect(refused(twice)).toEqual(['line twice', 'line twice'])
  })
})
