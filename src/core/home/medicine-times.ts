import type { BodyOf } from '#core/journal/fold.ts'
import { addDays, daysBetween } from '#core/time/calendar-day.ts'
import { dailyWallTimes, type WallTime } from '#core/time/wall-times.ts'
import { Decimal } from '#core/units/quantity.ts'

export type HomeMedicine = BodyOf<'discharge'>['medicines'][number]

/** A medicine that may have been stopped: from this moment on the wall clock it is given no more. */
export type TimedMedicine = HomeMedicine & {
  readonly until?: { readonly day: string; readonly time: string } | null
  /** Its last planned dose is not its end: it goes on until somebody here says so. */
  readonly untilSaid?: boolean
  /** The day of the entry that sent it home; a dose of another year is said with its year. */
  readonly sentOn?: string
}

/**
 * A medicine as stretches in which nothing changes: one, or one more for each step. Each is a medicine of its own with
 * its own first day, amount and clock times; together they last as long as the whole.
 *
 * @example stretchesOf({ …, firstDay: '2026-03-02', days: 10, steps: [{ fromDay: '2026-03-07', … }] }).map(({ days }) => days) // [5, 5]
 */
export function stretchesOf<Medicine extends TimedMedicine>(medicine: Medicine): Medicine[] {
  const { steps, firstDay, days } = medicine
  const begins = [firstDay, ...steps.map(({ fromDay }) => fromDay)]
  return begins.map((begin, place) => {
    const step = steps[place - 1]
    const end = begins[place + 1] ?? addDays(firstDay, days)
    const goesOn = medicine.untilSaid && place === begins.length - 1
    const stretch = {
      ...medicine,
      steps: [],
      firstDay: begin,
      days: daysBetween(begin, end),
      ...(medicine.untilSaid !== undefined && { untilSaid: goesOn === true }),
    }
    // Only on the very first day had the ward given something already.
    const { each, times, onDays } = step ?? medicine
    return step ? { ...stretch, each, times, onDays, firstTime: '00:00' } : stretch
  })
}

/**
 * How many days lie between two days on which a medicine is given, the second counted.
 *
 * @example daysApart({ onDays: 'every-second-day' }) // 2
 */
export function daysApart({ onDays }: Pick<HomeMedicine, 'onDays'>): 1 | 2 {
  return onDays === 'every-second-day' ? 2 : 1
}

/** Every dose of one medicine at home, on the wall clock. Empty only where it was stopped before its first dose. */
export type MedicineTimes = {
  readonly doses: readonly WallTime[]
  /** The last calendar day of the course; the medicine is not given after it. */
  readonly stopDay: string
  readonly lastDose: WallTime | null
  /** Doses of the first day that the ward had already given. */
  readonly givenInWard: readonly string[]
}

/**
 * The doses of a medicine: the same clock times each day or every second one, within `days` calendar days from the first
 * day on; times of the first day before `firstTime` were given in the ward and are not counted again, and none is left after it was stopped.
 *
 * @example medicineTimes({ …, times: ['08:00', '20:00'], firstTime: '20:00', days: 7 }, zone).doses.length // 13
 */
export function medicineTimes(medicine: TimedMedicine, zone: string): MedicineTimes {
  const { times, firstDay, firstTime, days, until } = medicine
  const planned = stretchesOf(medicine).flatMap((stretch) =>
    dailyWallTimes({ ...stretch, everyDays: daysApart(stretch), zone }),
  )
  const doses = until ? planned.filter(({ day, time }) => `${day}T${time}` < `${until.day}T${until.time}`) : planned
  return {
    doses,
    stopDay: until ? (doses.at(-1)?.day ?? firstDay) : addDays(firstDay, days - 1),
    lastDose: doses.at(-1) ?? null,
    givenInWard: [...new Set(times)].sort().filter((time) => time < firstTime),
  }
}

/** What has to be in the bag: counted exactly, then rounded up to what can be handed out. */
export type NeededAmount = {
  readonly unit: 'tablets' | 'millilitres' | 'applications'
  readonly doses: number
  readonly total: Decimal
  /** Whole tablets; millilitres and applications as counted, without overfill. */
  readonly handOut: Decimal
  /** What is left of the last tablet. */
  readonly over: Decimal
}

/**
 * Tablets (or millilitres, or applications to the eye) for the whole course, exactly.
 *
 * @example tabletsNeeded({ …, form: 'tablet', each: '0.5', 13 doses }, zone) // total 6.5, handOut 7, over 0.5
 */
export function tabletsNeeded(medicine: TimedMedicine, zone: string): NeededAmount {
  const { doses } = medicineTimes(medicine, zone)
  const total = stretchesOf(medicine)
    .map((stretch) => new Decimal(stretch.each).times(medicineTimes(stretch, zone).doses.length))
    .reduce((sum, part) => sum.plus(part))
  const unit = medicine.form === 'tablet' ? 'tablets' : medicine.form === 'liquid' ? 'millilitres' : 'applications'
  const handOut = unit === 'tablets' ? total.ceil() : total
  return { unit, doses: doses.length, total, handOut, over: handOut.minus(total) }
}

/** The doses that a clock change touches: what the owner has to be told about that night. */
export function clockChanges(doses: readonly WallTime[]): WallTime[] {
  return doses.filter(({ clock }) => clock !== 'plain')
}
