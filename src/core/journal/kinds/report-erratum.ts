import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { countUnits } from '#core/evidence/study.ts'
import { id, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

const count = z.int().min(0).max(1_000_000)
const counted = z.strictObject({ events: count, total: count, lost: count, notYetDue: count })

/** Counts of a frozen report, and what they are now. */
export const changedNumbers = z
  .array(
    z.strictObject({
      species: z.enum(speciesList),
      procedure: z.enum(procedureIds),
      outcome: z.enum(ownOutcomes),
      unit: z.enum(countUnits),
      before: counted,
      after: counted,
    }),
  )
  .max(1000)

/** What stands otherwise now than in a frozen report of a year: in words and numbers, dated. The report stays as it was. */
export const reportErratum = defineKind({
  name: 'report-erratum',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    /** The entry that froze the report. */
    report: id,
    year: z.int().min(2000).max(2099),
    /** The position of the journal up to which it was read for this erratum. */
    readUntil: z.int().min(0),
    numbers: changedNumbers,
    text,
    because: text,
    /** The entries that caused it. */
    entries: z.array(id).max(1000),
    by: shortText,
  }),
  example: {
    report: '0190a7c2-0000-7000-8000-000000000001',
    year: 2025,
    readUntil: 4391,
    numbers: [
      {
        species: 'dog',
        procedure: 'teca-lbo',
        outcome: 'deep_recurrence',
        unit: 'ear',
        before: { events: 1, total: 31, lost: 9, notYetDue: 0 },
        after: { events: 2, total: 31, lost: 9, notYetDue: 0 },
      },
    ],
    text: 'One more draining tract, fourteen months after the operation.',
    because: 'The animal came back under another name.',
    entries: ['0190a7c2-0000-7000-8000-000000000002'],
    by: 'Runa Falk',
  },
})
