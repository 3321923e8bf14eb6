import type { BodyOf } from '#core/journal/fold.ts'
import { addDays } from '#core/time/calendar-day.ts'
import type { Chart } from '../chart.ts'
import { moment } from '../chart.ts'
import { writePlannedLines } from '../planned-lines.ts'
import { staff, zone } from '../practice.ts'
import { find, firstCall, type Living, living, normalBaseline, weigh } from './animal.ts'
import type { Days } from './days.ts'
import { agreeAndBook } from './operation.ts'

/**
 * An invented dog agreed for the RIGHT ear in two open days. Still missing: the weight of the day and the second check;
 * and the radiographs the referring vet sent last say LEFT, which must stop the cut until a person settles it.
 */
export function juniper(days: Days): Chart {
  const one = living('juniper', 'contact-strand')
  firstCall(
    one,
    days.openAgo(9),
    '09',
    {
      name: 'Juniper',
      species: 'dog',
      breed: 'Labrador Retriever cross',
      sex: 'female',
      born: moment(days.ago(2700).slice(0, 7), zone),
      chip: '000000000042817',
    },
    {
      reportedSide: 'RIGHT',
      complaint: 'The right ear has smelled for three years; drops no longer help and she guards that side.',
      daysOfSigns: 1100,
      signs: [
        { sign: 'head-tilt', answer: 'no' },
        { sign: 'falling', answer: 'no' },
        { sign: 'drooped-face', answer: 'no' },
        { sign: 'severe-pain', answer: 'yes' },
      ],
      urgency: 'this-week',
      because: 'Pain; no sign of a nerve.',
    },
  )
  workUp(one, days.openAgo(6))
  decide(one, days.openAgo(6), days.openAhead(2))
  dayBefore(one, days.openAgo(1))
  return one.chart
}

function workUp(one: Living, day: string): void {
  const { chart, animal } = one
  chart.write(
    'medicine-before',
    { at: `${day} 10:05`, by: staff.lindqvist, subject: animal },
    {
      written: 'Prednisolone 5 mg tablets',
      substance: 'prednisolone',
      route: 'oral',
      dose: '2 tablets a day',
      from: moment(addDays(day, -75), zone),
      until: moment(addDays(day, -61), zone),
      ongoing: false,
      effect: 'partly',
    },
  )
  weigh(one, `${day} 10:10`, '26.4', 6)
  find(one, 'RIGHT', `${day} 10:20`, {
    canalFeel: 'bone-hard',
    painOnPressing: 'yes',
    discharge: 'purulent',
    stenosis: 'closed',
    drum: 'could-not-see',
    otis3: { erythema: 3, swelling: 3, erosion: 2, exudate: 3 },
  })
  find(one, 'LEFT', `${day} 10:24`, {
    discharge: 'waxy',
    stenosis: 'mild',
    otis3: { erythema: 1, swelling: 0, erosion: 0, exudate: 1 },
  })
  normalBaseline(one, `${day} 10:35`, { LEFT: '19', RIGHT: '18' })
  chart.write(
    'cytology',
    { at: `${day} 10:50`, by: staff.castellane, subject: one.ear('RIGHT') },
    {
      site: 'canal',
      cocci: 'few',
      rods: 'many',
      yeast: 'none',
      inflammatoryCells: 'many',
      oddCells: 'none',
      biofilm: 'yes',
      text: null,
      readBy: staff.castellane,
    },
  )
  const blood = (
    panel: BodyOf<'blood-test'>['panel'],
    results: readonly (readonly [string, string, string, string])[],
  ) =>
    chart.write(
      'blood-test',
      { at: `${day} 11:10`, by: staff.castellane, subject: animal },
      {
        panel,
        measured: 'in-house',
        laboratory: null,
        results: results.map(([analyte, printed, unit, range]) => ({ analyte, printed, unit, flag: null, range })),
        text: null,
      },
    )
  blood('haematology', [['Haematocrit', '46', '%', '37-55']])
  blood('chemistry', [['Creatinine', '88', 'umol/L', '44-159']])
}

function decide(one: Living, day: string, plannedFor: string): void {
  one.chart.write(
    'choice',
    { at: `${day} 14:30`, by: staff.holm, subject: one.ear('RIGHT') },
    {
      options: [
        { option: 'teca-lbo', answer: 'chosen', because: 'The canal is closed and feels like bone.' },
        { option: 'medical-control', answer: 'declined', because: 'Three years of it failed.' },
        { option: 'no-treatment', answer: 'declined', because: 'She is in pain.' },
      ],
      session: 'one-ear',
      for: ['Narrowing that cannot be reversed', 'Treatment failed for three years'],
      against: ['The other ear needs care for life'],
      missing: ['Radiographs of the referring vet are still to come'],
    },
  )
  agreeAndBook(one, `${day} 15:10`, `${plannedFor} 09:30`, {
    side: 'RIGHT',
    procedure: 'teca-lbo',
    estimate: { low: '3000.00', high: '3700.00' },
  })
  one.chart.write(
    'anaesthetic-assessment',
    { at: `${day} 15:40`, by: staff.adeyemi, subject: one.operation },
    {
      asa: 'II',
      emergency: false,
      because: 'Chronic ear disease; otherwise well.',
      jawOpens: 'yes',
      flatFace: 'no',
      heart: 'normal',
      lungs: 'normal',
      heartAndLungs: null,
      regurgitation: 'usual',
      airwayA: 'Tube through the mouth, a size smaller beside it.',
      airwayB: 'Long laryngoscope blade and a stylet.',
      assessedBy: staff.adeyemi,
    },
  )
}

/** What came in last: pictures that say the other side, and the plan that nobody has checked. */
function dayBefore(one: Living, day: string): void {
  const side = { canalMineral: 'no', mass: 'no', massPlace: 'not-reported', massSize: 'not-reported' } as const
  one.chart.write(
    'imaging',
    { at: `${day} 16:10`, by: staff.castellane, subject: one.animal },
    {
      modality: 'radiographs',
      study: 'invented-study-52',
      reportedBy: 'Femi Oyelaran, Sallow Lane Vets',
      LEFT: { ...side, bulla: 'filled', bullaWall: 'thick' },
      RIGHT: { ...side, bulla: 'air', bullaWall: 'normal' },
      text: 'As the letter says it: left bulla white, its wall thick; right bulla dark.',
    },
  )
  writePlannedLines(one.chart, {
    operation: one.operation,
    by: staff.adeyemi,
    at: `${day} 17:00`,
    plan: 'our usual plan, dog',
  })
}
