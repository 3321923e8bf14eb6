import type { BodyOf, Case, KindName, Line } from './fold.ts'

/** Whether an entry is about this operation itself. */
export function isAbout({ header: { subject } }: Pick<Line<unknown>, 'header'>, operation: string): boolean {
  return subject.kind === 'operation' && subject.operation === operation
}

/**
 * The live entries of one kind about one operation, oldest first.
 *
 * @example linesAbout(theCase, 'planned-line', operation.id).map(({ body }) => body.line) // ['premed', 'block']
 */
export function linesAbout<Name extends KindName>(theCase: Case, kind: Name, operation: string): Line<BodyOf<Name>>[] {
  return theCase.live(kind).filter((line) => isAbout(line, operation))
}
