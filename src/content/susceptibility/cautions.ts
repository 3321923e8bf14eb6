import type { CultureCaution } from '#core/culture/caution.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

const reach = {
  sources: ['bacteriology-texts', 'medicine-texts'],
  where: 'how drugs reach bone, pus and abscess; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Provenance

const texts = {
  sources: ['medicine-texts'],
  where: 'adverse effects; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance

const house = {
  sources: ['house-judgement'],
  where: 'what this operation does to the eye, put beside what the drug does',
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Provenance

/**
 * What a drug may do to this animal, and how far it reaches into a bulla, beyond its row of the formulary: what stands
 * there is not said again.
 */
export const cautions = [
  {
    value: 'reaches bone and abscess well',
    families: ['fluoroquinolone', 'lincosamide'],
    ...reach,
  },
  { value: 'spreads widely in the body', families: ['phenicol'], ...reach },
  { value: 'dissolves in fat and spreads well', agents: ['doxycycline', 'minocycline'], ...reach },
  {
    value: 'reaches what is well supplied with blood; less what is walled off',
    families: [
      'penicillin',
      'aminopenicillin',
      'aminopenicillin-with-inhibitor',
      'first-generation-cephalosporin',
      'third-generation-cephalosporin',
    ],
    ...reach,
  },
  { value: 'works poorly in pus, where there is acid and little oxygen', families: ['aminoglycoside'], ...reach },
  { value: 'pus takes its effect away', families: ['folate-inhibitor'], ...reach },
  {
    value: 'the dose that “susceptible at a higher dose” asks for lies above some labels',
    families: ['fluoroquinolone'],
    species: 'dog',
    ...texts,
  },
  {
    value: 'damage to the retina is reported after it too; after enrofloxacin more',
    agents: ['marbofloxacin', 'orbifloxacin'],
    species: 'cat',
    sources: ['pradofloxacin-eu-spc', 'medicine-texts'],
    where: 'other drugs of the class, as the maker of pradofloxacin says',
    known: 'read',
    strength: 'label',
    confidence: 'medium',
    checked: '2026-11-30',
  },
  {
    value: 'by mouth it is taken up unreliably',
    agents: ['ciprofloxacin'],
    species: 'dog',
    sources: ['medicine-texts'],
    where: 'uptake by mouth; remembered, and read on a page that collects such things',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'medium',
    checked: '2026-11-30',
  },
  {
    value: 'an ear that is deaf already does not spare the other one',
    families: ['aminoglycoside'],
    ...texts,
  },
  {
    value: 'not with furosemide or an NSAID',
    families: ['aminoglycoside'],
    ...texts,
  },
  {
    value: 'dries the eye; a facial nerve that suffered at this operation has dried it already',
    families: ['folate-inhibitor'],
    ...house,
  },
  {
    value: 'fever, sore joints, liver or blood count suffer in some from the fifth day on',
    families: ['folate-inhibitor'],
    species: 'dog',
    sources: ['small-animal-dermatology-3'],
    where: 'table of antimicrobials',
    known: 'read',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-30',
  },
  {
    value: 'some animals get hepatitis: about 16 of 100 dogs had adverse signs, fewer at low doses',
    families: ['rifamycin'],
    species: 'dog',
    sources: ['bajwa-2013', 'harbour-2022'],
    where: 'abstracts: 344 dogs; 12 % up to 6 mg/kg a day',
    known: 'read',
    strength: 'study',
    confidence: 'high',
    checked: '2026-11-30',
  },
] as const satisfies readonly CultureCaution[]
