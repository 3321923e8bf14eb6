import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { addDays, dayOf, instantAfter, startOfDay } from '#core/time/calendar-day.ts'
import type { Stay } from '#core/ward/stay.ts'
import { watchedBecause } from '#core/ward/watched.ts'
import { householdCalls, isTryOfOurs } from './our-tries.ts'
import type { Draft, Why } from './owed-item.ts'
import { earlierOf, type Setting } from './setting.ts'
import { type Look, type Round, roundOf, sayInstant, wardItem } from './ward-item.ts'

/** What is looked at again and again while an animal lies in the ward, each counted from the last time it was done. */
export function owedOnRounds(stay: Stay, setting: Setting): Draft[] {
  const round = (one: Round) => roundOf(one, stay, setting)
  const here = { who: 'nurse', way: 'task' } as const
  const record = recordOf(stay, setting)
  const { warm, sternal } = record
  const early = !(warm && sternal)
  const watched = watchedBecause(setting.file.theCase, stay)
  const closely: Why[] = watched.map((because) => ({ code: 'watched-closely', about: { because } }))
  const untilWarm: Why[] = early ? [{ code: 'until-warm-and-sternal', about: {} }] : []
  return [
    round({
      ...here,
      what: 'ward-airway',
      every: early ? 'airway-early' : watched.length > 0 ? 'airway-watched' : 'airway',
      last: record.airway,
      why: [...untilWarm, ...closely],
    }),
    round({
      ...here,
      what: 'ward-temperature',
      every: warm ? 'temperature' : 'temperature-early',
      last: record.temperature,
      why: warm ? [] : untilWarm,
    }),
    round({ ...here, what: 'ward-food', every: record.food ? 'food' : 'food-first', last: record.food }),
    round({ ...here, what: 'ward-urine', every: 'urine', last: record.urine }),
    ownerCall(stay, setting),
  ]
}

/** Pain by the clock: closely at first, later less. What asked for relief has its own times, and stands instead. */
export function painByTheClock(stay: Stay, setting: Setting): Draft {
  const { last, refused } = painOf(stay, setting)
  const earlyUntil = instantAfter({ at: stay.since, zone: setting.zone }, setting.rules.ward.painEarlyFor.value)
  const why: Why[] = refused
    ? [
        {
          code: 'not-scored-because',
          about: { when: sayInstant(refused.at, setting), because: refused.body.notScoredBecause ?? '' },
        },
      ]
    : []
  return roundOf(
    {
      what: 'ward-pain',
      who: 'nurse',
      way: 'task',
      every: (last?.at ?? stay.since) < earlyUntil ? 'pain-early' : 'pain',
      last,
      why,
    },
    stay,
    setting,
  )
}

/** The last score, and the last round after it that says why none was made: asleep is not without pain. */
function painOf(stay: Stay, { file: { theCase } }: Setting) {
  const rounds = theCase.live('ward-score').filter(({ at }) => at >= stay.since)
  const looks = theCase.live('observation').filter(({ at }) => at >= stay.since)
  const last = latest([...rounds, ...looks].filter(({ body }) => body.pain !== null))
  const refused = rounds.findLast(({ body, at }) => body.notScoredBecause !== null && (!last || at > last.at)) ?? null
  return { last, refused }
}

/** What the rounds of this stay have looked at, each the last time. */
function recordOf(stay: Stay, { file: { theCase } }: Setting) {
  const rounds = theCase.live('ward-score').filter(({ at }) => at >= stay.since)
  const looks = theCase.live('observation').filter(({ at }) => at >= stay.since)
  const first = (what: BodyOf<'observation'>['first']) => looks.findLast(({ body }) => body.first === what) ?? null
  const round = (matches: (body: BodyOf<'ward-score'>) => boolean) => rounds.findLast(({ body }) => matches(body))
  const measured = looks.findLast(({ body }) =>
    body.values.some(({ what, artefact }) => what === 'temperature' && !artefact),
  )
  return {
    warm: first('normal-temperature'),
    sternal: first('sternal'),
    airway: round(({ airway, bandage }) => airway !== 'not-assessed' && bandage !== 'not-assessed') ?? null,
    temperature: latest([measured, first('normal-temperature')]),
    food: latest([round(({ eats }) => eats !== 'not-assessed' && eats !== 'not-offered'), first('eaten')]),
    urine: round(({ urine }) => urine === 'passed' || urine === 'catheter') ?? null,
  }
}

function latest<One extends Look>(lines: readonly (One | null | undefined)[]): One | null {
  const there = lines.flatMap((line) => (line ? [line] : []))
  return there.sort((a, b) => (a.at < b.at ? -1 : 1)).at(-1) ?? null
}

const tellsHow: ReadonlySet<string> = new Set(['ward', 'check', 'worry', 'other'])

/** The owner hears every day how it is; whoever was reached today is not rung again today. */
function ownerCall(stay: Stay, setting: Setting): Draft {
  const calls = householdCalls(setting.file).filter(({ at, body }) => at >= stay.since && tellsHow.has(body.about))
  const last = calls.findLast(({ body }) => body.reached === 'yes') ?? null
  const tries = calls.filter(({ at, body }) => isTryOfOurs(body) && (!last || at > last.at)).length
  const draft = roundOf(
    {
      what: 'ward-owner-call',
      who: 'nurse',
      way: 'call',
      every: last ? 'owner' : 'owner-first',
      last,
      why: [
        { code: last ? 'owner-reached' : 'owner-waits', about: {} },
        ...(tries > 0 ? [{ code: 'tried-without-answer' as const, about: { tries: String(tries) } }] : []),
      ],
    },
    stay,
    setting,
  )
  if (!last) return draft
  const { item } = draft
  const nextDay = startOfDay(addDays(dayOf({ at: last.at, zone: setting.zone }), 1), setting.zone)
  return { ...draft, item: { ...item, dueFrom: earlierOf(nextDay, item.dueBy) } }
}

/** Doses of the plan that names how often: each counted from the last time its line, or its drug for that use, was given. */
export function dosesInWard(stay: Stay, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const ofStay = new Set(stay.operations.map(({ id }) => id))
  return theCase.live('planned-line').flatMap(({ header: { subject }, body }): Draft[] => {
    const { how, line, drug, use } = body
    const every = how?.every
    if (!every || subject.kind !== 'operation' || !ofStay.has(subject.operation)) return []
    const given = theCase
      .live('drug-given')
      .filter((one) => !isOfOther(one, subject.operation))
      .filter((one) => one.body.line === line || (one.body.drug === drug && one.body.use === use))
    const [first] = given
    const last = given.at(-1)
    if (!first || !last) return []
    const hours = fromStored(every)
    const dueAt = minutesAfter(last.at, hours.value.times(60).toNumber(), setting)
    const isOver = how.days !== null && dueAt >= minutesAfter(first.at, how.days * 24 * 60, setting)
    if (isOver) return []
    const why: Why[] = [
      { code: 'ward-last', about: { when: sayInstant(last.at, setting) } },
      { code: 'dose-every', about: { hours: hours.toString() } },
    ]
    const dose = { what: 'ward-dose', who: 'nurse', way: 'task', of: line, about: { drug } } as const
    return [wardItem({ ...dose, last, dueFrom: dueAt, dueBy: dueAt, why, facts: [] }, stay, setting)]
  })
}

function minutesAfter(at: string, count: number, { zone }: Setting): string {
  return instantAfter({ at, zone }, { count, unit: 'minutes' })
}

function isOfOther({ header: { subject } }: Look, operation: string): boolean {
  return subject.kind === 'operation' && subject.operation !== operation
}
