import type { Disagreement } from '#core/evidence/disagreement.ts'

const checked = '2026-11-29'
const page = { known: 'read', strength: 'web', confidence: 'high', checked } as const
const label = { known: 'read', strength: 'label', confidence: 'high', checked } as const
const textbook = { known: 'read', strength: 'textbook', confidence: 'high', checked } as const
const guideline = { known: 'read', strength: 'guideline', confidence: 'high', checked } as const
const remembered = { known: 'remembered', strength: 'textbook', confidence: 'medium', checked } as const

/**
 * Disagreements between sources that do not stand as another range, interval, limit or edition beside a fact;
 * those the page collects from the facts themselves.
 */
export const disagreements = [
  {
    about: 'dexmedetomidine before anaesthesia, dog: by weight or by body surface',
    says: [],
    rows: [
      { drug: 'dexmedetomidine', species: 'dog', row: 'premed, IM or IV, in ug/kg' },
      { drug: 'dexmedetomidine', species: 'dog', row: 'premed, IM, in ug/m2' },
    ],
    does: 'Both are rows. The unit of the chosen dose says which is meant; without a dose the line is refused as ambiguous.',
  },
  {
    about: 'dexmedetomidine, cat: what anaesthetists give and what the label says',
    says: [],
    rows: [
      { drug: 'dexmedetomidine', species: 'cat', row: 'premed, IM or IV, in ug/kg' },
      { drug: 'dexmedetomidine', species: 'cat', row: 'sedation, IM, in ug/kg' },
    ],
    does: 'Two rows with two uses. The label dose as premedication is four times that row’s upper end: a second person and a reason.',
  },
  {
    about: 'acepromazine, dog: the most in one animal',
    says: [
      { value: 'at most 3 mg', sources: ['canadian-acepromazine-label'], ...label },
      { value: 'at most 3 mg', sources: ['sa-anesthesia-drug-dosages-2022'], ...page, strength: 'handout' },
      { value: 'at most 1 mg a patient', sources: ['bsava-sedation-protocols'], ...textbook },
    ],
    does: 'Over 3 mg is refused; that one source stops at 1 mg is always printed with the row.',
  },
  {
    about: 'atipamezole, dog: by body surface or by the volume of the agonist',
    says: [
      { value: 'the same volume as the agonist', sources: ['cfr-21-522-147'], where: 'text of 2019', ...label },
      { value: 'five times the dose of the agonist', sources: ['bsava-sedation-protocols'], ...textbook },
    ],
    rows: [
      { drug: 'atipamezole', species: 'dog', row: 'reversal, IM (agonist was IV), in ug/m2' },
      { drug: 'atipamezole', species: 'dog', row: 'reversal, IM (agonist was IM), in ug/m2' },
    ],
    does: 'Dosed by body surface (2024), with the way the agonist was given in the key. The volume rule is printed as a caution.',
  },
  {
    about: 'meloxicam by injection, cat: US and EU label',
    says: [],
    rows: [
      { drug: 'meloxicam', species: 'cat', row: 'nsaid, SC (US label), in mg/kg' },
      { drug: 'meloxicam', species: 'cat', row: 'nsaid, SC (EU label), in mg/kg' },
    ],
    does: 'Two rows; the label has to be named. After the US dose every further dose of meloxicam is refused.',
  },
  {
    about: 'lidocaine by infusion, cat',
    says: [
      { value: 'dogs only', sources: ['vet-times-iv-anaesthesia'], ...page },
      { value: 'not recommended for cats', sources: ['pablo-cri-florida'], ...page, strength: 'handout' },
      {
        value: 'up to 10 ug/kg/min, with care',
        sources: ['mlk-bag-teaching-blog'],
        where: 'a teaching blog',
        ...page,
        confidence: 'low',
      },
    ],
    does: 'Forbidden, with both sources that say so.',
  },
  {
    about: 'antibiotic before the incision: how long before',
    says: [
      { value: 'within 30 min', sources: ['vetsurgeryonline-prophylaxis'], ...page },
      { value: '60 min counted as right', sources: ['javma-cruciate-audit'], ...page, strength: 'study' },
    ],
    does: 'The row says: finish within 60 min, better 30.',
  },
  {
    about: 'lipid emulsion: how long the infusion runs',
    says: [
      { value: 'for 25 min', sources: ['caulfield-2022'], ...page, strength: 'study' },
      { value: 'for 30 to 60 min', sources: ['vet360-2016-lipid'], ...page },
    ],
    does: 'The sheet runs 25 min; the row prints the other span. Both print the most of about 8 mL/kg in a day.',
  },
  {
    about: 'shock energy after a first shock that failed',
    says: [
      { value: 'doubled once', sources: ['recover-2024'], ...remembered, strength: 'guideline' },
      { value: 'half as much again each time, at most 10 J/kg', sources: ['msd-cpr-table-earlier'], ...textbook },
    ],
    does: 'The sheet prints the span of the current table and both notes, each with its source.',
  },
  {
    about: 'body surface of a cat: the factor of Meeh’s form',
    says: [
      { value: 'K 10.0', sources: ['oncology-bsa-tables'], ...remembered },
      { value: 'K 10.4', sources: ['cat-surface-web-page'], ...page, confidence: 'low' },
    ],
    does: 'Counts with 10.0. The one web page that prints 10.4 is four per cent higher.',
  },
  {
    about: 'blood volume for a kilogram',
    says: [
      { value: 'dog 90, cat 60 mL/kg', sources: ['clinicians-brief-fluids', 'vetprep-transfusion'], ...page },
      { value: 'shock volumes: dog 80 to 90, cat 50 to 55 mL/kg', sources: ['aaha-aafp-2013-fluids'], ...guideline },
    ],
    does: 'Counts with 90 and 60 and shows the span; a loss is a span too.',
  },
  {
    about: 'allowable blood loss: divided by the first haematocrit or by the mean of both',
    says: [
      { value: 'by the first', sources: ['allowable-blood-loss-page'], ...page },
      { value: 'by the mean, a smaller answer', sources: ['transfusion-texts'], ...remembered },
    ],
    does: 'Two operations of `calc`, each naming its divisor; neither stands for the other.',
  },
  {
    about: 'maintenance fluid: by metabolic weight or flat',
    says: [
      { value: '132 (dog) or 80 (cat) × kg^0.75 mL a day', sources: ['aaha-aafp-2013-fluids'], ...guideline },
      { value: '50 mL/kg a day', sources: ['vnj-2026-fluids'], ...page },
    ],
    does: 'Two operations of `calc`; the person names the one that is meant.',
  },
] as const satisfies readonly Disagreement[]
