import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bloodInSwabs as facts } from '#content/protocols/blood-in-swabs.ts'
import { Decimal, Quantity } from '#core/units/quantity.ts'
import { bloodLoss, type LossSpan } from './blood-loss.ts'
import type { Swabs } from './blood-swabs.ts'

const tenths = (max: number) => fc.integer({ min: 0, max: max * 10 }).map((n) => new Decimal(n).div(10))
const mL = (value: Decimal) => new Quantity(value, 'mL')
const g = (value: Decimal) => new Quantity(value, 'g')

const swabs: fc.Arbitrary<Swabs> = fc.oneof(
  fc.record({ dry: tenths(50), blood: tenths(50), saline: tenths(20) }).map(({ dry, blood, saline }) => ({
    kind: 'weighed' as const,
    dry: g(dry),
    wet: g(dry.plus(blood).plus(saline)),
    saline: mL(saline),
  })),
  fc.record({
    kind: fc.constant('counted' as const),
    swab: fc.constantFrom('gauze-10-cm' as const, 'lap-sponge' as const),
    soaked: fc.nat(8),
  }),
)

function span(suction: Decimal, given: Decimal, list: readonly Swabs[]): LossSpan {
  const lavage = { kind: 'not-measured', given: mL(given) } as const
  const result = bloodLoss({ suction: mL(suction), lavage, swabs: list }, facts)
  if (result.kind === 'refusal') throw new Error(result.refusal.because)
  return result.answer
}

describe('the span of a loss', () => {
  it('never turns round and never goes below zero', () => {
    fc.assert(
      fc.property(tenths(900), tenths(900), fc.array(swabs, { maxLength: 5 }), (suction, given, list) => {
        const { atLeast, atMost } = span(suction, given, list)
        expect(atLeast.value.gte(0) && atLeast.value.lte(atMost.value)).toBe(true)
      }),
    )
  })

  it('rises with the jar and with every further swab, at both ends', () => {
    fc.assert(
      fc.property(tenths(900), tenths(900), tenths(90), swabs, (suction, given, more, swab) => {
        const before = span(suction, given, [])
        for (const after of [span(suction.plus(more), given, []), span(suction, given, [swab])]) {
          expect(after.atLeast.value.gte(before.atLeast.value)).toBe(true)
          expect(after.atMost.value.gte(before.atMost.value)).toBe(true)
        }
      }),
    )
  })

  it('grows downwards only with more lavage that nobody measured', () => {
    fc.assert(
      fc.property(tenths(900), tenths(900), tenths(90), (suction, given, more) => {
        const before = span(suction, given, [])
        const after = span(suction, given.plus(more), [])
        expect(after.atLeast.value.lte(before.atLeast.value)).toBe(true)
        expect(after.atMost.value.eq(before.atMost.value)).toBe(true)
      }),
    )
  })

  it('contains what is found when the lavage is measured after all', () => {
    fc.assert(
      fc.property(tenths(900), tenths(900), fc.array(swabs, { maxLength: 3 }), (blood, given, list) => {
        // All of the lavage is in the jar with the blood: the truth is known.
        const jar = blood.plus(given)
        const known = bloodLoss(
          { suction: mL(jar), lavage: { kind: 'recovered', given: mL(given), recovered: mL(given) }, swabs: list },
          facts,
        )
        if (known.kind === 'refusal') throw new Error(known.refusal.because)
        const unknown = span(jar, given, list)
        expect(unknown.atLeast.value.lte(known.answer.atLeast.value)).toBe(true)
        expect(unknown.atMost.value.gte(known.answer.atMost.value)).toBe(true)
      }),
    )
  })
})
