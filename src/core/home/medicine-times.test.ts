import { describe, expect, it } from 'vitest'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { clockChanges, type HomeMedicine, medicineTimes, tabletsNeeded } from './medicine-times.ts'

const london = 'Europe/London'
const [example] = discharge.example.medicines as [HomeMedicine]
const twice: HomeMedicine = {
  ...example,
  times: ['20:00', '08:00'],
  firstDay: '2026-03-27',
  firstTime: '20:00',
  days: 7,
}

describe('a medicine at home', () => {
  it('counts the first half day: seven days twice a day from the evening are 13 doses', () => {
    const { doses, lastDose, stopDay, givenInWard } = medicineTimes(twice, london)
    expect(doses.length).toBe(13)
    expect([doses[0]?.day, doses[0]?.time]).toEqual(['2026-03-27', '20:00'])
    expect([lastDose?.day, lastDose?.time, stopDay]).toEqual(['2026-04-02', '20:00', '2026-04-02'])
    expect(givenInWard).toEqual(['08:00'])
  })

  it('stays at 08:00 and 20:00 on the wall when the clocks go forward (London, 29 March 2026)', () => {
    const { doses } = medicineTimes(twice, london)
    expect(doses.map(({ shown }) => shown)).toEqual(doses.map(({ time }) => time))
    const around = doses.filter(({ day }) => day === '2026-03-28' || day === '2026-03-29').map(({ at }) => at)
    expect(around).toEqual([
      '2026-03-28T08:00:00.000Z',
      '2026-03-28T20:00:00.000Z',
      '2026-03-29T07:00:00.000Z',
      '2026-03-29T19:00:00.000Z',
    ])
  })

  it('counts halves exactly and hands out whole tablets', () => {
    const needed = tabletsNeeded({ ...twice, each: '0.5' }, london)
    expect([needed.total.toString(), needed.handOut.toString(), needed.over.toString()]).toEqual(['6.5', '7', '0.5'])
  })

  it('counts thirds of a millilitre without a float', () => {
    const needed = tabletsNeeded({ ...twice, form: 'liquid', each: '0.1' }, london)
    expect([needed.unit, needed.total.toString()]).toEqual(['millilitres', '1.3'])
  })

  it('counts a time written twice once', () => {
    expect(tabletsNeeded({ ...twice, times: ['08:00', '08:00'], firstTime: '08:00' }, london).doses).toBe(7)
  })

  it('says what the clocks do to a dose at 01:30', () => {
    const night: HomeMedicine = { ...twice, times: ['01:30'], firstTime: '01:30', firstDay: '2026-03-28', days: 3 }
    const changes = clockChanges(medicineTimes(night, london).doses)
    expect(changes).toMatchObject([{ day: '2026-03-29', time: '01:30', shown: '02:30', clock: 'skipped' }])
  })
})
