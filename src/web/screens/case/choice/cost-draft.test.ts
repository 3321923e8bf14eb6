import { expect, test } from 'vitest'
import { type CostDraft, costDraftOf, emptyLine, linesOfDraft, noPrice, timesOf } from './cost-draft.ts'

const prices = [{ id: 'price-check', body: { label: 'Check', low: '40.00', high: '60.00', currency: 'GBP' } }]
const written: CostDraft = [{ what: 'Check', price: 'price-check', atLeast: '4', atMost: '8', every: 'year' }]

test('A line takes the price as it stands on the list, and is read back the same', () => {
  const lines = linesOfDraft(written, prices)
  expect(lines?.[0]?.price).toEqual({
    row: 'price-check',
    low: { amount: '40.00', currency: 'GBP' },
    high: { amount: '60.00', currency: 'GBP' },
  })
  expect(costDraftOf(lines && { option: 'teca-lbo', lines })).toEqual(written)
})

test('Nothing is answered beforehand, and an open line keeps all of them from being kept', () => {
  expect(costDraftOf(null)).toEqual([emptyLine])
  expect(linesOfDraft([...written, emptyLine], prices)).toBeNull()
  expect(linesOfDraft([{ ...written[0], price: 'price-gone' } as CostDraft[number]], prices)).toBeNull()
})

test('What has no price is said to have none, never given one', () => {
  expect(linesOfDraft([{ ...written[0], price: noPrice } as CostDraft[number]], prices)?.[0]?.price).toBeNull()
})

test('Times are whole numbers of a year', () => {
  expect(['0', '12', '366', '367', '1.5', '-1', ''].map(timesOf)).toEqual([0, 12, 366, null, null, null, null])
})
