import { describe, expect, it } from 'vitest'
import { printedCategory, readPrinted } from './printed-value.ts'

describe('what is printed of one drug', () => {
  it('reads signs, decimal commas, units and the other part of a combination', () => {
    expect(readPrinted('<=0.5 mg/L', null)).toEqual({ kind: 'mic', sign: '<=', amount: '0.5', partner: null })
    expect(readPrinted('≤ 0,25 µg/ml', null)).toEqual({ kind: 'mic', sign: '<=', amount: '0.25', partner: null })
    expect(readPrinted('>2/38', 'MIC')).toEqual({ kind: 'mic', sign: '>', amount: '2', partner: '38' })
    expect(readPrinted('18 mm', null)).toEqual({ kind: 'zone', sign: '=', millimetres: '18' })
    expect(readPrinted('no zone', null)).toEqual({ kind: 'zone', sign: '=', millimetres: '6' })
    for (const text of ['S', 'R*', 'sdd', 'Intermediate']) expect(readPrinted(text, null).kind).toBe('category')
  })

  it.each([
    ['0.5', null, 'method-not-stated'],
    ['0.5 mg/dL', 'MIC', 'unit-not-known'],
    ['18 mm', 'MIC', 'unit-against-method'],
    ['2 mg/L', 'DISK', 'unit-against-method'],
    ['1,024', 'MIC', 'comma-doubtful'],
    ['0.5-1', 'MIC', 'value-not-read'],
    ['POS', 'MIC', 'value-not-read'],
    ['n.t.', 'MIC', 'value-not-read'],
    ['', 'MIC', 'value-not-read'],
    ['18/20', 'DISK', 'value-not-read'],
    ['-2', 'MIC', 'value-not-read'],
    ['1e3', 'MIC', 'value-not-read'],
  ] as const)('does not guess at "%s" (%s): %s', (raw, method, doubt) => {
    expect(readPrinted(raw, method)).toEqual({ kind: 'unreadable', doubt })
  })

  it('takes a category in the ways it is printed, and nothing else for one', () => {
    expect(['S', 's', 'R*', 'NS', 'non-susceptible', 'Sensitive'].map(printedCategory)).toEqual([
      'S',
      'S',
      'R',
      'NS',
      'NS',
      'S',
    ])
    for (const text of ['POS', 'WT', '+', '', 'S/R']) expect(printedCategory(text)).toBeNull()
  })
})
