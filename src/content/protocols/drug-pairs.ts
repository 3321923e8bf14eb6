import type { Interaction } from '#core/dosing/rules.ts'
import { quantity } from '#core/units/quantity.ts'

const washoutPaper = {
  sources: ['aaha-aafp-2015-pain'],
  where:
    'washout: about 5 days for meloxicam, 7 for other NSAIDs or a short-acting steroid, longer for a depot steroid, up to 10 for aspirin',
  known: 'read',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const fiveDays = { value: quantity('120', 'h'), ...washoutPaper }
const sevenDays = { value: quantity('168', 'h'), ...washoutPaper }

const oneMonth = {
  value: quantity('720', 'h'),
  sources: ['mavacoxib-eu-spc'],
  where: 'no other NSAID within a month of the last dose; remembered, and taken for a steroid too',
  known: 'remembered',
  strength: 'label',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const tenDays = { value: quantity('240', 'h'), ...washoutPaper }

const house = {
  sources: ['house-judgement'],
  where: 'how long the pair is watched for',
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-25',
} as const

const sixHours = { value: quantity('6', 'h'), ...house }
const oneDay = { value: quantity('24', 'h'), ...house }

const anaesthesiaTexts = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

/** Drugs that must not meet, or should be thought about together, and how long one given before still counts. */
export const drugPairs = [
  {
    code: 'nsaid-with-steroid',
    level: 'block',
    between: ['nsaid', 'steroid'],
    because: 'together they ulcerate stomach and gut',
    washouts: [
      { drug: 'mavacoxib', ...oneMonth },
      { drug: 'meloxicam', ...fiveDays },
      { drug: 'aspirin', ...tenDays },
      { group: 'nsaid', ...sevenDays },
      { group: 'steroid', ...sevenDays },
    ],
    ...washoutPaper,
  },
  {
    code: 'two-nsaids',
    level: 'block',
    between: ['nsaid', 'nsaid'],
    because: 'two NSAIDs add up in stomach, gut and kidney',
    washouts: [
      { drug: 'mavacoxib', ...oneMonth },
      { drug: 'meloxicam', ...fiveDays },
      { drug: 'aspirin', ...tenDays },
      { group: 'nsaid', ...sevenDays },
    ],
    ...washoutPaper,
  },
  {
    code: 'pair-to-think-about',
    level: 'confirm',
    between: ['nsaid', 'depot-steroid'],
    because: 'a depot steroid lasts for weeks; the paper says only "longer"',
    washouts: [],
    ...washoutPaper,
  },
  {
    code: 'pair-to-think-about',
    level: 'note',
    between: ['alpha-2-agonist', 'anticholinergic'],
    because: 'an anticholinergic while the pressure is high strains the heart',
    washouts: [
      { group: 'alpha-2-agonist', ...sixHours },
      { group: 'anticholinergic', ...sixHours },
    ],
    ...anaesthesiaTexts,
  },
  {
    code: 'pair-to-think-about',
    level: 'note',
    between: ['partial-opioid', 'full-opioid'],
    because: 'the partial agonist takes away part of the full agonist’s effect',
    washouts: [
      { group: 'partial-opioid', ...sixHours },
      { group: 'full-opioid', ...sixHours },
    ],
    ...anaesthesiaTexts,
  },
  {
    code: 'pair-forbidden',
    level: 'block',
    between: ['aminoglycoside', 'nsaid'],
    because: 'both harm the kidney',
    washouts: [
      { drug: 'mavacoxib', ...oneMonth },
      { drug: 'meloxicam', ...fiveDays },
      { group: 'nsaid', ...sevenDays },
      { group: 'aminoglycoside', ...oneDay },
    ],
    ...anaesthesiaTexts,
  },
  {
    code: 'pair-forbidden',
    level: 'block',
    between: ['aminoglycoside', 'loop-diuretic'],
    because: 'together they take hearing and kidney',
    washouts: [
      { group: 'loop-diuretic', ...oneDay },
      { group: 'aminoglycoside', ...oneDay },
    ],
    ...anaesthesiaTexts,
  },
  {
    code: 'pair-to-think-about',
    level: 'note',
    between: ['serotonergic', 'serotonergic'],
    because: 'serotonin adds up: tremor, heat, restlessness',
    washouts: [{ group: 'serotonergic', ...oneDay }],
    ...anaesthesiaTexts,
  },
] as const satisfies readonly Interaction[]
