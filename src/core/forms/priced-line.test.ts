import { describe, expect, it } from 'vitest'
import { estimate as arrangement } from '#content/forms/estimate.ts'
import type { Draft } from './draft.ts'
import { emptyDraft } from './empty-draft.ts'
import { estimateSoFar } from './estimate-so-far.ts'
import { formOf } from './form.ts'
import { withPricedLine } from './priced-line.ts'
import { readDraft } from './read-draft.ts'

const place = { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' } as const
const night = { label: 'Day in the ward', low: '140.00', high: '190.00', currency: 'GBP' }
const form = formOf(arrangement)
const linesOf = (draft: Draft) => (draft as { readonly lines: readonly object[] }).lines

describe('a line at a price of the list', () => {
  it('fills the line in which nothing stands, and is one more where all are written', () => {
    const first = withPricedLine(emptyDraft(form), night, place)
    const line = { part: '', what: 'Day in the ward', low: '140.00', high: '190.00' }
    expect(linesOf(first)).toEqual([line])
    expect(linesOf(withPricedLine(first, { ...night, label: 'Check' }, place))).toEqual([
      line,
      { ...line, what: 'Check' },
    ])
    const begun = { lines: [{ part: 'ward', what: '', low: '', high: '' }] }
    expect(linesOf(withPricedLine(begun, night, place))).toEqual([{ ...line, part: 'ward' }])
    const typed = { lines: [{ part: '', what: '', low: '9', high: '' }] }
    expect(linesOf(withPricedLine(typed, night, place))).toEqual([typed.lines[0], line])
  })

  it('is text as this house writes money, and counts in the sum as it stands or as it is typed over', () => {
    const comma = { ...place, decimalMark: ',' } as const
    expect(linesOf(withPricedLine({}, night, comma))).toMatchObject([{ low: '140,00', high: '190,00' }])
    const draft = withPricedLine({ lines: [{ part: 'other', what: 'x', low: '10', high: '20' }] }, night, place)
    expect(estimateSoFar(draft, place)?.totals?.high.amount).toBe('210.00')
  })

  it('keeps a currency that is not the house’s, so that no sum is made of two', () => {
    const draft = withPricedLine(withPricedLine({}, night, place), { ...night, currency: 'EUR' }, place)
    expect(linesOf(draft)).toMatchObject([{ low: '140.00' }, { low: '140.00 EUR' }])
    expect(estimateSoFar(draft, place)?.totals).toBeNull()
  })

  it('leaves the part to a person, and a price that is no number is refused, never guessed', () => {
    const read = readDraft(form, withPricedLine(emptyDraft(form), { ...night, high: 'ask' }, place), place)
    const refused = read.kind === 'refusal' ? read.refusal.map(({ path }) => path) : []
    expect(refused).toEqual(expect.arrayContaining(['lines.0.part', 'lines.0.high']))
    expect(refused).not.toContain('lines.0.low')
  })
})
