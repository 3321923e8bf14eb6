import { describe, expect, it } from 'vitest'
import { culture } from './culture.ts'

const cat = { species: 'cat', weight: { value: 4, unit: 'kg' } } as const
const ask = (more: Record<string, unknown>, host = 'cat') =>
  culture({
    host,
    specimen: 'middle-ear',
    isolates: [
      {
        id: 'a',
        organism: 'E. coli',
        results: [
          { drug: 'enrofloxacin', mic: '0.25' },
          { drug: 'clindamycin', mic: '<=0.5' },
        ],
      },
    ],
    ...more,
  }).options

const line = (mg: number) => ({
  id: 'l1',
  drug: 'enrofloxacin',
  use: 'antibiotic_course',
  route: 'PO',
  dose: { value: mg, unit: 'mg/kg' },
  tablet: { strength: { value: 15, unit: 'mg' }, divides: 'halves' },
  days: 14,
})

describe('options of a culture on the command line', () => {
  it('are none without an animal: a reading says nothing about a dose', () => {
    expect(ask({})).toEqual([])
  })

  it('name what works, why, and the class of stewardship; no dose stands there that nobody sent', () => {
    const [first, second] = ask({ animal: cat })
    expect(first).toMatchObject({
      drug: 'enrofloxacin',
      verdict: 'could',
      isolates: ['a'],
      dose: null,
      tier: { category: 'B' },
    })
    expect(first?.why[0]).toMatch(/^E\. coli is susceptible: 0\.25; CLSI VET01S ed7 \(2024\)/)
    expect(first?.ways[0]?.range?.high).toEqual({ value: 5, unit: 'mg/kg' })
    expect(second).toMatchObject({ drug: 'clindamycin', verdict: 'cannot', isolates: [] })
  })

  it('count the tablets of a dose that somebody sent, and refuse 20 mg/kg in a cat', () => {
    const [five] = ask({ animal: { ...cat, weight: { value: 3, unit: 'kg' } }, lines: [line(5)] })
    expect(five?.dose).toEqual({ value: 5, unit: 'mg/kg' })
    expect(five?.dispense).toMatchObject({ doses: 14, amount: { value: 14, unit: '{tablet}' } })
    const [twenty] = ask({ animal: cat, lines: [line(20)] })
    expect(twenty?.ways[0]?.verdict).toBe('refused')
    expect(twenty?.ways[0]?.findings.map(({ code }) => code)).toContain('over-single-maximum')
    expect(twenty?.dispense).toBeUndefined()
  })

  it('refuse an animal of another species than the culture, and a misspelt condition', () => {
    expect(() => ask({ animal: { species: 'dog' } })).toThrow(/the culture is of a cat, the animal is a dog/)
    expect(() => ask({ animal: { ...cat, conditions: ['kidney trouble'] } })).toThrow(/conditions/)
  })
})
