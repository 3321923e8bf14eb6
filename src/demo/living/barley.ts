import { emptyReport, printedIsolate } from '#core/culture/empty-report.ts'
import { addDays } from '#core/time/calendar-day.ts'
import type { Chart } from '../chart.ts'
import { moment } from '../chart.ts'
import { atOurPrices } from '../cost-of-a-year.ts'
import { staff, zone } from '../practice.ts'
import { giver, mg, mL, stamp, writeCheck } from '../writers.ts'
import { find, firstCall, type Living, living, normalBaseline, weigh } from './animal.ts'
import type { Days } from './days.ts'
import { agreeAndBook, givePlan, operate } from './operation.ts'

/**
 * An invented spaniel about thirteen days after the LEFT canal was removed: stitches to come out, a histology report
 * that nobody has read, a culture of which the owner has not heard, and one weight that two people corrected at once.
 */
export function barley(days: Days): Chart {
  const one = living('barley', 'contact-wetherlow')
  const operated = days.openAgo(12)
  firstCall(
    one,
    days.openAgo(24),
    '10',
    {
      name: 'Barley',
      species: 'dog',
      breed: 'Cocker Spaniel',
      sex: 'male',
      born: moment(days.ago(3100).slice(0, 7), zone),
      chip: '000000000091246',
    },
    {
      reportedSide: 'LEFT',
      complaint: 'The left ear has been wet for two years whatever is put into it.',
      daysOfSigns: 730,
      signs: [
        { sign: 'head-tilt', answer: 'no' },
        { sign: 'falling', answer: 'no' },
        { sign: 'drooped-face', answer: 'no' },
        { sign: 'mouth-will-not-open', answer: 'no' },
      ],
      urgency: 'routine',
      because: 'No sign of a nerve, eats well.',
    },
  )
  workUp(one, days.openAgo(20))
  agreeAndBook(one, `${days.openAgo(20)} 15:00`, `${operated} 09:30`, {
    side: 'LEFT',
    procedure: 'teca-lbo',
    estimate: { low: '2800.00', high: '3500.00' },
  })
  theatre(one, operated)
  home(one, operated)
  results(one, days)
  weighedTwice(one, days.ago(2), days.ago(1))
  return one.chart
}

function workUp(one: Living, day: string): void {
  weigh(one, `${day} 10:00`, '14.9', 6)
  find(one, 'LEFT', `${day} 10:15`, {
    canalFeel: 'bone-hard',
    painOnPressing: 'yes',
    discharge: 'purulent',
    stenosis: 'closed',
    drum: 'could-not-see',
    otis3: { erythema: 2, swelling: 3, erosion: 1, exudate: 3 },
  })
  find(one, 'RIGHT', `${day} 10:19`, { discharge: 'waxy', otis3: { erythema: 1, swelling: 0, erosion: 0, exudate: 1 } })
  normalBaseline(one, `${day} 10:30`, { LEFT: '17', RIGHT: '18' })
  choose(one, day)
}

/** Nobody scanned the bulla: the worksheet of this ear goes on saying so. */
function choose(one: Living, day: string): void {
  const left = (at: string) => ({ at: `${day} ${at}`, by: staff.holm, subject: one.ear('LEFT') })
  one.chart.write('history-item', left('10:40'), {
    topic: 'ear-disease',
    text: 'Wet and sore for two years; better for some weeks each time, then worse than before.',
    from: null,
    until: null,
    source: 'owner',
  })
  one.chart.write('medicine-before', left('10:45'), {
    written: 'Prednisolone 5 mg tablets',
    substance: 'prednisolone',
    route: 'oral',
    dose: 'two tablets a day for three weeks',
    from: null,
    until: moment(addDays(day, -60).slice(0, 7), zone),
    ongoing: false,
    effect: 'none',
  })
  const yearOf = (option: 'medical-control' | 'teca-lbo', often: Parameters<typeof atOurPrices>[0]) =>
    one.chart.write('cost-assumption', left('14:20'), { option, lines: atOurPrices(often) })
  yearOf('medical-control', {
    'price-check': [6, 10, 'year'],
    'price-drops': [1, 2, 'month'],
    'price-smear-and-culture': [2, 3, 'year'],
  })
  yearOf('teca-lbo', {
    'price-teca': [1, 1, 'year'],
    'price-ward-day': [1, 3, 'year'],
    'price-laboratory': [1, 1, 'year'],
    'price-recheck': [4, 6, 'year'],
  })
  one.chart.write('choice', left('14:40'), {
    options: [
      { option: 'teca-lbo', answer: 'chosen', because: 'The canal is closed and mineral, and it hurts.' },
      { option: 'medical-control', answer: 'declined', because: 'Two years of it failed.' },
      { option: 'deep-flush', answer: 'declined', because: 'Nothing passes the closed canal.' },
      { option: 'lateral-wall-resection', answer: 'declined', because: 'The deeper canal is closed; he is a Cocker.' },
      { option: 'no-treatment', answer: 'declined', because: 'He hurts every day.' },
      { option: 'euthanasia', answer: 'declined', because: 'Named once, without pressure; they wish to treat.' },
    ],
    session: 'one-ear',
    for: ['Narrowing that cannot be reversed', 'A steroid did not open it'],
    against: ['His skin disease goes on'],
    missing: ['What the bulla holds was not scanned; the owners did not wish it'],
  })
}

function theatre(one: Living, day: string): void {
  weigh(one, `${day} 07:50`, '14.8', 6)
  givePlan(one, day, 'our usual plan, dog', 'great auricular and auriculotemporal nerves, LEFT')
  const specimen = (label: string, site: 'bulla-on-entry' | 'canal-tissue', test: 'aerobic-culture' | 'histology') =>
    one.chart.write(
      'specimen',
      { at: `${day} 10:30`, by: staff.castellane, subject: one.ear('LEFT') },
      {
        site,
        tests: [test],
        label,
        laboratory: 'contact-laboratory',
        antibioticsOnBoard: 'cefazolin since 09:25',
        expectedBy: null,
        operation: one.operationId,
      },
    )
  specimen('B-1', 'bulla-on-entry', 'aerobic-culture')
  specimen('B-2', 'canal-tissue', 'histology')
  const bleeding = bled(one, day)
  operate(one, day, {
    side: 'LEFT',
    procedure: 'teca-lbo',
    mainReason: 'chronic-otitis',
    indication: 'Closed, mineral left canal after two years of failed treatment.',
    findings: 'Canal out whole; debris and lining of the bulla removed. Facial nerve seen and free.',
    complications: ['bleeding'],
    plan: 'Ward for two nights. Culture and histology pending.',
  })
  afterTheBleed(one, day, bleeding)
}

/** A vein behind the jaw joint opened at the bulla; wax held it after a few minutes. */
function bled(one: Living, day: string): string {
  stamp(one.chart, one.operation, `${day} 10:34`, 'emergency-on-bleeding-1')
  const begun = one.chart.entries.at(-1)?.id ?? ''
  giver(one.chart, one.operation)(`${day} 10:36`, {
    drug: 'tranexamic-acid',
    amount: mg('148'),
    volume: mL('1.48'),
    route: 'IV',
    use: 'antifibrinolytic',
    line: null,
  })
  one.chart.write(
    'blood-loss',
    { at: `${day} 10:41`, by: staff.castellane, subject: one.operation },
    { jar: mL('110'), lavageIn: mL('40'), lavageInJar: mL('35'), swabs: [] },
  )
  stamp(
    one.chart,
    one.operation,
    `${day} 10:43`,
    'emergency-off-bleeding-1',
    {},
    'Vein behind the jaw joint; wax held it.',
  )
  return begun
}

/** The owner heard it the same day, and the nurse wrote down what could be better. */
function afterTheBleed(one: Living, day: string, bleeding: string): void {
  one.chart.write(
    'told',
    { at: `${day} 12:40`, by: staff.holm, subject: one.animal },
    {
      about: bleeding,
      who: 'owner',
      contact: one.owner,
      by: 'phone',
      text: 'A vein bled more than usual for nine minutes and was stopped. He is awake and warm.',
    },
  )
  one.chart.write(
    'incident-note',
    { at: `${day} 13:05`, by: staff.castellane, subject: one.operation },
    {
      what: 'bleeding',
      during: 'operation',
      reached: 'yes-no-harm',
      helped: ['drill', 'spoken-pause'],
      change: ['equipment'],
      text: 'Bone wax lay in the cupboard; it belongs on the table before the bulla is opened.',
      emergency: bleeding,
      point: null,
      pointOf: null,
    },
  )
}

function home(one: Living, operated: string): void {
  const look = (day: string, time: string, by: string) =>
    writeCheck(one.chart, one.ear('LEFT'), `${day} ${time}`, by, {
      wound: 'closed',
      blink: 'normal',
      tearTest: { value: '16', unit: 'mm/min' },
      fluorescein: 'negative',
    })
  const day = addDays(operated, 2)
  look(addDays(operated, 1), '08:10', staff.holm)
  one.chart.write(
    'discharge',
    { at: `${day} 10:30`, by: staff.lindqvist, subject: one.animal },
    {
      medicines: [
        {
          drug: 'meloxicam',
          label: 'Meloxicam 1 mg chewable tablets',
          purpose: 'pain and swelling',
          form: 'tablet',
          strength: { value: '1', unit: 'mg/{tablet}' },
          each: '1.5',
          side: null,
          times: ['18:00'],
          firstDay: day,
          firstTime: '18:00',
          days: 7,
          withFood: 'yes',
          onDays: 'every-day',
          steps: [],
        },
      ],
      collarUntil: addDays(operated, 14),
      sutures: 'to-come-out',
      food: 'Soft food for two weeks.',
      rest: 'Short walks on the lead.',
      eyeCare: null,
      nextVisit: null,
      taught: [
        { item: 'collar', answer: 'own-words' },
        { item: 'when-to-phone', answer: 'own-words' },
      ],
      taughtBy: staff.lindqvist,
      carer: null,
    },
  )
  look(addDays(operated, 3), '11:00', staff.lindqvist)
  one.chart.write(
    'call',
    { at: `${addDays(operated, 4)} 10:00`, by: staff.lindqvist, subject: one.animal },
    {
      contact: one.owner,
      direction: 'we-called',
      channel: 'phone',
      reached: 'yes',
      about: 'first-call',
      text: 'Eating, wears the collar; the tablets go down with cheese.',
    },
  )
}

/** The culture was read and the vet told, not the owner; the tissue came yesterday and lies there. */
function results(one: Living, days: Days): void {
  const idOf = (label: string) =>
    one.chart.entries.find(({ kind, body }) => kind === 'specimen' && (body as { label: string }).label === label)?.id
  const subject = one.ear('LEFT')
  const laboratory = { kind: 'import', from: 'contact-laboratory' } as const
  const culture = one.chart.write(
    'specimen-result',
    { at: `${days.ago(6)} 11:20`, by: laboratory, subject },
    {
      ...emptyReport,
      specimen: idOf('B-1') ?? '',
      status: 'final',
      growth: 'growth',
      isolates: [printedIsolate('1', 'Staphylococcus pseudintermedius', [['cefalexin', '<=2 mg/L']])],
    },
  )
  one.chart.write(
    'result-read',
    { at: `${days.ago(6)} 16:40`, by: staff.holm, subject },
    { result: culture, decision: 'no-change', edition: null, text: 'The wound is quiet; no tablets.' },
  )
  one.chart.write(
    'told',
    { at: `${days.ago(6)} 16:50`, by: staff.holm, subject },
    { about: culture, who: 'referring-vet', contact: 'contact-oyelaran', by: 'email', text: null },
  )
  one.chart.write(
    'specimen-result',
    { at: `${days.ago(1)} 15:40`, by: laboratory, subject },
    {
      ...emptyReport,
      specimen: idOf('B-2') ?? '',
      status: 'final',
      growth: 'not-a-culture',
      text: 'Chronic inflammation with gland hyperplasia and bone; no tumour seen.',
    },
  )
}

/** Typed wrongly at the counter, and put right on two screens that did not know of each other. */
function weighedTwice(one: Living, day: string, corrected: string): void {
  const wrong = weigh(one, `${day} 09:10`, '41.6', 6)
  const right = (at: string, by: string, device: string, kilograms: string, reason: string) =>
    one.chart.write(
      'weight',
      { at, by, device, subject: one.animal, supersedes: [wrong], reason },
      { weight: { value: kilograms, unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 6 },
    )
  right(`${corrected} 09:20`, staff.lindqvist, 'ward-1', '14.6', 'Two digits swapped when typing.')
  right(`${corrected} 09:25`, staff.castellane, 'theatre-1', '14.1', 'The slip from the scale says so.')
}
