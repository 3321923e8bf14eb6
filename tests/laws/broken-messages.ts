import { laboratoryTerms as terms } from '#content/exchange/laboratory-terms.ts'
import { readFhir } from '#core/laboratory/fhir/read-fhir.ts'
import { component, rawField } from '#core/laboratory/hl7/fields.ts'
import { readOru } from '#core/laboratory/hl7/read-oru.ts'
import { splitMessages } from '#core/laboratory/hl7/segments.ts'
import { readTable } from '#core/laboratory/read-table.ts'
import type { LaboratoryReport } from '#core/laboratory/report.ts'
import { ourTable } from '#core/laboratory/write-table.ts'
import { soundFhir, soundMessage, soundTable } from './sound-messages.ts'

/**
 * Spoils result messages and tables at random and reads them. Reading must answer or refuse, never throw; and what it
 * answers must hold every line that the spoilt message still has. Returns the first that does not, or undefined.
 *
 * @example breakMessages(1000, 1) // undefined: each was read whole or refused whole
 */
export function breakMessages(
  count: number,
  seed: number,
): { readonly text: string; readonly why: string } | undefined {
  const next = numbersFrom(seed)
  for (let made = 0; made < count; made += 1) {
    const sort = sorts[made % sorts.length] ?? 'message'
    const text = spoil(sound[sort], next)
    const why = wrong[sort](text)
    if (why !== null) return { text, why }
  }
  return undefined
}

const sorts = ['message', 'table', 'message', 'fhir'] as const
const sound = { message: soundMessage, table: soundTable, fhir: soundFhir }
const wrong = {
  message: messageWrong,
  table: (text: string) => thrown(() => readTable(text, ourTable, terms)),
  fhir: (text: string) => thrown(() => readFhir(text, terms)),
}

function thrown(read: () => unknown): string | null {
  try {
    read()
    return null
  } catch (error) {
    return `threw ${String(error)}`
  }
}

function messageWrong(text: string): string | null {
  try {
    const read = readOru(text, terms)
    if (read.kind === 'refusal') return null
    const messages = splitMessages(text)
    for (const [place, { read: one }] of read.answer.entries()) {
      if (one.kind === 'refusal') continue
      const lost = messages[place] ? lostLine(messages[place].segments, one.answer) : null
      if (lost !== null) return `lost ${lost}`
    }
    return null
  } catch (error) {
    return `threw ${String(error)}`
  }
}

/** The name of an observation that stands in the message and in no report. */
function lostLine(
  segments: ReturnType<typeof splitMessages>[number]['segments'],
  reports: readonly LaboratoryReport[],
) {
  const kept = JSON.stringify(reports)
  for (const segment of segments) {
    if (segment.name !== 'OBX' || rawField(segment, 5) === '' || component(segment, 11) === 'D') continue
    if (component(segment, 2) === 'ED' || component(segment, 5) === null) continue
    const [name, value] = [
      component(segment, 3, 2) ?? component(segment, 3),
      component(segment, 5, 2) ?? component(segment, 5),
    ]
    const said = [name, value].map((text) =>
      JSON.stringify(text ?? '')
        .slice(1, -1)
        .slice(0, 200),
    )
    // Of a test its name is read, of an organism its value.
    if (!said.some((text) => text !== '' && kept.includes(text)) && !/d-?test|amount/i.test(name ?? ''))
      return said.join(' ')
  }
  return null
}

const pieces = [
  '|',
  '^',
  '~',
  '\\',
  '&',
  '\r',
  '\n',
  '"',
  ',',
  'X',
  '9',
  '',
  '||',
  '\r\r',
  'MSH',
  'OBX|',
  '\u0000',
  '\u000b',
  'é',
  '__proto__',
  'constructor',
  '\\X',
  '\\F\\',
  '<=',
  '""',
]

/** One to five changes: a letter out, something in, two lines swapped, a line twice, the end cut off. */
function spoil(text: string, next: () => number): string {
  let spoilt = text
  const changes = 1 + Math.floor(next() * 5)
  for (let change = 0; change < changes; change += 1) {
    const at = Math.floor(next() * spoilt.length)
    const piece = pieces[Math.floor(next() * pieces.length)] ?? ''
    const kind = Math.floor(next() * 6)
    const lines = spoilt.split('\r')
    const [one, other] = [Math.floor(next() * lines.length), Math.floor(next() * lines.length)]
    if (kind === 0) spoilt = spoilt.slice(0, at) + spoilt.slice(at + 1)
    else if (kind === 1) spoilt = spoilt.slice(0, at) + piece + spoilt.slice(at)
    else if (kind === 2) spoilt = spoilt.slice(0, at) + piece + spoilt.slice(at + 1)
    else if (kind === 3)
      spoilt = lines
        .with(one, lines[other] ?? '')
        .with(other, lines[one] ?? '')
        .join('\r')
    else if (kind === 4) spoilt = lines.toSpliced(one, 0, lines[one] ?? '').join('\r')
    else spoilt = spoilt.slice(0, at)
  }
  return spoilt
}

/** Numbers from nothing to one, the same for the same seed (Lehmer's generator). */
function numbersFrom(seed: number): () => number {
  let state = (seed % 2_147_483_646) + 1
  return () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
}
