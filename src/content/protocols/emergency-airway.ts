import type { EmergencyGroup } from '#core/dosing/emergency-row.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

const checked = '2026-11-25'
const both = ['dog', 'cat'] as const
const texts = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked,
} as const satisfies Provenance
const house = {
  sources: ['house-judgement'],
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked,
} as const satisfies Provenance

/**
 * Tube out, or breath that is heard after bulla surgery. Steps only: an induction dose is to effect and a steroid dose
 * is a range, so neither is one number that this sheet may print.
 */
export const emergencyAirway = {
  call: 'airway',
  steps: [
    {
      value: 'Cut the head bandage at the first noise, effort or swelling of face or throat. Ask questions afterwards.',
      species: both,
      ...texts,
    },
    {
      value:
        'Oxygen, neck straight, tongue forward, mouth cleared. The throat swells after bulla surgery: have a smaller tube in hand.',
      species: both,
      ...texts,
    },
    {
      value:
        'Put the tube back early: induction agent to effect from the plan of the day, light, tubes of three sizes, suction.',
      species: both,
      ...house,
    },
    {
      value: 'If no tube passes: oxygen through a needle or catheter in the windpipe, then a tracheostomy.',
      species: both,
      ...texts,
    },
    {
      value: 'A steroid against swelling only when no anti-inflammatory of the other kind was given or is planned.',
      species: both,
      ...texts,
    },
    {
      value: 'For the first 24 hours the intubation set stays at the cage.',
      species: both,
      ...texts,
    },
  ],
  rows: [],
} as const satisfies EmergencyGroup
