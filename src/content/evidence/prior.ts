import type { EvidenceRules } from '#core/evidence/told.ts'
import { houseJudgementOnly } from '../follow-up/provenance.ts'

/** What is believed before any study, and how much room own results have to contradict the studies. */
export const evidenceRules: EvidenceRules = {
  priors: {
    value: { mu: { mean: 0, sd: 2 }, tauScale: 1 },
    sources: ['neuenschwander-2010', 'schmidli-2014'],
    where:
      'Half-normal scale 1 is called a conservative default for rates of 20 to 80 of 100 in the package text that was read.',
    known: 'read',
    strength: 'study',
    confidence: 'medium',
    checked: '2026-11-29',
  },
  weakWeight: { value: 0.2, ...houseJudgementOnly, where: 'The weight of the published worked example.' },
}
