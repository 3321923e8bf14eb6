import { z } from 'zod'
import {
  askedNeeds,
  lastingFunctions,
  statesBefore,
  troubleClasses,
  troubleEvents,
} from '#core/complications/trouble-codes.ts'
import { id, moment, shortText, text } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'

/**
 * A trouble in or after an operation: what, when it was first noticed, what it needed, how it was before, and what a
 * person holds it for. Every published grade is worked out from these.
 */
export const complication = defineKind({
  name: 'complication',
  version: 1,
  subjects: ['ear', 'animal'],
  body: z.strictObject({
    event: z.enum(troubleEvents),
    operation: id,
    firstNoticed: moment,
    noticedBy: z.enum(['us', 'referring-vet', 'owner', 'elsewhere']),
    /** All it needed so far; when it needs more, this entry is corrected. */
    needed: z.enum(askedNeeds),
    /** `as-recorded`: as the baseline says, or nobody asked. */
    before: z.enum(['as-recorded', ...statesBefore]),
    lasting: z.enum(lastingFunctions),
    judged: z.enum([...troubleClasses, 'not-decided']),
    /** Whose judgement it is, where it is not the author's. */
    judgedBy: id.nullable(),
    because: text.nullable(),
    /** A grade that somebody read in the published terms of VCOG-CTCAE v2: the program does not hold their texts. */
    readGrade: z.strictObject({ term: shortText, grade: z.enum(['1', '2', '3', '4', '5']) }).nullable(),
    text: text.nullable(),
  }),
  naturalKey: ({ event, operation }) => (event === 'other' ? undefined : keyOf(operation, event)),
  example: {
    event: 'wound-gap',
    operation: 'operation-1',
    firstNoticed: { at: '2026-02-16T09:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
    noticedBy: 'us',
    needed: 'wound-care-awake',
    before: 'as-recorded',
    lasting: 'not-known',
    judged: 'complication',
    judgedBy: null,
    because: null,
    readGrade: null,
    text: null,
  },
})
