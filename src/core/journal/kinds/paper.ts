import { z } from 'zod'
import { moment, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { paperKinds } from './arrived-paper.ts'

/** A paper filed to the animal or ear it belongs to, by a person who looked; a picture is a `photograph`. */
export const paper = defineKind({
  name: 'paper',
  version: 1,
  subjects: ['animal', 'ear'],
  body: z.strictObject({
    what: z.enum(paperKinds),
    title: shortText,
    /** The day the paper gives itself. */
    dated: moment.nullable(),
    from: shortText.nullable(),
    /** The side the paper itself names, whichever ear it was filed to. */
    sideOnPaper: z.enum(['LEFT', 'RIGHT', 'BOTH', 'not-stated']),
  }),
  example: {
    what: 'laboratory-report',
    title: 'Culture of the left ear canal',
    dated: { at: '2026-01-14T00:00:00.000Z', zone: 'Europe/London', precision: 'day', by: 'person' },
    from: 'Northfold Laboratory',
    sideOnPaper: 'LEFT',
  },
})
