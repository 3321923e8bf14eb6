import type { BodyOf } from '#core/journal/fold.ts'
import { emptyLook } from '#core/theatre/empty-look.ts'
import { addDays } from '#core/time/calendar-day.ts'
import { emptyRound } from '#core/ward/empty-round.ts'
import type { Chart } from '../chart.ts'
import { moment } from '../chart.ts'
import { staff, zone } from '../practice.ts'
import { giver, writeCheck } from '../writers.ts'
import { find, firstCall, type Living, living, normalBaseline, weigh } from './animal.ts'
import type { Days } from './days.ts'
import { agreeAndBook, givePlan, numbered, operate, wasteRest } from './operation.ts'

/**
 * An invented flat-faced dog, operated on the LEFT ear on the last open day, in the ward since then: a score that asked
 * for relief, what was given for it, the score after it; a blink that was missing while the block acted and came back.
 * The round of this morning is not written yet.
 */
export function hazel(days: Days): Chart {
  const one = living('hazel', 'contact-quill')
  const operated = days.openAgo(1)
  const seen = days.openAgo(11)
  firstCall(
    one,
    days.openAgo(14),
    '10',
    {
      name: 'Hazel',
      species: 'dog',
      breed: 'Pug',
      sex: 'female',
      born: moment(days.ago(2500).slice(0, 7), zone),
      chip: '000000000077214',
      flatFace: 'yes',
    },
    {
      reportedSide: 'LEFT',
      complaint: 'The left ear is closed and smells; she screams when it is touched.',
      daysOfSigns: 700,
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
  weigh(one, `${seen} 10:00`, '8.5')
  find(one, 'LEFT', `${seen} 10:10`, {
    canalFeel: 'bone-hard',
    painOnPressing: 'yes',
    stenosis: 'closed',
    drum: 'could-not-see',
  })
  find(one, 'RIGHT', `${seen} 10:14`, {})
  normalBaseline(one, `${seen} 10:25`, { LEFT: '16', RIGHT: '17' })
  agreeAndBook(one, `${seen} 15:10`, `${operated} 09:00`, {
    side: 'LEFT',
    procedure: 'teca-lbo',
    estimate: { low: '2300.00', high: '2900.00' },
  })
  theatre(one, operated)
  firstDay(one, operated)
  for (let day = addDays(operated, 1); day < days.today; day = addDays(day, 1)) nextDay(one, day, operated)
  return one.chart
}

function theatre(one: Living, day: string): void {
  weigh(one, `${day} 07:40`, '8.4')
  givePlan(one, day, 'our usual plan, dog', 'great auricular nerve, LEFT')
  operate(one, day, {
    side: 'LEFT',
    procedure: 'teca-lbo',
    mainReason: 'chronic-otitis',
    indication: 'A closed, bone-hard canal with a filled bulla.',
    findings: 'Nerve seen whole and held aside for six minutes; bulla emptied, its inner wall left.',
    plan: 'Ward at least one night: flat face, head bandage. Methadone every six hours for a day.',
  })
  everySixHours(one, day)
}

/** The opioid of the plan again, as the surgeon asked for it after the operation. */
function everySixHours(one: Living, day: string): void {
  const opioid = opioidOf(one)
  const how = {
    formulation: null,
    over: null,
    container: null,
    loading: null,
    tablet: null,
    every: { value: '6', unit: 'h' },
    days: 1,
    mark: null,
    xylitolFree: null,
    set: null,
    mixed: null,
  } as const
  one.chart.write(
    'planned-line',
    { at: `${day} 11:40`, by: staff.holm, subject: one.operation },
    { ...opioid, line: 'opioid-ward', because: 'The same dose as before theatre, by the clock, for one day.', how },
  )
  methadone(one, `${day} 16:20`, opioid, 'a')
  methadone(one, `${day} 22:30`, opioid, 'b')
}

function opioidOf(one: Living): BodyOf<'planned-line'> {
  const planned = one.chart.entries.find(
    ({ kind, body }) => kind === 'planned-line' && (body as BodyOf<'planned-line'>).line === 'opioid',
  )
  return planned?.body as unknown as BodyOf<'planned-line'>
}

function methadone(one: Living, at: string, opioid: BodyOf<'planned-line'>, which: string): void {
  const ampoule = numbered(one, at.slice(0, 10), which)
  giver(one.chart, one.operation)(at, {
    drug: 'methadone',
    amount: opioid.amount as BodyOf<'drug-given'>['amount'],
    volume: opioid.drawn,
    route: 'IM',
    use: 'analgesia_bolus',
    line: 'opioid-ward',
    ampoule,
  })
  wasteRest(one, at, opioid, ampoule)
}

type Round = Partial<BodyOf<'ward-score'>>
const quiet = { bandage: 'fits', airway: 'quiet', throat: 'soft' } as const
const pain = (score: number) => ({ pain: { scale: 'glasgow-dog-short', score } }) as const
const left = (blink: 'absent' | 'weak' | 'not-assessed') => ({ LEFT: { blink, lubricated: 'yes' } }) as const

function round(one: Living, at: string, said: Round): string {
  const writing = { at, by: staff.lindqvist, subject: one.animal, device: 'ward-1' }
  return one.chart.write('ward-score', writing, { ...emptyRound, ...said })
}

function observe(one: Living, at: string, said: Partial<BodyOf<'observation'>>, degrees: string | null = null): void {
  const values =
    degrees === null
      ? []
      : [{ what: 'temperature', value: { value: degrees, unit: 'Cel' }, method: null, artefact: false } as const]
  one.chart.write(
    'observation',
    { at, by: staff.lindqvist, subject: one.animal, device: 'ward-1' },
    { ...emptyLook, where: 'ward', values: [...values], ...said },
  )
}

function firstDay(one: Living, day: string): void {
  observe(one, `${day} 11:30`, { where: 'recovery' }, '36.4')
  round(one, `${day} 11:40`, { ...quiet, ...left('absent') })
  observe(one, `${day} 12:05`, { where: 'recovery', first: 'sternal' })
  observe(one, `${day} 12:30`, { where: 'recovery', first: 'normal-temperature' }, '37.8')
  round(one, `${day} 13:00`, { ...quiet, ...left('not-assessed'), ...pain(3) })
  phone(one, `${day} 13:10`, 'Awake and lies on her chest; nothing to eat yet.')
  round(one, `${day} 14:30`, { ...quiet, ...left('not-assessed'), ...pain(4) })
  const sore = round(one, `${day} 16:10`, { ...quiet, ...pain(8) })
  const given = one.chart.entries.find(
    ({ kind, happenedAt }) => kind === 'drug-given' && happenedAt.at === moment(`${day} 16:20`, zone).at,
  )
  one.chart.write(
    'ward-score',
    {
      at: `${day} 16:10`,
      by: staff.lindqvist,
      subject: one.animal,
      device: 'ward-1',
      supersedes: [sore],
      reason: 'What was done about the score.',
      writtenAfter: 12,
    },
    { ...emptyRound, ...quiet, ...pain(8), given: given ? [given.id] : [] },
  )
  round(one, `${day} 17:05`, { ...quiet, ...left('not-assessed'), ...pain(3) })
  round(one, `${day} 19:00`, { ...quiet, ...left('weak'), ...pain(2), eats: 'a-little', urine: 'passed' })
  round(one, `${day} 23:40`, { ...quiet, ...left('weak'), ...pain(2) })
  observe(one, `${day} 23:45`, {}, '38.1')
}

/** A day more in the ward, when the day of opening lies behind a weekend or a holiday. */
function nextDay(one: Living, day: string, operated: string): void {
  if (day === addDays(operated, 1)) methadone(one, `${day} 04:30`, opioidOf(one), 'c')
  writeCheck(one.chart, one.ear('LEFT'), `${day} 08:30`, staff.holm, {
    wound: 'closed',
    blink: 'weak',
    tearTest: { value: '15', unit: 'mm/min' },
    fluorescein: 'negative',
    text: 'Lids close nearly all the way.',
  })
  round(one, `${day} 09:00`, { ...quiet, ...pain(2), eats: 'yes', urine: 'passed' })
  phone(one, `${day} 10:30`, 'A good night; eats by herself.')
  round(one, `${day} 16:00`, { ...quiet, ...pain(1), eats: 'yes', urine: 'passed' })
  round(one, `${day} 23:40`, { ...quiet, ...pain(1) })
  observe(one, `${day} 23:45`, {}, '38.4')
}

function phone(one: Living, at: string, text: string): void {
  one.chart.write(
    'call',
    { at, by: staff.lindqvist, subject: one.animal },
    { contact: one.owner, direction: 'we-called', channel: 'phone', reached: 'yes', about: 'ward', text },
  )
}
