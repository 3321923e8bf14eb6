import type { Subject } from '#core/journal/entry.ts'

const partsOfSubject: Readonly<Record<Subject['kind'], readonly string[]>> = {
  clinic: [],
  household: ['household'],
  animal: ['animal'],
  ear: ['animal', 'side'],
  operation: ['animal', 'operation'],
}

export const subjectKinds = Object.keys(partsOfSubject) as Subject['kind'][]

/** What must be said besides the kind of a subject. Example: `partsOf('ear')` is `['animal', 'side']`. */

export function partsOf(subjectKind: string): readonly string[] {
  return (partsOfSubject as Readonly<Record<string, readonly string[]>>)[subjectKind] ?? []
}
