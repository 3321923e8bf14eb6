import { describe, expect, it } from 'vitest'
import { InputError } from '../input.ts'
import { audit, auditList } from './audit.ts'

const answered = (input: unknown) => audit(input).answer as Record<string, unknown>
const group = (name: string, events: number, total: number) => ({ group: name, events, total })

describe('audit', () => {
  it('says none of twelve with its upper ends, each by name', () => {
    const answer = answered({ op: 'proportion', of: { events: 0, total: 12 } })
    // 1 − 0.025^(1/12) two-sided, 1 − 0.05^(1/12) one-sided.
    expect(answer.exact).toEqual([0, expect.closeTo(1 - 0.025 ** (1 / 12), 12)])
    expect(answer.upperOneSided).toBeCloseTo(1 - 0.05 ** (1 / 12), 12)
    expect(answer.against).toBeUndefined()
    expect(answered({ op: 'event-free', rate: 0.05 })).toEqual({ cases: 59 })
  })

  it('compares two shares, and writes an end that is not there as null', () => {
    const [first, second] = [
      { events: 5, total: 5 },
      { events: 0, total: 5 },
    ]
    const answer = answered({ op: 'difference', first, second })
    expect(answer).toMatchObject({ difference: 1, oddsRatio: { value: null, interval: [expect.any(Number), null] } })
  })

  it('sets groups against their limits in the order they came, and too small ones against none', () => {
    const groups = [group('2024', 1, 40), group('2025', 14, 40), group('2026', 2, 8)]
    const answer = answered({ op: 'funnel', by: 'year', groups, target: 0.1 })
    expect(answer).toMatchObject({
      targetFrom: 'given',
      least: 20,
      groups: [
        { group: '2024', standing: 'within' },
        { group: '2025', standing: 'beyond-outer' },
        { group: '2026', standing: 'too-few', limits: null },
      ],
    })
    const none = answered({ op: 'funnel', by: 'indication', groups: [group('a', 0, 30), group('b', 0, 30)] })
    expect(none).toMatchObject({ spread: null, groups: [{ standing: 'nothing-to-compare' }, {}] })
  })

  it('follows results in their order', () => {
    const cases = [true, false, true].map((event) => ({ risk: 0.1, event }))
    expect(answered({ op: 'expected-less-observed', cases }).path).toHaveLength(3)
    expect(answered({ op: 'cusum', cases, ratio: 2, limit: 1 }).signals).toEqual([3])
    const alarms = answered({ op: 'false-alarms', risk: 0.1, ratio: 2, limit: 2.5, cases: 50 })
    expect(alarms.asExpected).toBeCloseTo(0.0665647541903652, 12)
  })

  it('says agreement beside kappa, and no kappa where all fell into one grade', () => {
    const rare = answered({
      op: 'agreement',
      table: [
        [90, 5],
        [4, 1],
      ],
    })
    expect(rare).toMatchObject({ agreed: 0.91, prevalenceAdjusted: expect.closeTo(0.82, 12) })
    const one = answered({
      op: 'agreement',
      table: [
        [12, 0],
        [0, 0],
      ],
    })
    expect(one).toMatchObject({ agreed: 1, plain: { refusal: 'one-grade-only' } })
    expect(
      answered({
        op: 'many-readers',
        counts: [
          [3, 0],
          [1, 2],
        ],
      }).perCase,
    ).toHaveLength(2)
  })

  it('works out rates', () => {
    expect(answered({ op: 'rate', of: { events: 10, exposure: 12.5 } }).rate).toBe(0.8)
    const none = { events: 0, exposure: 610 }
    expect(answered({ op: 'rate-ratio', first: { events: 2, exposure: 800 }, second: none })).toMatchObject({
      ratio: null,
      interval: [expect.any(Number), null],
    })
    expect(answered({ op: 'observed-expected', observed: 13, expected: 6.42 }).ratio).toBeCloseTo(2.0249, 4)
  })

  it('lists every calculation with what it takes', () => {
    expect(auditList()).toHaveLength(12)
    expect(auditList().flatMap(({ fields }) => fields.filter(({ says }) => says === ''))).toEqual([])
  })

  it.each([
    [{}, 'op', 'name the calculation'],
    [{ op: 'funnel', by: 'surgeon', groups: [group('a', 1, 40), group('b', 2, 40)] }, 'by', 'species, procedure'],
    [{ op: 'ranking' }, 'op', 'write one of proportion'],
    [{ op: 'proportion', of: { events: 5, total: 4 } }, 'of.events', 'more events than cases'],
    [{ op: 'proportion', of: { events: 1.5, total: 4 } }, 'of.events', 'whole number'],
    [{ op: 'proportion', of: { events: 1, total: 4 }, aganst: 0.1 }, 'aganst', 'spelling'],
    [{ op: 'event-free', rate: 0 }, 'rate', 'more than 0'],
    [{ op: 'rate', of: { events: 1, exposure: 0 } }, 'of.exposure', 'more than 0'],
    [{ op: 'agreement', table: [[1, 2], [3]] }, 'table[1]', ''],
    [
      {
        op: 'agreement',
        table: [
          [1, 2, 3],
          [3, 2, 1],
        ],
      },
      'table',
      'as many columns as rows',
    ],
    [
      {
        op: 'many-readers',
        counts: [
          [1, 2],
          [3, 3],
        ],
      },
      'counts',
      'same number of readers',
    ],
    [{ op: 'cusum', cases: [{ risk: 1, event: true }], ratio: 2, limit: 3 }, 'cases[0].risk', 'less than 1'],
  ])('names the field that is wrong, and ranks no people: %j', (input, path, words) => {
    const wrong = expect.objectContaining({ path, message: expect.stringContaining(words) })
    expect(() => audit(input)).toThrow(InputError)
    try {
      audit(input)
    } catch (error) {
      expect(error).toEqual(wrong)
    }
  })
})
