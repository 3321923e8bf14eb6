// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { animalRules } from './animal-rules.ts'
import { bandageAndAirway } from './bandage-and-airway.ts'
import { bloodInSwabs } from './blood-in-swabs.ts'
import { bloodMarks } from './blood-marks.ts'
import { bloodPerKg } from './blood-per-kg.ts'
import { bodySurface } from './body-surface.ts'
import { breeds } from './breeds.ts'
import { calcFormulas } from './calc-formulas.ts'
import { confusedStrengths } from './confused-strengths.ts'
import { defibrillation } from './defibrillation.ts'
import { doseReductions } from './dose-reductions.ts'
import { dosingRules } from './dosing-rules.ts'
import { drip } from './drip.ts'
import { drugPairs } from './drug-pairs.ts'
import { earRules } from './ear-rules.ts'
import { emergencyAirway } from './emergency-airway.ts'
import { emergencyBleeding } from './emergency-bleeding.ts'
import { emergencyFacts } from './emergency-facts.ts'
import { emergencyFastWideRhythm } from './emergency-fast-wide-rhythm.ts'
import { emergencyLocalAnaestheticToxicity } from './emergency-local-anaesthetic-toxicity.ts'
import { emergencyNoPulse } from './emergency-no-pulse.ts'
import { emergencySlowRhythm } from './emergency-slow-rhythm.ts'
import { emergencyUndo } from './emergency-undo.ts'
import { fluids } from './fluids.ts'
import { homeRules } from './home-rules.ts'
import { infusions } from './infusions.ts'
import { labelBands } from './label-bands.ts'
import { labelTables } from './label-tables.ts'
import { lowPressure } from './low-pressure.ts'
import { mixing } from './mixing.ts'
import { patchSizes } from './patch-sizes.ts'
import { registerRules } from './register-rules.ts'
import { specimensWanted } from './specimens-wanted.ts'
import { spokenPauses } from './spoken-pauses.ts'
import { syringes } from './syringes.ts'
import { theatreTimers } from './theatre-timers.ts'
import { transfusion } from './transfusion.ts'

export const protocols = [
  animalRules,
  bandageAndAirway,
  bloodInSwabs,
  bloodMarks,
  bloodPerKg,
  bodySurface,
  breeds,
  calcFormulas,
  confusedStrengths,
  defibrillation,
  doseReductions,
  dosingRules,
  drip,
  drugPairs,
  earRules,
  emergencyAirway,
  emergencyBleeding,
  emergencyFacts,
  emergencyFastWideRhythm,
  emergencyLocalAnaestheticToxicity,
  emergencyNoPulse,
  emergencySlowRhythm,
  emergencyUndo,
  fluids,
  homeRules,
  infusions,
  labelBands,
  labelTables,
  lowPressure,
  mixing,
  patchSizes,
  registerRules,
  specimensWanted,
  spokenPauses,
  syringes,
  theatreTimers,
  transfusion,
] as const
