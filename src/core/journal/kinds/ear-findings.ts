import { z } from 'zod'
import { massPlaces } from '#core/plate/parameters.ts'
import { text, yesNo } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

const sign = z.int().min(0).max(3).nullable()

/** One ear examined. The other ear is an entry of its own, so that the pair can be shown side by side. */
export const earFindings = defineKind({
  name: 'ear-findings',
  version: 2,
  subjects: ['ear'],
  body: z.strictObject({
    examined: z.enum(['awake', 'sedated', 'anaesthetised']),
    canalFeel: z.enum(['soft', 'thick', 'bone-hard', 'not-assessed']),
    painOnPressing: yesNo,
    painOnJawOpening: yesNo,
    swelling: yesNo,
    drainingTract: yesNo,
    discharge: z.enum(['none', 'waxy', 'purulent', 'bloody', 'not-assessed']),
    stenosis: z.enum(['none', 'mild', 'moderate', 'severe', 'closed', 'could-not-see', 'not-assessed']),
    drum: z.enum(['intact', 'ruptured', 'could-not-see', 'not-assessed']),
    mass: yesNo,
    /** Of a mass that is there; without one, "not assessed". */
    massPlace: z.enum([...massPlaces, 'not-assessed']),
    massSize: z.enum(['small', 'medium', 'large', 'not-assessed']),
    flapCarriage: z.enum(['erect', 'drop', 'not-assessed']),
    /** OTIS-3: four signs 0–3; null is "not assessed" and makes the total unknown. */
    otis3: z.strictObject({ erythema: sign, swelling: sign, erosion: sign, exudate: sign }),
    text: text.nullable(),
  }),
  /** Version 1 asked neither for the place of a mass nor for the carriage of the flap. */
  upcasts: {
    1: (older) => ({
      ...(older as Record<string, Json>),
      massPlace: 'not-assessed',
      massSize: 'not-assessed',
      flapCarriage: 'not-assessed',
    }),
  },
  example: {
    examined: 'awake',
    canalFeel: 'bone-hard',
    painOnPressing: 'yes',
    painOnJawOpening: 'no',
    swelling: 'no',
    drainingTract: 'no',
    discharge: 'purulent',
    stenosis: 'closed',
    drum: 'could-not-see',
    mass: 'no',
    massPlace: 'not-assessed',
    massSize: 'not-assessed',
    flapCarriage: 'drop',
    otis3: { erythema: 3, swelling: 3, erosion: 2, exudate: 3 },
    text: null,
  },
})
