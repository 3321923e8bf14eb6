import { caseInEnglish } from '#content/wording/app-case.ts'
import type { Json } from '#core/journal/canonical.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf, KindName, Line } from '#core/journal/fold.ts'
import { type Difference, differences } from '#core/reading/compare.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { type Moment, sayMoment } from '#core/time/moment.ts'
import type { Attachment } from '../../../journal/take-in.ts'
import { type CaseView, library, rowsOf } from '../case-view.ts'

const words = caseInEnglish.write

/** What a form says now. */
export type Now = {
  readonly body: BodyOf<KindName>
  readonly subject: Subject
  readonly moment: Moment | null
  readonly files: readonly Attachment[]
}

/** Every answer in which a form says something else than the entry it corrects; also what it is about, when, and its files. */
export function changesOf(old: Line, now: Now, view: CaseView): Difference[] {
  const { file, nameOfEntry } = view
  const header = { ...old.header, subject: now.subject }
  const rows = rowsOf({ header, body: now.body as unknown as Json, known: true, erased: false }, file)
  const about = (subject: Subject) => saySubject(subject, file, library)
  const named = (files: readonly Attachment[]) => files.map(({ name }) => name).join(', ')
  const around = [
    difference(words.about, about(old.header.subject), about(now.subject)),
    difference(words.when, sayMoment(old.header.happenedAt), now.moment ? sayMoment(now.moment) : words.whenNow),
    difference(words.pictures, named(old.header.attachments), named(now.files)),
  ].filter(({ says: [before, after] }) => before !== after)
  return [...around, ...differences([rowsOf(old, file), rows], nameOfEntry)]
}

function difference(label: string, before: string, after: string): Difference {
  return { at: label, label, says: [before, after] }
}
