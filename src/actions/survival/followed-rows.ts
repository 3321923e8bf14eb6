import type { EndTimes } from '#core/stats/survival/life-table.ts'
import { InputError } from '../input.ts'
import { type NumberColumn, numberColumn } from './followed-column.ts'

/** Rows as read, told apart by group in the order in which the groups came. */
export type FollowedGroups = { readonly groups: ReadonlyMap<string, EndTimes>; readonly read: number }

const most = 100

/**
 * Reads rows of `time, status[, group]`, each once and as it comes. `status` is 0 still followed, 1 the event, 2 another end.
 *
 * @throws InputError naming the row and the column, and what would be right.
 */
export async function followedRows(rows: AsyncIterable<unknown>): Promise<FollowedGroups> {
  const groups = new Map<string, readonly [NumberColumn, NumberColumn, NumberColumn]>()
  let read = 0
  for await (const row of rows) {
    const place = `rows[${read}]`
    read += 1
    const { time, status, group } = cellsOf(row, place)
    let columns = groups.get(group)
    if (!columns) {
      if (groups.size === most)
        throw new InputError(
          'too-many-groups',
          `${place}.group`,
          `${place}.group: at most ${most} groups are compared.`,
        )
      columns = [numberColumn(), numberColumn(), numberColumn()]
      groups.set(group, columns)
    }
    columns[status].add(time)
  }
  if (read === 0) throw new InputError('empty', '', 'The table holds no row; write one for each that was followed.')
  return {
    read,
    groups: new Map(
      [...groups].map(([group, [censored, events, competing]]) => [
        group,
        { censored: censored.all(), events: events.all(), competing: competing.all() },
      ]),
    ),
  }
}

function cellsOf(row: unknown, place: string): { time: number; status: 0 | 1 | 2; group: string } {
  if (typeof row !== 'object' || row === null || Array.isArray(row))
    throw new InputError('wrong-type', place, `${place} must be an object with time and status.`)
  const { time, status, group } = row as Readonly<Record<string, unknown>>
  const at = numberIn(time, `${place}.time`, 'a number of days or of any other unit')
  if (!(at >= 0 && at < Infinity))
    throw new InputError('wrong-value', `${place}.time`, `${place}.time must be a number not below 0, not ${at}.`)
  const end = numberIn(status, `${place}.status`, '0, 1 or 2')
  if (end !== 0 && end !== 1 && end !== 2)
    throw new InputError(
      'wrong-value',
      `${place}.status`,
      `${place}.status must be 0 (still followed), 1 (the event) or 2 (another end), not ${end}.`,
    )
  return { time: at, status: end, group: group === undefined || group === null ? '' : String(group).trim() }
}

function numberIn(value: unknown, path: string, right: string): number {
  if (typeof value === 'number') return value
  const text = typeof value === 'string' ? value.trim() : ''
  const read = text === '' ? Number.NaN : Number(text)
  if (Number.isFinite(read)) return read
  const code = value === undefined || text === '' ? 'missing-field' : 'wrong-value'
  throw new InputError(
    code,
    path,
    code === 'missing-field'
      ? `${path} is missing; write ${right}.`
      : `${path} must be ${right}, not ${JSON.stringify(value)}.`,
  )
}
