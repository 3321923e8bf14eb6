import { describe, expect, it } from 'vitest'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { medicineChange } from '#core/journal/kinds/medicine-change.ts'
import { type HomeMedicine, medicineTimes, stretchesOf, tabletsNeeded } from './medicine-times.ts'

const london = 'Europe/London'
const [example] = discharge.example.medicines as [HomeMedicine]

/** Invented: two tablets twice a day, then one twice, then a half once. */
const taper: HomeMedicine = {
  ...example,
  label: 'Exampline 5 mg',
  each: '2',
  times: ['08:00', '20:00'],
  firstDay: '2026-03-26',
  firstTime: '20:00',
  days: 10,
  steps: [
    { fromDay: '2026-03-29', each: '1', times: ['08:00', '20:00'], onDays: 'every-day' as const },
    { fromDay: '2026-04-01', each: '0.5', times: ['08:00'], onDays: 'every-day' as const },
  ],
}

describe('a dose that is brought down in steps', () => {
  it('is as long as the course, and every step begins on its day', () => {
    expect(stretchesOf(taper).map(({ firstDay, days }) => [firstDay, days])).toEqual([
      ['2026-03-26', 3],
      ['2026-03-29', 3],
      ['2026-04-01', 4],
    ])
    expect(medicineTimes(taper, london)).toMatchObject({ stopDay: '2026-04-04', givenInWard: ['08:00'] })
    expect(medicineTimes(taper, london).doses).toHaveLength(5 + 6 + 4)
  })

  it('counts the tablets of each step exactly: 5 × 2 + 6 × 1 + 4 × ½ = 18', () => {
    expect(tabletsNeeded(taper, london)).toMatchObject({ doses: 15 })
    expect(tabletsNeeded(taper, london).total.toString()).toBe('18')
  })

  it('counts only the doses before it was stopped in the middle of a step: 5 × 2 + 1 × 1', () => {
    const until = { day: '2026-03-29', time: '20:00' }
    expect(tabletsNeeded({ ...taper, until }, london).total.toString()).toBe('11')
    expect(medicineTimes({ ...taper, until }, london).lastDose).toMatchObject({ day: '2026-03-29', time: '08:00' })
  })

  it.each([
    ['the first day itself', ['2026-03-26']],
    ['a day after the last', ['2026-04-05']],
    ['the day of the step before', ['2026-03-29', '2026-03-29']],
    ['a day before the step before', ['2026-04-01', '2026-03-29']],
  ])('refuses a step that begins on %s', (_, days) => {
    const steps = days.map((fromDay) => ({ fromDay, each: '1', times: ['08:00'], onDays: 'every-day' }))
    const read = discharge.body.safeParse({ ...discharge.example, medicines: [{ ...taper, steps }] })
    expect(read.error?.issues.map(({ path }) => path.join('.'))).toEqual([
      `medicines.0.steps.${days.length - 1}.fromDay`,
    ])
  })

  it('on every second day begins with its own first day, and counts only the days it is given on: 5 × 2 + 6 × 1 + 2 × ½', () => {
    const last = { fromDay: '2026-04-01', each: '0.5', times: ['08:00'], onDays: 'every-second-day' as const }
    const slower = { ...taper, steps: [...taper.steps.slice(0, 1), last] }
    const days = medicineTimes(slower, london).doses.map(({ day }) => day)
    // The course ends on 4 April, the third day of the step is a day between, the fourth too.
    expect(days.slice(11)).toEqual(['2026-04-01', '2026-04-03'])
    expect(medicineTimes(slower, london)).toMatchObject({ stopDay: '2026-04-04', lastDose: { day: '2026-04-03' } })
    expect(tabletsNeeded(slower, london).total.toString()).toBe('17')
  })

  it('of a medicine for every second day from the start, also across the night of the clock change', () => {
    const every = {
      ...taper,
      steps: [],
      onDays: 'every-second-day' as const,
      firstDay: '2026-03-27',
      firstTime: '08:00',
    }
    const doses = medicineTimes({ ...every, days: 5, times: ['08:00'] }, london).doses
    expect(doses.map(({ at }) => at)).toEqual([
      '2026-03-27T08:00:00.000Z',
      '2026-03-29T07:00:00.000Z',
      '2026-03-31T07:00:00.000Z',
    ])
  })

  it('is read out of entries that knew no days between as given every day', () => {
    const { onDays: _, ...old } = example
    const body = {
      ...discharge.example,
      medicines: [{ ...old, steps: [{ fromDay: '2026-02-14', each: '1', times: ['08:00'] }] }],
    }
    const step = { fromDay: '2026-02-14', each: '1', times: ['08:00'], onDays: 'every-day' }
    const read = { ...old, onDays: 'every-day', steps: [step] }
    expect(discharge.upcasts?.[2]?.(body)).toEqual({ ...discharge.example, medicines: [read] })
    const change = { ...medicineChange.example, starts: body.medicines }
    expect(medicineChange.upcasts?.[2]?.(change)).toEqual({ ...change, starts: [read] })
  })

  it('is read out of older entries as a medicine without steps, and nobody else cares for the animal', () => {
    const { steps: _, ...old } = example
    const { carer: __, ...body } = { ...discharge.example, medicines: [old] }
    expect(discharge.upcasts?.[1]?.(body)).toEqual({ ...discharge.example, medicines: [{ ...old, steps: [] }] })
    const change = { ...medicineChange.example, starts: [old] }
    expect(medicineChange.upcasts?.[1]?.(change)).toEqual({ ...change, starts: [{ ...old, steps: [] }] })
  })
})
