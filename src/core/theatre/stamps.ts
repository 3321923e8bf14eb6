import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { Checkpoint } from '#core/procedures/procedure.ts'

export type Stamp = Line<BodyOf<'theatre-stamp'>>

/** Marks of the clock that every operation has, whatever is done in it. */
export const clockMarks = ['premedication', 'anaesthesia-start', 'skin-mark', 'incision', 'closed', 'tube-out'] as const
export type ClockMark = (typeof clockMarks)[number]

/** One thing to be stamped, in the order of the operation, with every live stamp of it: two are a conflict. */
export type ToStamp = {
  readonly id: string
  readonly mark: ClockMark | null
  readonly checkpoint: Checkpoint | null
  readonly stamps: readonly Stamp[]
}

/**
 * What is stamped in one operation, in its order: the beginning, the checkpoints of the procedure, the end.
 *
 * @example toStamp(theCase, operation.id, procedure.checkpoints).find(({ stamps }) => stamps.length === 0)?.id // 'k4-horizontal-canal'
 */
export function toStamp(
  theCase: Case,
  operation: string,
  checkpoints: readonly Checkpoint[],
  /** The operations of its anaesthetic, first to last: what began it is stamped with the first. */
  together: readonly string[] = [operation],
): ToStamp[] {
  const all = linesAbout(theCase, 'theatre-stamp', operation)
  const isLater = together.indexOf(operation) > 0
  return stampOrder(checkpoints)
    .map((item) => ({ ...item, stamps: all.filter(({ body }) => body.checkpoint === item.id) }))
    .filter(({ id, stamps }) => !(isLater && begins.has(id) && stamps.length === 0))
}

const begins: ReadonlySet<string> = new Set<ClockMark>(['premedication', 'anaesthesia-start'])

/** What is to be stamped in an operation, whether or not anything was: on the screen and on the sheet of paper. */
export function stampOrder(checkpoints: readonly Checkpoint[]): Omit<ToStamp, 'stamps'>[] {
  const mark = (id: ClockMark) => ({ id, mark: id, checkpoint: null })
  return [
    mark('premedication'),
    mark('anaesthesia-start'),
    mark('skin-mark'),
    mark('incision'),
    ...checkpoints.map((checkpoint) => ({ id: checkpoint.id, mark: null, checkpoint })),
    mark('closed'),
    mark('tube-out'),
  ]
}

/**
 * The moment of a mark that says "done"; null while there is none. Of two that stand side by side the earlier counts
 * until a person settles them.
 */
export function doneAt(theCase: Case, operation: string, id: string): string | null {
  const done = linesAbout(theCase, 'theatre-stamp', operation).find(
    ({ body }) => body.checkpoint === id && body.answer === 'done',
  )
  return done?.at ?? null
}

const retraction = /^retraction-(on|off)-(\d+)$/

/** One time that the nerve was held aside, by the stamps of its beginning and end. */
export type Retraction = { readonly number: number; readonly from: string; readonly until: string | null }

/**
 * Every retraction of an operation, first to last; the one that still holds has no end. Of two stamps that stand side by
 * side the earlier counts until a person settles them.
 */
export function retractionsOf(theCase: Case, operation: string): Retraction[] {
  const ends = new Map<number, { on?: string; off?: string }>()
  for (const { at, body } of linesAbout(theCase, 'theatre-stamp', operation)) {
    const [, which, text] = retraction.exec(body.checkpoint) ?? []
    if (text === undefined || body.answer !== 'done') continue
    const number = Number(text)
    ends.set(number, { ...(which === 'on' ? { on: at } : { off: at }), ...ends.get(number) })
  }
  return [...ends]
    .sort(([a], [b]) => a - b)
    .flatMap(([number, { on, off }]) => (on === undefined ? [] : [{ number, from: on, until: off ?? null }]))
}
