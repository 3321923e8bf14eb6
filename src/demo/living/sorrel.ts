import { addDays } from '#core/time/calendar-day.ts'
import type { Chart } from '../chart.ts'
import { moment } from '../chart.ts'
import { staff, zone } from '../practice.ts'
import { writeCheck } from '../writers.ts'
import { find, firstCall, type Living, living, normalBaseline, weigh } from './animal.ts'
import { coliOfACat, reported, sample } from './cultures.ts'
import type { Days } from './days.ts'
import { agreeAndBook, givePlan, operate } from './operation.ts'

/**
 * An invented young cat, home since the day before yesterday after the LEFT bulla was opened from below. The lids do not
 * close though the block is long over, the culture is pending, and nobody has phoned yet.
 */
export function sorrel(days: Days): Chart {
  const one = living('sorrel', 'contact-mead')
  const operated = operatedOn(days)
  const seen = days.openAgo(10)
  firstCall(
    one,
    days.openAgo(12),
    '11',
    {
      name: 'Sorrel',
      species: 'cat',
      breed: 'Domestic longhair',
      sex: 'male',
      born: moment(days.ago(900).slice(0, 7), zone),
      chip: '000000000065390',
    },
    {
      reportedSide: 'LEFT',
      complaint: 'Snores and shakes the head; a pink lump was seen deep in the left ear.',
      daysOfSigns: 50,
      signs: [
        { sign: 'head-tilt', answer: 'no' },
        { sign: 'falling', answer: 'no' },
        { sign: 'drooped-face', answer: 'no' },
        { sign: 'not-eating', answer: 'no' },
      ],
      urgency: 'routine',
      because: 'Eats and breathes well; no sign of a nerve.',
    },
  )
  workUp(one, seen)
  swab(one, seen)
  agreeAndBook(one, `${seen} 15:00`, `${operated} 09:30`, {
    side: 'LEFT',
    procedure: 'ventral-bulla-osteotomy',
    estimate: { low: '1900.00', high: '2500.00' },
  })
  theatre(one, operated)
  const home = days.ago(2)
  const next = addDays(operated, 1)
  if (next < home) lookAt(one, next, 'The block is over and the lids of the left eye do not close.')
  goingHome(one, home)
  return one.chart
}

/** At least three days ago, on an open day; never four, because the look of day 3 would then have been missed at home. */
function operatedOn(days: Days): string {
  const day = days.openAgo(3)
  return day === days.ago(4) ? days.openAgo(5) : day
}

function workUp(one: Living, day: string): void {
  weigh(one, `${day} 10:00`, '4.6')
  find(one, 'LEFT', `${day} 10:15`, {
    discharge: 'waxy',
    drum: 'ruptured',
    mass: 'yes',
    massPlace: 'horizontal',
    massSize: 'small',
    flapCarriage: 'erect',
    otis3: { erythema: 1, swelling: 0, erosion: 0, exudate: 1 },
    text: 'A pink lump on a stalk comes through the drum.',
  })
  find(one, 'RIGHT', `${day} 10:18`, { flapCarriage: 'erect' })
  normalBaseline(one, `${day} 10:25`, { LEFT: '14', RIGHT: '15' })
  const side = { canalMineral: 'no', mass: 'no', massPlace: 'not-reported', massSize: 'not-reported' } as const
  one.chart.write(
    'imaging',
    { at: `${day} 11:30`, by: staff.holm, subject: one.animal },
    {
      modality: 'CT',
      study: 'invented-study-47',
      reportedBy: 'Radiologist on call',
      LEFT: { ...side, bulla: 'filled', bullaWall: 'thick' },
      RIGHT: { ...side, bulla: 'air', bullaWall: 'normal' },
      text: 'Left bulla filled on both sides of the septum, wall thick; right bulla holds air.',
    },
  )
  one.chart.write(
    'choice',
    { at: `${day} 14:40`, by: staff.holm, subject: one.ear('LEFT') },
    {
      options: [
        { option: 'ventral-bulla-osteotomy', answer: 'chosen', because: 'The bulla is filled beyond the septum.' },
        { option: 'traction', answer: 'declined', because: 'A filled bulla makes it likely to grow again.' },
      ],
      session: 'one-ear',
      for: ['Filled bulla on the scan'],
      against: ['Horner’s syndrome is frequent in cats'],
      missing: [],
    },
  )
}

/** A swab of the work-up: it says what lived in the canal, not what the bulla will grow. */
function swab(one: Living, day: string): void {
  const canal = { site: 'canal', label: 'S-0', operation: null, antibioticsOnBoard: null } as const
  const specimen = sample(one, 'LEFT', `${day} 10:20`, canal)
  reported(one, 'LEFT', specimen, {
    on: addDays(day, 4),
    number: 'INV-0417',
    isolate: coliOfACat,
    decided: {
      decision: 'no-change',
      text: 'A swab of the canal before the operation; the bulla is sampled in theatre.',
    },
  })
}

function theatre(one: Living, day: string): void {
  weigh(one, `${day} 07:50`, '4.6')
  givePlan(one, day, 'our usual plan, cat', 'around the bulla, LEFT')
  one.chart.write(
    'specimen',
    { at: `${day} 10:20`, by: staff.castellane, subject: one.ear('LEFT') },
    {
      site: 'bulla-on-entry',
      tests: ['aerobic-culture', 'anaerobic-culture'],
      label: 'S-1',
      laboratory: 'contact-laboratory',
      antibioticsOnBoard: 'cefazolin since 09:25',
      expectedBy: null,
      operation: one.operationId,
    },
  )
  operate(one, day, {
    side: 'LEFT',
    procedure: 'ventral-bulla-osteotomy',
    mainReason: 'polyp',
    indication: 'A polyp of the left middle ear.',
    findings: 'Both compartments opened; polyp out with its stalk.',
    plan: 'Watch pupil, blink and breathing. Culture pending.',
  })
}

function lookAt(one: Living, day: string, text: string): void {
  writeCheck(one.chart, one.ear('LEFT'), `${day} 08:30`, staff.holm, {
    wound: 'closed',
    blink: 'absent',
    lipOrEarDroop: 'yes',
    horner: 'yes',
    tearTest: { value: '12', unit: 'mm/min' },
    fluorescein: 'negative',
    text,
  })
}

function goingHome(one: Living, day: string): void {
  lookAt(one, day, 'The lids of the left eye do not close, long after the block.')
  one.chart.write(
    'discharge',
    { at: `${day} 16:30`, by: staff.lindqvist, subject: one.animal },
    {
      medicines: [
        {
          drug: 'carbomer',
          label: 'Carbomer eye gel',
          purpose: 'a moist left eye',
          form: 'eye-gel',
          strength: { value: '0.2', unit: '%' },
          each: '1',
          side: 'LEFT',
          times: ['07:00', '09:00', '11:00', '13:00', '15:00', '17:00', '19:00', '21:00'],
          firstDay: day,
          firstTime: '19:00',
          days: 28,
          withFood: 'either',
          onDays: 'every-day',
          steps: [],
        },
        {
          drug: 'paraffin-eye-ointment',
          label: 'Eye ointment for the night',
          purpose: 'a moist left eye in the night',
          form: 'eye-ointment',
          strength: null,
          each: '1',
          side: 'LEFT',
          times: ['23:00'],
          firstDay: day,
          firstTime: '23:00',
          days: 28,
          withFood: 'either',
          onDays: 'every-day',
          steps: [],
        },
      ],
      collarUntil: addDays(day, 12),
      sutures: 'to-come-out',
      food: 'Soft food for a week.',
      rest: 'Indoors until the sutures are out.',
      eyeCare:
        'Gel into the left eye every two hours by day, ointment for the night, until we say the blink is normal.',
      nextVisit: null,
      taught: [
        { item: 'eye-care', answer: 'own-words' },
        { item: 'collar', answer: 'own-words' },
        { item: 'when-to-phone', answer: 'with-help' },
      ],
      taughtBy: staff.lindqvist,
      carer: null,
    },
  )
}
