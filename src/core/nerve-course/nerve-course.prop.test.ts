import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { absent, baselineOf, checkOn, makeForTests, normal, operated, readerFor, weak } from './course-for-tests.ts'

const { courseOf } = readerFor({ ...owedRules, counting: ownCounting })

const nothing = {
  ...checkKind.example,
  blink: 'not-assessed',
  lipOrEarDroop: 'not-assessed',
  nostril: 'not-assessed',
  possibleBlockEffect: false,
  horner: 'not-assessed',
  headTilt: 'not-assessed',
  nystagmus: 'not-assessed',
  unsteady: 'not-assessed',
  tearTest: null,
  fluorescein: 'not-assessed',
} as const

const seen = fc.record({
  day: fc.integer({ min: 0, max: 420 }),
  body: fc.constantFrom(
    normal,
    weak,
    absent,
    { ...normal, horner: 'yes' as const },
    {
      ...normal,
      unsteady: 'yes' as const,
    },
  ),
  by: fc.constantFrom('us' as const, 'referring-vet' as const, 'owner-photograph' as const, 'owner-words' as const),
})
const dayAt = (day: number, minute: number) =>
  new Date(Date.UTC(2026, 2, 4, 10, minute) + day * 24 * 3_600_000).toISOString()

test('a look at which nothing was assessed never changes how any sign stands, whenever it is added', () => {
  fc.assert(
    fc.property(
      fc.array(seen, { maxLength: 8 }),
      fc.array(fc.integer({ min: 0, max: 420 }), { minLength: 1, maxLength: 4 }),
      fc.constantFrom('normal' as const, 'weak' as const, 'absent' as const, 'not-assessed' as const),
      (looks, empties, blink) => {
        const make = makeForTests()
        const before = operated(make, baselineOf({ LEFT: { blink } }))
        const entries = looks.map(({ day, body, by }, i) => checkOn(make, dayAt(day, i), { ...body, seenBy: by }))
        const more = empties.map((day, i) => checkOn(make, dayAt(day, 30 + i), nothing))
        const [without, withThem] = [
          [...before, ...entries],
          [...before, ...entries, ...more],
        ].map((all) => courseOf(all))
        expect(withThem?.signs).toEqual(without?.signs)
        expect(withThem?.looks).toEqual(without?.looks)
      },
    ),
  )
})

test('what was there before on the same side is never counted as caused, whatever comes', () => {
  fc.assert(
    fc.property(fc.array(seen, { maxLength: 8 }), (looks) => {
      const make = makeForTests()
      const before = operated(make, baselineOf({ LEFT: { blink: 'absent', lipOrEarDroop: 'yes' } }))
      const entries = looks.map(({ day, body, by }, i) => checkOn(make, dayAt(day, i), { ...body, seenBy: by }))
      const [blink, droop] = courseOf([...before, ...entries]).signs
      expect([blink?.now, droop?.now]).not.toContain('worse')
      expect([blink?.lasting, droop?.lasting]).not.toContain('lasting')
    }),
  )
})
