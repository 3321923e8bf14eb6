import type { Quoted } from '#core/evidence/quoted.ts'
import { readSecondHand } from '../follow-up/provenance.ts'

/** What reviews and textbooks quote where no study that we can use counted anything. */
export const quoted: readonly Quoted[] = [
  {
    species: 'dog',
    procedure: 'teca-lbo',
    outcome: 'facial_nerve_deficit_permanent',
    value: { low: 4, high: 13 },
    sources: ['surgery-texts'],
    where: 'a range as textbooks sum it up',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'low',
    checked: '2026-11-29',
  },
  {
    species: 'dog',
    procedure: 'vertical-canal-ablation',
    outcome: 'resolution_or_improved',
    value: { low: 72, high: 95 },
    sources: ['bsava-head-neck-thoracic'],
    where: 'page 77: excellent in 72 to 95 of 100; its series are not named',
    ...readSecondHand,
  },
]
