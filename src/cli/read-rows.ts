import { createReadStream } from 'node:fs'
import { Readable } from 'node:stream'
import { parse } from 'csv-parse'
import { InputError } from '#actions/input.ts'
import { jsonObjects } from './json-objects.ts'
import { cannotRead } from './read-input.ts'

/**
 * The rows of a table of any length, one by one: CSV with a header (comma, semicolon or tab), a list of JSON objects, or
 * one JSON object after the other. `-` is standard input.
 */
export async function* readRows(path: string): AsyncGenerator<unknown> {
  const pieces = textOf(path)
  const head = await beginning(pieces)
  const [first] = head.trimStart()
  if (first === undefined) throw new InputError('empty', '', 'The input is empty; write a header and its rows.')
  const all = joined(head, pieces)
  if (first === '[' || first === '{') yield* jsonObjects(all)
  else yield* csvRows(all, delimiterOf(head))
}

async function* textOf(path: string): AsyncGenerator<string> {
  const stream = path === '-' ? process.stdin : createReadStream(path, { highWaterMark: 1 << 20 })
  try {
    for await (const piece of stream.setEncoding('utf8')) yield piece as string
  } catch (error) {
    throw cannotRead(path, error)
  }
}

/** What tells the kind of table: the first line, or as much of it as any header has. */
async function beginning(pieces: AsyncGenerator<string>): Promise<string> {
  let head = ''
  while (!head.trimStart().includes('\n') && head.length < 65_536) {
    const next = await pieces.next()
    if (next.done) break
    head += next.value
  }
  // Some editors begin a file with a byte order mark.
  return head.replace(/^\uFEFF/, '')
}

async function* joined(head: string, rest: AsyncGenerator<string>): AsyncGenerator<string> {
  yield head
  yield* rest
}

function delimiterOf(head: string): string {
  const header = head.trimStart().split('\n', 1)[0] ?? ''
  return ['\t', ';'].find((one) => header.includes(one)) ?? ','
}

async function* csvRows(text: AsyncGenerator<string>, delimiter: string): AsyncGenerator<unknown> {
  const rows = Readable.from(text).pipe(
    parse({ columns: (header: string[]) => header.map((name) => name.trim()), delimiter, skip_empty_lines: true }),
  )
  try {
    for await (const row of rows) yield row
  } catch (error) {
    const { code, message, lines } = error as Error & { readonly code?: string; readonly lines?: number }
    if (!code?.startsWith('CSV_')) throw error
    throw new InputError('not-csv', `line ${lines ?? '?'}`, `The table cannot be read: ${message}.`)
  }
}
