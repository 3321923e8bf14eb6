import type { AnimalRule } from '#core/dosing/rules.ts'
import { quantity } from '#core/units/quantity.ts'

const kidney = {
  sources: ['aaha-aafp-2015-pain', 'medicine-texts'],
  where: 'an NSAID is held until pressure, volume and kidney values are normal; remembered',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const nsaidLabels = {
  sources: ['meloxicam-eu-spc', 'carprofen-uk-spc', 'robenacoxib-uk-spc'],
  where: 'contraindications: pregnant, lactating or breeding animals; remembered from the labels',
  known: 'remembered',
  strength: 'label',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const innerEar = {
  sources: ['medicine-texts', 'dermatology-texts'],
  where: 'drugs that harm hearing and balance; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const washes = {
  sources: ['house-judgement', 'dermatology-texts'],
  where: 'harmful in a middle ear is remembered; that it is barred is judged here',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const chlorhexidine = {
  sources: ['house-judgement', 'paterson-2018', 'dermatology-texts'],
  where:
    'surgical strength harms the inner ear (remembered); 0.15 % with Tris-EDTA without reported loss of hearing (read); the line at 0.2 % is judged here',
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const paterson = {
  sources: ['paterson-2018'],
  where:
    'tobramycin and ticarcillin worsened the hearing test; gentamicin and marbofloxacin in water did not (abstract)',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-29',
} as const

/** 0.2 % weight by volume. */
const strongChlorhexidine = quantity('2', 'mg/mL')

const dryEye = {
  sources: ['jaaha-1995-dry-eye', 'ophthalmology-texts'],
  where: '5 of 33 dogs on trimethoprim-sulfadiazine became dry-eyed (read); an eye without a blink is remembered',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const tears = {
  sources: ['ophthalmology-texts'],
  where: 'fewer tears for up to a day after atropine; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const flatFace = {
  sources: ['anaesthesia-texts'],
  where: 'flat-faced animals: acepromazine and alpha-2 agonists at the low end, extubated late; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const unborn = {
  sources: ['medicine-texts'],
  where: 'drugs in pregnancy and lactation; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const toxicity = {
  sources: ['caulfield-2022', 'vet360-2016-lipid'],
  where: 'first step of treatment: no more of the drug',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-29',
} as const

/** What an animal is or has that bars a whole group of drugs, or asks for a person, whatever the row says. */
export const animalRules = [
  {
    code: 'kidney-drug-with-raised-creatinine',
    groups: ['nsaid', 'aminoglycoside'],
    words: ['raised-creatinine'],
    level: 'block',
    because: 'the last creatinine is above its range',
    possible: 'Measure again and record a normal value, or take another class',
    ...kidney,
  },
  {
    code: 'nsaid-after-blood-loss',
    groups: ['nsaid'],
    words: ['blood-loss'],
    level: 'block',
    because: 'the measured loss of blood may have reached the mark at which it is replaced',
    possible: 'Replace it, see a normal pressure, and give it later; or take another class',
    ...kidney,
  },
  {
    code: 'unsafe-in-pregnancy',
    groups: ['nsaid'],
    words: ['pregnant', 'lactating', 'breeding'],
    level: 'block',
    because: 'the labels bar it',
    possible: 'Take another class',
    ...nsaidLabels,
  },
  {
    code: 'ototoxic-with-open-ear',
    groups: ['aminoglycoside', 'loop-diuretic'],
    words: ['open-drum', 'open-bulla', 'vestibular-signs'],
    level: 'confirm',
    because: 'it harms hearing and balance, and the inner ear lies open or is hit already',
    possible: 'Take another drug, or give the reason',
    ...innerEar,
  },
  {
    code: 'ototoxic-with-open-ear',
    groups: [],
    drugs: ['alcohol', 'hydrogen-peroxide', 'povidone-iodine'],
    words: ['open-drum', 'open-bulla'],
    onlyInEar: true,
    level: 'block',
    because: 'it takes hearing and balance where it reaches the middle ear',
    possible: 'Flush with warm saline',
    ...washes,
  },
  {
    code: 'ototoxic-with-open-ear',
    groups: [],
    drugs: ['chlorhexidine'],
    words: ['open-drum', 'open-bulla'],
    onlyInEar: true,
    fromStrength: strongChlorhexidine,
    level: 'block',
    because: 'from 0.2 % on it takes hearing and balance where it reaches the middle ear',
    possible: 'Flush with warm saline; state the strength if it is a weaker one',
    ...chlorhexidine,
  },
  {
    code: 'ototoxic-with-open-ear',
    groups: [],
    drugs: ['chlorhexidine'],
    words: ['open-drum', 'open-bulla'],
    onlyInEar: true,
    belowStrength: strongChlorhexidine,
    level: 'confirm',
    because: 'at low strength no loss of hearing was reported in one series; at surgical strength it takes hearing',
    possible: 'Flush with warm saline, or give the reason',
    ...chlorhexidine,
  },
  {
    code: 'ototoxic-with-open-ear',
    groups: [],
    drugs: ['ticarcillin'],
    words: ['open-drum', 'open-bulla'],
    onlyInEar: true,
    level: 'confirm',
    because: 'the hearing test was worse after it in a series of dogs',
    possible: 'Take another drug, or give the reason',
    ...paterson,
  },
  {
    code: 'ototoxic-with-open-ear',
    groups: [],
    drugs: ['acetic-acid', 'carbamide-peroxide', 'docusate', 'polymyxin-b', 'propylene-glycol', 'salicylic-acid'],
    words: ['open-drum', 'open-bulla'],
    onlyInEar: true,
    level: 'confirm',
    because: 'it can harm hearing and balance where it reaches the middle ear',
    possible: 'Flush with warm saline, take another drug, or give the reason',
    ...innerEar,
  },
  {
    code: 'drying-drug-with-dry-eye',
    groups: ['sulfonamide'],
    words: ['dry-eye', 'no-blink'],
    level: 'block',
    because: 'it dries the eye, and this one is dry or does not blink',
    possible: 'Take an antibiotic of another class',
    ...dryEye,
  },
  {
    code: 'drying-drug-with-dry-eye',
    groups: ['anticholinergic'],
    words: ['dry-eye', 'no-blink'],
    level: 'confirm',
    because: 'it takes tears for up to a day from an eye that is dry or does not blink',
    possible: 'Gel on both eyes more often and no tear test for a day; give the reason',
    ...tears,
  },
  {
    code: 'local-anaesthetic-toxicity-suspected',
    groups: ['local-anaesthetic'],
    words: ['local-anaesthetic-toxicity'],
    level: 'block',
    evenInEmergency: true,
    because: 'toxicity of local anaesthetic is suspected',
    possible: 'No more of any until that is settled',
    ...toxicity,
  },
  {
    code: 'unsafe-in-pregnancy',
    groups: ['fluoroquinolone', 'tetracycline', 'aminoglycoside', 'steroid'],
    words: ['pregnant', 'lactating'],
    level: 'confirm',
    because: 'it may harm what is unborn or suckles',
    possible: 'Take another class, or give the reason',
    ...unborn,
  },
  {
    code: 'sedation-with-flat-face',
    groups: ['alpha-2-agonist'],
    words: ['brachycephalic'],
    level: 'note',
    because: 'a deep sedation closes a flat-faced airway',
    possible: 'Stay at the low end, give oxygen before, and watch it until it walks',
    ...flatFace,
  },
] as const satisfies readonly AnimalRule[]
