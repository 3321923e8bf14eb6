import type { Place } from '../report.ts'
import { termOf } from '../terms.ts'
import type { Delimiters, Segment } from './segments.ts'

/** The bytes of a field as the sender put them, or '' when it is empty or beyond the end. */
export function rawField(segment: Segment, field: number): string {
  return segment.fields[field] ?? ''
}

/** Every repetition of a field, empty ones left out. */
export function repetitions(segment: Segment, field: number): string[] {
  const raw = rawField(segment, field)
  return raw.split(segment.delimiters.repetition).filter((one) => one !== '')
}

/** A component of the first repetition, read; null where nothing stands or the sender wrote `""`. */
export function component(segment: Segment, field: number, place = 1): string | null {
  return componentOf(repetitions(segment, field)[0] ?? '', place, segment.delimiters)
}

export function componentOf(raw: string, place: number, delimiters: Delimiters): string | null {
  const part = raw.split(delimiters.component)[place - 1] ?? ''
  return readText(part.split(delimiters.sub)[0] ?? '', delimiters)
}

export function subComponents(raw: string, place: number, delimiters: Delimiters): (string | null)[] {
  const part = raw.split(delimiters.component)[place - 1] ?? ''
  return part.split(delimiters.sub).map((one) => readText(one, delimiters))
}

/** The whole field in words: components joined by spaces, repetitions by lines. */
export function wholeText(segment: Segment, field: number): string | null {
  const { component, sub } = segment.delimiters
  const lines = repetitions(segment, field).map((one) =>
    one
      .split(component)
      .flatMap((part) => part.split(sub))
      .flatMap((part) => readText(part, segment.delimiters) ?? [])
      .join(' '),
  )
  const text = lines.filter((line) => line !== '').join('\n')
  return text === '' ? null : text
}

/** What a coded field says in words: its text, or its code where there is none; repetitions by lines. */
export function codedText(segment: Segment, field: number): string | null {
  const said = repetitions(segment, field).map((one) => {
    const [code, text, other, original] = [1, 2, 5, 9].map((place) => componentOf(one, place, segment.delimiters))
    return text ?? original ?? other ?? code ?? ''
  })
  return said.filter((line) => line !== '').join('\n') || null
}

export function placeOf(segment: Segment, field: number): Place {
  return { line: segment.line, segment: segment.name, field: `${segment.name}-${field}` }
}

/** Text without its escapes; `""` says that there is nothing. */
export function readText(raw: string, delimiters: Delimiters): string | null {
  const text = unescapeText(raw, delimiters).trim()
  return text === '' || text === '""' ? null : text
}

/**
 * Reads `\F\ \S\ \T\ \R\ \E\`, line breaks and hexadecimal text; marks of emphasis go, what is unknown stays as printed.
 *
 * @example unescapeText('A\\T\\B', delimiters) // 'A&B'
 * Reference: HL7 version 2.5.1, section 2.7, use of escape sequences in text fields.
 */
function unescapeText(raw: string, delimiters: Delimiters): string {
  const { escape: mark, field, component, sub, repetition } = delimiters
  if (!raw.includes(mark)) return raw
  const pieces = raw.split(mark)
  let text = pieces[0] ?? ''
  for (let at = 1; at < pieces.length; at += 2) {
    const [code = '', after] = [pieces[at], pieces[at + 1]]
    // A lone escape at the end opens nothing: it is kept as it stands.
    if (after === undefined) return `${text}${mark}${code}`
    text += `${meaningOf(code, { F: field, S: component, T: sub, R: repetition, E: mark }) ?? `${mark}${code}${mark}`}${after}`
  }
  return text
}

function meaningOf(code: string, characters: Readonly<Record<string, string>>): string | null {
  const character = termOf(characters, code)
  if (character !== null) return character
  if (code === 'H' || code === 'N') return ''
  if (/^\.(br|sp)/.test(code)) return '\n'
  return /^X([0-9A-Fa-f]{2})+$/.test(code) ? fromHexadecimal(code.slice(1)) : null
}

/** Printable characters only: a byte that is none stays as it was written. */
function fromHexadecimal(digits: string): string | null {
  const bytes = digits.match(/../g)?.map((pair) => Number.parseInt(pair, 16)) ?? []
  const printable = bytes.every((byte) => (byte >= 32 && byte < 127) || byte === 10 || byte === 13 || byte === 9)
  return printable ? String.fromCharCode(...bytes) : null
}

/** The same text so that it can stand in a field. */
export function escapeText(text: string, { field, component, sub, repetition, escape: mark }: Delimiters): string {
  const codes: Readonly<Record<string, string>> = {
    [mark]: 'E',
    [field]: 'F',
    [component]: 'S',
    [sub]: 'T',
    [repetition]: 'R',
    '\n': '.br',
    '\r': '.br',
  }
  return [...text].map((one) => (codes[one] === undefined ? one : `${mark}${codes[one]}${mark}`)).join('')
}
