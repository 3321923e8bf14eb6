import { z } from 'zod'
import { id, shortText, text, yesNo } from '../answers.ts'
import { defineKind } from '../kind.ts'

const listened = z.enum(['normal', 'abnormal', 'not-assessed'])

/** How fit the animal is for this anaesthetic, whether its mouth opens, and the two ways to its airway. */
export const anaestheticAssessment = defineKind({
  name: 'anaesthetic-assessment',
  version: 1,
  subjects: ['operation', 'animal'],
  body: z.strictObject({
    /** Physical status of the American Society of Anesthesiologists, I healthy to V not expected to live a day. */
    asa: z.enum(['I', 'II', 'III', 'IV', 'V']),
    emergency: z.boolean(),
    because: shortText,
    jawOpens: z.enum(['yes', 'limited', 'no', 'not-assessed']),
    flatFace: yesNo,
    heart: listened,
    lungs: listened,
    heartAndLungs: text.nullable(),
    regurgitation: z.enum(['usual', 'raised', 'not-assessed']),
    /** In words: what is done first, and what when that fails. */
    airwayA: text,
    airwayB: text,
    assessedBy: id,
  }),
  example: {
    asa: 'II',
    emergency: false,
    because: 'Chronic ear disease without nerve signs; otherwise well.',
    jawOpens: 'yes',
    flatFace: 'no',
    heart: 'normal',
    lungs: 'normal',
    heartAndLungs: null,
    regurgitation: 'usual',
    airwayA: 'Tube 9 mm, one size smaller beside it.',
    airwayB: 'Laryngoscope with the long blade and a stylet; then a supraglottic device.',
    assessedBy: 'person-anaesthetist',
  },
})
