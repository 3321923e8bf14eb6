import { z } from 'zod'
import { drawnTools, mostPoints, mostStrokes, signs } from '#core/plate/hand.ts'
import { parametersSchema } from '#core/plate/parameters-schema.ts'
import { structures } from '#core/plate/scene.ts'
import { id, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What somebody drew on the plate of an ear, with all that the plate was drawn from: it stays as it was when findings change. */
export const plateDrawing = defineKind({
  name: 'plate-drawing',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    /** The number of the drawing code; the same parameters give the same lines only under the same number. */
    plate: z.int().min(1),
    parameters: parametersSchema,
    /** Points as x, y, x, y … in tenths of a unit of the plate, in the order they were drawn. */
    strokes: z
      .array(
        z.strictObject({
          tool: z.enum(drawnTools),
          /** Tenths of a unit of the plate. */
          width: z.int().min(5).max(500),
          points: z
            .array(z.int().min(-20_000).max(30_000))
            .min(2)
            .max(2 * mostPoints)
            .refine((points) => points.length % 2 === 0, 'must hold an x and a y for every point'),
        }),
      )
      .max(mostStrokes),
    /** Parts that were marked instead of drawn on: by keyboard, or with a tap. */
    marks: z.array(z.strictObject({ structure: z.enum(structures), sign: z.enum(signs) })).max(100),
    title: shortText.nullable(),
    drawnFor: z.enum(['owner', 'team', 'record']),
    /** Contacts and people who watched. */
    watchedBy: z.array(id).max(20),
  }),
  example: {
    plate: 3,
    parameters: {
      species: 'dog',
      side: 'LEFT',
      view: 'transverse',
      carriage: 'drop',
      narrowing: { vertical: 'closed', horizontal: 'closed', recorded: 'whole' },
      mineral: 'yes',
      drum: 'could-not-see',
      bullaContent: 'filled',
      bullaWall: 'thick',
      mass: { kind: 'none' },
      surgery: { kind: 'none' },
      layers: ['surroundings', 'flap', 'vertical-canal', 'horizontal-canal', 'drum', 'bulla', 'facial-nerve'],
    },
    strokes: [{ tool: 'pen', width: 75, points: [4100, 5800, 4600, 6020, 5200, 6050] }],
    marks: [{ structure: 'bulla', sign: 'ring' }],
    title: 'What is full and what will be opened',
    drawnFor: 'owner',
    watchedBy: ['contact-1'],
  },
})
