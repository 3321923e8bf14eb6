import type { InOpenEar, TopicalRules } from '#core/culture/caution.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

/** 37 dogs, hearing test before and after drops on an open middle ear. */
const tested = {
  sources: ['paterson-2018'],
  where: 'abstract',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance

const congress = {
  sources: ['wsava-2017-otitis'],
  where: 'page 257',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Provenance

/** What was seen or is said of a drug once it reaches an open middle ear; both are kept where they differ. */
export const inOpenEar = [
  { value: 'no-harm-seen', agents: ['marbofloxacin', 'gentamicin'], ...tested },
  { value: 'harm-seen', agents: ['ticarcillin', 'tobramycin'], ...tested },
  {
    value: 'said-to-be-safe',
    agents: ['enrofloxacin', 'marbofloxacin', 'ceftazidime', 'silver-sulfadiazine', 'gentamicin'],
    ...congress,
  },
  {
    value: 'said-to-harm',
    agents: ['ticarcillin', 'polymyxin-b', 'neomycin', 'tobramycin', 'amikacin'],
    ...congress,
  },
] as const satisfies readonly InOpenEar[]

/** What holds for every drop, whatever the report says of its drug. */
export const topicalRules: TopicalRules = {
  systemicOnly: {
    value: 'the categories are those of a drug in the blood; in an ear canal it can stand a thousand times higher',
    sources: ['dvm360-pseudomonas-otitis', 'clsi-remembered'],
    where: 'level in the ear against the MIC; that the values are for systemic dosing is remembered',
    known: 'read',
    strength: 'web',
    confidence: 'medium',
    checked: '2026-11-30',
  },
  cytologyFirst: {
    value: 'cytology and how the ear answers say more about drops than a swab does',
    sources: ['vet-times-topical-otitis'],
    where: 'summary of two lectures',
    known: 'read',
    strength: 'web',
    confidence: 'medium',
    checked: '2026-11-30',
  },
  closedBulla: {
    value: 'nothing is put into a bulla that was closed: after ablation drops are for the other ear only',
    sources: ['surgery-texts', 'house-judgement'],
    where: 'there is no canal any more',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-30',
  },
}
