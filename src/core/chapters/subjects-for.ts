import { otherSide, sides } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Subject } from '#core/journal/entry.ts'
import { type KindName, kindNamed } from '#core/journal/fold.ts'
import { operationsOf } from '#core/owed/operations.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'

/**
 * Everything an entry of this kind could be about in this case, for a person to choose from; nothing is chosen here. A
 * booking opens an operation of its own, with the id given.
 *
 * @example subjectsFor('ear-findings', file, newId) // the LEFT ear, the RIGHT ear
 */
export function subjectsFor(kind: KindName, file: CaseFile, newOperation: string): Subject[] {
  const animal = animalIn(file)
  return (kindNamed(kind)?.subjects ?? []).flatMap((subject): Subject[] => {
    switch (subject) {
      case 'clinic':
        return []
      case 'animal':
        return [{ kind: 'animal', animal }]
      case 'ear':
        return sides.map((side) => ({ kind: 'ear', animal, side }))
      case 'household':
        return householdsIn(file).map((household) => ({ kind: 'household', household }))
      default:
        if (kind === 'booking') return [{ kind: 'operation', animal, operation: newOperation }]
        return operationsOf(file).map(({ id }) => ({ kind: 'operation', animal, operation: id }))
    }
  })
}

/**
 * What an entry about one operation of this file is about.
 *
 * @example aboutOperation(file, operation.id) // { kind: 'operation', animal: 'animal-1', operation: 'operation-1' }
 */
export function aboutOperation(file: CaseFile, operation: string) {
  return { kind: 'operation', animal: animalIn(file), operation } as const
}

/** The animal of this file; while nobody wrote down who it is, an id of its own made from the file's. */
export function animalIn({ theCase, stream }: CaseFile): string {
  const named = theCase
    .live('identity')
    .filter(({ header }) => header.stream === stream)
    .at(-1)
  const lines = [...(named ? [named] : []), ...theCase.lines.filter(({ header }) => header.stream === stream)]
  for (const { header } of lines) if ('animal' in header.subject) return header.subject.animal
  return `animal-${stream.replace(/^case:/, '')}`
}

/**
 * The households that this case names, the animal's own first; while it names none, one of its own, made from the
 * file's. Example: `householdsIn(file) // ['household-okafor']`.
 */
export function householdsIn({ theCase, stream }: Pick<CaseFile, 'theCase' | 'stream'>): string[] {
  const named = theCase.latest('identity')?.body.household
  const written = theCase
    .live('household')
    .flatMap(({ header: { subject } }) => (subject.kind === 'household' ? [subject.household] : []))
  const known = new Set([...(named === undefined ? [] : [named]), ...written])
  return known.size > 0 ? [...known] : [`household-${stream.replace(/^case:/, '')}`]
}

/**
 * The one subject that an owed thing names by itself: its ear or its operation. Null where a person has to say.
 *
 * @example subjectOfOwed(item, 'check', file) // the LEFT ear, of a look at the LEFT side
 */
export function subjectOfOwed(item: OwedItem, kind: KindName, file: CaseFile): Subject | null {
  // The plan for the other ear is not about the ear that was operated.
  const side = item.what === 'other-ear-plan' ? otherEar(item.side, kind) : item.side
  const fitting = subjectsFor(kind, file, '').filter((subject) => {
    if (subject.kind === 'ear') return subject.side === side
    if (subject.kind === 'operation') return subject.operation === item.operation
    return side === null && item.operation === null
  })
  return fitting.length === 1 ? (fitting[0] ?? null) : null
}

/** A plan for the other ear is about the other ear; whether an operation is chosen for it, a person says. */
function otherEar(operated: OwedItem['side'], kind: KindName): OwedItem['side'] {
  if (operated === null || kind !== 'other-ear-plan') return null
  return otherSide(operated)
}

/** Whether two subjects are the same thing. */
export function isSameSubject(a: Subject, b: Subject): boolean {
  if (a.kind !== b.kind) return false
  if (a.kind === 'ear' && b.kind === 'ear') return a.side === b.side && a.animal === b.animal
  if (a.kind === 'operation' && b.kind === 'operation') return a.operation === b.operation
  if (a.kind === 'household' && b.kind === 'household') return a.household === b.household
  return true
}
