import type { EmergencyFacts } from '#core/dosing/emergency.ts'
import { bloodMarks } from './blood-marks.ts'
import { bloodPerKg } from './blood-per-kg.ts'
import { defibrillation } from './defibrillation.ts'
import { dosingRules } from './dosing-rules.ts'
import { emergencyAirway } from './emergency-airway.ts'
import { emergencyBleeding } from './emergency-bleeding.ts'
import { emergencyFastWideRhythm } from './emergency-fast-wide-rhythm.ts'
import { emergencyLocalAnaestheticToxicity } from './emergency-local-anaesthetic-toxicity.ts'
import { emergencyNoPulse } from './emergency-no-pulse.ts'
import { emergencySlowRhythm } from './emergency-slow-rhythm.ts'
import { emergencyUndo } from './emergency-undo.ts'

/** Everything the emergency sheet is made from, in the order it is printed. */
export const emergencyFacts: EmergencyFacts = {
  groups: [
    emergencyNoPulse,
    emergencyFastWideRhythm,
    emergencySlowRhythm,
    emergencyUndo,
    emergencyBleeding,
    emergencyLocalAnaestheticToxicity,
    emergencyAirway,
  ],
  bloodPerKg,
  marks: bloodMarks,
  ...defibrillation,
  plausible: dosingRules.weight.plausible,
  lean: dosingRules.weight.lean,
}
