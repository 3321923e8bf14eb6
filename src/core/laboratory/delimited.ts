import { Unreadable } from './fault.ts'
import { type Delimiter, delimiters } from './mapping.ts'

export type Row = { readonly line: number; readonly cells: readonly string[] }

const longest = 5_000_000

/**
 * Rows of a delimited text; a cell in quotes may hold delimiters, line breaks and doubled quotes. Every row must have as
 * many cells as the first: one that has not was split at the wrong place.
 *
 * @example splitRows('a;b\n1;2', ';') // [{ line: 1, cells: ['a', 'b'] }, { line: 2, cells: ['1', '2'] }]
 * Reference: RFC 4180.
 */
export function splitRows(text: string, delimiter: Delimiter): Row[] {
  const rows = rawRows(text, delimiter).filter(({ cells }) => cells.some((cell) => cell.trim() !== ''))
  const width = rows[0]?.cells.length ?? 0
  if (rows.length === 0) throw new Unreadable('empty', '', { line: 1 })
  const ragged = rows.find(({ cells }) => cells.length !== width)
  if (ragged) throw new Unreadable('ragged-row', ragged.cells.join(delimiter), { line: ragged.line })
  return rows
}

function rawRows(text: string, delimiter: Delimiter): Row[] {
  if (text.length > longest) throw new Unreadable('too-long', String(text.length), { line: 1 })
  const rows: Row[] = []
  let cells: string[] = []
  let cell = ''
  let [line, begun, quotedSince, touched] = [1, 1, 0, false]
  const endCell = () => {
    // An apostrophe before a sign only keeps a spreadsheet from running the cell.
    cells.push(cell.trim().replace(/^'('*[=+\-@])/, '$1'))
    cell = ''
    touched = false
  }
  const endRow = () => {
    endCell()
    rows.push({ line: begun, cells })
    cells = []
    begun = line + 1
  }
  for (let at = text.startsWith('\uFEFF') ? 1 : 0; at < text.length; at += 1) {
    const one = text[at] ?? ''
    if (quotedSince > 0) {
      if (one === '"' && text[at + 1] === '"') at += 1
      else if (one === '"') {
        quotedSince = 0
        continue
      }
      if (one === '\n') line += 1
      cell += one
    } else if (one === '"' && !touched) {
      quotedSince = line
      touched = true
    } else if (one === delimiter) endCell()
    else if (one === '\n' || one === '\r') {
      if (one === '\r' && text[at + 1] === '\n') at += 1
      endRow()
      line += 1
    } else {
      cell += one
      touched = touched || one.trim() !== ''
    }
  }
  if (quotedSince > 0) throw new Unreadable('quote-open', cell, { line: quotedSince })
  endRow()
  return rows
}

/**
 * The delimiter of a text: the one that cuts every row into as many cells as the first. Two that do are asked about.
 *
 * @example findDelimiter('drug;value\nmarbofloxacin;0,5') // ';'
 */
export function findDelimiter(text: string): Delimiter {
  const widths = delimiters.map((delimiter) => ({ delimiter, width: widthBy(text, delimiter) }))
  const able = widths.filter(({ width }) => width > 1)
  const [only, another] = able
  if (!only) throw new Unreadable('no-columns', text.split('\n')[0] ?? '', { line: 1 })
  if (another) {
    // A decimal comma cuts evenly only by chance: the heading decides when one of the two does not stand in it.
    const inHeading = able.filter(({ delimiter }) => (text.split(/\r?\n/)[0] ?? '').includes(delimiter))
    if (inHeading.length === 1 && inHeading[0]) return inHeading[0].delimiter
    throw new Unreadable('delimiter-unclear', able.map(({ delimiter }) => delimiter).join(' '), { line: 1 })
  }
  return only.delimiter
}

function widthBy(text: string, delimiter: Delimiter): number {
  try {
    return splitRows(text, delimiter)[0]?.cells.length ?? 0
  } catch (error) {
    if (error instanceof Unreadable) return 0
    throw error
  }
}
