import type { Side } from '#core/animal/species.ts'
import { readQuantityText } from '#core/forms/read-leaf.ts'
import type { FormRefusalCode, Place } from '#core/forms/refusal.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { startOfDay } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import type { Unit } from '#core/units/unit.ts'
import { type ClockFault, clockOnSheet, type Sheet } from './clock-on-sheet.ts'
import { emptyLook } from './empty-look.ts'
import type { Observable } from './ledger.ts'
import { readLook } from './read-look.ts'
import type { SpokenPause } from './spoken-pause.ts'

/** One point of the operation as the sheet has it; both empty is "the sheet says nothing". */
export type TypedPoint = { readonly time: string; readonly not: string; readonly side: Side | null }
export type TypedAnswer = { readonly answer: 'yes' | 'no' | 'unknown' | null; readonly because: string }
export type TypedPause = {
  readonly first: string
  readonly last: string
  readonly ledBy: string | null
  readonly spokenBy: string | null
  readonly answers: Readonly<Record<string, TypedAnswer>>
}
export type TypedRow = {
  readonly time: string
  readonly values: Readonly<Partial<Record<Observable, string>>>
  readonly method: string
}
export type TypedDose = { readonly time: string; readonly amount: string; readonly ampoule: string }

/** What was typed from the sheet: points by checkpoint, pauses by name, looks in their order, doses by planned line. */
export type TypedSheet = {
  readonly points: Readonly<Record<string, TypedPoint>>
  readonly pauses: Readonly<Record<string, TypedPause>>
  readonly looks: readonly TypedRow[]
  readonly doses: Readonly<Record<string, TypedDose>>
}

export type SheetFault = {
  /** Where: `points.incision.time`, `looks.0.values.mean`, `pauses.before-incision.spokenBy`. */
  readonly at: string
  readonly because:
    | FormRefusalCode
    | 'in-the-future'
    | 'no-method'
    | 'nothing-typed'
    | 'no-side'
    | 'no-time'
    | 'no-amount'
  readonly about: Readonly<Record<string, string>>
}

/** An entry that the sheet says, without its writer. */
export type FromSheet =
  | { readonly kind: 'theatre-stamp'; readonly body: BodyOf<'theatre-stamp'>; readonly happenedAt: Moment }
  | { readonly kind: 'pause-item'; readonly body: BodyOf<'pause-item'>; readonly happenedAt: Moment }
  | { readonly kind: 'observation'; readonly body: BodyOf<'observation'>; readonly happenedAt: Moment }
  | { readonly kind: 'drug-given'; readonly body: BodyOf<'drug-given'>; readonly happenedAt: Moment }

/** A planned line that names its route: without one, what was given is written in full elsewhere. */
export type PlannedOnSheet = Pick<BodyOf<'planned-line'>, 'drug' | 'use' | 'line'> & {
  readonly id: string
  readonly route: string
}

export type SheetSetting = Omit<Sheet, 'begins'> & {
  readonly place: Pick<Place, 'decimalMark'>
  readonly units: Readonly<Record<Observable, Unit>>
  readonly doseUnits: readonly Unit[]
  readonly planned: readonly PlannedOnSheet[]
  /** In the order in which they are read aloud and stand on the sheet, whatever was typed first. */
  readonly pauses: readonly SpokenPause[]
  /** The clock time on the sheet that everything else follows. */
  readonly begins: string | null
}

export type ReadSheet = { readonly entries: readonly FromSheet[]; readonly faults: readonly SheetFault[] }

/**
 * Reads a sheet of paper as it was typed: every entry it says, or every place that must be put right first. Nothing is
 * kept of a sheet with a fault, so that nothing is half written.
 *
 * @example readSheet(typed, setting).entries.map(({ kind }) => kind) // ['theatre-stamp', 'observation', …]
 */
export function readSheet(typed: TypedSheet, setting: SheetSetting): ReadSheet {
  const parts = [
    ...Object.entries(typed.points).map(([id, point]) => readPoint(id, point, setting)),
    ...Object.entries(typed.pauses).map(([pause, one]) => readPause(pause, one, setting)),
    ...typed.looks.map((row, index) => readRow(`looks.${index}`, row, setting)),
    ...Object.entries(typed.doses).map(([id, dose]) => readDose(id, dose, setting)),
  ]
  const faults = parts.flatMap((one) => one.faults)
  const entries = parts.flatMap((one) => one.entries)
  if (faults.length > 0) return { entries: [], faults }
  if (entries.length === 0) return { entries, faults: [fault('sheet', 'nothing-typed')] }
  return { entries, faults }
}

type Part = { readonly entries: readonly FromSheet[]; readonly faults: readonly SheetFault[] }
const empty: Part = { entries: [], faults: [] }

function fault(at: string, because: SheetFault['because'], about: SheetFault['about'] = {}): SheetFault {
  return { at, because, about }
}

function wrong(at: string, clock: ClockFault): SheetFault {
  return { at, ...clock }
}

function readPoint(id: string, { time, not, side }: TypedPoint, setting: SheetSetting): Part {
  const because = not.trim()
  if (time.trim() === '' && because === '') return empty
  const needsSide = id === 'skin-mark' && because === ''
  if (needsSide && side === null) return { entries: [], faults: [fault(`points.${id}.side`, 'no-side')] }
  const at = moment(time, setting, because !== '')
  if ('because' in at) return { entries: [], faults: [wrong(`points.${id}.time`, at)] }
  const body: BodyOf<'theatre-stamp'> = {
    checkpoint: id,
    answer: because === '' ? 'done' : 'not-done',
    detail: needsSide && side !== null ? { side } : {},
    text: because || null,
  }
  return { entries: [{ kind: 'theatre-stamp', body, happenedAt: at.moment }], faults: [] }
}

/** What was not done has no minute: then the day of the sheet stands for it. */
function moment(time: string, setting: SheetSetting, mayBeDay: boolean): { readonly moment: Moment } | ClockFault {
  if (time.trim() !== '' || !mayBeDay) return clockOnSheet(time, setting)
  const { day, zone } = setting
  return { moment: { at: startOfDay(day, zone), zone, precision: 'day', by: 'person' } }
}

function readPause(pause: string, typed: TypedPause, setting: SheetSetting): Part {
  const order = setting.pauses.find((one) => one.pause === pause)?.items.map(({ id }) => id) ?? []
  const answered = Object.entries(typed.answers)
    .filter(([, { answer }]) => answer !== null)
    .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b))
  if (answered.length === 0) return empty
  const place = `pauses.${pause}`
  const first = clockOnSheet(typed.first, setting)
  // Of the items between nobody wrote a minute: they have that of the first.
  const last = typed.last.trim() === '' ? first : clockOnSheet(typed.last, setting)
  const faults = [
    ...('because' in first ? [wrong(`${place}.first`, first)] : []),
    ...('because' in last && typed.last.trim() !== '' ? [wrong(`${place}.last`, last)] : []),
    ...(typed.spokenBy === null ? [fault(`${place}.spokenBy`, 'not-chosen')] : []),
    ...answered
      .filter(([, { answer, because }]) => answer !== 'yes' && because.trim() === '')
      .map(([item]) => fault(`${place}.answers.${item}`, 'not-written')),
  ]
  if (faults.length > 0 || 'because' in first || 'because' in last || typed.spokenBy === null)
    return { entries: [], faults }
  const { spokenBy, ledBy } = typed
  const entries = answered.map(([item, { answer, because }], index): FromSheet => {
    const body = {
      pause: pause as BodyOf<'pause-item'>['pause'],
      item,
      answer: answer ?? 'unknown',
      because: answer === 'yes' ? null : because.trim(),
      spokenBy,
      ledBy,
    }
    return { kind: 'pause-item', body, happenedAt: (index === answered.length - 1 ? last : first).moment }
  })
  return { entries, faults: [] }
}

function readRow(place: string, { time, values, method }: TypedRow, setting: SheetSetting): Part {
  const typed = Object.values(values).some((text) => text.trim() !== '')
  if (!typed && time.trim() === '' && method.trim() === '') return empty
  const look = readLook({ values, method }, setting.units, setting.place)
  const at = clockOnSheet(time, setting)
  const faults = [
    ...('because' in at ? [wrong(`${place}.time`, at)] : []),
    ...look.faults.map((one) =>
      fault(
        one.at === 'look' ? `${place}.time` : one.at === 'method' ? `${place}.method` : `${place}.values.${one.at}`,
        one.because,
        'about' in one ? one.about : {},
      ),
    ),
  ]
  if (faults.length > 0 || 'because' in at) return { entries: [], faults }
  const body: BodyOf<'observation'> = { ...emptyLook, where: 'theatre', values: [...look.values] }
  return { entries: [{ kind: 'observation', body, happenedAt: at.moment }], faults: [] }
}

function readDose(id: string, { time, amount, ampoule }: TypedDose, setting: SheetSetting): Part {
  const line = setting.planned.find((one) => one.id === id)
  if (!line || [time, amount, ampoule].every((text) => text.trim() === '')) return empty
  const place = `doses.${id}`
  const at = clockOnSheet(time, setting)
  const read = amount.trim() === '' ? null : readQuantityText(amount, setting.doseUnits, setting.place)
  const faults = [
    ...('because' in at ? [wrong(`${place}.time`, at)] : []),
    ...(read === null ? [fault(`${place}.amount`, 'no-amount')] : []),
    ...(read?.kind === 'refusal' ? [fault(`${place}.amount`, read.refusal.because, read.refusal.about)] : []),
  ]
  if (faults.length > 0 || 'because' in at || read?.kind !== 'answer') return { entries: [], faults }
  const given = read.answer as unknown as BodyOf<'drug-given'>['amount']
  const body: BodyOf<'drug-given'> = {
    drug: line.drug,
    written: null,
    amount: given,
    volume: given.unit === 'mL' ? { value: given.value, unit: 'mL' } : null,
    route: line.route,
    site: null,
    use: line.use,
    line: line.line,
    batch: null,
    ampoule: ampoule.trim() || null,
  }
  return { entries: [{ kind: 'drug-given', body, happenedAt: at.moment }], faults: [] }
}
