import type { Case, Line } from '#core/journal/fold.ts'

export const badgeCodes = [
  'unsent',
  'late-session',
  'late-operation',
  'late-written',
  'order-uncertain',
  'erased',
  'unknown',
  'superseded',
  'withdrawn',
  'waits',
  'conflict',
  'refiled-here',
  'corrects',
  'imported',
] as const
/** What a reader must know of an entry besides its words. */
export type BadgeCode = (typeof badgeCodes)[number]

/**
 * What is to be said beside an entry: where it is, how it came, whether it counts.
 *
 * @example badgesOf(line, theCase, unsent) // ['unsent', 'order-uncertain']
 */
export function badgesOf(line: Line, theCase: Case, unsent: ReadonlySet<string>): BadgeCode[] {
  const { header, state, late } = line
  const { id } = header
  const is = (code: BadgeCode, holds: boolean): BadgeCode[] => (holds ? [code] : [])
  return [
    ...is('unsent', unsent.has(id)),
    ...is('superseded', state === 'superseded'),
    ...is('withdrawn', state === 'withdrawn'),
    ...is('conflict', state === 'live' && theCase.conflicts.some(({ between }) => between.includes(id))),
    ...is('erased', line.erased),
    ...is('unknown', !line.known && !line.erased),
    ...is(
      'waits',
      theCase.pending.some(({ entry }) => entry === id),
    ),
    ...is('late-session', late === 'session-expired'),
    ...is('late-operation', late === 'operation-finished'),
    ...is('late-written', late === 'written-later'),
    ...is('order-uncertain', !line.orderCertain),
    ...is('refiled-here', header.refiledFrom !== null),
    ...is('corrects', state === 'live' && header.supersedes.length > 0),
    ...is('imported', header.author.kind === 'import'),
  ]
}
