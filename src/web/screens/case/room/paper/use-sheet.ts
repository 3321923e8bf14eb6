import { observation } from '#content/forms/observation.ts'
import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { paperSheetInEnglish as words } from '#content/wording/app-paper-sheet.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { type PlannedOnSheet, readSheet, type SheetFault, type TypedSheet } from '#core/theatre/read-sheet.ts'
import { stampOrder } from '#core/theatre/stamps.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { readMoment } from '#core/time/moment.ts'
import { asServer } from '../../../../journal/device.ts'
import { useDraft } from '../../../../journal/drafts.ts'
import { keepEntries } from '../../../../journal/outbox.ts'
import { makeEntry } from '../../../../journal/write-entry.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'

const doseUnits = ['mg', 'ug', 'mL', '[iU]', 'mmol', '{tablet}', 'mg/kg/h', 'ug/kg/h', 'mL/h', '%{vol}'] as const

export type SheetDraft = TypedSheet & { readonly day: string }

/** The first clock time in the order of the sheet, whatever was typed first: later ones follow it over midnight. */
function beginsWith({ pauses, points }: TypedSheet, order: readonly string[]): string | null {
  const times = [pauses['before-anaesthesia']?.first, ...order.map((id) => points[id]?.time)]
  return times.find((time) => time !== undefined && time.trim() !== '') ?? null
}

/** The day that was typed, as the journal writes it; null when it is not one day. */
function dayTyped(text: string, zone: string): string | null {
  const read = readMoment(text, zone)
  return 'because' in read || read.precision !== 'day' ? null : dayOf(read)
}

/** What is typed from the sheet, what stands in its way, and keeping it all in one stroke. */
export function useSheet(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const { zone, decimalMark } = file.clinic
  const begin = (): SheetDraft => ({
    day: sayCalendarDay(dayOf({ at: operation.moment.at, zone })),
    points: {},
    pauses: {},
    looks: [],
    doses: {},
  })
  const { draft, change, clear, ready } = useDraft(`paper ${operation.id}`, me.id, begin)
  const given = new Set(linesAbout(file.theCase, 'drug-given', operation.id).map(({ body }) => body.line))
  const planned = linesAbout(file.theCase, 'planned-line', operation.id).flatMap(
    ({ header, body }): PlannedOnSheet[] =>
      body.route === null || given.has(body.line)
        ? []
        : [{ id: header.id, drug: body.drug, use: body.use, route: body.route, line: body.line }],
  )
  const order = stampOrder(procedureNamed(operation.procedure, procedures).checkpoints).map(({ id }) => id)
  const day = dayTyped(draft.day, zone)
  const read = (at: string) =>
    day === null
      ? { entries: [], faults: [] }
      : readSheet(draft, {
          day,
          begins: beginsWith(draft, order),
          zone,
          now: asServer(at),
          place: { decimalMark },
          units: observation.fields['values.value'].unitBy.units,
          doseUnits,
          planned,
          pauses: spokenPauses,
        })
  const about = {
    stream: file.stream,
    subject: aboutOperation(file, operation.id),
    reason: words.fromPaper,
  } as const
  const keep = async () => {
    const { entries } = read(new Date().toISOString())
    await keepEntries(entries.map((one) => makeEntry(pen, { ...about, ...one })))
    await clear()
    change(begin())
  }
  return { draft, change, ready, day, planned, read, keep }
}

const own: Readonly<Partial<Record<SheetFault['because'], string>>> = words.faults
const common: Readonly<Partial<Record<SheetFault['because'], string>>> = formRefusals

/** What must be put right at one place; null when nothing. */
export function sayFault(faults: readonly SheetFault[], at: string): string | null {
  const found = faults.find((one) => one.at === at)
  if (!found) return null
  const { day, ...about } = found.about
  const sentence = own[found.because] ?? common[found.because] ?? ''
  return fill(sentence, { ...about, ...(day === undefined ? {} : { day: sayCalendarDay(day) }) })
}
