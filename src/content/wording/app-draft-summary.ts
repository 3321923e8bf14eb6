/** The summary that is drafted from what was stamped, in English. */
export const draftSummaryInEnglish = {
  title: 'Drafted from the stamps',
  lead: 'What the entries of this operation say stands below as text that you can change. What no entry says is empty. Complications are never drafted.',
  unsettled: 'Two entries stand side by side: {what}. Nothing was drafted from them.',
  toRecord: 'To the theatre record',
  unread: 'Drafted from the stamps; read it.',
  readOne: 'I have read it',
  readOneOf: 'I have read it: {field}',
  later: 'A later entry says something else than what this was drafted from.',
  anew: 'Draft it anew',
  anewOf: 'Draft it anew: {field}',
  notRead: 'Drafted and not read yet: {fields}.',
  readAll: 'I have read what was drafted',
  fault: 'Nothing drafted is signed unread. Read what is named here; then say so with one tap.',
  open: 'Draft and sign the operation report',
  pdfs: { 'operation-report': 'Operation report, PDF', 'anaesthetic-record': 'Anaesthetic record, PDF' },
  findings: {
    free: '{what}: {said}',
    retraction: {
      one: 'By the stamps the nerve was held aside once, {minutes} min.',
      many: 'By the stamps the nerve was held aside {count} times, {minutes} min together.',
    },
    emergency: 'Emergency called. {title}.',
    loss: 'Estimated blood loss: {span}.',
    lossRefused: 'Not all that was written of the blood loss can be right; it may be more.',
    count: 'Final count: {items}; throat pack: {pack}.',
    bothEars: {
      first: 'Both ears under one anaesthetic; this one came first, {other} second.',
      second: 'Both ears under one anaesthetic; this one came second, {other} first.',
    },
  },
  plan: {
    awaited: 'Result of {label} ({site}: {tests}) is awaited.',
    doseGiven: '{drug} {amount}{route} every {hours} h by the plan; last given {at}.',
    dose: '{drug} {amount}{route} every {hours} h by the plan; not given yet.',
    eye: 'The {side} eye is kept wet until it blinks, because of what was stamped at the nerve: {said}',
  },
} as const
