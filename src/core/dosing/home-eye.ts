import { type Side, sides } from '#core/animal/species.ts'
import type { HomePlan } from '#core/home/home-plan.ts'
import { lastBlinkOf } from '#core/home/last-blink.ts'
import { daysApart } from '#core/home/medicine-times.ts'
import type { Case } from '#core/journal/fold.ts'
import { type DoseFinding, found } from './findings.ts'
import { isForEye } from './home-known.ts'
import type { DosingRules } from './rules.ts'

/** An eye that does not blink and gets less at home than the ward asks for. The plan is never changed by itself. */
export function judgeEyes({ courses }: HomePlan, theCase: Case, { home }: Pick<DosingRules, 'home'>): DoseFinding[] {
  return sides.flatMap((side) => (lastBlinkOf(theCase, side) === 'absent' ? judgeEye(side, courses, home) : []))
}

function judgeEye(side: Side, courses: HomePlan['courses'], { eyeWithoutBlink }: DosingRules['home']): DoseFinding[] {
  const mine = courses.filter((course) => course.until === null && course.side === side && isForEye(course))
  const rules = [eyeWithoutBlink['eye-gel'], eyeWithoutBlink['eye-ointment']]
  const [gel, ointment] = rules.map(({ value }) => value.join(' to '))
  const about = { side, gel: gel ?? '', ointment: ointment ?? '' }
  if (mine.length === 0) return [found('confirm', 'home-eye-nothing', about, rules)]
  const isOften = (form: 'eye-gel' | 'eye-ointment') =>
    mine.some((course) => course.form === form) && longestGap(mine, form) <= eyeWithoutBlink[form].value[1]
  const hasNight = mine.some(({ form }) => form === 'eye-ointment')
  if (hasNight && (isOften('eye-gel') || isOften('eye-ointment'))) return []
  const plan = mine.map(({ label, times }) => `${label} at ${[...times].sort().join(', ')}`).join('; ')
  return [found('confirm', 'home-eye-less', { ...about, plan }, rules)]
}

/** Hours of the longest wait between two clock times of one day; a single time, or a day between, is a whole day. */
function longestGap(courses: HomePlan['courses'], form: 'eye-gel' | 'eye-ointment'): number {
  const daily = courses.filter((course) => course.form === form && daysApart(course) === 1)
  const hours = [...new Set(daily.flatMap(({ times }) => times))].sort().map(hourOf)
  const gaps = hours.slice(1).map((hour, place) => hour - (hours[place] ?? 0))
  return gaps.length === 0 ? 24 : Math.max(...gaps)
}

function hourOf(time: string): number {
  return Number(time.slice(0, 2)) + Number(time.slice(3)) / 60
}
