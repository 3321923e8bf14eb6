import { antibiogramInEnglish as words } from '#content/wording/antibiogram.ts'
import type { AntibiogramMethod } from '#core/antibiogram/method.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { fill } from '#core/outcome/finding.ts'
import type { AntibiogramAnswer, NoteCode } from './antibiogram-answer.ts'

type About = {
  readonly method: AntibiogramMethod
  /** Places of sampling among the rows that count. */
  readonly places: readonly string[]
  readonly withoutPurpose: number
  /** Columns nobody read. */
  readonly columns: readonly string[]
}

/** What stands beside the table: what a reader must know before using it, and whatever could not be read. */
export function notesOf(
  { organisms }: Pick<AntibiogramAnswer, 'organisms'>,
  { method, places, withoutPurpose, columns }: About,
): AntibiogramAnswer['notes'] {
  const note = (code: NoteCode, about: Readonly<Record<string, string>> = {}) => [
    { code, text: fill(words.notes[code], about) },
  ]
  const some = (code: NoteCode, names: readonly string[]) =>
    names.length === 0 ? [] : note(code, { names: [...new Set(names)].sort(compareText).join(', ') })
  const [from, until] = yearsOf(organisms)
  const years = from === until ? from : fill(words.years, { from, until })
  const drugs = organisms.flatMap((organism) => organism.drugs)
  const categoryOnly = drugs.reduce((sum, drug) => sum + drug.categoryOnly, 0)
  const together = method.sites === 'together' && places.length > 1
  return [
    ...(organisms.length === 0 ? note('nothing-counted') : []),
    ...some(
      'organisms-not-known',
      organisms.filter(({ id }) => id === null).map(({ organism }) => organism),
    ),
    ...some(
      'drugs-not-known',
      drugs.filter(({ known }) => !known).map(({ name }) => name),
    ),
    ...some('columns-not-read', columns),
    ...(together ? note('places-together', { places: places.join(', ') }) : []),
    ...(from !== until ? note('several-years', { years }) : []),
    ...(categoryOnly > 0 ? note('category-only', { count: String(categoryOnly), years }) : []),
    ...(withoutPurpose > 0 ? note('purpose-not-said', { count: String(withoutPurpose) }) : []),
    ...note('first-dose-only'),
    ...note('systemic-only'),
    ...note('second-hand'),
  ]
}

function yearsOf(organisms: AntibiogramAnswer['organisms']): [from: string, until: string] {
  const days = organisms.flatMap(({ firstDay, lastDay }) => [firstDay, lastDay]).sort(compareText)
  return [days[0]?.slice(0, 4) ?? '', days.at(-1)?.slice(0, 4) ?? '']
}
