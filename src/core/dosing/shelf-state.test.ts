import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold, kindNamed } from '#core/journal/fold.ts'
import { upcast } from '#core/journal/kind.ts'
import { Decimal, Quantity } from '#core/units/quantity.ts'
import { judgeItem, judgeShelf, wentOut } from './shelf-state.ts'

const methadone: BodyOf<'shelf-item'> = {
  item: 'methadone-10',
  drug: 'methadone',
  label: 'Methadone 10 mg/mL',
  form: 'injection',
  strength: { value: '10', unit: 'mg/mL' },
  divides: null,
  expires: '2026-03-31',
  outSince: null,
  controlled: 'yes',
}
const codes = (findings: readonly { readonly code: string; readonly level: string }[]) =>
  findings.map(({ code, level }) => `${code} ${level}`)

describe('a product on the shelf', () => {
  it('may be used on its last day and not the day after', () => {
    expect(codes(judgeItem(methadone, '2026-03-31'))).toEqual([])
    expect(codes(judgeItem(methadone, '2026-04-01'))).toEqual(['shelf-expired confirm'])
  })

  it('says nothing of a date that nobody wrote down', () => {
    expect(judgeItem({ ...methadone, expires: null }, '2030-01-01')).toEqual([])
  })

  it('is out of stock from that day on', () => {
    const out = { ...methadone, outSince: '2026-03-10' }
    expect(codes(judgeItem(out, '2026-03-09'))).toEqual([])
    expect(codes(judgeItem(out, '2026-03-10'))).toEqual(['shelf-out note'])
  })

  it('of the first version is read with what nobody had been asked', () => {
    const kind = kindNamed('shelf-item')
    const { expires: _, outSince: __, controlled: ___, ...first } = methadone
    expect(kind && upcast(kind, 1, first)).toEqual({ ...first, expires: null, outSince: null, controlled: null })
  })
})

describe('a planned line and the shelf', () => {
  const stock = new Quantity(new Decimal('10'), 'mg/mL')
  const line = { drug: 'methadone', stock }
  // Half past midnight of 1 April in Berlin, still 31 March in London.
  const at = Temporal.Instant.from('2026-03-31T22:30:00Z')

  it('is judged by the day of the clinic', () => {
    expect(codes(judgeShelf(line, at, { items: [methadone], zone: 'Europe/London' }))).toEqual([])
    expect(codes(judgeShelf(line, at, { items: [methadone], zone: 'Europe/Berlin' }))).toEqual([
      'shelf-expired confirm',
    ])
  })

  it('says nothing while another product of this strength is in date', () => {
    const fresh = { ...methadone, item: 'methadone-b', expires: '2027-01-31' }
    expect(judgeShelf(line, at, { items: [methadone, fresh], zone: 'Europe/Berlin' })).toEqual([])
  })

  it('says nothing of another strength', () => {
    const weaker = { drug: 'methadone', stock: new Quantity(new Decimal('5'), 'mg/mL') }
    expect(judgeShelf(weaker, at, { items: [methadone], zone: 'Europe/Berlin' })).toEqual([])
  })

  it('meets a tablet by its strength', () => {
    const item = { ...methadone, form: 'tablet', strength: { value: '1', unit: 'mg/{tablet}' } } as const
    const tablet = { strength: new Quantity(new Decimal('1.0'), 'mg') }
    expect(judgeShelf({ drug: 'methadone', tablet }, at, { items: [item], zone: 'Europe/Berlin' })).toHaveLength(1)
  })
})

describe('who found that there is none left', () => {
  it('is who wrote it first, also after the label was put right', () => {
    const make = entryMaker()
    const there = make({ kind: 'shelf-item', body: methadone })
    const out = make({
      kind: 'shelf-item',
      body: { ...methadone, outSince: '2026-03-10' },
      supersedes: [there.id],
      reason: 'The last one went.',
      author: { kind: 'person', person: 'person-nurse' },
    })
    const label = make({
      kind: 'shelf-item',
      body: { ...methadone, outSince: '2026-03-10', label: 'Methadone' },
      supersedes: [out.id],
      reason: 'Label.',
    })
    const house = fold([there, out, label])
    const [item] = house.live('shelf-item')
    expect(item && wentOut(house, item)?.header.author).toEqual({ kind: 'person', person: 'person-nurse' })
  })
})
