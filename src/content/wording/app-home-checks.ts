/** What a check has against the page for home, on the case page and above the button that keeps the entry. */
export const homeChecksInEnglish = {
  title: 'Before the page for home is handed out',
  blocked:
    'A stop is not confirmed. Correct the entry, or change the medicine; until then the page for home is held back.',
  lead: 'Look at each finding. If each is meant, say why, and put your name to it: then the page may be handed out.',
  own: 'You wrote this page. Another person looks at each finding; if nobody else is there, say so and why each is meant.',
  why: 'Why each is meant',
  whyHelp: 'For example: prescribed by the own vet, dose read on the label.',
  whyMissing: 'Say why each finding is meant.',
  verb: 'I looked at each: it is meant so',
  verbOwn: 'Nobody else is here; I looked at each',
  mayNot: 'Confirmed by: {roles}.',
  confirmed: 'Confirmed by {person}, {when}: {because}',
  confirmedAlone: 'Nobody else was there. {person} looked at each, {when}: {because}',
  writing: 'What a check finds so far',
  writingLead:
    'The entry can be kept as it is. The page for home is held back until it is corrected, or a person confirms each on the page of the case.',
  asTyped:
    'This household reads {language}. What is typed here is printed as typed: write it so that it is understood, or talk it over with an interpreter.',
} as const
