import { Unreadable } from '../fault.ts'

/** The five characters that a message names in its own header. */
export type Delimiters = {
  readonly field: string
  readonly component: string
  readonly repetition: string
  readonly escape: string
  readonly sub: string
}

/** One line of a message; `fields[0]` is its name and `fields[5]` the fifth field, as the standard counts. */
export type Segment = {
  readonly name: string
  readonly line: number
  readonly fields: readonly string[]
  readonly delimiters: Delimiters
}

/** A message of a file, or what is wrong with its outermost form. */
export type Message = { readonly line: number; readonly segments: readonly Segment[] }

const longest = 5_000_000
const envelope = ['FHS', 'BHS', 'BTS', 'FTS']

/** What stands around a file rather than in it: a mark of the byte order, the frame of a line between machines. */
const frame = new Set(['\uFEFF', '\u000b', '\u001c', '\u001a'])

function unframed(line: string): string {
  let [from, to] = [0, line.length]
  while (from < to && frame.has(line[from] ?? '')) from += 1
  while (to > from && frame.has(line[to - 1] ?? '')) to -= 1
  return line.slice(from, to)
}

/**
 * Splits a file into its messages, each a header with its own delimiters and the lines behind it.
 *
 * @example splitMessages(text)[0]?.segments[0]?.name // 'MSH'
 * Reference: HL7 version 2.5.1, chapter 2, message construction rules and batch protocol.
 */
export function splitMessages(text: string): Message[] {
  if (text.length > longest) throw new Unreadable('too-long', String(text.length), { line: 1 })
  const lines = text.split(/\r\n|\r|\n/).map(unframed)
  const messages: { line: number; segments: Segment[] }[] = []
  let counted: { readonly messages: string; readonly line: number } | null = null
  for (const [place, content] of lines.entries()) {
    const line = place + 1
    if (content.trim() === '') continue
    const name = content.slice(0, 3)
    if (envelope.includes(name)) {
      const said = content.split(content[3] ?? '|')[1] ?? ''
      if (name === 'BTS' && said.trim() !== '') counted = { messages: said.trim(), line }
      continue
    }
    if (name === 'MSH') {
      const delimiters = delimitersOf(content, line)
      messages.push({ line, segments: [{ name, line, fields: headerFields(content, delimiters), delimiters }] })
      continue
    }
    const message = messages.at(-1)
    const delimiters = message?.segments[0]?.delimiters
    if (!message || !delimiters) throw new Unreadable('begins-with-no-header', content, { line })
    if (!/^[A-Z][A-Z0-9]{2}$/.test(name) || (content.length > 3 && content[3] !== delimiters.field)) {
      throw new Unreadable('not-a-segment', content, { line })
    }
    message.segments.push({ name, line, fields: content.split(delimiters.field), delimiters })
  }
  if (messages.length === 0) throw new Unreadable('empty', '', { line: 1 })
  if (counted && Number(counted.messages) !== messages.length) {
    const found = `${counted.messages} / ${messages.length}`
    throw new Unreadable('batch-count', found, { line: counted.line, segment: 'BTS', field: 'BTS-1' })
  }
  return messages
}

function delimitersOf(content: string, line: number): Delimiters {
  const [field = '', component = '', repetition = '', escapes = '', sub = ''] = content.slice(3, 8)
  const encoding = content.slice(4).split(field)[0] ?? ''
  const all = [field, component, repetition, escapes, sub]
  const wrong = encoding.length < 4 || encoding.length > 5 || new Set(all).size < 5
  if (wrong || all.some((one) => one === '' || /[\sA-Za-z0-9]/.test(one))) {
    throw new Unreadable('delimiters-unreadable', content.slice(0, 12), { line, segment: 'MSH', field: 'MSH-2' })
  }
  return { field, component, repetition, escape: escapes, sub }
}

/** The separator itself is the first field of a header. */
function headerFields(content: string, { field }: Delimiters): string[] {
  const [name = '', ...rest] = content.split(field)
  return [name, field, ...rest]
}
