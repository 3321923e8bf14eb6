import type { TroubleRules } from '#core/complications/rules.ts'
import { yearLookFromDay } from '../evidence/year-look.ts'
import { commonPractice, houseJudgementOnly } from '../follow-up/provenance.ts'
import { woundInfectionWindow } from './schemes/wound-infection-window.ts'

const complication = { value: 'complication', ...houseJudgementOnly } as const

/**
 * What each trouble is proposed to be, and from which day after the operation on somebody who was not heard of is lost
 * for it. A proposal is never the decision.
 */
export const troubleRules = {
  proposed: {
    'wound-gap': complication,
    seroma: complication,
    'wound-infection': complication,
    'pinna-edge': complication,
    haemorrhage: complication,
    'nerve-injured': complication,
    'facial-weakness': complication,
    horner: complication,
    vestibular: complication,
    'corneal-ulcer': complication,
    deafness: {
      value: 'sequela',
      sources: ['mcanulty-1995-ablation'],
      where: 'abstract: the way of sound through the air is gone with the canal, however well it went',
      known: 'read',
      strength: 'study',
      confidence: 'medium',
      checked: '2026-11-30',
    },
    'deep-infection': {
      value: 'failure-to-cure',
      ...houseJudgementOnly,
      where:
        'the illness of the ear that the operation was for is not gone; published series count it as a complication',
    },
    'jaw-pain': complication,
    'tumour-again': { value: 'failure-to-cure', ...houseJudgementOnly },
    airway: complication,
    'anaesthetic-event': complication,
    death: complication,
    other: null,
  },
  early: woundInfectionWindow,
  year: { value: 365, ...commonPractice, where: 'The status after twelve months.' },
  yearLook: yearLookFromDay,
  askedAfterAYear: ['deafness', 'deep-infection', 'jaw-pain', 'tumour-again'],
} as const satisfies TroubleRules
