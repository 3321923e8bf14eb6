// Written by scripts/write-indexes.mjs: sorted, one line per file.
import { aaha2020Hypotension } from './aaha-2020-hypotension.ts'
import { aaha2024Fluids } from './aaha-2024-fluids.ts'
import { aahaAafp2013Fluids } from './aaha-aafp-2013-fluids.ts'
import { allowableBloodLossPage } from './allowable-blood-loss-page.ts'
import { amoxicillinClavulanateUkSpcTablets } from './amoxicillin-clavulanate-uk-spc-tablets.ts'
import { anaesthesiaTexts } from './anaesthesia-texts.ts'
import { anders2008 } from './anders-2008.ts'
import { anderson2000 } from './anderson-2000.ts'
import { angell2025Recover2024Summary } from './angell-2025-recover-2024-summary.ts'
import { bacon2003 } from './bacon-2003.ts'
import { banks2023 } from './banks-2023.ts'
import { bestvetaustinMedicalMaths } from './bestvetaustin-medical-maths.ts'
import { bloodLossFlashcards } from './blood-loss-flashcards.ts'
import { caulfield2022 } from './caulfield-2022.ts'
import { cfr21522304 } from './cfr-21-522-304.ts'
import { cfr21522311 } from './cfr-21-522-311.ts'
import { cliniciansBriefBilateralAblation } from './clinicians-brief-bilateral-ablation.ts'
import { cliniciansBriefFluids } from './clinicians-brief-fluids.ts'
import { coleman2016 } from './coleman-2016.ts'
import { criFormulaPage } from './cri-formula-page.ts'
import { devitt1997 } from './devitt-1997.ts'
import { dexmedetomidineUsLabel } from './dexmedetomidine-us-label.ts'
import { doyle2004 } from './doyle-2004.ts'
import { dripRatePage } from './drip-rate-page.ts'
import { dvm360Hypotension } from './dvm360-hypotension.ts'
import { esposito2026 } from './esposito-2026.ts'
import { fletcher2012 } from './fletcher-2012.ts'
import { folk2022 } from './folk-2022.ts'
import { fox2008 } from './fox-2008.ts'
import { frontVetSci2020BloodLoss } from './front-vet-sci-2020-blood-loss.ts'
import { greci2011 } from './greci-2011.ts'
import { greci2014 } from './greci-2014.ts'
import { hardie2008 } from './hardie-2008.ts'
import { hartrum2025 } from './hartrum-2025.ts'
import { houseJudgement } from './house-judgement.ts'
import { imai2019 } from './imai-2019.ts'
import { internationalPound } from './international-pound.ts'
import { janssens2017 } from './janssens-2017.ts'
import { kelmer2015 } from './kelmer-2015.ts'
import { lukasik2015 } from './lukasik-2015.ts'
import { marino1993 } from './marino-1993.ts'
import { mathews2006 } from './mathews-2006.ts'
import { mcanulty1995Ablation } from './mcanulty-1995-ablation.ts'
import { mcanulty1995Bulla } from './mcanulty-1995-bulla.ts'
import { meehDogK } from './meeh-dog-k.ts'
import { meloxicamChewableUkSpc } from './meloxicam-chewable-uk-spc.ts'
import { merckCprTable } from './merck-cpr-table.ts'
import { merckOpioidTable } from './merck-opioid-table.ts'
import { mlkBagTeachingBlog } from './mlk-bag-teaching-blog.ts'
import { msdCprTableEarlier } from './msd-cpr-table-earlier.ts'
import { noahAtipamezole } from './noah-atipamezole.ts'
import { nuttallBensignor2014 } from './nuttall-bensignor-2014.ts'
import { oncologyBsaTables } from './oncology-bsa-tables.ts'
import { pabloCriFlorida } from './pablo-cri-florida.ts'
import { percentStrengthQuestionSet } from './percent-strength-question-set.ts'
import { recoverPublicSummaries } from './recover-public-summaries.ts'
import { reed2014 } from './reed-2014.ts'
import { robenacoxibUkSpc } from './robenacoxib-uk-spc.ts'
import { saAnesthesiaDrugDosages2022 } from './sa-anesthesia-drug-dosages-2022.ts'
import { sharp1990 } from './sharp-1990.ts'
import { smallCanalMasses2016 } from './small-canal-masses-2016.ts'
import { smeak1986 } from './smeak-1986.ts'
import { smeak1996 } from './smeak-1996.ts'
import { smeakInpanbutr2005 } from './smeak-inpanbutr-2005.ts'
import { spivack2013 } from './spivack-2013.ts'
import { standardEmergencyTexts } from './standard-emergency-texts.ts'
import { sylvestre1998 } from './sylvestre-1998.ts'
import { technicianDrugCalculations } from './technician-drug-calculations.ts'
import { tranexamicAcid28Cats } from './tranexamic-acid-28-cats.ts'
import { tranexamicAcidDogsCats20182019 } from './tranexamic-acid-dogs-cats-2018-2019.ts'
import { transfusionTexts } from './transfusion-texts.ts'
import { trevor1993 } from './trevor-1993.ts'
import { tvp2018Fluids } from './tvp-2018-fluids.ts'
import { vetSurg2006Gravimetric } from './vet-surg-2006-gravimetric.ts'
import { vet3602016Lipid } from './vet360-2016-lipid.ts'
import { vetprepTransfusion } from './vetprep-transfusion.ts'
import { vitello2015 } from './vitello-2015.ts'
import { vnj2026Fluids } from './vnj-2026-fluids.ts'
import { wainberg2019 } from './wainberg-2019.ts'
import { white1990 } from './white-1990.ts'
import { williams1992 } from './williams-1992.ts'
import { wingfieldCriCsu } from './wingfield-cri-csu.ts'

export const sources = [
  aaha2020Hypotension,
  aaha2024Fluids,
  aahaAafp2013Fluids,
  allowableBloodLossPage,
  amoxicillinClavulanateUkSpcTablets,
  anaesthesiaTexts,
  anders2008,
  anderson2000,
  angell2025Recover2024Summary,
  bacon2003,
  banks2023,
  bestvetaustinMedicalMaths,
  bloodLossFlashcards,
  caulfield2022,
  cfr21522304,
  cfr21522311,
  cliniciansBriefBilateralAblation,
  cliniciansBriefFluids,
  coleman2016,
  criFormulaPage,
  devitt1997,
  dexmedetomidineUsLabel,
  doyle2004,
  dripRatePage,
  dvm360Hypotension,
  esposito2026,
  fletcher2012,
  folk2022,
  fox2008,
  frontVetSci2020BloodLoss,
  greci2011,
  greci2014,
  hardie2008,
  hartrum2025,
  houseJudgement,
  imai2019,
  internationalPound,
  janssens2017,
  kelmer2015,
  lukasik2015,
  marino1993,
  mathews2006,
  mcanulty1995Ablation,
  mcanulty1995Bulla,
  meehDogK,
  meloxicamChewableUkSpc,
  merckCprTable,
  merckOpioidTable,
  mlkBagTeachingBlog,
  msdCprTableEarlier,
  noahAtipamezole,
  nuttallBensignor2014,
  oncologyBsaTables,
  pabloCriFlorida,
  percentStrengthQuestionSet,
  recoverPublicSummaries,
  reed2014,
  robenacoxibUkSpc,
  saAnesthesiaDrugDosages2022,
  sharp1990,
  smallCanalMasses2016,
  smeak1986,
  smeak1996,
  smeakInpanbutr2005,
  spivack2013,
  standardEmergencyTexts,
  sylvestre1998,
  technicianDrugCalculations,
  tranexamicAcid28Cats,
  tranexamicAcidDogsCats20182019,
  transfusionTexts,
  trevor1993,
  tvp2018Fluids,
  vetSurg2006Gravimetric,
  vet3602016Lipid,
  vetprepTransfusion,
  vitello2015,
  vnj2026Fluids,
  wainberg2019,
  white1990,
  williams1992,
  wingfieldCriCsu,
] as const
