// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { aaha2020Hypotension } from './aaha-2020-hypotension.ts'
import { aaha2022Pain } from './aaha-2022-pain.ts'
import { aaha2023AllergicSkin } from './aaha-2023-allergic-skin.ts'
import { aaha2024Fluids } from './aaha-2024-fluids.ts'
import { aahaAafp2013Fluids } from './aaha-aafp-2013-fluids.ts'
import { aahaAafp2015Pain } from './aaha-aafp-2015-pain.ts'
import { acvimGi2018 } from './acvim-gi-2018.ts'
import { allowableBloodLossPage } from './allowable-blood-loss-page.ts'
import { amoxicillinClavulanateUkSpcTablets } from './amoxicillin-clavulanate-uk-spc-tablets.ts'
import { amrDataset2025 } from './amr-dataset-2025.ts'
import { amrFirstIsolate2025 } from './amr-first-isolate-2025.ts'
import { amrIssue165 } from './amr-issue-165.ts'
import { amrIssue303 } from './amr-issue-303.ts'
import { anaesthesiaTexts } from './anaesthesia-texts.ts'
import { anders2008 } from './anders-2008.ts'
import { anderson2000 } from './anderson-2000.ts'
import { angell2025Recover2024Summary } from './angell-2025-recover-2024-summary.ts'
import { auricularBlockCadavers } from './auricular-block-cadavers.ts'
import { bacon2003 } from './bacon-2003.ts'
import { bacteriologyTexts } from './bacteriology-texts.ts'
import { bajwa2013 } from './bajwa-2013.ts'
import { banks2023 } from './banks-2023.ts'
import { barletta2016 } from './barletta-2016.ts'
import { barrett2023 } from './barrett-2023.ts'
import { bestvetaustinMedicalMaths } from './bestvetaustin-medical-maths.ts'
import { bloodLossFlashcards } from './blood-loss-flashcards.ts'
import { boveri2013 } from './boveri-2013.ts'
import { brockman2008Wsava } from './brockman-2008-wsava.ts'
import { brodbelt2008 } from './brodbelt-2008.ts'
import { bsavaHeadNeckThoracic } from './bsava-head-neck-thoracic.ts'
import { bsavaSedationProtocols } from './bsava-sedation-protocols.ts'
import { bsavaTable623 } from './bsava-table-6-23.ts'
import { cain2013 } from './cain-2013.ts'
import { calvo2014 } from './calvo-2014.ts'
import { canVetJ2021Gabapentin } from './can-vet-j-2021-gabapentin.ts'
import { canadianAcepromazineLabel } from './canadian-acepromazine-label.ts'
import { carprofenUkSpc } from './carprofen-uk-spc.ts'
import { catBullaWall2024 } from './cat-bulla-wall-2024.ts'
import { catSurfaceWebPage } from './cat-surface-web-page.ts'
import { caulfield2022 } from './caulfield-2022.ts'
import { cefalexinUkSpc } from './cefalexin-uk-spc.ts'
import { cefovecinEuSpc } from './cefovecin-eu-spc.ts'
import { cfr215201084 } from './cfr-21-520-1084.ts'
import { cfr215201286 } from './cfr-21-520-1286.ts'
import { cfr215201310 } from './cfr-21-520-1310.ts'
import { cfr215201315 } from './cfr-21-520-1315.ts'
import { cfr215201367 } from './cfr-21-520-1367.ts'
import { cfr215201616 } from './cfr-21-520-1616.ts'
import { cfr21520314 } from './cfr-21-520-314.ts'
import { cfr21520370 } from './cfr-21-520-370.ts'
import { cfr21520446 } from './cfr-21-520-446.ts'
import { cfr21520812 } from './cfr-21-520-812.ts'
import { cfr21520928 } from './cfr-21-520-928.ts'
import { cfr21520998 } from './cfr-21-520-998.ts'
import { cfr215221315 } from './cfr-21-522-1315.ts'
import { cfr215221367 } from './cfr-21-522-1367.ts'
import { cfr21522147 } from './cfr-21-522-147.ts'
import { cfr215222005 } from './cfr-21-522-2005.ts'
import { cfr215222075 } from './cfr-21-522-2075.ts'
import { cfr21522224 } from './cfr-21-522-224.ts'
import { cfr21522230 } from './cfr-21-522-230.ts'
import { cfr21522304 } from './cfr-21-522-304.ts'
import { cfr21522311 } from './cfr-21-522-311.ts'
import { cfr2152252 } from './cfr-21-522-52.ts'
import { cfr21522558 } from './cfr-21-522-558.ts'
import { cfr215241001 } from './cfr-21-524-1001.ts'
import { cfr215241146 } from './cfr-21-524-1146.ts'
import { cfr215242098 } from './cfr-21-524-2098.ts'
import { cfr215242099 } from './cfr-21-524-2099.ts'
import { cfr21524230 } from './cfr-21-524-230.ts'
import { chen2007 } from './chen-2007.ts'
import { cliniciansBriefBilateralAblation } from './clinicians-brief-bilateral-ablation.ts'
import { cliniciansBriefFluids } from './clinicians-brief-fluids.ts'
import { cliniciansBriefOpioidAlternatives } from './clinicians-brief-opioid-alternatives.ts'
import { cliniciansBriefPainScales } from './clinicians-brief-pain-scales.ts'
import { clsiRemembered } from './clsi-remembered.ts'
import { cole1998 } from './cole-1998.ts'
import { cole2006 } from './cole-2006.ts'
import { cole2009 } from './cole-2009.ts'
import { coleman2016 } from './coleman-2016.ts'
import { commonPractice } from './common-practice.ts'
import { cook2010 } from './cook-2010.ts'
import { cornellTransfusionGuidelines } from './cornell-transfusion-guidelines.ts'
import { coteSeparateSyringes } from './cote-separate-syringes.ts'
import { criFormulaPage } from './cri-formula-page.ts'
import { dTestPetMrsa2008 } from './d-test-pet-mrsa-2008.ts'
import { dermatologyTexts } from './dermatology-texts.ts'
import { devitt1997 } from './devitt-1997.ts'
import { dexmedetomidineUsLabel } from './dexmedetomidine-us-label.ts'
import { dindo2004 } from './dindo-2004.ts'
import { doyle2004 } from './doyle-2004.ts'
import { dripRatePage } from './drip-rate-page.ts'
import { dvm360BloodTypes2010 } from './dvm360-blood-types-2010.ts'
import { dvm360Hypotension } from './dvm360-hypotension.ts'
import { dvm360PseudomonasOtitis } from './dvm360-pseudomonas-otitis.ts'
import { earCanalHistology2009 } from './ear-canal-histology-2009.ts'
import { emaAmeg2019 } from './ema-ameg-2019.ts'
import { enrofloxacinEuSuspension } from './enrofloxacin-eu-suspension.ts'
import { esblConfirmationStudy } from './esbl-confirmation-study.ts'
import { esblReportingPage } from './esbl-reporting-page.ts'
import { esblScreeningPage } from './esbl-screening-page.ts'
import { esblScreeningTable } from './esbl-screening-table.ts'
import { esposito2026 } from './esposito-2026.ts'
import { eucastCategories } from './eucast-categories.ts'
import { eucastRemembered } from './eucast-remembered.ts'
import { evangelista2019 } from './evangelista-2019.ts'
import { eyeCareTexts } from './eye-care-texts.ts'
import { fastingOlderAdvice2017 } from './fasting-older-advice-2017.ts'
import { fastingPracticePage } from './fasting-practice-page.ts'
import { felineOtitisMedia26 } from './feline-otitis-media-26.ts'
import { fletcher2012 } from './fletcher-2012.ts'
import { folk2022 } from './folk-2022.ts'
import { follette2020 } from './follette-2020.ts'
import { fox2008 } from './fox-2008.ts'
import { freyJacob2020 } from './frey-jacob-2020.ts'
import { frontVetSci2020BloodLoss } from './front-vet-sci-2020-blood-loss.ts'
import { gabapentinDogVisit } from './gabapentin-dog-visit.ts'
import { gelatt2001 } from './gelatt-2001.ts'
import { greci2011 } from './greci-2011.ts'
import { greci2014 } from './greci-2014.ts'
import { grubbLobprise2020 } from './grubb-lobprise-2020.ts'
import { gruen2014 } from './gruen-2014.ts'
import { harbour2022 } from './harbour-2022.ts'
import { hardie2008 } from './hardie-2008.ts'
import { hartrum2025 } from './hartrum-2025.ts'
import { hettlich2005 } from './hettlich-2005.ts'
import { hindlerStelling2007 } from './hindler-stelling-2007.ts'
import { hl7FhirR4 } from './hl7-fhir-r4.ts'
import { house2015Wsava } from './house-2015-wsava.ts'
import { houseJudgement } from './house-judgement.ts'
import { housePolicy } from './house-policy.ts'
import { icatcareEarAnatomy } from './icatcare-ear-anatomy.ts'
import { imai2019 } from './imai-2019.ts'
import { internationalPound } from './international-pound.ts'
import { iscaid2025Pyoderma } from './iscaid-2025-pyoderma.ts'
import { iscaidTexts } from './iscaid-texts.ts'
import { jaaha1995DryEye } from './jaaha-1995-dry-eye.ts'
import { janssens2017 } from './janssens-2017.ts'
import { javmaCruciateAudit } from './javma-cruciate-audit.ts'
import { jcm2018Schleiferi } from './jcm-2018-schleiferi.ts'
import { jfms2022EarCarcinoma } from './jfms-2022-ear-carcinoma.ts'
import { jvdi2009Oxacillin } from './jvdi-2009-oxacillin.ts'
import { kazamaIkeda1988 } from './kazama-ikeda-1988.ts'
import { kelmer2015 } from './kelmer-2015.ts'
import { layne2019 } from './layne-2019.ts'
import { leblanc2021 } from './leblanc-2021.ts'
import { loinc } from './loinc.ts'
import { london1996 } from './london-1996.ts'
import { lukasik2015 } from './lukasik-2015.ts'
import { magiorakos2012 } from './magiorakos-2012.ts'
import { marbofloxacinUkSpc } from './marbofloxacin-uk-spc.ts'
import { marino1993 } from './marino-1993.ts'
import { mathews2006 } from './mathews-2006.ts'
import { mavacoxibEuSpc } from './mavacoxib-eu-spc.ts'
import { mcanulty1995Ablation } from './mcanulty-1995-ablation.ts'
import { mcanulty1995Bulla } from './mcanulty-1995-bulla.ts'
import { medicineTexts } from './medicine-texts.ts'
import { meehDogK } from './meeh-dog-k.ts'
import { meloxicamChewableUkSpc } from './meloxicam-chewable-uk-spc.ts'
import { meloxicamCkdCohort } from './meloxicam-ckd-cohort.ts'
import { meloxicamEuSpc } from './meloxicam-eu-spc.ts'
import { merckCprTable } from './merck-cpr-table.ts'
import { merckEarTumours } from './merck-ear-tumours.ts'
import { merckOpioidTable } from './merck-opioid-table.ts'
import { methadoneUkSpc } from './methadone-uk-spc.ts'
import { mevis2023Tables } from './mevis-2023-tables.ts'
import { mlkBagTeachingBlog } from './mlk-bag-teaching-blog.ts'
import { msdCprTableEarlier } from './msd-cpr-table-earlier.ts'
import { mynavasInfusions } from './mynavas-infusions.ts'
import { ncbiTaxonomy } from './ncbi-taxonomy.ts'
import { neuenschwander2010 } from './neuenschwander-2010.ts'
import { neurologyTexts } from './neurology-texts.ts'
import { noahAmoxicillinClavulanateSuspension } from './noah-amoxicillin-clavulanate-suspension.ts'
import { noahAtipamezole } from './noah-atipamezole.ts'
import { noahBuprenorphine } from './noah-buprenorphine.ts'
import { nuttallBensignor2014 } from './nuttall-bensignor-2014.ts'
import { nuttallCole2004 } from './nuttall-cole-2004.ts'
import { oncologyBsaTables } from './oncology-bsa-tables.ts'
import { ophthalmologyTexts } from './ophthalmology-texts.ts'
import { osuPackedRedCells } from './osu-packed-red-cells.ts'
import { ownBreakpoints } from './own-breakpoints.ts'
import { pabloCriFlorida } from './pablo-cri-florida.ts'
import { papich2023Fluoroquinolones } from './papich-2023-fluoroquinolones.ts'
import { papich2025FelineFluoroquinolones } from './papich-2025-feline-fluoroquinolones.ts'
import { papichClsiAminoglycosides } from './papich-clsi-aminoglycosides.ts'
import { papichDosePoster } from './papich-dose-poster.ts'
import { papichLindeman2018 } from './papich-lindeman-2018.ts'
import { papichMinocyclineCat } from './papich-minocycline-cat.ts'
import { pascoe2006 } from './pascoe-2006.ts'
import { paterson2018 } from './paterson-2018.ts'
import { percentStrengthQuestionSet } from './percent-strength-question-set.ts'
import { pharmacyPageOtitisMedia } from './pharmacy-page-otitis-media.ts'
import { pradofloxacinEuSpc } from './pradofloxacin-eu-spc.ts'
import { radlinsky2005 } from './radlinsky-2005.ts'
import { recover2024 } from './recover-2024.ts'
import { recoverPublicSummaries } from './recover-public-summaries.ts'
import { reed2014 } from './reed-2014.ts'
import { reid2007 } from './reid-2007.ts'
import { reid2017 } from './reid-2017.ts'
import { robenacoxibUkSpc } from './robenacoxib-uk-spc.ts'
import { rosati2007 } from './rosati-2007.ts'
import { saAnesthesiaDrugDosages2022 } from './sa-anesthesia-drug-dosages-2022.ts'
import { schmidli2014 } from './schmidli-2014.ts'
import { shaffran2013 } from './shaffran-2013.ts'
import { sharp1990 } from './sharp-1990.ts'
import { shaughnessyHofmeister2014 } from './shaughnessy-hofmeister-2014.ts'
import { smallAnimalDermatology3 } from './small-animal-dermatology-3.ts'
import { smallAnimalInternalMedicine6 } from './small-animal-internal-medicine-6.ts'
import { smallCanalMasses2016 } from './small-canal-masses-2016.ts'
import { smeak1986 } from './smeak-1986.ts'
import { smeak1996 } from './smeak-1996.ts'
import { smeakInpanbutr2005 } from './smeak-inpanbutr-2005.ts'
import { spivack2013 } from './spivack-2013.ts'
import { standardEmergencyTexts } from './standard-emergency-texts.ts'
import { standardSurgicalAnatomy } from './standard-surgical-anatomy.ts'
import { staphylococcalBetaLactamBreakpoints } from './staphylococcal-beta-lactam-breakpoints.ts'
import { stateLaboratoryAntibiogram2019 } from './state-laboratory-antibiogram-2019.ts'
import { steffeyHowland1977 } from './steffey-howland-1977.ts'
import { steiner2000 } from './steiner-2000.ts'
import { surgeryTexts } from './surgery-texts.ts'
import { sweeney2018 } from './sweeney-2018.ts'
import { sylvestre1998 } from './sylvestre-1998.ts'
import { technicianDrugCalculations } from './technician-drug-calculations.ts'
import { topicalEarFlorfenicolPage } from './topical-ear-florfenicol-page.ts'
import { tranexamicAcid28Cats } from './tranexamic-acid-28-cats.ts'
import { tranexamicAcidDogsCats20182019 } from './tranexamic-acid-dogs-cats-2018-2019.ts'
import { transfusionTexts } from './transfusion-texts.ts'
import { trazodoneCatStudies } from './trazodone-cat-studies.ts'
import { trevor1993 } from './trevor-1993.ts'
import { tvp2018Fluids } from './tvp-2018-fluids.ts'
import { ukSurgicalProphylaxis } from './uk-surgical-prophylaxis.ts'
import { usIsoxazolineLabels } from './us-isoxazoline-labels.ts'
import { usualProducts } from './usual-products.ts'
import { vasgLocal2004 } from './vasg-local-2004.ts'
import { vasgSecondPage } from './vasg-second-page.ts'
import { vetRecordOpenAntibiotics } from './vet-record-open-antibiotics.ts'
import { vetSurg2006Gravimetric } from './vet-surg-2006-gravimetric.ts'
import { vetTimesIvAnaesthesia } from './vet-times-iv-anaesthesia.ts'
import { vetTimesSedationOverview } from './vet-times-sedation-overview.ts'
import { vetTimesTopicalOtitis } from './vet-times-topical-otitis.ts'
import { vet3602016Lipid } from './vet360-2016-lipid.ts'
import { veteriankeyEarCanalExamination } from './veteriankey-ear-canal-examination.ts'
import { vetprepTransfusion } from './vetprep-transfusion.ts'
import { vetsurgeryonlineProphylaxis } from './vetsurgeryonline-prophylaxis.ts'
import { vin8896829 } from './vin-8896829.ts'
import { vitello2015 } from './vitello-2015.ts'
import { vmdControlledDrugs } from './vmd-controlled-drugs.ts'
import { vnj2026Fluids } from './vnj-2026-fluids.ts'
import { vssoEarTumours } from './vsso-ear-tumours.ts'
import { wainberg2019 } from './wainberg-2019.ts'
import { wavd2017Meticillin } from './wavd-2017-meticillin.ts'
import { white1990 } from './white-1990.ts'
import { who2008SurgicalChecklist } from './who-2008-surgical-checklist.ts'
import { whoMia2024 } from './who-mia-2024.ts'
import { williams1992 } from './williams-1992.ts'
import { wingfieldCriCsu } from './wingfield-cri-csu.ts'
import { woundSurveillanceFramework } from './wound-surveillance-framework.ts'
import { wsava2017Otitis } from './wsava-2017-otitis.ts'
import { wsava2022Pain } from './wsava-2022-pain.ts'
import { wsuProblemDrugs } from './wsu-problem-drugs.ts'
import { zeroPainOpioids } from './zero-pain-opioids.ts'
import { zooveterinaryEarCleaning } from './zooveterinary-ear-cleaning.ts'
import { zukureviewTearTest } from './zukureview-tear-test.ts'

export const sources = [
  aaha2020Hypotension,
  aaha2022Pain,
  aaha2023AllergicSkin,
  aaha2024Fluids,
  aahaAafp2013Fluids,
  aahaAafp2015Pain,
  acvimGi2018,
  allowableBloodLossPage,
  amoxicillinClavulanateUkSpcTablets,
  amrDataset2025,
  amrFirstIsolate2025,
  amrIssue165,
  amrIssue303,
  anaesthesiaTexts,
  anders2008,
  anderson2000,
  angell2025Recover2024Summary,
  auricularBlockCadavers,
  bacon2003,
  bacteriologyTexts,
  bajwa2013,
  banks2023,
  barletta2016,
  barrett2023,
  bestvetaustinMedicalMaths,
  bloodLossFlashcards,
  boveri2013,
  brockman2008Wsava,
  brodbelt2008,
  bsavaHeadNeckThoracic,
  bsavaSedationProtocols,
  bsavaTable623,
  cain2013,
  calvo2014,
  canVetJ2021Gabapentin,
  canadianAcepromazineLabel,
  carprofenUkSpc,
  catBullaWall2024,
  catSurfaceWebPage,
  caulfield2022,
  cefalexinUkSpc,
  cefovecinEuSpc,
  cfr215201084,
  cfr215201286,
  cfr215201310,
  cfr215201315,
  cfr215201367,
  cfr215201616,
  cfr21520314,
  cfr21520370,
  cfr21520446,
  cfr21520812,
  cfr21520928,
  cfr21520998,
  cfr215221315,
  cfr215221367,
  cfr21522147,
  cfr215222005,
  cfr215222075,
  cfr21522224,
  cfr21522230,
  cfr21522304,
  cfr21522311,
  cfr2152252,
  cfr21522558,
  cfr215241001,
  cfr215241146,
  cfr215242098,
  cfr215242099,
  cfr21524230,
  chen2007,
  cliniciansBriefBilateralAblation,
  cliniciansBriefFluids,
  cliniciansBriefOpioidAlternatives,
  cliniciansBriefPainScales,
  clsiRemembered,
  cole1998,
  cole2006,
  cole2009,
  coleman2016,
  commonPractice,
  cook2010,
  cornellTransfusionGuidelines,
  coteSeparateSyringes,
  criFormulaPage,
  dTestPetMrsa2008,
  dermatologyTexts,
  devitt1997,
  dexmedetomidineUsLabel,
  dindo2004,
  doyle2004,
  dripRatePage,
  dvm360BloodTypes2010,
  dvm360Hypotension,
  dvm360PseudomonasOtitis,
  earCanalHistology2009,
  emaAmeg2019,
  enrofloxacinEuSuspension,
  esblConfirmationStudy,
  esblReportingPage,
  esblScreeningPage,
  esblScreeningTable,
  esposito2026,
  eucastCategories,
  eucastRemembered,
  evangelista2019,
  eyeCareTexts,
  fastingOlderAdvice2017,
  fastingPracticePage,
  felineOtitisMedia26,
  fletcher2012,
  folk2022,
  follette2020,
  fox2008,
  freyJacob2020,
  frontVetSci2020BloodLoss,
  gabapentinDogVisit,
  gelatt2001,
  greci2011,
  greci2014,
  grubbLobprise2020,
  gruen2014,
  harbour2022,
  hardie2008,
  hartrum2025,
  hettlich2005,
  hindlerStelling2007,
  hl7FhirR4,
  house2015Wsava,
  houseJudgement,
  housePolicy,
  icatcareEarAnatomy,
  imai2019,
  internationalPound,
  iscaid2025Pyoderma,
  iscaidTexts,
  jaaha1995DryEye,
  janssens2017,
  javmaCruciateAudit,
  jcm2018Schleiferi,
  jfms2022EarCarcinoma,
  jvdi2009Oxacillin,
  kazamaIkeda1988,
  kelmer2015,
  layne2019,
  leblanc2021,
  loinc,
  london1996,
  lukasik2015,
  magiorakos2012,
  marbofloxacinUkSpc,
  marino1993,
  mathews2006,
  mavacoxibEuSpc,
  mcanulty1995Ablation,
  mcanulty1995Bulla,
  medicineTexts,
  meehDogK,
  meloxicamChewableUkSpc,
  meloxicamCkdCohort,
  meloxicamEuSpc,
  merckCprTable,
  merckEarTumours,
  merckOpioidTable,
  methadoneUkSpc,
  mevis2023Tables,
  mlkBagTeachingBlog,
  msdCprTableEarlier,
  mynavasInfusions,
  ncbiTaxonomy,
  neuenschwander2010,
  neurologyTexts,
  noahAmoxicillinClavulanateSuspension,
  noahAtipamezole,
  noahBuprenorphine,
  nuttallBensignor2014,
  nuttallCole2004,
  oncologyBsaTables,
  ophthalmologyTexts,
  osuPackedRedCells,
  ownBreakpoints,
  pabloCriFlorida,
  papich2023Fluoroquinolones,
  papich2025FelineFluoroquinolones,
  papichClsiAminoglycosides,
  papichDosePoster,
  papichLindeman2018,
  papichMinocyclineCat,
  pascoe2006,
  paterson2018,
  percentStrengthQuestionSet,
  pharmacyPageOtitisMedia,
  pradofloxacinEuSpc,
  radlinsky2005,
  recover2024,
  recoverPublicSummaries,
  reed2014,
  reid2007,
  reid2017,
  robenacoxibUkSpc,
  rosati2007,
  saAnesthesiaDrugDosages2022,
  schmidli2014,
  shaffran2013,
  sharp1990,
  shaughnessyHofmeister2014,
  smallAnimalDermatology3,
  smallAnimalInternalMedicine6,
  smallCanalMasses2016,
  smeak1986,
  smeak1996,
  smeakInpanbutr2005,
  spivack2013,
  standardEmergencyTexts,
  standardSurgicalAnatomy,
  staphylococcalBetaLactamBreakpoints,
  stateLaboratoryAntibiogram2019,
  steffeyHowland1977,
  steiner2000,
  surgeryTexts,
  sweeney2018,
  sylvestre1998,
  technicianDrugCalculations,
  topicalEarFlorfenicolPage,
  tranexamicAcid28Cats,
  tranexamicAcidDogsCats20182019,
  transfusionTexts,
  trazodoneCatStudies,
  trevor1993,
  tvp2018Fluids,
  ukSurgicalProphylaxis,
  usIsoxazolineLabels,
  usualProducts,
  vasgLocal2004,
  vasgSecondPage,
  vetRecordOpenAntibiotics,
  vetSurg2006Gravimetric,
  vetTimesIvAnaesthesia,
  vetTimesSedationOverview,
  vetTimesTopicalOtitis,
  vet3602016Lipid,
  veteriankeyEarCanalExamination,
  vetprepTransfusion,
  vetsurgeryonlineProphylaxis,
  vin8896829,
  vitello2015,
  vmdControlledDrugs,
  vnj2026Fluids,
  vssoEarTumours,
  wainberg2019,
  wavd2017Meticillin,
  white1990,
  who2008SurgicalChecklist,
  whoMia2024,
  williams1992,
  wingfieldCriCsu,
  woundSurveillanceFramework,
  wsava2017Otitis,
  wsava2022Pain,
  wsuProblemDrugs,
  zeroPainOpioids,
  zooveterinaryEarCleaning,
  zukureviewTearTest,
] as const
