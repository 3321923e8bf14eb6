import { describe, expect, it } from 'vitest'
import { readEntry } from '#core/journal/accept.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { plansOf, policiesOf } from './from-journal.ts'

describe('what the house chose, read from its own stream', () => {
  it('gives a usual plan its strengths from the shelf, and each line its person, day and reason', () => {
    const make = entryMaker()
    const house = fold([make({ kind: 'shelf-item' }), make({ kind: 'usual-plan' })])
    const [plan] = plansOf(house)
    expect(plan?.lines[0]).toMatchObject({
      drug: 'bupivacaine',
      person: 'person-surgeon',
      date: '2026-03-01',
      reason: expect.any(String),
    })
    expect(String(plan?.lines[0]?.stock)).toBe('5 mg/mL')
  })

  it('takes no strength from a product that is another drug by now', () => {
    const make = entryMaker()
    const item = make({ kind: 'shelf-item' })
    const body = { ...(item.body as object), drug: 'ketamine', strength: { value: '100', unit: 'mg/mL' } }
    const [plan] = plansOf(fold([{ ...item, body: body as typeof item.body }, make({ kind: 'usual-plan' })]))
    expect(plan?.lines[0]).toMatchObject({ drug: 'bupivacaine' })
    expect(plan?.lines[0]).not.toHaveProperty('stock')
    expect(plan?.lines[0]).not.toHaveProperty('shelfItem')
  })

  it('gives a dose policy with who chose it, and none once it was withdrawn', () => {
    const make = entryMaker()
    const policy = make({ kind: 'dose-policy' })
    expect(policiesOf(fold([policy]))).toMatchObject([
      { drug: 'maropitant', species: 'dog', route: 'SC', person: 'person-surgeon' },
    ])
    const gone = make({
      kind: 'withdrawal',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      withdraws: policy.id,
      reason: 'Reviewed.',
    })
    expect(policiesOf(fold([policy, gone]))).toEqual([])
  })

  it('refuses a plan in words that the formulary does not have', () => {
    const make = entryMaker()
    const plan = make({ kind: 'usual-plan' })
    const body = structuredClone(plan.body) as { lines: { use: string }[] }
    body.lines = body.lines.map((line) => ({ ...line, use: 'for the ear' }))
    expect(readEntry({ ...plan, body })).toMatchObject({ kind: 'refusal', refusal: { path: 'body.lines.0.use' } })
  })
})
