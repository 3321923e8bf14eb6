import type { HomeCourse, HomePlan } from '#core/home/home-plan.ts'
import type { Case } from '#core/journal/fold.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { addDays, dayAfter, dayOf, sayStoredDay } from '#core/time/calendar-day.ts'
import { type DoseFinding, found } from './findings.ts'
import type { DosingRules, HomeRules } from './rules.ts'

type Days = { readonly home: string; readonly far: string; readonly rules: HomeRules }

/** Days of a page for home that cannot be meant: before the operation or going home, too late, or another year. */
export function judgeDays(plan: HomePlan, zone: string, rules: Pick<DosingRules, 'home'>): DoseFinding[] {
  const home = dayOf({ at: plan.discharge.at, zone })
  const far = dayAfter(home, { count: rules.home.farthest.value.months, unit: 'months' })
  const days = { home, far, rules: rules.home }
  const { collarUntil, nextVisit } = plan.discharge.body
  return [
    ...judgeDay(collarUntil, ['home-collar-before', 'home-collar-far'], days),
    ...(nextVisit === null ? [] : judgeDay(nextVisit, ['home-visit-before', 'home-visit-far'], days)),
    ...plan.changes.flatMap(({ body }) =>
      body.stops.flatMap(({ label, fromDay }) =>
        judgeDay(fromDay, ['home-stop-before-home', 'home-stop-far'], days, { drug: label }),
      ),
    ),
  ]
}

function judgeDay(
  day: string,
  [before, beyond]: readonly [DoseFinding['code'], DoseFinding['code']],
  { home, far, rules }: Days,
  about: DoseFinding['about'] = {},
): DoseFinding[] {
  const said = { ...about, day: sayStoredDay(day), home: sayStoredDay(home) }
  if (day < home) return [found('confirm', before, said, [rules.farthest])]
  const months = String(rules.farthest.value.months)
  return day > far ? [found('confirm', beyond, { ...said, months }, [rules.farthest])] : []
}

/** The first day of one medicine: not before the operation or going home, nor long after the entry that sends it home. */
export function judgeFirstDay(
  course: HomeCourse,
  plan: HomePlan,
  theCase: Case,
  zone: string,
  { home: rules }: Pick<DosingRules, 'home'>,
): DoseFinding[] {
  const home = dayOf({ at: plan.discharge.at, zone })
  const change = plan.changes.find(({ header }) => header.id === course.entry)
  const sent = change ? dayOf({ at: change.at, zone }) : home
  const operated = operationsOf({ theCase })
    .flatMap(({ done }) => (done ? dayOf({ at: done.moment.at, zone }) : []))
    .filter((day) => day <= home)
    .at(-1)
  const { days } = rules.firstDoseWithin.value
  const about = { drug: course.label, first: sayStoredDay(course.firstDay), home: sayStoredDay(home) }
  const said = (code: DoseFinding['code'], more: DoseFinding['about'] = {}) => [
    found('confirm', code, { ...about, ...more }, [rules.firstDoseWithin]),
  ]
  if (operated !== undefined && course.firstDay < operated)
    return said('home-first-before-operation', { operated: sayStoredDay(operated) })
  if (course.firstDay < home) return said('home-first-before-home')
  if (course.firstDay > addDays(sent, days))
    return said('home-first-late', { days: String(days), sent: sayStoredDay(sent) })
  return []
}
