import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { settingOf } from '#core/owed/setting.ts'
import { askingsOf, isOpen } from './askings.ts'
import { answered, operatedEar } from './files-for-tests.ts'

/** The operations were on 4 March 2026. */
const day = '2026-03-04'
const askings = (entries: readonly Entry[], now: string) =>
  askingsOf(settingOf(fileOf(entries), procedures, { rules: owedRules }), `${now}T12:00:00.000Z`)
const openOn = (entries: readonly Entry[], now: string) =>
  askings(entries, now)
    .filter(isOpen)
    .map(({ key }) => key)
const stateOn = (entries: readonly Entry[], now: string, occasion = 'month-12') =>
  askings(entries, now).find((one) => one.occasion.id === occasion)?.state

describe('when an owner is asked', () => {
  const both = () => {
    const make = entryMaker()
    return { make, entries: [operatedEar(make, 'LEFT', day), operatedEar(make, 'RIGHT', day)] }
  }

  it('in weeks 1 to 4, at 3 and 6 months and after a year give or take two months, and at no other time', () => {
    const { entries } = both()
    expect(openOn(entries, '2026-03-10')).toEqual([])
    expect(openOn(entries, '2026-03-11')).toEqual(['early-home.2026-03-04'])
    expect(openOn(entries, '2026-04-01')).toEqual(['early-home.2026-03-04'])
    expect(openOn(entries, '2026-04-02')).toEqual([])
    expect(openOn(entries, '2026-06-04')).toEqual(['month-3.2026-03-04'])
    expect(openOn(entries, '2026-07-05')).toEqual([])
    expect(openOn(entries, '2026-09-10')).toEqual(['month-6.2026-03-04'])
    expect(openOn(entries, '2027-01-03')).toEqual([])
    expect(openOn(entries, '2027-01-04')).toEqual(['month-12.2026-03-04'])
  })

  it('both ears of one day at once, one ear after the other where they were operated on two days', () => {
    const { entries } = both()
    expect(
      askings(entries, '2027-03-01')
        .at(-1)
        ?.ears.map(({ side }) => side),
    ).toEqual(['LEFT', 'RIGHT'])
    const make = entryMaker()
    const apart = [operatedEar(make, 'LEFT', day), operatedEar(make, 'RIGHT', '2026-05-06')]
    expect(openOn(apart, '2027-03-20')).toEqual(['month-12.2026-03-04', 'month-12.2026-05-06'])
  })

  it('nothing before an operation, and nothing of one that is only booked', () => {
    const make = entryMaker()
    expect(askings([make({ kind: 'booking' })], '2027-03-01')).toEqual([])
  })

  it('after a year still when the window is over, because silence is never an answer; before that no more', () => {
    const { entries } = both()
    expect([stateOn(entries, '2027-06-01'), stateOn(entries, '2027-06-01', 'month-6')]).toEqual(['now', 'passed'])
  })

  it('no more once an answer stands, also one that was taken by phone; one only begun is gone on with', () => {
    const { make, entries } = both()
    const begun = answered(make, '2027-02-01T10:00:00.000Z', { head: 'no' }, { finished: false })
    expect(stateOn([...entries, begun], '2027-02-02')).toBe('begun')
    const sent = answered(make, '2027-02-03T10:00:00.000Z', { head: 'no' }, { by: 'phone' })
    expect(stateOn([...entries, sent], '2027-02-04')).toBe('answered')
    // What was sent at three months answers nothing after a year.
    const early = answered(
      make,
      '2026-06-10T10:00:00.000Z',
      { head: 'no' },
      { occasion: 'month-3', questionnaire: 'months' },
    )
    expect([stateOn([...entries, early], '2027-02-04'), stateOn([...entries, early], '2027-02-04', 'month-3')]).toEqual(
      ['now', 'answered'],
    )
  })

  it('nobody whose animal has died, from that moment on, however it died', () => {
    const { make, entries } = both()
    const death = make({ kind: 'death', at: '2027-02-01T10:00:00.000Z' })
    expect(openOn([...entries, death], '2027-02-01')).toEqual([])
    expect(new Set(askings([...entries, death], '2027-02-01').map(({ state }) => state))).toEqual(new Set(['over']))
  })

  it('not about an ear that was operated again since, whose newer operation has times of its own', () => {
    const { make, entries } = both()
    const again = operatedEar(make, 'LEFT', '2026-10-01', 'operation-again')
    const first = askings([...entries, again], '2027-02-01').find(({ key }) => key === 'month-12.2026-03-04')
    expect(first?.ears.map(({ side }) => side)).toEqual(['RIGHT'])
  })

  it('in the window that the house has set for itself', () => {
    const { make, entries } = both()
    const policy = make({
      kind: 'house-policy',
      body: { policy: 'owed.twelve-months', value: '11..13 months', because: 'Ours.', until: null },
    } as never)
    expect(openOn([...entries, policy], '2027-01-10')).toEqual([])
    expect(openOn([...entries, policy], '2027-02-10')).toEqual(['month-12.2026-03-04'])
  })
})
