import type { FormWords } from '#core/forms/words.ts'
import { procedureWords } from '../app-form-words.ts'
import { mainReasonNames } from '../main-reasons.ts'
import { reportInEnglish } from '../report.ts'

export const operationSummary = {
  kind: 'operation-summary',
  purpose: 'The surgeon’s signed summary. What arrives later is marked late.',
  sections: { operation: 'What was done', people: 'People', found: 'Findings', after: 'Plan and signature' },
  fields: {
    side: { label: 'Side that was operated' },
    procedure: { label: 'Operation', options: procedureWords },
    incisionAt: { label: 'Incision', help: 'For example 10 February 2026, 09:40.' },
    closedAt: { label: 'Closed', help: 'For example 10 February 2026, 11:05.' },
    surgeon: { label: 'Surgeon' },
    assistant: { label: 'Assistant', none: 'none' },
    anaesthetist: { label: 'Anaesthetist', none: 'none' },
    mainReason: {
      label: 'Main reason',
      help: 'Our results are counted by it. The indication says it in full.',
      none: 'not said',
      options: mainReasonNames,
    },
    indication: { label: 'Indication' },
    findings: { label: 'Findings' },
    complications: { label: 'Complications', none: 'none', options: reportInEnglish.complications },
    drain: { label: 'Was a drain left in?' },
    plan: { label: 'Plan' },
    remark: { label: 'Remark' },
    signedBy: { label: 'Signed by' },
  },
} as const satisfies FormWords
