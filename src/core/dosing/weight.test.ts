import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { judgeWeight, leanWeight } from './weight.ts'

const rules = dosingRules.weight
const at = Temporal.Instant.from('2026-03-02T10:00:00Z')
const dog = (kg: string, before?: string) => ({
  species: 'dog' as const,
  conditions: [],
  weight: quantity(kg, 'kg'),
  weighedAt: Temporal.Instant.from('2026-03-02T08:00:00Z'),
  ...(before && { previousWeight: quantity(before, 'kg') }),
})
const codes = (animal: Parameters<typeof judgeWeight>[0]) => judgeWeight(animal, at, rules).map(({ code }) => code)

describe('a weight', () => {
  it('passes without a word when it is fresh, measured and plausible', () => {
    expect(codes(dog('8.2', '8.0'))).toEqual([])
  })

  // dosing rules, section 20 (house judgement): ratio 2.0 to 2.4 or 0.42 to 0.5, both ends included.
  it.each([
    ['20', '10', 'weight-pounds-suspected'],
    ['24', '10', 'weight-pounds-suspected'],
    ['24.1', '10', 'weight-changed-much'],
    ['19.9', '10', 'weight-changed-much'],
    ['5', '10', 'weight-pounds-suspected'],
    ['4.2', '10', 'weight-pounds-suspected'],
    ['80', '8', 'weight-decimal-slip'],
    ['11.5', '10', undefined],
    ['11.6', '10', 'weight-changed'],
    ['15', '10', 'weight-changed'],
    ['15.1', '10', 'weight-changed-much'],
  ])('of %s kg after %s kg is %s', (now, before, code) => {
    expect(codes(dog(now, before))).toEqual(code ? [code] : [])
  })

  it.each([
    ['1.5', []],
    ['1.4', ['weight-unusual']],
    ['80', []],
    ['81', ['weight-unusual']],
    ['115', ['weight-unusual']],
    ['115.1', ['weight-impossible']],
    ['0.29', ['weight-impossible']],
  ])('of %s kg in a dog gives %j', (kg, expected) => {
    expect(codes(dog(kg))).toEqual(expected)
  })

  it('is old after 24 hours, not at 24 hours', () => {
    const weighed = (text: string) => codes({ ...dog('8'), weighedAt: Temporal.Instant.from(text) })
    expect(weighed('2026-03-01T10:00:00Z')).toEqual([])
    expect(weighed('2026-03-01T09:59:59Z')).toEqual(['weight-old'])
  })
})

describe('the lean weight', () => {
  it('begins at body condition 7 of 9, a tenth for every point above 5', () => {
    const lean = (score: number | undefined) => String(leanWeight(quantity('12', 'kg'), score, rules))
    expect(lean(undefined)).toBe('12 kg')
    expect(lean(6)).toBe('12 kg')
    expect(lean(7)).toBe('10 kg')
  })
})
