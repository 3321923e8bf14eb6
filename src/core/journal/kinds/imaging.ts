import { z } from 'zod'
import { shortText, text, yesNo } from '../answers.ts'
import { defineKind } from '../kind.ts'

const reported = z.strictObject({
  bulla: z.enum(['air', 'filled', 'not-reported']),
  bullaWall: z.enum(['normal', 'thick', 'eaten-away', 'not-reported']),
  canalMineral: yesNo,
  mass: yesNo,
})

/** A scan or radiograph, as its report says it, per ear. A side the report does not mention is null. */
export const imaging = defineKind({
  name: 'imaging',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    modality: z.enum(['CT', 'MRI', 'radiographs']),
    study: shortText.nullable(),
    reportedBy: shortText,
    LEFT: reported.nullable(),
    RIGHT: reported.nullable(),
    text,
  }),
  example: {
    modality: 'CT',
    study: '1.2.826.0.1.0000001.7',
    reportedBy: 'Radiologist on call',
    LEFT: { bulla: 'filled', bullaWall: 'thick', canalMineral: 'yes', mass: 'no' },
    RIGHT: { bulla: 'air', bullaWall: 'normal', canalMineral: 'no', mass: 'no' },
    text: 'Left canal mineralised and closed; left bulla filled with soft tissue, wall thick.',
  },
})
