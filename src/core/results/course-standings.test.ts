import { describe, expect, it } from 'vitest'
import { blinkRecovery } from './blink-recovery.ts'
import { blinkStandingsOf, tractStandingsOn } from './course-standings.ts'
import { earForTests, fortyEars } from './ears-for-tests.ts'
import { tractTimes } from './tract-times.ts'

const rules = { enough: 10, deathWithinDays: 90 }
const ears = [
  ...fortyEars(),
  earForTests(50, { followedUntil: '2025-05-02', tractOn: '2025-05-02' }),
  earForTests(51, { followedUntil: '2025-05-01', died: '2025-06-01' }),
]

describe('the ears behind the curve of late tracts', () => {
  it('are as many as each line of its table says: with one, died, and still followed', () => {
    const found = tractTimes(ears, rules)
    if (found.kind === 'refusal') throw new Error('Ears are followed.')
    for (const { day, followed, events, died } of found.answer.steps) {
      const stands = tractStandingsOn(ears, day, rules.deathWithinDays)
      const of = (...names: string[]) => stands.filter(({ standing }) => names.includes(standing)).length
      expect([of('event'), of('died'), of('event', 'died', 'left', 'followed')]).toEqual([events, died, followed])
      expect(stands).toHaveLength(ears.length)
    }
  })

  it('end with one, by death or with the last look, when the whole course is asked for', () => {
    const ends = tractStandingsOn(ears, null, rules.deathWithinDays)
    expect(ends.filter(({ standing }) => standing === 'event').map(({ ear }) => ear.operation)).toEqual([
      'operation-50',
    ])
    expect(ends.filter(({ standing }) => standing === 'died').map(({ after }) => after)).toEqual([142])
  })
})

describe('the ears behind the blink', () => {
  it('are those that the page counts, back or not', () => {
    const blinks = [
      earForTests(1, { blink: { lostOn: '2025-01-11', backOn: '2025-01-24', lastLookOn: '2025-02-01' } }),
      earForTests(2, { blink: { lostOn: '2025-01-11', backOn: null, lastLookOn: '2025-02-01' } }),
      earForTests(3),
    ]
    const stands = blinkStandingsOf(blinks)
    expect(stands.map(({ standing, after }) => [standing, after])).toEqual([
      ['back', 14],
      ['not-back', 22],
    ])
    expect(blinkRecovery(blinks)).toMatchObject({ ears: 2, back: 1 })
  })
})
