import { antibiogramRules } from '#content/susceptibility/antibiogram-rules.ts'
import { antibiogramOf } from '#core/antibiogram/antibiogram.ts'
import { gatherIsolates } from '#core/antibiogram/gather-isolates.ts'
import { type NotCounted, notCounted } from '#core/antibiogram/purpose.ts'
import { type AntibiogramAnswer, answerOf } from './antibiogram-answer.ts'
import { methodAsked } from './antibiogram-request.ts'
import { type GrownRow, grownRows } from './grown-row.ts'
import { notesOf } from './notes.ts'
import { readerBy } from './read-grown.ts'
import type { TestedRow } from './tested-cell.ts'

/** Why rows do not stand in the table. */
export type LeftOut = NotCounted | 'other-animal' | 'outside-period' | 'repeat'
export type CountedRows = AntibiogramAnswer & {
  readonly rows: { readonly read: number; readonly leftOut: Readonly<Partial<Record<LeftOut, number>>> }
}

/**
 * What grows, from rows of one drug of one isolate each, in whatever order; they are read once and as they come.
 *
 * @example await antibiogram(rows, { method: 'episode', from: '2025-01-01' })
 */
export async function antibiogram(rows: AsyncIterable<unknown>, options: unknown): Promise<CountedRows> {
  const { method, edition } = methodAsked(options)
  const gathering = gatherIsolates<TestedRow>(method)
  const reading = grownRows()
  const leftOut: Partial<Record<LeftOut, number>> = {}
  const places = new Set<string>()
  let [read, withoutPurpose] = [0, 0]
  for await (const input of rows) {
    read += 1
    const row = reading.read(input, read)
    if (row.purpose === null) withoutPurpose += 1
    const why = take(row, gathering.add)
    if (why !== null) leftOut[why] = (leftOut[why] ?? 0) + 1
    else if (row.site !== null) places.add(row.site)
  }
  const table = antibiogramOf(gathering.isolates(), readerBy(edition.id), {
    method,
    points: antibiogramRules.points.value,
  })
  const answer = answerOf(table, method, edition)
  const about = { method, places: [...places].sort(), withoutPurpose, columns: [...reading.unread] }
  return { ...answer, rows: { read, leftOut }, notes: notesOf(answer, about) }
}

function take(
  { host, purpose, status, ...row }: GrownRow,
  add: ReturnType<typeof gatherIsolates<TestedRow>>['add'],
): LeftOut | null {
  const why = notCounted(purpose ?? 'clinical', status ?? 'final')
  if (why !== null) return why
  if (host === null) return 'other-animal'
  const added = add({ ...row, host })
  return added === 'kept' ? null : added
}
