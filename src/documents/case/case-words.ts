import type { OwnerWords } from '#content/languages/owner-words.ts'
import { caution } from '#content/wording/caution.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import { type OperationOnFile, operationsOf as operationsOnFile } from '#core/owed/operations.ts'
import { type DateWords, datesInEnglish } from '#core/time/date-words.ts'
import { type Moment, sayMoment } from '#core/time/moment.ts'
import { type Block, checked, type Paper } from '../render/model.ts'
import type { PaperInput } from './paper-input.ts'

/** What every paper needs of a language. */
type PaperWords = Pick<OwnerWords, 'papers' | 'caution' | 'dates'>
const english: PaperWords = { papers: papersInEnglish, caution, dates: datesInEnglish }

export function animalOf(file: CaseFile): BodyOf<'identity'> | undefined {
  return file.theCase.latest('identity')?.body
}

/** "Bramble, dog, English Springer Spaniel, female, neutered, born May 2018, chip …": enough to know the right animal. */
export function animalLine(file: CaseFile, { papers: words, dates }: PaperWords = english): string {
  const animal = animalOf(file)
  if (!animal) return words.notRecorded
  return [
    animal.name,
    words.species[animal.species],
    animal.breed,
    words.sexes[animal.sex],
    words.neutered[animal.neutered],
    animal.born && fill(words.born, { date: sayMoment(animal.born, dates) }),
    animal.chip && fill(words.chip, { chip: animal.chip }),
  ]
    .filter((part) => part !== null)
    .join(', ')
}

/** An operation on file, with its signed summary when there is one. */
export type Operation = OperationOnFile & { readonly summary: Line<BodyOf<'operation-summary'>> | undefined }

/** Every operation of the case, oldest first. */
export function operationsOf(file: CaseFile): Operation[] {
  const summaries = file.theCase.live('operation-summary')
  return operationsOnFile(file).map((operation) => ({
    ...operation,
    summary: summaries.findLast((line) => isAbout(line, operation.id)),
  }))
}

export function operationOf(input: PaperInput): Operation | undefined {
  const all = operationsOf(input.file)
  return input.operation === null ? all.at(-1) : all.find(({ id }) => id === input.operation)
}

export function earOf(line: Pick<Line<unknown>, 'header'>): Side | null {
  const { subject } = line.header
  return subject.kind === 'ear' ? subject.side : null
}

/** When an entry happened, as words on the wall clock it was lived on. */
export function whenOf(line: Pick<Line<unknown>, 'header'>, dates: DateWords = datesInEnglish): string {
  return sayMoment(line.header.happenedAt, dates)
}

/** The time of day of an entry; the whole moment when it is known no finer than a day. */
export function timeOf(line: Pick<Line<unknown>, 'header'>): string {
  const said = whenOf(line)
  return said.split(', ')[1] ?? said
}

/** What all papers have in common, filled in once. */
export function paperOf(
  input: PaperInput,
  own: {
    readonly id: string
    readonly title: string
    readonly blocks: readonly Block[]
    readonly print?: Paper['print']
    readonly caution?: null
    readonly turnOver?: string
    /** In the language of the household, for the papers of the owner. */
    readonly words?: PaperWords
  },
): Paper {
  const { file, on } = input
  const words = own.words ?? english
  return checked({
    id: own.id,
    title: own.title,
    language: words.papers.language,
    about: animalLine(file, words),
    date: fill(words.papers.dated, { date: sayDay(on, words.dates) }),
    at: on.at,
    from: `${file.clinic.name} · ${file.clinic.phone}`,
    blocks: own.blocks,
    caution: own.caution === null ? null : words.caution,
    provenance: provenanceOf(file, words),
    print: own.print ?? 'ordinary',
    ...(own.turnOver === undefined ? {} : { turnOver: own.turnOver }),
  })
}

/** What the paper was made from; entries that contradict each other or wait for others are said on every page. */
function provenanceOf({ stream, theCase }: CaseFile, { papers: words, dates }: PaperWords): string {
  const { lines, conflicts, pending } = theCase
  const last = lines.at(-1)
  const about = { stream, count: String(lines.length), last: last ? whenOf(last, dates) : words.notKnown }
  return [
    fill(words.provenance, about),
    ...(conflicts.length === 0 ? [] : [fill(words.conflicts, { count: String(conflicts.length) })]),
    ...(pending.length === 0 ? [] : [fill(words.pending, { count: String(pending.length) })]),
  ].join(' · ')
}

/** The day of a moment, without its minutes. */
export function sayDay(moment: Moment, dates: DateWords = datesInEnglish): string {
  const precision = moment.precision === 'year' ? 'year' : moment.precision === 'month' ? 'month' : 'day'
  return sayMoment({ ...moment, precision }, dates)
}
