import { hygieneRules } from '#content/follow-up/hygiene-rules.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import type { OwnerLanguage } from '#content/languages/index.ts'
import { procedures } from '#content/procedures/index.ts'
import { sources } from '#content/sources/index.ts'
import { columnsOfTimeline } from '#content/wording/columns-of-timeline.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { cite } from '#core/evidence/cite.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { owedOf } from '#core/owed/owed.ts'
import type { Owed } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import type { Moment } from '#core/time/moment.ts'
import { calendarOf } from '#documents/calendar/calendar.ts'
import { isPaper, type NotYet, type PaperDefinition, type PaperInput } from '#documents/case/paper-input.ts'
import { fhirBundle } from '#documents/fhir/bundle.ts'
import { papers } from '#documents/index.ts'
import { dictionaryOf } from '#documents/render/data-dictionary.ts'
import type { Paper } from '#documents/render/model.ts'
import type { PdfPress } from '#documents/render/pdf.ts'
import { renderText } from '#documents/render/text.ts'
import { judgeForPaper } from '../dosing/judge-for-paper.ts'
import { timeline } from './timeline.ts'

/** One document of a pack. */
export type Packed = {
  readonly file: string
  readonly paper: string
  readonly title: string
  readonly mediaType: string
  readonly content: Uint8Array | string
}
export type Pack = {
  readonly documents: readonly Packed[]
  readonly notYet: readonly { readonly paper: string; readonly because: string }[]
}

type PackForm = {
  readonly text?: boolean
  /** Of the papers of the owner, in place of the language of the household. */
  readonly language?: OwnerLanguage
}

/**
 * Every document that the case has reached: the papers as tagged PDF (and as plain text when asked), the calendar, the case as a
 * FHIR bundle, what is owed, and all entries as a spreadsheet. `on` is the date the papers carry; nothing else is looked up.
 */
export function packOf(file: CaseFile, on: Moment, press: PdfPress, form: PackForm = {}): Pack {
  const documents: Packed[] = []
  const notYet: { paper: string; because: string }[] = []
  for (const { name, definition, make } of papersOf(file, on, form)) {
    const made = make()
    if (!isPaper(made)) {
      notYet.push({ paper: definition.id, because: made.because })
      continue
    }
    const about = { paper: definition.id, title: made.title }
    documents.push({ file: `${name}.pdf`, ...about, mediaType: 'application/pdf', content: press(made) })
    if (form.text) documents.push({ file: `${name}.txt`, ...about, mediaType: 'text/plain', content: renderText(made) })
  }
  const data = dataOf(file, on, form).map(({ make, ...about }): Packed => ({ ...about, content: make() }))
  return { documents: [...documents, ...data], notYet }
}

/** One paper of a case under the name of its files; made when it is asked for, or the reason why not yet. */
type PaperOfCase = {
  readonly name: string
  readonly definition: PaperDefinition
  readonly operation: string | null
  readonly make: () => Paper | NotYet
}

/** Every paper of the case, those it has not reached too. Nothing is made or printed here. */
export function papersOf(file: CaseFile, on: Moment, { language }: PackForm = {}): PaperOfCase[] {
  const operations = operationsOf(file)
  let said: PaperInput['owed'] | undefined
  const owed = () => {
    said ??= saidOwed(file)
    return said
  }
  return papers.flatMap((definition) => {
    const each = definition.per === 'operation' && operations.length > 0 ? operations : [null]
    return each.map((operation) => ({
      name: operation === null ? definition.id : `${definition.id}-${operation}`,
      definition,
      operation,
      make: () => {
        const doses = operation === null ? null : judgeForPaper(file, operation, on.at)
        return definition.of({ file, on, operation, owed: owed(), doses, ...(language && { language }) })
      },
    }))
  })
}

function saidOwed(file: CaseFile): PaperInput['owed'] {
  return owedOf(file, procedures, { rules: owedRules, hygiene: hygieneRules }).owed.map((item) => {
    const { what, who, why } = sayOwed(item, owedInEnglish)
    return { id: item.id, what, who, why, dueFrom: item.dueFrom, dueBy: item.dueBy }
  })
}

function operationsOf({ theCase }: CaseFile): string[] {
  const ids = theCase
    .live('booking')
    .flatMap(({ header: { subject } }) => (subject.kind === 'operation' ? [subject.operation] : []))
  return [...new Set(ids)]
}

/** A file of the case for another program, written when it is asked for. */
type DataFile = Omit<Packed, 'content'> & { readonly make: () => string }

/** Calendar, FHIR bundle, what is owed and every entry. */
export function dataOf(file: CaseFile, on: Moment, { language }: PackForm = {}): DataFile[] {
  const owed = owedOf(file, procedures, { rules: owedRules })
  const document = (name: string, title: string, mediaType: string, make: () => string): DataFile => ({
    file: name,
    paper: name.replace(/\.\w+$/, ''),
    title,
    mediaType,
    make,
  })
  return [
    document('calendar.ics', 'Calendar for the owner', 'text/calendar', () =>
      calendarOf(file, owed, on.at, language && { language }),
    ),
    document('fhir.json', 'The case as a FHIR R4 (4.0.1) bundle', 'application/fhir+json', () =>
      fhirBundle(file, owed, on.at),
    ),
    document('owed.json', 'What is owed', 'application/json', () => owedAsJson(owed)),
    document('timeline.csv', 'Every entry, for a spreadsheet', 'text/csv', () => timeline(file.theCase)),
    document('timeline-columns.csv', 'What every column of timeline.csv means', 'text/csv', () =>
      dictionaryOf(columnsOfTimeline),
    ),
  ]
}

function owedAsJson({ owed }: Owed): string {
  const list = owed.map((item) => {
    const { id, dueFrom, dueBy, facts } = item
    return { id, ...sayOwed(item, owedInEnglish), dueFrom, dueBy, sources: cite(facts, sources) }
  })
  return `${JSON.stringify(list, null, 2)}\n`
}
