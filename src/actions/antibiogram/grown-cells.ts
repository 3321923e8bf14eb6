import { InputError } from '../input.ts'

/** Columns of the table; any other is named in the answer and not read. */
const empty = {
  animal: '',
  collectedOn: '',
  host: '',
  organism: '',
  drug: '',
  mic: '',
  zone: '',
  disk: '',
  category: '',
  purpose: '',
  site: '',
  isolate: '',
  status: '',
}
type Column = keyof typeof empty
export type Cells = Readonly<Record<Column, string>>
/** The row whose cells are read, `rows[16]`, for saying where something is wrong. */
export type Place = string

export function cellsOf(input: unknown, place: Place, unread: Set<string>): Cells {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    throw new InputError('invalid-type', place, `${place} must be an object {…} with one drug of one isolate.`)
  }
  const cells: Record<string, string> = { ...empty }
  const row = input as Readonly<Record<string, unknown>>
  for (const name in row) {
    const value = row[name]
    if (cells[name] === undefined) unread.add(name)
    else if (typeof value === 'string' || typeof value === 'number') cells[name] = String(value).trim()
    else if (value !== null) {
      throw new InputError('invalid-type', `${place}.${name}`, `${place}.${name} must be a text "…" or a number.`)
    }
  }
  return cells as Cells
}

export function wanted(cells: Cells, column: Column, place: Place): string {
  const text = cells[column]
  if (text !== '') return text
  const what = { host: 'dog or cat', collectedOn: 'a day such as 2026-03-01' }[column as string] ?? `the ${column}`
  throw new InputError('missing-field', `${place}.${column}`, `${place}.${column} is missing; write ${what}.`)
}

/** The day of a date, with or without a time behind it; no other order of its parts is guessed. */
export function dayIn(text: string, place: Place): string {
  const [, day = ''] = /^(\d{4}-\d{2}-\d{2})(?:[T ].*)?$/.exec(text) ?? []
  const at = new Date(`${day}T00:00:00.000Z`)
  if (day !== '' && !Number.isNaN(at.getTime()) && at.toISOString().startsWith(day)) return day
  throw wrong('collectedOn', place, `${JSON.stringify(text)} is no day; write it as 2026-03-01`)
}

export function listedIn<Word extends string>(
  words: readonly Word[],
  { cells, column, place }: { readonly cells: Cells; readonly column: Column; readonly place: Place },
): Word | null {
  const text = cells[column]
  if (text === '') return null
  const found = words.find((word) => word === text.toLowerCase())
  if (found !== undefined) return found
  throw wrong(column, place, `${JSON.stringify(text)} is not a ${column}; write one of ${words.join(', ')}`)
}

export function wrong(column: Column, place: Place, what: string): InputError {
  return new InputError('wrong-value', `${place}.${column}`, `${place}.${column}: ${what}.`)
}
