/** What stands around the answer to "why?" on the screen, in English. */
export const whyPageInEnglish = {
  ask: 'Why?',
  close: 'Close',
  inputs: 'What went into it',
  formula: 'How it was worked out',
  policy: 'House policy',
  sources: 'Sources',
  where: 'Where: {where}',
  noSource: 'It rests on what was written down here and on no publication.',
} as const
