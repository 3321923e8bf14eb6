import { formulary } from '#content/formulary/index.ts'
import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { namesInEnglish, readingInEnglish } from '#content/wording/app-case.ts'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { formWords } from '#content/wording/app-forms/index.ts'
import { wholeRecordInEnglish as say } from '#content/wording/whole-record.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { bodyWordsOf } from '#core/reading/body-words.ts'
import { type Library, nameOfEntry, namesOf, saySubject } from '#core/reading/names-of.ts'
import { plainSaid } from '#core/reading/said.ts'
import { sayBody } from '#core/reading/say-body.ts'
import { formOfKind } from '../case/form-of-kind.ts'

const library: Library = { drugs: formulary, procedures, pauses: spokenPauses, words: namesInEnglish }

/** Every answer of an entry with its label, as its form asks for them; none where nobody can read it. */
export function entryRows(line: Line, file: CaseFile): (readonly [label: string, said: string])[] {
  const form = formOfKind(line.header.kind)
  if (!form || !line.known || line.body === null) return []
  const { yes, no, blanks, codes } = readingInEnglish
  const own = formWords.find(({ kind }) => kind === line.header.kind) ?? { fields: {} }
  const words = bodyWordsOf(own, { options: { ...codes, ...formsInEnglish.options }, yes, no, blanks })
  const rows = sayBody(form, line.body, { words, names: namesOf(line, file, library) })
  const name = (id: string) => nameOfEntry(id, file, library)
  return rows.map(({ label, said }) => [
    label,
    said.kind === 'drawn' ? say.drawn : plainSaid(said, name) || blanks.none,
  ])
}

/** What an entry is about, in words. */
export function subjectOf({ header: { subject } }: Line, file: CaseFile): string {
  return saySubject(subject, file, library)
}
