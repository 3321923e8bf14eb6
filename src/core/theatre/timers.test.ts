import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { entryMaker, testId } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import { doneAt, retractionsOf, toStamp } from './stamps.ts'
import { timersOf } from './timers.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const clock = (time: string) => `2026-03-10T${time}:00.000Z`

type Made = readonly [time: string, what: string | Partial<BodyOf<'drug-given'>>]

function entries(...made: readonly Made[]): Entry[] {
  const make = entryMaker()
  const happenedAt = (time: string) =>
    ({ at: clock(time), zone: 'Europe/Paris', precision: 'second', by: 'clock' }) as const
  return [
    make({ kind: 'identity' }),
    ...made.map(([time, what]) => {
      const around = { subject, happenedAt: happenedAt(time) }
      if (typeof what === 'string') {
        const body = { checkpoint: what, answer: 'done', detail: {}, text: null } as const
        return make({ ...around, kind: 'theatre-stamp', body })
      }
      if ('drug' in what) return make({ ...around, kind: 'drug-given', body: { ...drugGiven.example, ...what } })
      return make({ ...around, kind: 'observation', body: observation.example })
    }),
  ]
}

const cefazolin = { drug: 'cefazolin', use: 'antibiotic_periop', route: 'IV', line: null }

function timers(now: string, ...made: readonly Made[]) {
  return timersOf({ theCase: fold(entries(...made)) }, 'operation-1', clock(now), theatreTimers, formulary)
}

function timer(what: string, now: string, ...made: readonly Made[]) {
  return timers(now, ...made).find((one) => one.what === what)
}

describe('the clocks of the theatre', () => {
  it('run from entries alone', () => {
    expect(timers('09:00')).toEqual([])
    expect(timer('anaesthesia', '09:10', ['08:00', 'anaesthesia-start'])?.minutes).toBe(70)
    expect(timer('anaesthesia', '11:00', ['08:00', 'anaesthesia-start'], ['10:30', 'tube-out'])).toBeUndefined()
    const open = [
      ['08:00', 'anaesthesia-start'],
      ['08:40', 'incision'],
    ] as const
    expect(timer('incision', '09:10', ...open)?.minutes).toBe(30)
    expect(timer('incision', '10:10', ...open, ['10:00', 'closed'])).toBeUndefined()
  })

  it('ask for the cut within 60 min of the antimicrobial, and for the next dose after 90 min of cefazolin', () => {
    expect(timer('antimicrobial', '08:30', ['08:00', cefazolin])).toMatchObject({
      asks: 'cut',
      minutes: 30,
      dueAt: clock('09:00'),
      isDue: false,
      beforeCut: null,
    })
    expect(timer('antimicrobial', '09:00', ['08:00', cefazolin])?.isDue).toBe(true)
    // Every 90 min during surgery, as the row of cefazolin in the dog reads it.
    const cut = [
      ['08:00', cefazolin],
      ['08:30', 'incision'],
    ] as const
    expect(timer('antimicrobial', '09:29', ...cut)).toMatchObject({
      asks: 'next-dose',
      dueAt: clock('09:30'),
      isDue: false,
      beforeCut: 30,
    })
    expect(timer('antimicrobial', '09:30', ...cut)?.isDue).toBe(true)
    expect(timer('antimicrobial', '09:40', ...cut, ['09:31', cefazolin])).toMatchObject({
      minutes: 9,
      dueAt: clock('11:01'),
      isDue: false,
    })
    expect(timer('antimicrobial', '09:40', ...cut, ['09:35', 'closed'])?.isDue).toBe(false)
  })

  it('say nothing of a next dose where no source gives an interval that can be counted', () => {
    const odd = { ...cefazolin, drug: 'no-such-drug' }
    expect(timer('antimicrobial', '12:00', ['08:00', odd], ['08:30', 'incision'])).toMatchObject({
      asks: 'next-dose',
      dueAt: null,
      isDue: false,
    })
  })

  it('add up every time the nerve is held aside, and ask for a look five minutes after the last', () => {
    const held = [
      ['09:00', 'retraction-on-1'],
      ['09:06', 'retraction-off-1'],
      ['09:10', 'retraction-on-2'],
    ] as const
    expect(timer('retraction', '09:14', ...held)?.minutes).toBe(10)
    expect(retractionsOf(fold(entries(...held)), 'operation-1')).toEqual([
      { number: 1, from: clock('09:00'), until: clock('09:06') },
      { number: 2, from: clock('09:10'), until: null },
    ])
    const watched = [
      ['08:00', 'anaesthesia-start'],
      ['08:10', {}],
    ] as const
    expect(timer('observation', '08:14', ...watched)).toMatchObject({ minutes: 4, isDue: false, dueAt: clock('08:15') })
    expect(timer('observation', '08:15', ...watched)?.isDue).toBe(true)
  })

  it('stop with the record, and after a day when nobody stamped the end', () => {
    const start = [['08:00', 'anaesthesia-start']] as const
    const theCase = fold(entries(...start))
    const at = (instant: string) => timersOf({ theCase }, 'operation-1', instant, theatreTimers, formulary)
    expect(at('2026-03-11T07:59:00.000Z')).not.toEqual([])
    expect(at('2026-03-11T08:00:00.000Z')).toEqual([])
    expect(timer('no-observation', '08:10', ...start)).toMatchObject({ minutes: 10, isDue: true })
    const summary = entryMaker({}, 5)({ kind: 'operation-summary', subject })
    const signed = fold([...entries(...start), summary])
    expect(timersOf({ theCase: signed }, 'operation-1', clock('09:00'), theatreTimers, formulary)).toEqual([])
  })

  it('count real minutes over midnight and over a change of the clock', () => {
    const made = entries(['23:30', 'anaesthesia-start'])
    const later = timersOf({ theCase: fold(made) }, 'operation-1', '2026-03-11T00:30:00.000Z', theatreTimers, formulary)
    expect(later.find(({ what }) => what === 'anaesthesia')?.minutes).toBe(60)
    // In Paris the clock went from 02:00 to 03:00 at 01:00 UTC on 29 March 2026.
    const spring = entryMaker()({
      kind: 'theatre-stamp',
      subject,
      happenedAt: { at: '2026-03-29T00:30:00.000Z', zone: 'Europe/Paris', precision: 'second', by: 'clock' },
      body: { checkpoint: 'anaesthesia-start', answer: 'done', detail: {}, text: null },
    })
    const after = timersOf(
      { theCase: fold([spring]) },
      'operation-1',
      '2026-03-29T01:30:00.000Z',
      theatreTimers,
      formulary,
    )
    expect(after.find(({ what }) => what === 'anaesthesia')?.minutes).toBe(60)
  })
})

describe('both ears under one anaesthetic', () => {
  const second = { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } as const
  const stamped = (time: string, checkpoint: string) =>
    ({ ...entries([time, checkpoint])[1], subject: second }) as Entry

  it('share the clocks of anaesthesia, drugs and observation; each cut has its own', () => {
    const first = entries(['08:00', 'anaesthesia-start'], ['08:40', 'incision'], ['10:00', 'closed'])
    const theCase = fold([...first, { ...stamped('10:20', 'incision'), id: testId(900) }])
    const clocks = timersOf({ theCase }, 'operation-2', clock('10:30'), theatreTimers, formulary, [
      'operation-1',
      'operation-2',
    ])
    expect(clocks.map(({ what, minutes }) => [what, minutes])).toEqual([
      ['anaesthesia', 150],
      ['incision', 10],
      ['no-observation', 150],
    ])
    const alone = timersOf({ theCase }, 'operation-2', clock('10:30'), theatreTimers, formulary)
    expect(alone.map(({ what }) => what)).toEqual(['incision'])
  })
})

describe('what is stamped', () => {
  it('stands in the order of the operation, with every live stamp of it', () => {
    const theCase = fold(entries(['08:00', 'anaesthesia-start'], ['08:40', 'incision']))
    const checkpoint = { id: 'k1-skin', title: 'Skin' } as Parameters<typeof toStamp>[2][number]
    const items = toStamp(theCase, 'operation-1', [checkpoint])
    expect(items.map(({ id, stamps }) => [id, stamps.length])).toEqual([
      ['premedication', 0],
      ['anaesthesia-start', 1],
      ['skin-mark', 0],
      ['incision', 1],
      ['k1-skin', 0],
      ['closed', 0],
      ['tube-out', 0],
    ])
    // The second ear of one anaesthetic has neither of the marks that began it.
    const later = toStamp(theCase, 'operation-2', [checkpoint], ['operation-1', 'operation-2'])
    expect(later.map(({ id }) => id)).toEqual(['skin-mark', 'incision', 'k1-skin', 'closed', 'tube-out'])
    expect(toStamp(theCase, 'operation-1', [checkpoint], ['operation-1', 'operation-2'])).toHaveLength(7)
    expect(doneAt(theCase, 'operation-1', 'incision')).toBe(clock('08:40'))
    expect(doneAt(theCase, 'operation-2', 'incision')).toBeNull()
  })
})
