import type { Side } from '#core/animal/species.ts'
import type { Register } from '#core/forms/arrangement.ts'
import { type Drug, drugById } from '#core/formulary/drug.ts'
import type { Json } from '#core/journal/canonical.ts'
import { type CaseFile, contactNamed, personNamed } from '#core/journal/clinic.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { type Checkpoint, type Procedure, procedureNamed } from '#core/procedures/procedure.ts'
import { type StampAnswer, stampSentences } from '#core/procedures/stamp-sentences.ts'
import { markName } from '#core/theatre/mark-name.ts'
import { type SpokenPause, statedItem } from '#core/theatre/spoken-pause.ts'
import { type Precision, sayMoment } from '#core/time/moment.ts'
import type { Body, Names } from './say-body.ts'

/** The words around names in one language. */
export type NamesWording = {
  readonly operation: string
  readonly unknownOperation: string
  readonly contact: string
  readonly entry: string
  readonly entryNotHere: string
  readonly kinds: Readonly<Record<string, string>>
  readonly clockMarks: Readonly<Record<string, string>>
  readonly countedMarks: Readonly<Record<string, string>>
  readonly subjects: Readonly<Record<Subject['kind'], string>>
  readonly ear: string
  readonly procedures: Readonly<Record<string, string>>
}

export type Library = {
  readonly drugs: readonly Drug[]
  readonly procedures: readonly Procedure[]
  readonly pauses: readonly SpokenPause[]
  readonly words: NamesWording
}

/** What the ids of one line mean: people, drugs, operations, checkpoints of its own operation, items of its own pause. */
export function namesOf(line: Pick<Line, 'header'>, file: CaseFile, library: Library): Names {
  const { drugs, procedures, pauses, words } = library
  const checkpoint = (id: string) => checkpointOf(line, id, file, procedures)
  const registered = (register: Register, id: string, body: Body): string => {
    switch (register) {
      case 'person':
        return personNamed(file, id)
      case 'contact':
      case 'vet':
      case 'laboratory':
        return nameOfContact(id, file, words)
      case 'contact-or-person':
        return file.people.has(id) ? personNamed(file, id) : nameOfContact(id, file, words)
      case 'household':
        return nameOfHousehold(id, file)
      case 'operation':
        return nameOfOperation(id, file, library)
      case 'drug':
        return drugById(drugs, id)?.name ?? id
      case 'shelf-item':
        return file.house.live('shelf-item').find(({ body }) => body.item === id)?.body.label ?? id
      case 'checkpoint':
        return checkpoint(id)?.title ?? markName(id, words) ?? spoken(id)
      case 'animal':
      case 'case':
        return nameOfAnimal(id, file)
      case 'pause-item':
        return statedItem(pauses, String(body.pause), id) ?? spoken(id)
    }
  }
  return {
    registered,
    details: (body) => {
      const found = checkpoint(String(body.checkpoint))
      return found ? stampSentences(found, body as unknown as StampAnswer) : looseDetails(body)
    },
    subject: (subject) => sayJsonSubject(subject, file, library),
    decimalMark: file.clinic.decimalMark,
  }
}

/**
 * What an entry is about, in words; empty for the animal itself.
 *
 * @example saySubject({ kind: 'ear', animal, side: 'LEFT' }, file, library) // 'LEFT ear'
 */
export function saySubject(subject: Subject, file: CaseFile, library: Library): string {
  switch (subject.kind) {
    case 'ear':
      return fill(library.words.ear, { side: subject.side })
    case 'operation':
      return nameOfOperation(subject.operation, file, library)
    default:
      return library.words.subjects[subject.kind]
  }
}

/** The one side a line is about: its ear, or the ear of its operation. Null for the animal as a whole. */
export function sideOf({ header }: Pick<Line, 'header'>, file: CaseFile): Side | null {
  const { subject } = header
  if (subject.kind === 'ear') return subject.side
  if (subject.kind !== 'operation') return null
  return operationsOf(file).find(({ id }) => id === subject.operation)?.side ?? null
}

/** "Ear findings, 24 February 2025, 09:30", for a link to it. */
export function nameOfEntry(id: string, file: CaseFile, { words }: Library): string {
  const line = file.theCase.line(id) ?? file.house.line(id)
  if (!line) return words.entryNotHere
  const { kind, happenedAt } = line.header
  return fill(words.entry, { kind: words.kinds[kind] ?? kind, when: sayMoment(happenedAt) })
}

function nameOfOperation(id: string, file: CaseFile, { procedures, words }: Library): string {
  const found = operationsOf(file).find((operation) => operation.id === id)
  if (!found) return words.unknownOperation
  return fill(words.operation, {
    side: found.side,
    procedure: words.procedures[found.procedure] ?? procedureNamed(found.procedure, procedures).name,
    when: sayMoment({ ...found.moment, precision: dayAtMost(found.moment.precision) }),
  })
}

function dayAtMost(precision: Precision): Precision {
  return precision === 'year' || precision === 'month' ? precision : 'day'
}

function nameOfContact(id: string, file: CaseFile, words: NamesWording): string {
  const practice = file.contacts.get(id)?.practice
  const name = contactNamed(file, id)
  return practice ? fill(words.contact, { name, practice }) : name
}

/** A household has no name of its own: the people in it. */
function nameOfHousehold(id: string, file: CaseFile): string {
  const line = file.theCase
    .live('household')
    .findLast(({ header: { subject } }) => subject.kind === 'household' && subject.household === id)
  return line?.body.contacts.map(({ contact }) => contactNamed(file, contact)).join(', ') ?? id
}

function nameOfAnimal(id: string, { theCase }: CaseFile): string {
  const line = theCase
    .live('identity')
    .findLast(
      ({ header }) => header.stream === id || (header.subject.kind === 'animal' && header.subject.animal === id),
    )
  return line?.body.name ?? id
}

function checkpointOf(
  { header: { subject } }: Pick<Line, 'header'>,
  id: string,
  file: CaseFile,
  procedures: readonly Procedure[],
): Checkpoint | undefined {
  const operation = operationsOf(file).find((one) => subject.kind === 'operation' && one.id === subject.operation)
  const own = operation && procedureNamed(operation.procedure, procedures)
  return [...(own ? [own] : []), ...procedures]
    .flatMap(({ checkpoints }) => checkpoints)
    .find((checkpoint) => checkpoint.id === id)
}

function looseDetails({ detail, answer }: Body): string[] {
  const said = typeof detail === 'object' && detail !== null ? Object.entries(detail) : []
  return said.length === 0 && answer === 'done' ? [] : said.map(([id, value]) => `${spoken(id)}: ${value}`)
}

function sayJsonSubject(subject: Json, file: CaseFile, library: Library): string {
  return saySubject(subject as unknown as Subject, file, library)
}

/** A code that has no words of its own, as it would be spoken. */
function spoken(code: string): string {
  return code.replaceAll('-', ' ')
}
