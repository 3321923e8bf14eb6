import { z } from 'zod'
import { text, yesNo } from '../answers.ts'
import { defineKind } from '../kind.ts'

const sign = z.int().min(0).max(3).nullable()

/** One ear examined. The other ear is an entry of its own, so that the pair can be shown side by side. */
export const earFindings = defineKind({
  name: 'ear-findings',
  version: 1,
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
    /** OTIS-3: four signs 0–3; null is "not assessed" and makes the total unknown. */
    otis3: z.strictObject({ erythema: sign, swelling: sign, erosion: sign, exudate: sign }),
    text: text.nullable(),
  }),
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
    otis3: { erythema: 3, swelling: 3, erosion: 2, exudate: 3 },
    text: null,
  },
})
