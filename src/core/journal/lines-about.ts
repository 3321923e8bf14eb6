import type { BodyOf, Case, KindName, Line } from './fold.ts'

/**
 * The live entries of one kind about one operation, oldest first.
 *
 * @example linesAbout(theCase, 'planned-line', operation.id).map(({ body }) => body.line) // ['premed', 'block']
 */
export function linesAbout<Name extends KindName>(theCase: Case, kind: Name, operation: string): Line<BodyOf<Name>>[] {
  return theCase
    .live(kind)
    .filter(({ header: { subject } }) => subject.kind === 'operation' && subject.operation === operation)
}
