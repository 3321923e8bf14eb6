import { laboratoryTerms } from '#content/exchange/laboratory-terms.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import type { Fault } from '#core/laboratory/fault.ts'
import { Unreadable } from '#core/laboratory/fault.ts'
import { readFhir } from '#core/laboratory/fhir/read-fhir.ts'
import { guessMapping, plainHeading } from '#core/laboratory/guess-mapping.ts'
import { readOru } from '#core/laboratory/hl7/read-oru.ts'
import type { Delimiter, TableMapping } from '#core/laboratory/mapping.ts'
import { readTable } from '#core/laboratory/read-table.ts'
import { agentPrinted } from '#core/laboratory/recognised.ts'
import type { LaboratoryReport } from '#core/laboratory/report.ts'
import type { LaboratoryTerms } from '#core/laboratory/terms.ts'

type Remembered = BodyOf<'laboratory-table'>

/** The words of content, with the codes of the drugs that we know. */
export const terms: LaboratoryTerms = {
  ...laboratoryTerms,
  drugCodes: susceptibility.agents.flatMap(({ loinc }) => loinc?.value ?? []),
}

/** What was read of one source: a fault of the whole, or messages and tables each with reports or a fault of their own. */
export type Read = {
  readonly fault: Fault | null
  readonly faults: readonly { readonly line: number; readonly fault: Fault }[]
  readonly reports: readonly LaboratoryReport[]
}

/** Whether a text is a message of another program rather than a table. */
export function isMessage(text: string): boolean {
  return isFhir(text) || /^\s*(MSH|FHS|BHS)/.test(text.slice(0, 200))
}

function isFhir(text: string): boolean {
  return /^\s*\{/.test(text.slice(0, 200))
}

export function readMessages(text: string): Read {
  if (isFhir(text)) {
    const read = readFhir(text, terms)
    if (read.kind === 'refusal') return { fault: read.refusal, faults: [], reports: [] }
    return { fault: null, faults: [], reports: read.answer }
  }
  const read = readOru(text, terms)
  if (read.kind === 'refusal') return { fault: read.refusal, faults: [], reports: [] }
  return {
    fault: null,
    faults: read.answer.flatMap(({ line, read: one }) =>
      one.kind === 'refusal' ? [{ line, fault: one.refusal }] : [],
    ),
    reports: read.answer.flatMap(({ read: one }) => (one.kind === 'answer' ? one.answer : [])),
  }
}

export function readByMapping(text: string, mapping: TableMapping): Read {
  const read = readTable(text, mapping, terms)
  if (read.kind === 'refusal') return { fault: read.refusal, faults: [], reports: [] }
  return { fault: null, faults: [], reports: read.answer }
}

/** The mapping that the house remembers for a table with these headings, or what its headings seem to say. */
export function mappingFor(
  text: string,
  house: Case | null,
): { readonly mapping: TableMapping; readonly laboratory: string | null } | Fault {
  try {
    const guess = guessMapping(text, terms, (heading) => agentPrinted(heading, null, susceptibility).id !== null)
    const headings = guess.columns
      .map(({ heading }) => plainHeading(heading))
      .sort()
      .join('\n')
    const known = (house?.live('laboratory-table') ?? []).find(
      ({ body }) =>
        body.columns
          .map(({ heading }) => plainHeading(heading))
          .sort()
          .join('\n') === headings,
    )
    if (!known) return { mapping: guess, laboratory: null }
    return { mapping: { ...fromStored(known.body), delimiter: guess.delimiter }, laboratory: known.body.laboratory }
  } catch (error) {
    if (error instanceof Unreadable) return error.fault
    throw error
  }
}

const delimiterNames = { ',': 'comma', ';': 'semicolon', '\t': 'tab', '|': 'bar' } as const satisfies Record<
  Delimiter,
  Remembered['delimiter']
>

function fromStored({ columns, dates, unit, comma, delimiter }: Remembered): TableMapping {
  const found = (Object.keys(delimiterNames) as Delimiter[]).find((one) => delimiterNames[one] === delimiter)
  return { columns, dates, unit, comma, delimiter: found ?? ',' }
}

export function toStored(laboratory: string, { columns, dates, unit, comma, delimiter }: TableMapping): Remembered {
  return {
    laboratory,
    delimiter: delimiterNames[delimiter],
    columns: columns.map((one) => ({ ...one, drug: one.drug?.trim() || null })),
    dates,
    unit,
    comma,
  }
}

/** Text of a file; null when it is none. A text that is not UTF-8 is read as Western European, and that is said. */
export function textOfBytes(bytes: Uint8Array): { readonly text: string; readonly western: boolean } | null {
  if (bytes.subarray(0, 4_000).includes(0)) return null
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes), western: false }
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), western: true }
  }
}
