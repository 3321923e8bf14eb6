import type { OperationName } from '#core/dosing/calc/registry.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

const checked = '2026-11-25'
const arithmetic = {
  sources: ['technician-drug-calculations'],
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked,
} as const satisfies Provenance
const pound = {
  sources: ['international-pound'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked,
} as const satisfies Provenance
const poundsInPractice = { ...arithmetic, sources: ['bestvetaustin-medical-maths'] } as const
const bothUnitsPrinted = {
  sources: ['cfr-21-522-311', 'cfr-21-522-304'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked,
} as const satisfies Provenance
const strengths = { ...arithmetic, sources: ['percent-strength-question-set'], strength: 'handout' } as const
const pablo = { ...arithmetic, sources: ['pablo-cri-florida'], strength: 'handout' } as const
const formulaPage = { ...arithmetic, sources: ['cri-formula-page'] } as const
const mlkBag = { ...arithmetic, sources: ['mlk-bag-teaching-blog'], confidence: 'medium' } as const
const lukasik = { ...arithmetic, sources: ['lukasik-2015'], strength: 'handout' } as const
const vnj = { ...arithmetic, sources: ['vnj-2026-fluids'] } as const
const aaha2013 = { ...arithmetic, sources: ['aaha-aafp-2013-fluids'], strength: 'guideline' } as const
const dripPage = { ...arithmetic, sources: ['drip-rate-page'] } as const
const bloodPage = { ...arithmetic, sources: ['allowable-blood-loss-page'] } as const
const transfusion = { ...arithmetic, sources: ['vetprep-transfusion'] } as const
const flashcards = {
  ...arithmetic,
  sources: ['blood-loss-flashcards'],
  strength: 'handout',
  confidence: 'low',
} as const
const swabs = {
  ...arithmetic,
  sources: ['vitello-2015', 'vet-surg-2006-gravimetric'],
  where: 'abstracts; blood weighs almost as water, 1.06 g/mL if strict',
  strength: 'study',
} as const
const meeh = { ...arithmetic, sources: ['meeh-dog-k'] } as const
const tabletLabels = {
  ...arithmetic,
  sources: ['meloxicam-chewable-uk-spc', 'amoxicillin-clavulanate-uk-spc-tablets'],
  strength: 'label',
} as const
const byDefinition = {
  sources: ['house-judgement'],
  where: 'arithmetic by definition of the words',
  known: 'house',
  strength: 'practice',
  confidence: 'high',
  checked,
} as const satisfies Provenance

/** Where each formula of the calculator was seen. */
export const calcFormulas = {
  dose_mass: [arithmetic],
  dose_mass_lb: [poundsInPractice, pound],
  bolus_volume: [arithmetic],
  bolus_volume_lb: [poundsInPractice, pound],
  bolus_volume_per_lb: [bothUnitsPrinted],
  bolus_volume_generic: [{ ...arithmetic, sources: ['merck-cpr-table'], strength: 'textbook' }],
  volume_from_mass: [arithmetic],
  mass_from_volume: [strengths],
  delivered_dose: [byDefinition],
  drawn_volume: [
    {
      sources: ['house-judgement'],
      where: 'standard syringe markings, remembered; smallest syringe that holds the volume',
      known: 'remembered',
      strength: 'practice',
      confidence: 'high',
      checked,
    },
  ],
  local_anaesthetic_share: [
    {
      sources: ['house-judgement'],
      where: 'toxicity treated as additive',
      known: 'house',
      strength: 'practice',
      confidence: 'medium',
      checked,
    },
  ],
  lb_to_kg: [pound],
  kg_to_lb: [pound],
  mg_lb_to_mg_kg: [bothUnitsPrinted, pound],
  mg_kg_to_mg_lb: [bothUnitsPrinted, pound],
  convert_rate: [mlkBag],
  percent_strength: [poundsInPractice, strengths],
  ratio_strength: [{ ...arithmetic, sources: ['merck-cpr-table'], strength: 'textbook' }],
  cri_rate_per_kg: [pablo],
  rate_total: [pablo],
  cri_pump_rate: [arithmetic],
  cri_mass_per_hour: [arithmetic],
  cri_mass_for_hours: [formulaPage],
  cri_mass_in_volume: [pablo],
  cri_mass_to_add: [formulaPage],
  cri_delivered_dose: [mlkBag],
  dilution_volume: [lukasik],
  strength_after_dilution: [byDefinition],
  syringe_life: [byDefinition],
  infusion_total: [{ ...arithmetic, sources: ['caulfield-2022'], strength: 'study' }],
  daily_volume: [vnj],
  per_hour: [vnj],
  hourly_from_daily_lb: [byDefinition],
  deficit: [aaha2013, vnj],
  total_fluid: [vnj],
  anaesthetic_rate_hour: [aaha2013],
  allometric_daily: [aaha2013],
  drops_per_min: [dripPage],
  drops_per_min_rate: [dripPage],
  per_kg_from_per_lb_day: [pound],
  blood_volume: [transfusion, { ...arithmetic, sources: ['clinicians-brief-fluids'] }],
  fraction: [transfusion],
  loss_percent: [byDefinition],
  allowable_blood_loss: [bloodPage],
  allowable_blood_loss_mean: [
    { sources: ['transfusion-texts'], known: 'remembered', strength: 'textbook', confidence: 'medium', checked },
  ],
  swab_loss: [swabs],
  suction_loss: [byDefinition],
  suction_loss_pcv: [flashcards],
  transfusion_volume: [
    { ...transfusion, where: 'inputs of the worked case' },
    { sources: ['transfusion-texts'], known: 'remembered', strength: 'textbook', confidence: 'high', checked },
  ],
  pcv_rise_cat: [
    { ...arithmetic, sources: ['reed-2014'], where: 'abstract, formula 1; wide error', strength: 'study' },
  ],
  bsa: [meeh],
  bsa_dose_per_kg: [meeh, { ...arithmetic, sources: ['dexmedetomidine-us-label'], strength: 'label' }],
  bsa_dose_mass: [meeh],
  tablets_round_up: [tabletLabels],
  tablets_nearest_lb: [strengths],
  label_band: [{ ...arithmetic, sources: ['meloxicam-chewable-uk-spc'], strength: 'label' }],
  whole_tablet_band: [{ ...arithmetic, sources: ['robenacoxib-uk-spc'], strength: 'label' }],
  tablets_dispense: [byDefinition],
  days_supply: [byDefinition],
  patch_lookup: [{ ...arithmetic, sources: ['merck-opioid-table'], strength: 'textbook' }],
  energy: [{ ...arithmetic, sources: ['merck-cpr-table'], strength: 'textbook' }],
  map: [{ ...arithmetic, sources: ['dvm360-hypotension'], strength: 'handout' }],
  ideal_weight: [
    {
      sources: ['anaesthesia-texts'],
      where: '10 % above ideal for each point above 5 of 9',
      known: 'remembered',
      strength: 'textbook',
      confidence: 'medium',
      checked,
    },
  ],
} as const satisfies Readonly<Record<OperationName, readonly Provenance[]>>
