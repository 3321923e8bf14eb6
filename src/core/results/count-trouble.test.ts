import { describe, expect, it } from 'vitest'
import { cookWindows } from '#content/outcomes/schemes/cook-2010.ts'
import { complicationSchemes } from '#content/outcomes/schemes/index.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import type { TroubleFacts } from '#core/complications/trouble.ts'
import { wilsonInterval } from '#core/stats/proportion-interval.ts'
import { countTrouble } from './count-trouble.ts'
import { earForTests } from './ears-for-tests.ts'
import { gradeStandings, windowStandings } from './trouble-behind.ts'
import { standingIn, troubleGroups } from './trouble-groups.ts'

const how = {
  today: '2025-06-01',
  rules: troubleRules,
  schemes: complicationSchemes,
  windows: cookWindows.value,
}
const decided = { class: 'complication', by: null, because: null } as const
const gap: TroubleFacts = {
  event: 'wound-gap',
  unit: 'ear',
  needed: 'none',
  before: 'absent',
  lasting: 'full',
  decision: decided,
  read: null,
  on: '2025-01-16',
}
const ofEars = { species: 'dog', procedure: 'teca-lbo', unit: 'ear' } as const
const ofAnimals = { ...ofEars, unit: 'animal' } as const
const seen = { followedUntil: '2025-03-01' }

describe('our own trouble', () => {
  it('has both denominators: an ear of which nobody heard is operated and not followed', () => {
    const ears = [earForTests(1, { ...seen, troubles: [gap] }), earForTests(2, seen), earForTests(3)]
    expect(countTrouble(ofEars, ears, how)).toMatchObject({ operated: 3, followed: 2, notYetDue: 0 })
    expect(countTrouble(ofEars, ears, how).events).toEqual([
      expect.objectContaining({ event: 'wound-gap', events: 1, operated: 3, followed: 2 }),
    ])
  })

  it('never adds ears and animals: two ears of one dog are two ears and one animal', () => {
    const both = [
      earForTests(1, { ...seen, animal: 'a', troubles: [gap] }),
      earForTests(2, { ...seen, animal: 'a', side: 'RIGHT', troubles: [gap] }),
    ]
    expect(countTrouble(ofEars, both, how).events[0]).toMatchObject({ events: 2, operated: 2 })
    expect(countTrouble(ofAnimals, both, how).events[0]).toMatchObject({ events: 1, operated: 1 })
  })

  it('counts what befell the whole animal among animals only', () => {
    const airway: TroubleFacts = { ...gap, event: 'airway', unit: 'animal', needed: 'intensive-care' }
    const ears = [earForTests(1, { ...seen, troubles: [airway] })]
    expect(countTrouble(ofEars, ears, how).events).toEqual([])
    expect(countTrouble(ofAnimals, ears, how).events[0]).toMatchObject({ event: 'airway', events: 1 })
  })

  it('keeps complication, sequela, failure to cure and not decided apart, and leaves out what was there before', () => {
    const held = (name: number, decision: TroubleFacts['decision'], before: TroubleFacts['before'] = 'absent') =>
      earForTests(name, { ...seen, troubles: [{ ...gap, event: 'horner', decision, before }] })
    const [count] = countTrouble(
      ofEars,
      [
        held(1, decided),
        held(2, { ...decided, class: 'sequela' }),
        held(3, { ...decided, class: 'failure-to-cure' }),
        held(4, null),
        held(5, null, 'same'),
      ],
      how,
    ).events
    expect(count).toMatchObject({
      events: 4,
      before: 1,
      classes: { complication: 1, sequela: 1, 'failure-to-cure': 1, 'not-decided': 1 },
    })
  })

  it('waits until it can be known, and says what came before that', () => {
    const ears = [
      earForTests(1, { on: '2025-05-20', followedUntil: '2025-05-27', troubles: [{ ...gap, on: '2025-05-26' }] }),
    ]
    expect(countTrouble(ofEars, ears, how)).toMatchObject({ operated: 0, notYetDue: 1 })
    expect(countTrouble(ofEars, ears, how).events).toEqual([expect.objectContaining({ events: 0, early: 1 })])
  })

  it('counts each ear once by its worst, and one that may be worse as fitting more than one grade', () => {
    const grades = (...needs: readonly TroubleFacts['needed'][]) => {
      const troubles = needs.map((needed, i) => ({ ...gap, needed, event: i === 0 ? gap.event : ('seroma' as const) }))
      const { schemes } = countTrouble(ofEars, [earForTests(1, { ...seen, troubles })], how)
      const cook = schemes.find(({ scheme }) => scheme === 'cook-2010')
      return { ...Object.fromEntries(cook?.grades.map(({ grade, count }) => [grade, count]) ?? []), ...cook }
    }
    expect(grades('none', 'medicine')).toMatchObject({ minor: 0, major: 1, between: 0, unknown: 0 })
    expect(grades('none', 'wound-care-awake')).toMatchObject({ minor: 0, major: 0, between: 1 })
    expect(grades('medicine', 'wound-care-awake')).toMatchObject({ major: 1, between: 0 })
    expect(grades('not-known')).toMatchObject({ minor: 0, major: 0, unknown: 1 })
  })

  it('says when each was first noticed', () => {
    const late: TroubleFacts = { ...gap, event: 'deep-infection', on: '2025-05-20' }
    const { windows } = countTrouble(ofEars, [earForTests(1, { ...seen, troubles: [gap, late] })], how)
    expect(windows.map(({ count }) => count)).toEqual([1, 1, 0, 0])
  })

  it('takes two ears of one animal as tied: never narrower than Wilson’s, and none where every animal has one ear', () => {
    const pairs = Array.from({ length: 24 }, (_, i) =>
      earForTests(i, { ...seen, animal: `animal-${Math.floor(i / 2)}`, troubles: i < 4 ? [gap] : [] }),
    )
    const wilson = wilsonInterval({ events: 4, total: 24 })
    if (wilson.kind === 'refusal') throw new Error('24 ears are counted.')
    const tied = countTrouble(ofEars, pairs, how).events[0]?.acrossAnimals
    expect(tied?.low).toBeLessThan(wilson.answer.low)
    expect(tied?.high).toBeGreaterThan(wilson.answer.high)
    expect(countTrouble(ofAnimals, pairs, how).events[0]?.acrossAnimals).toBeNull()
    const alone = pairs.map((ear, i) => ({ ...ear, animal: `animal-${i}` }))
    expect(countTrouble(ofEars, alone, how).events[0]?.acrossAnimals).toBeNull()
  })
})

describe('the ears behind our own trouble', () => {
  const same: TroubleFacts = { ...gap, before: 'same', decision: null }
  const ears = [
    earForTests(1, { ...seen, troubles: [gap] }),
    earForTests(2, seen),
    earForTests(3),
    earForTests(4, { ...seen, troubles: [same] }),
    earForTests(5, { troubles: [same] }),
    earForTests(6, { on: '2025-05-20', troubles: [{ ...gap, on: '2025-05-26' }] }),
    earForTests(7, { on: '2025-05-20' }),
  ]
  const groups = troubleGroups(ofEars, ears)

  it('stand where they are counted, kind by kind', () => {
    const stands = groups.map((group) => standingIn('wound-gap', group, how).standing)
    expect(stands).toEqual(['events', 'free', 'lost', 'before', 'lost-before', 'early', 'notYetDue'])
    expect(countTrouble(ofEars, ears, how).events[0]).toMatchObject({
      events: 1,
      followed: 3,
      operated: 5,
      notYetDue: 2,
      before: 2,
      early: 1,
    })
  })

  it('are as many as every grade and every stretch says', () => {
    const when = { early: troubleRules.early.value, today: how.today }
    const counted = countTrouble(ofEars, ears, how)
    for (const scheme of complicationSchemes) {
      const stands = gradeStandings(scheme, groups, when).map(({ standing }) => standing)
      const { grades = [] } = counted.schemes.find((one) => one.scheme === scheme.id) ?? {}
      for (const { grade, count } of grades) expect(stands.filter((one) => one === grade)).toHaveLength(count)
      expect(stands).toHaveLength(ears.length)
    }
    const stretches = windowStandings(how.windows, groups, when).map(({ standing }) => standing)
    for (const { window, count } of counted.windows)
      expect(stretches.filter((one) => one === window)).toHaveLength(count)
  })
})
