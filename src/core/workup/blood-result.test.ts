import { describe, expect, it } from 'vitest'
import { bloodTest } from '#core/journal/kinds/blood-test.ts'
import { plain } from '#core/units/quantity.ts'
import { measuredOf } from './blood-result.ts'

function read(printed: string, unit: string | null, mark: '.' | ',' = '.'): string | null {
  const measured = measuredOf({ printed, unit }, mark)
  return measured && `${plain(measured.value)} ${measured.unit}`
}

describe('a printed blood result', () => {
  it('is a quantity when its number stands alone and its unit is one of the closed list (UCUM spelling)', () => {
    expect(read('44', '%')).toBe('44 %')
    expect(read('31.5', 'g/L')).toBe('31.5 g/L')
    expect(read('31,5', 'g/L', ',')).toBe('31.5 g/L')
  })

  it('stays text with a comparator, a word, a range, or a unit that is not ours', () => {
    expect(read('<0.5', 'g/L')).toBeNull()
    expect(read('clumped', 'g/L')).toBeNull()
    expect(read('5-7', 'g/L')).toBeNull()
    expect(read('312', '10^9/L')).toBeNull()
    expect(read('14.2', 's')).toBeNull()
    expect(read('8', null)).toBeNull()
  })

  it('is never converted: grams per decilitre are not grams per litre, and a comma is no point', () => {
    expect(read('3.15', 'g/dL')).toBeNull()
    expect(read('31,5', 'g/L')).toBeNull()
  })

  it('is kept as printed in the journal, and at least one line is', () => {
    const line = { analyte: 'PT', printed: '>100', unit: 's', flag: 'H', range: '7 to 12' }
    expect(bloodTest.body.parse({ ...bloodTest.example, results: [line] }).results).toEqual([line])
    expect(bloodTest.body.safeParse({ ...bloodTest.example, results: [] }).success).toBe(false)
  })
})
