import type { FormWords } from '#core/forms/words.ts'
import { procedureWords } from '../app-form-words.ts'
import { agreementWords } from '../papers-agreement.ts'

export const agreement = {
  kind: 'agreement',
  purpose: 'Plan, limits and consent. Change the plan and the owner is asked again.',
  sections: {
    plan: 'The plan',
    costs: 'What it may cost',
    limits: 'Wishes and limits',
    taught: 'Said back',
    consent: 'Consent',
  },
  fields: {
    plan: { label: 'The plan' },
    'plan.ears': { label: 'Ears and operations', add: 'Add the other ear', item: 'Ear {number}' },
    'plan.ears.side': { label: 'Side' },
    'plan.ears.procedure': { label: 'Operation', options: procedureWords },
    'plan.surgeon': { label: 'Who operates' },
    'plan.ceiling': {
      label: 'Never more than this without the owner’s word',
      help: 'Another currency is typed with the amount, for example 3400.00 EUR.',
    },
    'plan.leaflet': { label: 'Leaflet that was read', help: 'Name and version.' },
    'plan.language': { label: 'Language of the talk', help: 'As a tag, for example en.' },
    fingerprint: { label: 'Mark of this plan' },
    estimate: { label: 'Estimate' },
    'estimate.low': { label: 'We expect at least' },
    'estimate.high': { label: 'We expect at most' },
    resuscitate: { label: agreementWords.resuscitate, options: agreementWords.resuscitateValue },
    mayExtend: { label: agreementWords.mayExtend, options: agreementWords.mayExtendValue },
    photographs: { label: agreementWords.photographs, options: agreementWords.photographsValue },
    teachBack: { label: 'What the owner said back', help: 'Rows left open were not asked yet.' },
    'teachBack.item': { label: 'Item', options: agreementWords.taughtItems },
    'teachBack.answer': {
      label: 'Answer',
      options: { 'own-words': 'in own words', 'with-help': 'with help', 'not-yet': 'not yet' },
    },
    explainedBy: { label: 'Talked over by' },
    consentBy: { label: 'Who consents', help: 'Somebody of the household who may consent.' },
    authority: { label: 'On what authority', options: { owner: 'as the owner', 'for-the-owner': 'for the owner' } },
  },
} as const satisfies FormWords
