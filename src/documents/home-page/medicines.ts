import type { OwnerWords } from '#content/languages/owner-words.ts'
import {
  clockChanges,
  daysApart,
  type HomeMedicine,
  medicineTimes,
  stretchesOf,
  type TimedMedicine,
  tabletsNeeded,
} from '#core/home/medicine-times.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay, sayDayOfYear } from '#core/time/calendar-day.ts'
import type { WallTime } from '#core/time/wall-times.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { type Block, paragraph, type Run, small, strong, type Table, text } from '../render/model.ts'

/** One medicine with every dose of its course on the wall clock, and how much that is in all. */
export type Course = {
  readonly medicine: TimedMedicine
  readonly doses: readonly WallTime[]
  readonly total: Decimal
  /** A later step of a dose that is brought down: its row stands below the one before. */
  readonly isStep: boolean
}

/**
 * Every dose of a medicine at home, counted one by one, so that the first half day and the last are right.
 *
 * @example courseOf(medicine, 'Europe/London').total // 13 tablets, when the first evening dose starts it
 */
export function courseOf(medicine: TimedMedicine, zone: string): Course {
  const { doses } = medicineTimes(medicine, zone)
  return { medicine, doses, total: tabletsNeeded(medicine, zone).total, isStep: false }
}

/** One row for each step that still has doses: what was over when the page was made is no row of it. */
function rowsOf(medicine: TimedMedicine, zone: string, since: string | null): Course[] {
  const rows = stretchesOf(medicine).map((stretch) => courseOf(stretch, zone))
  const left = rows.filter((row) => !isOver(row, since))
  return left
    .map((row, place) => ({ ...row, isStep: place > 0 }))
    .filter(({ doses, isStep }) => doses.length > 0 || !isStep)
}

function isOver({ doses, medicine }: Pick<Course, 'doses' | 'medicine'>, since: string | null): boolean {
  // What goes on until we say so is not over with its last planned dose.
  if (medicine.untilSaid) return false
  const last = doses.at(-1)
  return since !== null && last !== undefined && last.at < since
}

/** The doses that are still to be given. */
function ahead(doses: readonly WallTime[], since: string | null): WallTime[] {
  return doses.filter(({ at }) => since === null || at >= since)
}

/** "1½ tablets": quarters and halves as an owner reads them. */
export function sayAmount(count: Decimal, form: HomeMedicine['form'], words: OwnerWords['home']): string {
  const whole = count.floor()
  const part = { '0.25': '¼', '0.5': '½', '0.75': '¾' }[plain(count.minus(whole))]
  const said = form !== 'tablet' || part === undefined ? plain(count) : `${whole.isZero() ? '' : plain(whole)}${part}`
  return fill(words.units[form][count.lte(1) ? 'one' : 'many'], { count: said })
}

export function medicineBlocks(
  medicines: readonly TimedMedicine[],
  zone: string,
  said: OwnerWords,
  { none = said.home.noMedicines, since = null }: { readonly none?: string; readonly since?: string | null } = {},
): Block[] {
  const courses = medicines.flatMap((medicine) => rowsOf(medicine, zone, since))
  const finished = medicines.flatMap((medicine) => saidFinished(medicine, zone, since, said))
  if (courses.length === 0) return [paragraph(none), ...finished.map((sentence) => paragraph(sentence))]
  const given = new Set(courses.map(({ medicine }) => medicine.label))
  const stillGiven = medicines.filter(({ label }) => given.has(label))
  const times = [...new Set(courses.flatMap(({ doses }) => doses.map(({ time }) => time)))].sort()
  const changes = courses.flatMap(({ doses }) => clockChanges(ahead(doses, since))).map((one) => saidChange(one, said))
  return [
    times.length > widestDay ? longTable(courses, said) : dayTable(courses, times, said),
    ...medicines.flatMap((medicine) => saidSteps(medicine, zone, since, said)).map((sentence) => paragraph(sentence)),
    ...courses.flatMap((course) => saidSecondDays(course, since, said)).map((sentence) => paragraph(sentence)),
    ...finished.map((sentence) => paragraph(sentence)),
    ...[...new Set(changes)].map((sentence) => paragraph(sentence)),
    ...handlingOf(stillGiven, said).map((sentence) => paragraph([{ kind: 'strong', text: sentence }])),
  ]
}

/** A dose that is brought down stands in several rows: how they belong together, and what all of them come to. */
function saidSteps(medicine: TimedMedicine, zone: string, since: string | null, { home: words }: OwnerWords): string[] {
  const rows = rowsOf(medicine, zone, since)
  if (rows.length < 2 || medicine.untilSaid) return []
  const total = rows.map((row) => row.total).reduce((sum, part) => sum.plus(part))
  return [fill(words.steps, { medicine: medicine.label, total: sayAmount(total, medicine.form, words) })]
}

/** More days than this are not told one by one. */
const mostDays = 8

/** The days themselves: nobody counts "every second day" right across the end of a month. */
function saidSecondDays(
  { medicine, doses }: Course,
  since: string | null,
  { home: words, dates }: OwnerWords,
): string[] {
  if (daysApart(medicine) === 1) return []
  const all = [...new Set(ahead(doses, since).map(({ day }) => day))].map((day) =>
    sayDayOfYear(day, dates, medicine.sentOn),
  )
  const about = { medicine: medicine.label, days: all.slice(0, mostDays).join(', '), last: all.at(-1) ?? '' }
  return [fill(all.length > mostDays ? words.secondDaysUntil : words.secondDays, about)]
}

/** What was over when the page was made, whole or a step of it: said, because an older page still names it. */
function saidFinished(
  medicine: TimedMedicine,
  zone: string,
  since: string | null,
  { home: words, dates }: OwnerWords,
): string[] {
  const steps = stretchesOf(medicine).map((stretch) => courseOf(stretch, zone))
  const over = steps.filter((step) => isOver(step, since))
  const dateOf = ({ doses }: Course) => sayCalendarDay(doses.at(-1)?.day ?? medicine.firstDay, dates)
  const last = over.at(-1)
  if (!last) return []
  if (rowsOf(medicine, zone, since).length === 0)
    return [fill(words.finished, { medicine: medicine.label, date: dateOf(last) })]
  return over.map((step) =>
    fill(words.finishedStep, { medicine: medicine.label, each: eachTime(step, words), date: dateOf(step) }),
  )
}

/** What a medicine may do to whoever gives it. */
function handlingOf(medicines: readonly TimedMedicine[], { handling }: OwnerWords): string[] {
  const known: Readonly<Record<string, { readonly value: string }>> = handling
  return medicines.flatMap(({ drug, label }) => {
    const said = known[drug]?.value
    return said === undefined ? [] : [`${label}: ${said}`]
  })
}

/** What to do with a dose at a time that the clocks skip or show twice. */
function saidChange({ day, time, shown, clock }: WallTime, { home: words, dates }: OwnerWords): string {
  return fill(clock === 'twice' ? words.clockTwice : words.clockSkips, { day: sayCalendarDay(day, dates), time, shown })
}

/** More clock times than this would not fit side by side in letters of 14 points. */
const widestDay = 3

/** One row for each medicine (its name over the whole width of a large page), one column for each clock time: what a person holds against the kitchen clock. */
function dayTable(courses: readonly Course[], times: readonly string[], said: OwnerWords): Table {
  const words = said.home
  const { medicine, last, total } = words.columns
  const columns = [
    { head: medicine, align: 'left', share: 4.3 },
    ...times.map((time) => ({ head: time, align: 'left', share: 2.8, weight: 'strong' }) as const),
    { head: last, align: 'left', share: 4 },
    { head: total, align: 'right', share: 3, weight: 'strong' },
  ] as const
  return {
    kind: 'table',
    caption: words.clockCaption,
    rowHeader: true,
    columns,
    rows: courses.map((course) => [
      named(course, said),
      ...times.map((time) => (course.doses.some((dose) => dose.time === time) ? eachTime(course, words) : '')),
      saidLast(course, said),
      saidTotal(course, words),
    ]),
  }
}

/** The same with the clock times in one column, for a day with many of them. */
function longTable(courses: readonly Course[], said: OwnerWords): Table {
  const words = said.home
  const { medicine, give, time, last, total } = words.columns
  return {
    kind: 'table',
    caption: words.clockCaption,
    rowHeader: true,
    columns: [
      { head: medicine, align: 'left', share: 4.3 },
      { head: give, align: 'left', share: 2.8, weight: 'strong' },
      { head: time, align: 'left', share: 4.6, weight: 'strong' },
      { head: last, align: 'left', share: 4.1 },
      { head: total, align: 'right', share: 3, weight: 'strong' },
    ],
    rows: courses.map((course) => [
      named(course, said),
      eachTime(course, words),
      [...new Set(course.doses.map((dose) => dose.time))].sort().join(', '),
      saidLast(course, said),
      saidTotal(course, words),
    ]),
  }
}

function named({ medicine, doses, isStep }: Course, said: OwnerWords): Run[] {
  const everySecondDay = daysApart(medicine) === 2 ? [strong(`\n${said.home.everySecondDay}`)] : []
  if (isStep) {
    const step = fill(said.home.step, { medicine: medicine.label, first: saidDose(doses[0], said, medicine.sentOn) })
    return [text(step), ...everySecondDay]
  }
  const first = fill(said.home.firstDose, { first: saidDose(doses[0], said, medicine.sentOn) })
  return [text(medicine.label), ...everySecondDay, small(`\n${remarks(medicine, said)}`), small(`; ${first}`)]
}

function eachTime({ medicine }: Course, words: OwnerWords['home']): string {
  return sayAmount(new Decimal(medicine.each), medicine.form, words)
}

function remarks(medicine: HomeMedicine, { home: words, papers }: OwnerWords): string {
  const parts: string[] = [fill(words.forPurpose, { purpose: medicine.purpose })]
  if (medicine.form === 'tablet' || medicine.form === 'liquid') parts.push(words.food[medicine.withFood])
  if (medicine.side !== null) parts.push(fill(words.side, { side: papers.sides[medicine.side] }))
  return parts.join(', ')
}

/** The last planned dose; of a medicine that goes on until we say so there is none. */
function saidLast({ medicine, doses }: Course, said: OwnerWords): string {
  return medicine.untilSaid ? said.home.untilSaid : saidDose(doses.at(-1), said, medicine.sentOn)
}

/** How much in all, where that is known. */
function saidTotal({ medicine, total }: Course, words: OwnerWords['home']): string {
  return medicine.untilSaid ? '–' : sayAmount(total, medicine.form, words)
}

/** `sentOn`: the day of the entry that sent the medicine home; a dose of another year is said with its year. */
export function saidDose(dose: WallTime | undefined, { papers, dates }: OwnerWords, sentOn?: string): string {
  return dose ? `${sayDayOfYear(dose.day, dates, sentOn)}, ${dose.time}` : papers.notRecorded
}
