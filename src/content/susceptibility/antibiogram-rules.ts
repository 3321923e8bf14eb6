import type { AntibiogramRules } from '#core/antibiogram/method.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { houseJudgementOnly } from '../follow-up/provenance.ts'

const asRemembered = {
  sources: ['clsi-remembered', 'hindler-stelling-2007'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance
const asDocumented = {
  sources: ['amr-first-isolate-2025'],
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance

/** How a cumulative antibiogram is counted. The standard itself was not read: what it asks is remembered or second-hand. */
export const antibiogramRules: AntibiogramRules = {
  flagBelow: {
    value: 30,
    sources: ['state-laboratory-antibiogram-2019'],
    where: 'at least 30 reports, first submission only; M39 is remembered to say the same',
    known: 'read',
    strength: 'web',
    confidence: 'high',
    checked: '2026-11-30',
  },
  practiceMinimum: {
    value: 15,
    sources: ['frey-jacob-2020'],
    where: 'abstract: 15 or more isolates in all, 10 or more of a kind of sample',
    known: 'read',
    strength: 'study',
    confidence: 'high',
    checked: '2026-11-30',
  },
  firstOfPeriod: { value: 'calendar-year', ...asRemembered, where: 'the first isolate of a patient in the period' },
  episodeDays: { value: 365, ...asDocumented, where: 'episode-based method' },
  points: {
    value: { susceptibleToResistant: 1, byOneStep: 0.5 },
    ...asDocumented,
    where: 'S to R one point, S to I and I to R half a point',
  },
  threshold: {
    value: { points: 2, when: 'exceeded' },
    ...asDocumented,
    confidence: 'medium',
    where: 'two points; whether they must be passed or only reached can be chosen',
  },
  susceptibleOnly: {
    value: 'S',
    ...asRemembered,
    where: 'per cent susceptible counts S alone; SDD in a column of its own',
  },
  clinicalOnly: { value: 'clinical', ...asRemembered, where: 'final results of diagnostic cultures only' },
  hostsApart: {
    value: 'apart',
    sources: ['amr-issue-165'],
    known: 'read',
    strength: 'web',
    confidence: 'medium',
    checked: '2026-11-30',
  },
  sitesApart: {
    value: 'apart',
    ...houseJudgementOnly,
    where: 'Canal, bulla on entry, bulla after lavage, second operation.',
  },
}
