import { z } from 'zod'
import { massPlaces } from '#core/plate/parameters.ts'
import { shortText, text, yesNo } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

const reported = z.strictObject({
  bulla: z.enum(['air', 'filled', 'not-reported']),
  bullaWall: z.enum(['normal', 'thick', 'eaten-away', 'not-reported']),
  canalMineral: yesNo,
  mass: yesNo,
  /** Of a mass that is there; without one, "not reported". */
  massPlace: z.enum([...massPlaces, 'not-reported']),
  massSize: z.enum(['small', 'medium', 'large', 'not-reported']),
})

/** One side as version 1 wrote it: whether there is a mass, not where. */
function withMassPlace(older: Json | undefined): Json {
  if (older === null || older === undefined) return null
  return { ...(older as Record<string, Json>), massPlace: 'not-reported', massSize: 'not-reported' }
}

/** A scan or radiograph, as its report says it, per ear. A side the report does not mention is null. */
export const imaging = defineKind({
  name: 'imaging',
  version: 2,
  subjects: ['animal'],
  body: z.strictObject({
    modality: z.enum(['CT', 'MRI', 'radiographs']),
    study: shortText.nullable(),
    reportedBy: shortText,
    LEFT: reported.nullable(),
    RIGHT: reported.nullable(),
    text,
  }),
  upcasts: {
    1: (older) => {
      const body = older as Record<string, Json>
      return { ...body, LEFT: withMassPlace(body.LEFT), RIGHT: withMassPlace(body.RIGHT) }
    },
  },
  example: {
    modality: 'CT',
    study: '1.2.826.0.1.0000001.7',
    reportedBy: 'Radiologist on call',
    LEFT: {
      bulla: 'filled',
      bullaWall: 'thick',
      canalMineral: 'yes',
      mass: 'no',
      massPlace: 'not-reported',
      massSize: 'not-reported',
    },
    RIGHT: {
      bulla: 'air',
      bullaWall: 'normal',
      canalMineral: 'no',
      mass: 'no',
      massPlace: 'not-reported',
      massSize: 'not-reported',
    },
    text: 'Left canal mineralised and closed; left bulla filled with soft tissue, wall thick.',
  },
})
