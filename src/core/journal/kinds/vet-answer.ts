import { z } from 'zod'
import { entryId, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What the referring practice is asked to look at. */
export const vetAsks = ['stitches', 'wound', 'face-and-eye', 'recheck', 'year', 'stretch'] as const

/** What the referring practice answered on its short form. What was seen of an ear is a check of its own, named here. */
export const vetAnswer = defineKind({
  name: 'vet-answer',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    asked: z.enum(vetAsks),
    /** As they typed it: this person need not be in the register. */
    examinedBy: shortText,
    looks: z.array(entryId).max(2),
    /** Told by somebody outside: a person of the house confirms it before it counts as a death. */
    saysDied: z.boolean(),
    text: text.nullable(),
  }),
  example: { asked: 'stitches', examinedBy: 'Wren Hollis', looks: [], saysDied: false, text: 'Stitches came out.' },
})
