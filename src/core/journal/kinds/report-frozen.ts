import { z } from 'zod'
import { day, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

const hash = z.string().regex(/^[0-9a-f]{64}$/, 'must be a SHA-256 hash in lower-case hexadecimal')

/**
 * The results of a year as they stood on one day, frozen for good: the data is kept as a file named by its hash. What is
 * found out later changes nothing here; an erratum says it.
 */
export const reportFrozen = defineKind({
  name: 'report-frozen',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    /** Year of the operations. */
    year: z.int().min(2000).max(2099),
    lookedAt: day,
    /** The position of the journal up to which it was read. */
    readUntil: z.int().min(0),
    /** Operated ears, a row for each. */
    rows: z.int().min(1),
    dataHash: hash,
    reportHash: hash,
    method: shortText,
    /** Version of the program that froze it; null when it did not say. */
    program: shortText.nullable(),
    /** As the clinic was called on that day, and whoever froze it. */
    clinic: shortText,
    by: shortText,
    /** One or two things to be done otherwise next year. */
    decided: z.array(text).max(2),
  }),
  naturalKey: ({ year }) => String(year),
  example: {
    year: 2025,
    lookedAt: '2026-11-30',
    readUntil: 4210,
    rows: 40,
    dataHash: '0f1e2d3c4b5a69788796a5b4c3d2e1f00f1e2d3c4b5a69788796a5b4c3d2e1f0',
    reportHash: '1f1e2d3c4b5a69788796a5b4c3d2e1f00f1e2d3c4b5a69788796a5b4c3d2e1f1',
    method: '1',
    program: '0.1.0',
    clinic: 'Invented clinic',
    by: 'Runa Falk',
    decided: ['Every ear is asked after at twelve months by whoever is at the desk.'],
  },
})
