import type { ModifierFactor } from '#core/evidence/modifier.ts'

/** What may change a risk, for the surgeon: the circumstance, beside animals without it. */
export const modifiersInEnglish = {
  title: 'What may change a risk',
  lead: 'Only what some study gives as a ratio of odds with its interval, or as counts of two groups. None is adjusted for the others unless the study says so. Of every other circumstance nothing is known.',
  none: 'No study gives a ratio of odds for this operation.',
  factors: {
    'short-faced': 'extremely flat-faced breed, beside other breeds',
    'circular-cut': 'circular cut of the skin, beside a T',
    'both-ears-at-once': 'both ears in one session, beside one ear',
    female: 'female, beside male',
    'skin-disease': 'skin disease as well, beside none',
    'antibiotics-after': 'antibiotics given after surgery, beside none',
  } satisfies Record<ModifierFactor, string>,
  line: '{factor}: {outcome} in {animals}, odds × {ratio} ({low} to {high})',
  arms: '{withEvents} of {withTotal} beside {withoutEvents} of {withoutTotal}; worked out from these counts',
  printed: 'as printed',
  more: '{factor}: more {outcome} in {animals}, without a ratio',
  fewer: '{factor}: fewer {outcome} in {animals}, without a ratio',
  clear: 'the interval leaves out 1',
  open: 'the interval holds 1: it may be nothing',
  disagree: 'The studies contradict each other.',
} as const
