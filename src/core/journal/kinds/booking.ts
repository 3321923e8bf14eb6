import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { entryId, id, moment, side } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Opens an operation: which ear, what, when, under which agreement. */
export const booking = defineKind({
  name: 'booking',
  version: 1,
  subjects: ['operation'],
  body: z.strictObject({
    side,
    procedure: z.enum(procedureIds),
    agreement: entryId.nullable(),
    plannedFor: moment,
    surgeon: id,
    anaesthetist: id.nullable(),
  }),
  naturalKey: (_, subject) => (subject.kind === 'operation' ? subject.operation : undefined),
  example: {
    side: 'LEFT',
    procedure: 'teca-lbo',
    agreement: '0190a7c2-0000-7000-8000-000000000003',
    plannedFor: { at: '2026-02-10T09:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
    surgeon: 'person-surgeon',
    anaesthetist: 'person-anaesthetist',
  },
})
