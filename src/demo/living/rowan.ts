import { addDays, dayAfter } from '#core/time/calendar-day.ts'
import type { Chart } from '../chart.ts'
import { moment } from '../chart.ts'
import { staff, zone } from '../practice.ts'
import { writeCheck } from '../writers.ts'
import { find, firstCall, type Living, living, normalBaseline, weigh } from './animal.ts'
import { reported, resistantStaphylococcus, sample } from './cultures.ts'
import type { Days } from './days.ts'
import { agreeAndBook, givePlan, operate } from './operation.ts'

/**
 * An invented shepherd in the fifth month after the RIGHT canal was removed. All was quiet; yesterday her owner saw a
 * wet hole under the ear, and nobody has looked at it yet.
 */
export function rowan(days: Days): Chart {
  const one = living('rowan', 'contact-pratt')
  const operated = days.openAgo(145)
  const seen = days.openAgo(155)
  firstCall(
    one,
    days.openAgo(160),
    '14',
    {
      name: 'Rowan',
      species: 'dog',
      breed: 'German Shepherd',
      sex: 'female',
      born: moment(days.ago(2300).slice(0, 7), zone),
      chip: '000000000030578',
      abcb1: 'normal',
    },
    {
      reportedSide: 'RIGHT',
      complaint: 'The right ear is closed and sore; she shakes her head all night.',
      daysOfSigns: 900,
      signs: [
        { sign: 'head-tilt', answer: 'no' },
        { sign: 'drooped-face', answer: 'no' },
        { sign: 'severe-pain', answer: 'yes' },
      ],
      urgency: 'this-week',
      because: 'Pain; no sign of a nerve.',
    },
  )
  weigh(one, `${seen} 10:00`, '31.5')
  find(one, 'RIGHT', `${seen} 10:15`, {
    canalFeel: 'bone-hard',
    painOnPressing: 'yes',
    discharge: 'purulent',
    stenosis: 'closed',
    drum: 'could-not-see',
    flapCarriage: 'erect',
    otis3: { erythema: 3, swelling: 3, erosion: 2, exudate: 2 },
  })
  find(one, 'LEFT', `${seen} 10:20`, { flapCarriage: 'erect' })
  normalBaseline(one, `${seen} 10:30`, { LEFT: '20', RIGHT: '19' })
  agreeAndBook(one, `${seen} 15:00`, `${operated} 09:30`, {
    side: 'RIGHT',
    procedure: 'teca-lbo',
    estimate: { low: '3100.00', high: '3900.00' },
  })
  weigh(one, `${operated} 07:50`, '31.2')
  givePlan(one, operated, 'our usual plan, dog', 'great auricular and auriculotemporal nerves, RIGHT')
  const board = { operation: one.operationId, antibioticsOnBoard: 'cefazolin since 09:25' }
  const entry = sample(one, 'RIGHT', `${operated} 10:20`, { site: 'bulla-on-entry', label: 'R-1', ...board })
  const lavaged = sample(one, 'RIGHT', `${operated} 10:50`, { site: 'bulla-after-lavage', label: 'R-2', ...board })
  operate(one, operated, {
    side: 'RIGHT',
    procedure: 'teca-lbo',
    mainReason: null,
    indication: 'Closed right canal, painful every day.',
    findings: 'Canal out whole; bulla cleared as far as could be seen.',
    plan: 'Ward for two nights.',
  })
  quietMonths(one, operated)
  cultures(one, addDays(operated, 7), entry, lavaged)
  yesterday(one, days)
  return one.chart
}

function quietMonths(one: Living, operated: string): void {
  const look = (day: string, sutures: 'in' | 'out' | 'none', text: string | null = null) =>
    writeCheck(one.chart, one.ear('RIGHT'), `${day} 10:10`, staff.holm, {
      wound: 'closed',
      blink: 'normal',
      sutures,
      tearTest: { value: '18', unit: 'mm/min' },
      fluorescein: 'negative',
      text,
    })
  look(addDays(operated, 1), 'in')
  one.chart.write(
    'discharge',
    { at: `${addDays(operated, 2)} 10:30`, by: staff.lindqvist, subject: one.animal },
    {
      medicines: [],
      collarUntil: addDays(operated, 14),
      sutures: 'to-come-out',
      food: 'Soft food for two weeks.',
      rest: 'Short walks on the lead.',
      eyeCare: null,
      nextVisit: addDays(operated, 12),
      taught: [{ item: 'when-to-phone', answer: 'own-words' }],
      taughtBy: staff.lindqvist,
      carer: null,
    },
  )
  look(addDays(operated, 3), 'in')
  one.chart.write(
    'call',
    { at: `${addDays(operated, 4)} 09:40`, by: staff.lindqvist, subject: one.animal },
    {
      contact: one.owner,
      direction: 'we-called',
      channel: 'phone',
      reached: 'yes',
      about: 'first-call',
      text: 'Eats and sleeps; no discharge.',
    },
  )
  look(addDays(operated, 12), 'out')
  look(addDays(operated, 28), 'none')
  one.chart.write(
    'skin-plan',
    { at: `${addDays(operated, 28)} 10:30`, by: staff.holm, subject: one.animal },
    { disease: 'none-found', measures: [], text: 'No itch but at this ear.', reviewOn: null },
  )
  one.chart.write(
    'other-ear-plan',
    { at: `${addDays(operated, 28)} 10:35`, by: staff.holm, subject: one.ear('LEFT') },
    { plan: 'watch', because: 'The left ear is quiet.', reviewOn: null },
  )
  look(addDays(dayAfter(operated, { count: 3, unit: 'months' }), 3), 'none', 'Quiet; no swelling.')
}

/** The first sample grew nothing; what lay behind the debris grew once it was washed out. */
function cultures(one: Living, on: string, entry: string, lavaged: string): void {
  const decision = 'no-change'
  reported(one, 'RIGHT', entry, {
    on,
    number: 'INV-0311',
    isolate: null,
    decided: { decision, text: 'Nothing grew on entry; wait for the sample after lavage.' },
  })
  reported(one, 'RIGHT', lavaged, {
    on: addDays(on, 1),
    number: 'INV-0312',
    isolate: resistantStaphylococcus,
    decided: { decision, text: 'Resistant to methicillin. The wound is closed and dry: no tablets, looked at again.' },
  })
}

function yesterday(one: Living, days: Days): void {
  const day = days.ago(1)
  one.chart.write(
    'call',
    { at: `${day} 17:50`, by: staff.moretti, subject: one.animal },
    {
      contact: one.owner,
      direction: 'they-called',
      channel: 'phone',
      reached: 'yes',
      about: 'worry',
      text: 'A wet hole under the right ear since the morning; she eats and is not in pain.',
    },
  )
  one.chart.write(
    'late-event',
    { at: `${day} 18:05`, by: staff.lindqvist, subject: one.ear('RIGHT') },
    {
      what: 'draining-tract',
      operation: one.operationId,
      firstSeen: moment(day, zone),
      seenBy: 'owner',
      needed: 'not-decided',
      text: 'Told on the telephone; not seen by us.',
    },
  )
}
