import type { Provenance } from '#core/evidence/sourced.ts'

/** What is done around an animal that carries such a germ: remembered from guidelines, not read in them. */
export const hygieneKnown = {
  sources: ['wavd-2017-meticillin', 'cain-2013'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance

/** For the owner, on the home page. Plain words; grade 8 at most (tested). */
export const hygieneInEnglish = {
  title: 'A germ that is hard to treat',
  found: 'A test found a germ that many medicines do not kill. Its short name is {name}.',
  maybe: 'A test found a germ that many medicines may not kill ({name}). Until we know, please do the same.',
  items: {
    value: [
      'Wash your hands before and after you touch the ear, the bandage or the medicine.',
      'Do not let your pet lick a face or a wound.',
      'Cover any cut on your own skin.',
      'Wash its bedding hot.',
      'Do not share a bed with it while the wound drains.',
      'Is somebody at home a baby, ill, or hurt, or do they work with sick people? Then they tell their doctor.',
    ],
    ...hygieneKnown,
  },
  keep: 'You need not give your pet away. The germ can stay for months, even when the ear looks well.',
  tellVets: 'Tell each vet you go to about this germ before you come in.',
} as const

/** For the clinic and for colleagues. */
export const hygieneForClinic = {
  title: 'Hygiene',
  found: '{name} ({organism}) on record, {side} ear, {date}.',
  maybe: 'Possibly {name} ({organism}), {side} ear, {date}: the same hygiene until a test settles it.',
  practice: {
    value:
      'Gloves and apron, hands disinfected before and after, last on the list, the wound covered, a bandage box of its own, table and clippers cleaned and disinfected; in the ward apart. Tell the next clinic. No routine treatment of carriers, no screening of healthy owners.',
    ...hygieneKnown,
  },
  lasts: 'Animals may carry it for months after the ear has healed.',
  report: {
    methicillinAureus: 'Ask whether the law here wants it reported.',
    carbapenemase: 'Have it confirmed before anything else, and ask whether the law here wants it reported.',
  },
  handed: 'A home page that was handed out before {date} does not say so.',
} as const
