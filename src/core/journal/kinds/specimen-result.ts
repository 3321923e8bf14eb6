import { z } from 'zod'
import { decimalText, entryId, id, shortText, text } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

/** How a result came into the record; the original of anything but `typed` is attached byte for byte. */
export const waysOfResult = ['typed', 'from-paper', 'pasted', 'table', 'hl7'] as const
export const testMethods = ['MIC', 'DISK'] as const
/** What laboratories test besides single drugs; their meaning is read in core/culture. */
export const isolateTests = [
  'd-test',
  'meca',
  'pbp2a',
  'esbl-confirmation',
  'ampc',
  'carbapenemase',
  'beta-lactamase',
] as const

const testedDrug = z.strictObject({
  /** As printed. */
  drug: shortText,
  /** What we take it for (an agent of content/susceptibility); null while nobody knows. */
  agent: id.nullable(),
  /** Null where only a category is printed, or where nobody said what the number is. */
  method: z.enum(testMethods).nullable(),
  /** As printed, with its sign and unit: `<=0.5 mg/L`, `18 mm`, `R`. */
  raw: shortText,
  disk: shortText.nullable(),
  /** The laboratory's own category as printed; kept, never reinterpreted. */
  category: shortText.nullable(),
})

const isolate = z.strictObject({
  /** The laboratory's own number of the isolate; unlike within a report. */
  key: shortText,
  organism: shortText,
  /** What we take it for (an organism of content/susceptibility); null while nobody knows. */
  species: id.nullable(),
  /** As printed: heavy, light, from broth only. */
  amount: shortText.nullable(),
  results: z.array(testedDrug),
  tests: z.array(z.strictObject({ test: z.enum(isolateTests), result: z.enum(['positive', 'negative']) })),
})
export type StoredIsolate = z.infer<typeof isolate>

/** What the laboratory wrote, raw, with comparators as printed. Reading it is another entry. */
export const specimenResult = defineKind({
  name: 'specimen-result',
  version: 2,
  subjects: ['ear'],
  body: z.strictObject({
    specimen: entryId,
    status: z.enum(['preliminary', 'final', 'corrected']),
    growth: z.enum(['none', 'growth', 'not-a-culture']),
    came: z.enum(waysOfResult),
    /** A contact. */
    laboratory: id.nullable(),
    /** The laboratory's own number of the report: a later report under it supersedes this one. */
    accession: shortText.nullable(),
    /** The standard and edition as the laboratory prints them. */
    standard: shortText.nullable(),
    isolates: z.array(isolate),
    /** Of tissue or cells: what it is, and whether its edge is free. */
    tissue: z
      .strictObject({
        diagnosis: text,
        tumour: id.nullable(),
        margins: z.enum(['clear', 'narrow', 'involved', 'not-stated']),
        marginMillimetres: decimalText.nullable(),
      })
      .nullable(),
    text: text.nullable(),
  }),
  /** Version 1 kept drug and value only. */
  upcasts: { 1: (older) => upToTwo(older as Record<string, Json>) },
  example: {
    specimen: '0190a7c2-0000-7000-8000-000000000001',
    status: 'final',
    growth: 'growth',
    came: 'typed',
    laboratory: 'contact-lab',
    accession: 'NL-26-00417',
    standard: 'CLSI VET01S ed7',
    isolates: [
      {
        key: '1',
        organism: 'Staphylococcus pseudintermedius',
        species: 'staphylococcus-pseudintermedius',
        amount: 'heavy',
        results: [
          {
            drug: 'marbofloxacin',
            agent: 'marbofloxacin',
            method: 'MIC',
            raw: '<=0.5 mg/L',
            disk: null,
            category: 'S',
          },
        ],
        tests: [],
      },
    ],
    tissue: null,
    text: null,
  },
})

type Older = { readonly organism: Json; readonly results: readonly { readonly drug: Json; readonly raw: Json }[] }

function upToTwo(older: Record<string, Json>): Json {
  const isolates = older.isolates as unknown as readonly Older[]
  return {
    ...older,
    came: 'typed',
    laboratory: null,
    accession: null,
    standard: null,
    isolates: isolates.map(({ organism, results }, place) => ({
      key: String(place + 1),
      organism,
      species: null,
      amount: null,
      results: results.map((row) => ({ ...row, agent: null, method: null, disk: null, category: null })),
      tests: [],
    })),
    tissue: null,
  }
}
