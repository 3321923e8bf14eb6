import { describe, expect, it } from 'vitest'
import { observation as form } from '#content/forms/observation.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { kindNamed } from '#core/journal/fold.ts'
import { readSheet, type SheetSetting, type TypedSheet } from './read-sheet.ts'

const setting: SheetSetting = {
  day: '2026-03-10',
  begins: '22:15',
  zone: 'Europe/London',
  now: '2026-03-12T09:00:00.000Z',
  place: { decimalMark: '.' },
  units: form.fields['values.value'].unitBy.units,
  doseUnits: ['mg', 'mL'],
  pauses: spokenPauses,
  planned: [{ id: 'line-1', drug: 'bupivacaine', use: 'local_block', route: 'perineural', line: 'block' }],
}
const blank: TypedSheet = { points: {}, pauses: {}, looks: [], doses: {} }
const point = (time: string, not = '', side: 'LEFT' | 'RIGHT' | null = null) => ({ time, not, side })
const read = (typed: Partial<TypedSheet>) => readSheet({ ...blank, ...typed }, setting)
const faults = (typed: Partial<TypedSheet>) => read(typed).faults.map(({ at, because }) => [at, because])

describe('a sheet of paper, typed in', () => {
  it('gives every entry it says, over midnight, each of which its kind accepts', () => {
    const { entries, faults: none } = read({
      points: {
        incision: point('22:15'),
        'skin-mark': point('22:05', '', 'LEFT'),
        'k12-drain': point('', 'No fluid was expected.'),
        'tube-out': point('00:40'),
      },
      pauses: {
        'before-incision': {
          first: '22:10',
          last: '22:12',
          ledBy: null,
          spokenBy: 'person-surgeon',
          answers: {
            concerns: { answer: 'yes', because: '' },
            antibiotic: { answer: 'no', because: 'Waits for the sample.' },
            'vein-plan': { answer: null, because: '' },
          },
        },
      },
      looks: [{ time: '23:55', values: { 'heart-rate': '92', mean: '74' }, method: 'Doppler' }],
      doses: { 'line-1': { time: '22:40', amount: '1.6 mL', ampoule: 'A-1' } },
    })
    expect(none).toEqual([])
    expect(entries.map(({ kind, happenedAt }) => [kind, happenedAt.at.slice(0, 16), happenedAt.precision])).toEqual([
      ['theatre-stamp', '2026-03-10T22:15', 'minute'],
      ['theatre-stamp', '2026-03-10T22:05', 'minute'],
      ['theatre-stamp', '2026-03-10T00:00', 'day'],
      ['theatre-stamp', '2026-03-11T00:40', 'minute'],
      ['pause-item', '2026-03-10T22:10', 'minute'],
      ['pause-item', '2026-03-10T22:12', 'minute'],
      ['observation', '2026-03-10T23:55', 'minute'],
      ['drug-given', '2026-03-10T22:40', 'minute'],
    ])
    expect(entries.flatMap(({ kind, body }) => (kind === 'pause-item' ? [body.item] : []))).toEqual([
      'antibiotic',
      'concerns',
    ])
    for (const { kind, body } of entries) expect(kindNamed(kind)?.body.safeParse(body).error).toBeUndefined()
    expect(entries.at(-1)?.body).toMatchObject({ amount: { value: '1.6', unit: 'mL' }, volume: { value: '1.6' } })
  })

  it('keeps nothing of a sheet with one fault, and names its place', () => {
    const good = { incision: point('22:15') }
    expect(read({ points: { ...good, closed: point('quarter past') } }).entries).toEqual([])
    expect(faults({ points: { ...good, closed: point('quarter past') } })).toEqual([
      ['points.closed.time', 'not-a-time'],
    ])
    expect(faults({ points: { 'skin-mark': point('22:05') } })).toEqual([['points.skin-mark.side', 'no-side']])
    expect(faults({ looks: [{ time: '', values: { mean: '74' }, method: '' }] })).toEqual([
      ['looks.0.time', 'not-a-time'],
      ['looks.0.method', 'no-method'],
    ])
    expect(faults({ doses: { 'line-1': { time: '22:40', amount: '8', ampoule: '' } } })).toEqual([
      ['doses.line-1.amount', 'quantity-no-unit'],
    ])
    expect(faults({})).toEqual([['sheet', 'nothing-typed']])
  })

  it('does not take an answer without its speaker, its minute and, where it is no YES, its reason', () => {
    const answers = { concerns: { answer: 'unknown', because: ' ' } } as const
    expect(
      faults({ pauses: { 'before-incision': { first: '', last: '', ledBy: null, spokenBy: null, answers } } }),
    ).toEqual([
      ['pauses.before-incision.first', 'not-a-time'],
      ['pauses.before-incision.spokenBy', 'not-chosen'],
      ['pauses.before-incision.answers.concerns', 'not-written'],
    ])
  })
})
