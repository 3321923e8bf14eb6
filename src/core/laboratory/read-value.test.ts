import { describe, expect, it } from 'vitest'
import { laboratoryTerms as terms } from '#content/exchange/laboratory-terms.ts'
import { readValue } from './read-value.ts'

const number = (text: string) => {
  const read = readValue(text, terms)
  return read.kind === 'number' ? [read.value, read.unit, read.category] : read.kind
}

describe('a printed value', () => {
  it('is read with its sign and unit, however they are written', () => {
    expect(number('<=0.5')).toEqual(['<=0.5', null, null])
    expect(number('≤0,5 µg/mL')).toEqual(['<=0.5', 'mg/L', null])
    expect(number('=< 0.50 ug/ml')).toEqual(['<=0.5', 'mg/L', null])
    expect(number('≥ 32 mg/L R')).toEqual(['>=32', 'mg/L', 'R'])
    expect(number('18 mm')).toEqual(['18', 'mm', null])
    expect(number('2/38')).toEqual(['2/38', null, null])
    expect(number('0,125')).toEqual(['0.125', null, null])
    expect(number('>4 R*')).toEqual(['>4', null, 'R*'])
  })

  it('that can be two numbers, or none, is not taken for one', () => {
    expect(number('1,000')).toBe('unclear')
    expect(number('0.5-1')).toBe('unclear')
    expect(number('0.5 1')).toBe('unclear')
    expect(number('see text')).toBe('unclear')
    expect(number('<')).toBe('unclear')
  })

  it('may be a category, a test, or nothing', () => {
    expect(readValue('R*', terms)).toEqual({ kind: 'category', category: 'R*' })
    expect(readValue('SDD', terms)).toEqual({ kind: 'category', category: 'SDD' })
    expect(readValue('POS', terms)).toEqual({ kind: 'test', result: 'positive' })
    expect(readValue('n.t.', terms)).toEqual({ kind: 'not-tested' })
    expect(readValue('', terms)).toEqual({ kind: 'not-tested' })
  })

  it('keeps a unit that is not ours as printed', () => {
    expect(readValue('4 IU', terms)).toMatchObject({ kind: 'number', value: '4', unit: null, otherUnit: 'IU' })
  })
})
