import type { Side } from '#core/animal/species.ts'
import type { Line } from '#core/journal/fold.ts'
import type { Setting } from './setting.ts'

/**
 * The surgeon who answers for what comes back of an ear: of the operation named, else of the newest one of that ear, else
 * of the newest of the animal. Null while there is none, or when that person no longer works here: then it is every
 * surgeon's. Who stands in on leave is settled by the reader, on the day of reading (`core/people/leave.ts`).
 *
 * @example surgeonOfEar('LEFT', 'operation-tansy', setting) // 'person-holm'
 */
export function surgeonOfEar(
  side: Side | null,
  operation: string | null,
  { operations, file }: Pick<Setting, 'operations' | 'file'>,
): string | null {
  const named = operations.find(({ id }) => id === operation)
  const ofEar = operations.findLast((one) => one.side === side)
  const surgeon = (named ?? ofEar ?? operations.at(-1))?.surgeon ?? null
  return surgeon !== null && file.people.get(surgeon)?.role === 'surgeon' ? surgeon : null
}

/**
 * Whoever wrote an entry, while they still work here: what they sent away they ask after.
 *
 * @example writerStillHere(specimen, setting) // 'person-lindqvist'
 */
export function writerStillHere(
  { header }: Pick<Line<unknown>, 'header'>,
  { file }: Pick<Setting, 'file'>,
): string | null {
  const { author } = header
  return author.kind === 'person' && file.people.has(author.person) ? author.person : null
}
