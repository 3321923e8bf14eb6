import type { TriageRules } from '#core/referral/triage.ts'
import { houseJudgementOnly, readSecondHand } from './provenance.ts'

const house = {
  ...houseJudgementOnly,
  where: 'the signs are those of the first call; how soon is the house’s',
} as const
const withPractice = { ...house, sources: ['common-practice', 'house-judgement'] } as const

/** How soon an animal is seen by what the caller says. No source gives the hours: a clinician confirms them. */
export const triageRules = {
  signs: {
    'head-tilt': {
      value: {
        urgency: 'today',
        because: 'a sign of the inner ear or the brain; it must not be booked as routine.',
      },
      ...withPractice,
    },
    falling: {
      value: { urgency: 'today', because: 'it cannot keep its balance: the inner ear or the brain may be reached.' },
      ...withPractice,
    },
    'drooped-face': {
      value: {
        urgency: 'today',
        because: 'the facial nerve may be failing, and an eye that does not close dries out.',
      },
      ...withPractice,
      sources: ['common-practice', 'eye-care-texts', 'house-judgement'],
    },
    'mouth-will-not-open': {
      value: {
        urgency: 'this-week',
        because: 'pain on opening the jaw points to the bulla or the joint, and to a hard airway.',
      },
      ...readSecondHand,
      sources: ['greci-2011', 'house-judgement'],
      where: 'jaw pain as a sign of cholesteatoma; how soon is the house’s',
    },
    'swelling-under-ear': {
      value: { urgency: 'this-week', because: 'an abscess or a tract beside the ear.' },
      ...withPractice,
    },
    'not-eating': {
      value: { urgency: 'today', because: 'pain or sickness that will not wait for a day in the book.' },
      ...withPractice,
    },
    'severe-pain': {
      value: { urgency: 'this-week', because: 'pain is treated before it is planned.' },
      ...withPractice,
    },
    'bleeding-mass': {
      value: { urgency: 'today', because: 'it bleeds, and what bleeds in an ear may be a tumour.' },
      ...withPractice,
    },
    'eye-red-or-shut': {
      value: { urgency: 'today', because: 'the eye may have an ulcer; it cannot wait for the ear.' },
      ...withPractice,
      sources: ['common-practice', 'eye-care-texts', 'house-judgement'],
    },
  },
  flatFaced: {
    value:
      'Flat-faced dogs tend to come late and suddenly, with nerve signs: 46 of 81 had them before surgery in one series.',
    sources: ['banks-2023'],
    where: 'nerve signs before surgery in extremely flat-faced breeds, 46 of 81 (57 %)',
    known: 'read',
    strength: 'study',
    confidence: 'medium',
    checked: '2026-11-25',
  },
  nerveSigns: ['head-tilt', 'falling', 'drooped-face'],
} as const satisfies TriageRules
