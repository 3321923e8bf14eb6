import { z } from 'zod'
import { shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Somebody declares an emergency: for some hours blocks of planned doses are lifted, doubts are not; a second name is owed. */
export const emergencyDeclared = defineKind({
  name: 'emergency-declared',
  version: 1,
  subjects: ['operation', 'animal'],
  body: z.strictObject({ because: text, lifts: shortText.nullable() }),
  example: { because: 'The artery is open and the pressure falls.', lifts: 'tranexamic acid' },
})
