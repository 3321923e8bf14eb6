/** The closed lists a formulary row is written in. */

export const uses = [
  'premed',
  'sedation',
  'anxiolytic',
  'anticholinergic',
  'induction',
  'induction_unpremedicated',
  'maintenance',
  'analgesia_bolus',
  'cri',
  'transdermal',
  'analgesia_oral',
  'local_block',
  'wound_infusion',
  'antibiotic_periop',
  'antibiotic_course',
  'emergency',
  'reversal',
  'nsaid',
  'steroid',
  'vasopressor',
  'antiemetic',
  'antifibrinolytic',
  'gi_protectant',
  'eye',
  'fluid',
  'fluid_bolus',
  'blood_product',
  'antiparasitic',
] as const
export type Use = (typeof uses)[number]

export const routes = [
  'IV',
  'IM',
  'SC',
  'IO',
  'PO',
  'OTM',
  'INH',
  'TD',
  'perineural',
  'infiltration',
  'splash',
  'wound-catheter',
  'topical',
  'topical-eye',
] as const
export type Route = (typeof routes)[number]

/** Everything a dose can be "per". A dose in another unit has no row. */
export const doseUnits = [
  'mg/kg',
  'ug/kg',
  'g/kg',
  'mL/kg',
  '[iU]/kg',
  'mmol/kg',
  'mg/m2',
  'ug/m2',
  'mg/{animal}',
  'cm/{eye}',
  '[drp]/{eye}',
  '%{vol}',
  'mg/kg/min',
  'mg/kg/h',
  'ug/kg/min',
  'ug/kg/h',
  'mL/kg/h',
  'ug/h',
] as const
export type DoseUnit = (typeof doseUnits)[number]

export const stockUnits = ['mg/mL', 'ug/mL', 'g/L', '[iU]/mL', 'mmol/mL'] as const
export type StockUnit = (typeof stockUnits)[number]

/** What a drug belongs to, for ceilings, interactions and the second person. */
export const groups = [
  'alpha-2-agonist',
  'alpha-2-antagonist',
  'aminoglycoside',
  'anticholinergic',
  'antiemetic',
  'antifibrinolytic',
  'aminopenicillin',
  'benzodiazepine',
  'cephalosporin',
  'depot-steroid',
  'fluoroquinolone',
  'full-opioid',
  'partial-opioid',
  'gabapentinoid',
  'gi-protectant',
  'induction-agent',
  'inhalant',
  'lincosamide',
  'local-anaesthetic',
  'loop-diuretic',
  'nmda-antagonist',
  'non-opioid-analgesic',
  'nsaid',
  'ocular-lubricant',
  'opioid-antagonist',
  'phenothiazine',
  'serotonergic',
  'steroid',
  'sulfonamide',
  'tetracycline',
  'vasopressor',
] as const
export type Group = (typeof groups)[number]
