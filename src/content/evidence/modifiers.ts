import type { Modifier } from '#core/evidence/modifier.ts'
import { readStudy } from '../follow-up/provenance.ts'

const dogs = { species: 'dog', procedure: 'teca-lbo' } as const
const fox = {
  ...dogs,
  unit: 'animal',
  outcome: 'postop_complication_any',
  sources: ['fox-2008'],
  ...readStudy,
} as const
const banks = { ...dogs, unit: 'ear', factor: 'short-faced', sources: ['banks-2023'], ...readStudy } as const
const flat = {
  kind: 'arms',
  study: 'banks-2023',
  with: 'extremely flat-faced breeds',
  without: 'other breeds',
} as const
const esposito = { ...dogs, unit: 'ear', factor: 'circular-cut', sources: ['esposito-2026'], ...readStudy } as const
const circle = {
  kind: 'arms',
  study: 'esposito-2026',
  with: 'circular incision',
  without: 'T-shaped incision',
} as const
const coleman = { ...dogs, unit: 'ear', factor: 'both-ears-at-once', sources: ['coleman-2016'], ...readStudy } as const
const session = {
  kind: 'arms',
  study: 'coleman-2016',
  with: 'both ears in one session (20 dogs)',
  without: 'one side (37 dogs)',
} as const

/**
 * Circumstances for which some study gives a ratio with an interval, or counts of two arms to work one out. None of them
 * is adjusted for the others, unless the study says so. Of everything else nothing is known.
 */
export const modifiers: readonly Modifier[] = [
  { id: 'short-faced-in-theatre', outcome: 'intraop_complication_any', effect: flat, ...banks },
  { id: 'short-faced-around', outcome: 'periop_complication_any', effect: flat, ...banks },
  { id: 'circular-cut-bleeding', outcome: 'haemorrhage_intraop_any', effect: circle, ...esposito },
  { id: 'circular-cut-face', outcome: 'facial_nerve_deficit_any', effect: circle, ...esposito },
  { id: 'circular-cut-wound', outcome: 'wound_any', effect: circle, ...esposito },
  { id: 'both-ears-face', outcome: 'facial_nerve_deficit_any', effect: session, ...coleman },
  { id: 'both-ears-any', outcome: 'postop_complication_any', effect: session, ...coleman },
  { id: 'both-ears-wound', outcome: 'wound_minor_any', effect: session, ...coleman },
  {
    id: 'both-ears-breathing-cat',
    factor: 'both-ears-at-once',
    species: 'cat',
    procedure: 'ventral-bulla-osteotomy',
    unit: 'animal',
    outcome: 'respiratory_complication',
    effect: { kind: 'arms', study: 'wainberg-2019', with: 'both sides in one session', without: 'one side' },
    sources: ['wainberg-2019'],
    ...readStudy,
  },
  { id: 'female', factor: 'female', effect: { kind: 'printed', value: 1.86, low: 1.14, high: 3.02 }, ...fox },
  {
    id: 'skin-disease',
    factor: 'skin-disease',
    effect: { kind: 'printed', value: 0.59, low: 0.37, high: 0.96 },
    ...fox,
  },
  {
    id: 'skin-disease-doyle',
    factor: 'skin-disease',
    ...dogs,
    unit: 'animal',
    outcome: 'postop_complication_any',
    effect: { kind: 'direction', says: 'more' },
    sources: ['doyle-2004'],
    ...readStudy,
    confidence: 'low',
    where: 'The abstract says so without a ratio.',
  },
  {
    id: 'antibiotics-after',
    factor: 'antibiotics-after',
    effect: { kind: 'printed', value: 2.31, low: 1.41, high: 3.79 },
    ...fox,
    where: 'Probably confounded: sicker ears are treated.',
  },
]
