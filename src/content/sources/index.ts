// Written by scripts/write-indexes.mjs: sorted, one line per file.
import { aaha2020Hypotension } from './aaha-2020-hypotension.ts'
import { aaha2024Fluids } from './aaha-2024-fluids.ts'
import { aahaAafp2013Fluids } from './aaha-aafp-2013-fluids.ts'
import { allowableBloodLossPage } from './allowable-blood-loss-page.ts'
import { amoxicillinClavulanateUkSpcTablets } from './amoxicillin-clavulanate-uk-spc-tablets.ts'
import { anaesthesiaTexts } from './anaesthesia-texts.ts'
import { angell2025Recover2024Summary } from './angell-2025-recover-2024-summary.ts'
import { bestvetaustinMedicalMaths } from './bestvetaustin-medical-maths.ts'
import { bloodLossFlashcards } from './blood-loss-flashcards.ts'
import { caulfield2022 } from './caulfield-2022.ts'
import { cfr21522304 } from './cfr-21-522-304.ts'
import { cfr21522311 } from './cfr-21-522-311.ts'
import { cliniciansBriefFluids } from './clinicians-brief-fluids.ts'
import { criFormulaPage } from './cri-formula-page.ts'
import { dexmedetomidineUsLabel } from './dexmedetomidine-us-label.ts'
import { dripRatePage } from './drip-rate-page.ts'
import { dvm360Hypotension } from './dvm360-hypotension.ts'
import { fletcher2012 } from './fletcher-2012.ts'
import { frontVetSci2020BloodLoss } from './front-vet-sci-2020-blood-loss.ts'
import { houseJudgement } from './house-judgement.ts'
import { internationalPound } from './international-pound.ts'
import { kelmer2015 } from './kelmer-2015.ts'
import { lukasik2015 } from './lukasik-2015.ts'
import { meehDogK } from './meeh-dog-k.ts'
import { meloxicamChewableUkSpc } from './meloxicam-chewable-uk-spc.ts'
import { merckCprTable } from './merck-cpr-table.ts'
import { merckOpioidTable } from './merck-opioid-table.ts'
import { mlkBagTeachingBlog } from './mlk-bag-teaching-blog.ts'
import { msdCprTableEarlier } from './msd-cpr-table-earlier.ts'
import { noahAtipamezole } from './noah-atipamezole.ts'
import { oncologyBsaTables } from './oncology-bsa-tables.ts'
import { pabloCriFlorida } from './pablo-cri-florida.ts'
import { percentStrengthQuestionSet } from './percent-strength-question-set.ts'
import { recoverPublicSummaries } from './recover-public-summaries.ts'
import { reed2014 } from './reed-2014.ts'
import { robenacoxibUkSpc } from './robenacoxib-uk-spc.ts'
import { saAnesthesiaDrugDosages2022 } from './sa-anesthesia-drug-dosages-2022.ts'
import { smeakInpanbutr2005 } from './smeak-inpanbutr-2005.ts'
import { standardEmergencyTexts } from './standard-emergency-texts.ts'
import { technicianDrugCalculations } from './technician-drug-calculations.ts'
import { tranexamicAcid28Cats } from './tranexamic-acid-28-cats.ts'
import { tranexamicAcidDogsCats20182019 } from './tranexamic-acid-dogs-cats-2018-2019.ts'
import { transfusionTexts } from './transfusion-texts.ts'
import { tvp2018Fluids } from './tvp-2018-fluids.ts'
import { vetSurg2006Gravimetric } from './vet-surg-2006-gravimetric.ts'
import { vet3602016Lipid } from './vet360-2016-lipid.ts'
import { vetprepTransfusion } from './vetprep-transfusion.ts'
import { vitello2015 } from './vitello-2015.ts'
import { vnj2026Fluids } from './vnj-2026-fluids.ts'
import { wingfieldCriCsu } from './wingfield-cri-csu.ts'

export const sources = [
  aaha2020Hypotension,
  aaha2024Fluids,
  aahaAafp2013Fluids,
  allowableBloodLossPage,
  amoxicillinClavulanateUkSpcTablets,
  anaesthesiaTexts,
  angell2025Recover2024Summary,
  bestvetaustinMedicalMaths,
  bloodLossFlashcards,
  caulfield2022,
  cfr21522304,
  cfr21522311,
  cliniciansBriefFluids,
  criFormulaPage,
  dexmedetomidineUsLabel,
  dripRatePage,
  dvm360Hypotension,
  fletcher2012,
  frontVetSci2020BloodLoss,
  houseJudgement,
  internationalPound,
  kelmer2015,
  lukasik2015,
  meehDogK,
  meloxicamChewableUkSpc,
  merckCprTable,
  merckOpioidTable,
  mlkBagTeachingBlog,
  msdCprTableEarlier,
  noahAtipamezole,
  oncologyBsaTables,
  pabloCriFlorida,
  percentStrengthQuestionSet,
  recoverPublicSummaries,
  reed2014,
  robenacoxibUkSpc,
  saAnesthesiaDrugDosages2022,
  smeakInpanbutr2005,
  standardEmergencyTexts,
  technicianDrugCalculations,
  tranexamicAcid28Cats,
  tranexamicAcidDogsCats20182019,
  transfusionTexts,
  tvp2018Fluids,
  vetSurg2006Gravimetric,
  vet3602016Lipid,
  vetprepTransfusion,
  vitello2015,
  vnj2026Fluids,
  wingfieldCriCsu,
] as const
