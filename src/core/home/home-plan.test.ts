import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { discharge as kind } from '#core/journal/kinds/discharge.ts'
import { homeEditionsOf, homePlanOf, homePlansOf } from './home-plan.ts'
import { type HomeMedicine, medicineTimes, tabletsNeeded } from './medicine-times.ts'

const london = 'Europe/London'
const [example] = kind.example.medicines as [HomeMedicine]
const make = entryMaker()

const antibiotic: HomeMedicine = {
  ...example,
  drug: 'amoxicillin-clavulanate',
  label: 'Amoxicillin with clavulanate 250 mg',
  each: '0.5',
  times: ['08:00', '20:00'],
  firstDay: '2026-03-02',
  firstTime: '20:00',
  days: 14,
}
const gel = (side: 'LEFT' | 'RIGHT'): HomeMedicine => ({ ...antibiotic, drug: 'gel', label: `Gel ${side}`, side })

function home(
  medicines: readonly HomeMedicine[],
  at: string,
  rest: Partial<Pick<Entry, 'supersedes' | 'reason'>> = {},
): Entry {
  return make({ kind: 'discharge', at, body: { ...kind.example, medicines: [...medicines] }, ...rest })
}

function change(
  at: string,
  body: Partial<BodyOf<'medicine-change'>>,
  rest: Partial<Pick<Entry, 'supersedes' | 'reason'>> = {},
): Entry {
  const whole = { read: null, because: 'Resistant.', stops: [], starts: [], ...body }
  return make({ kind: 'medicine-change', at, body: whole, ...rest })
}

const stop = (medicine: HomeMedicine, fromDay: string, fromTime: string) => {
  const { drug, label, side } = medicine
  return { drug, label, side, fromDay, fromTime }
}

const went = home([antibiotic, example], '2026-03-02T16:00:00.000Z')
const newDrug: HomeMedicine = { ...antibiotic, drug: 'marbofloxacin', label: 'Marbofloxacin 20 mg', times: ['18:00'] }
const changed = change('2026-03-06T10:00:00.000Z', {
  stops: [stop(antibiotic, '2026-03-06', '12:00')],
  starts: [{ ...newDrug, firstDay: '2026-03-06', firstTime: '18:00', days: 21 }],
})

function plan(...entries: Entry[]) {
  const found = homePlanOf(fold(entries))
  if (!found) throw new Error('The animal went home.')
  return found
}

describe('what an animal is given at home', () => {
  it('is what the discharge says until something changes, and nothing before it goes home', () => {
    expect(homePlanOf(fold([changed]))).toBeNull()
    expect(plan(went).courses.map(({ label, until }) => [label, until])).toEqual([
      [antibiotic.label, null],
      [example.label, null],
    ])
  })

  it('ends at the stop to the minute, and counts only the doses before it', () => {
    const [stopped, kept, started] = plan(went, changed).courses
    if (!stopped || !kept || !started) throw new Error('Three medicines.')
    // 2 March 20:00, then two doses on the 3rd, 4th and 5th, and 08:00 on the 6th: 12:00 is the stop.
    expect(medicineTimes(stopped, london).doses).toHaveLength(8)
    expect(medicineTimes(stopped, london).lastDose).toMatchObject({ day: '2026-03-06', time: '08:00' })
    expect(tabletsNeeded(stopped, london).total.toString()).toBe('4')
    expect(kept.until).toBeNull()
    expect(medicineTimes(started, london).doses).toHaveLength(21)
  })

  it('loses a dose that stands exactly at the stop', () => {
    const at = change('2026-03-06T10:00:00.000Z', { stops: [stop(antibiotic, '2026-03-06', '20:00')] })
    const [stopped] = plan(went, at).courses
    expect(stopped && medicineTimes(stopped, london).lastDose).toMatchObject({ day: '2026-03-06', time: '08:00' })
  })

  it('keeps the eye that was not stopped', () => {
    const eyes = home([gel('LEFT'), gel('RIGHT')], '2026-03-02T16:00:00.000Z')
    const one = change('2026-03-06T10:00:00.000Z', { stops: [stop(gel('LEFT'), '2026-03-06', '12:00')] })
    expect(plan(eyes, one).courses.map(({ label, until }) => [label, until !== null])).toEqual([
      ['Gel LEFT', true],
      ['Gel RIGHT', false],
    ])
  })

  it('lets the new dose of the same drug run on', () => {
    const more = change('2026-03-06T10:00:00.000Z', {
      stops: [stop(antibiotic, '2026-03-06', '12:00')],
      starts: [{ ...antibiotic, each: '1', firstDay: '2026-03-06', firstTime: '20:00' }],
    })
    expect(plan(went, more).courses.map(({ drug, each, until }) => [drug, each, until !== null])).toEqual([
      [antibiotic.drug, '0.5', true],
      [example.drug, example.each, false],
      [antibiotic.drug, '1', false],
    ])
  })

  it('says which stop no page named, instead of dropping it', () => {
    const other = change('2026-03-06T10:00:00.000Z', { stops: [stop(newDrug, '2026-03-06', '12:00')] })
    expect(plan(went, other).unmatched.map(({ stop: { label } }) => label)).toEqual([newDrug.label])
  })

  it('keeps a change when the discharge is corrected after it', () => {
    const corrected = home([antibiotic], '2026-03-07T09:00:00.000Z', { supersedes: [went.id], reason: 'Wrong label.' })
    const { courses } = plan(went, changed, corrected)
    expect(courses.map(({ label, until }) => [label, until !== null])).toEqual([
      [antibiotic.label, true],
      [newDrug.label, false],
    ])
  })

  it('forgets a change that was taken back', () => {
    const back = make({ kind: 'withdrawal', withdraws: changed.id, reason: 'Wrong animal.' })
    expect(plan(went, changed, back).courses.every(({ until }) => until === null)).toBe(true)
  })

  it('begins anew with the next going home', () => {
    const again = home([example], '2026-06-02T16:00:00.000Z')
    const plans = homePlansOf(fold([went, changed, again]))
    expect(plans.map(({ courses }) => courses.length)).toEqual([3, 1])
  })
})

describe('the pages that were true for a while', () => {
  const edition = (...entries: Entry[]) => homeEditionsOf(fold(entries)).map(({ line }) => line.header.kind)

  it('are one for going home and one for each change or correction', () => {
    expect(edition(went)).toEqual(['discharge'])
    expect(edition(went, changed)).toEqual(['discharge', 'medicine-change'])
    const back = make({ kind: 'withdrawal', withdraws: changed.id, at: '2026-03-08T09:00:00.000Z' })
    expect(edition(went, changed, back)).toEqual(['discharge', 'medicine-change', 'withdrawal'])
  })
})
