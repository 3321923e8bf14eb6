import { band, type DosingRules, kgBand } from '#core/dosing/rules.ts'
import { Decimal, quantity } from '#core/units/quantity.ts'
import { animalRules } from './animal-rules.ts'
import { bloodInSwabs } from './blood-in-swabs.ts'
import { bloodMarks } from './blood-marks.ts'
import { bloodPerKg } from './blood-per-kg.ts'
import { bodySurface } from './body-surface.ts'
import { breeds } from './breeds.ts'
import { confusedStrengths } from './confused-strengths.ts'
import { doseReductions } from './dose-reductions.ts'
import { drip } from './drip.ts'
import { drugPairs } from './drug-pairs.ts'
import { earRules } from './ear-rules.ts'
import { fluids } from './fluids.ts'
import { homeRules } from './home-rules.ts'
import { infusions } from './infusions.ts'
import { labelTables } from './label-tables.ts'
import { mixing } from './mixing.ts'
import { patchSizes } from './patch-sizes.ts'
import { syringes } from './syringes.ts'
import { transfusion } from './transfusion.ts'

const house = {
  sources: ['house-judgement'],
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const lean = {
  sources: ['aaha-aafp-2015-pain', 'medicine-texts'],
  where: 'lean weight for NSAIDs was read in the first; the other drugs and the share per point are remembered',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

/** Every number of the dosing checks that belongs to no single drug. */
export const dosingRules: DosingRules = {
  weight: {
    plausible: {
      dog: { value: { usual: kgBand('1.5', '80'), possible: kgBand('0.3', '115') }, ...house },
      cat: { value: { usual: kgBand('2', '9'), possible: kgBand('0.3', '16') }, ...house },
    },
    olderThan: { value: quantity('24', 'h'), ...house },
    // 2.2 is pounds read as kilograms; 0.4536 the other way round.
    pounds: { value: [band('2.0', '2.4'), band('0.42', '0.5')], ...house },
    decimalSlip: { value: [band('8', '12.5'), band('0.08', '0.125')], ...house },
    changed: { value: { note: new Decimal('0.15'), confirm: new Decimal('0.5') }, ...house },
    lean: { value: { from: 7, sharePerPoint: new Decimal('0.1') }, ...lean },
  },
  bodySurface,
  ownSurfaceFactor: {
    value: band('0.08', '0.13'),
    ...house,
    where: 'the factors in print lie from 0.100 to 0.104; 10.1 is the same in square centimetres and grams',
  },
  overRange: { value: { confirm: new Decimal(2), block: new Decimal(5), unitSlip: new Decimal(100) }, ...house },
  largeBolus: { value: quantity('1', 'mL/kg'), ...house },
  slowestRate: { value: quantity('0.5', 'mL/h'), ...house },
  dilutions: { value: [10, 100], ...house },
  strengthOff: {
    value: { confirm: new Decimal(10), block: new Decimal(100) },
    ...house,
    where: 'tenfold and unit traps of strengths',
  },
  syringes,
  patches: patchSizes,
  thinUpTo: {
    value: 3,
    ...house,
    where: 'thin animals start low, on the measured weight; which score is thin is judged here',
  },
  ordinaryAge: { value: { fromMonths: 3, toYears: 10 }, ...house, where: 'under 12 weeks or over 10 years' },
  rounding: {
    value: {
      confirm: new Decimal('0.1'),
      classes: [
        { groups: ['vasopressor'], note: new Decimal('0.02') },
        {
          groups: [
            'alpha-2-agonist',
            'benzodiazepine',
            'full-opioid',
            'induction-agent',
            'nmda-antagonist',
            'partial-opioid',
            'phenothiazine',
          ],
          note: new Decimal('0.05'),
          block: new Decimal('0.1'),
        },
      ],
    },
    ...house,
    where: 'rounding error by class of drug; a ceiling is kept apart, by rounding down',
  },
  repeat: {
    value: { early: new Decimal('0.95'), confirm: new Decimal('0.5'), onceWithin: quantity('24', 'h') },
    ...house,
    where: 'the gap itself is the row’s; how early is too early, and how long a dose meant once counts, is judged here',
  },
  lowPressure: {
    value: { mean: quantity('60', 'mm[Hg]'), systolic: quantity('90', 'mm[Hg]'), within: quantity('2', 'h') },
    sources: ['aaha-2020-hypotension', 'dvm360-hypotension', 'house-judgement'],
    where:
      'mean under 60 and systolic under 90 were read (Doppler reads low in small cats); the two hours are the house’s',
    known: 'read',
    strength: 'guideline',
    confidence: 'high',
    checked: '2026-11-25',
  },
  leanWeightGroups: { value: ['nsaid', 'local-anaesthetic', 'induction-agent'], ...lean },
  leanWeightInfusions: {
    value: ['full-opioid', 'partial-opioid'],
    ...lean,
    where: 'opioids by infusion are remembered',
  },
  secondPersonGroups: {
    value: ['aminoglycoside', 'full-opioid', 'local-anaesthetic', 'partial-opioid', 'potassium', 'vasopressor'],
    ...house,
  },
  localAnaestheticInfusion: {
    value:
      'what runs into the vein within the washout window (3 h for lidocaine), divided by the limit, is shown beside the sum of boluses and blocks and not added to it',
    ...house,
  },
  interactions: drugPairs,
  animal: animalRules,
  ear: earRules,
  reductions: doseReductions,
  confusedStrengths,
  breeds,
  loss: {
    swabs: bloodInSwabs,
    perKg: bloodPerKg,
    marks: bloodMarks,
    from: {
      value: { mark: 'replace', within: quantity('24', 'h') },
      ...house,
      where: 'a loss that is replaced counts against an NSAID, for a day',
    },
  },
  lowTears: {
    value: quantity('10', 'mm/min'),
    sources: ['ophthalmology-texts'],
    where: 'below 10 mm/min is low',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-29',
  },
  xylitol: {
    value: ['gabapentin'],
    sources: ['medicine-texts', 'usual-products'],
    where: 'some liquids made for people are sweetened with xylitol; remembered',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-29',
  },
  betweenWeights: {
    value: ['aminoglycoside'],
    ...lean,
    where: 'between lean and measured weight, remembered; where between is not said',
  },
  emergencyCounts: {
    value: quantity('4', 'h'),
    ...house,
    where: 'how long a declared emergency lifts blocks: no source says; after it somebody declares it again',
  },
  secondNameWithin: { value: quantity('24', 'h'), ...house, where: 'reason now, second name within a day' },
  withoutNumber: { ...house, where: 'what a plan must say before anything is worked out' },
  transfusion,
  infusions,
  mixing,
  fluids,
  drip,
  labelTables,
  home: homeRules,
}
