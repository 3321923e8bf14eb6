import type { BodySite, BreakpointHost, BreakpointKind } from '#core/culture/breakpoint.ts'

/** Breakpoints and their editions, in English. */
export const breakpointsInEnglish = {
  warning:
    'Second-hand: none of these values was read in the document itself. Compare them with your own copy before you rely on one; a clinic can load the edition that it owns.',
  never: 'An old edition is never changed: a case keeps the edition that its result was judged by.',
  doses: 'Doses of people are left out. None may be scaled to an animal.',
  ownTitle: 'Our own copies',
  ownChange: 'Load a copy, or choose by which edition animals are read',
  noOwn: 'This clinic has loaded none.',
  ownHand: 'Our own copy: {from}.',
  ownReplaced: 'Our own copy, replaced or taken back since; kept for what was judged by it: {from}.',
  list: { edition: 'Edition', of: 'Made for', rows: 'Rows', state: 'State' },
  audiences: { animals: 'animals', people: 'people' },
  madeFor: {
    animals: 'Made for animals.',
    people: 'Made for people: shown beside, marked, where an animal has no value of its own.',
  },
  current: 'the newest held here',
  former: 'superseded, kept for old cases',
  notInForce: 'information, never a category',
  conventions: {
    CLSI: 'CLSI: S up to the first number, R from the last one on; for zones the other way round.',
    EUCAST:
      'EUCAST: S up to the first number, R beyond the last one; for zones the other way round. I means susceptible with more of the drug.',
  },
  hosts: { dog: 'dog', cat: 'cat', human: 'people', any: 'any animal' } satisfies Record<BreakpointHost, string>,
  sites: {
    'soft-tissue': 'skin and soft tissue',
    urinary: 'urine',
    respiratory: 'airways',
    genital: 'genital tract',
    systemic: 'infection of the body',
    any: 'no site stated',
  } satisfies Record<BodySite, string>,
  urinaryOnly: 'Urine only: never for an ear.',
  kinds: {
    clinical: '',
    'human-derived': 'taken from people, printed for animals.',
    human: '',
    screen: 'a screening test.',
    'wild-type-limit': 'end of the wild type, not S or R.',
    proposal: 'proposed, not in force.',
    none: 'no value.',
  } satisfies Record<BreakpointKind, string>,
  routes: { oral: 'by mouth', intravenous: 'into a vein', other: 'another route' },
  methods: { MIC: 'MIC, mg/L', DISK: 'zone, mm, disk {disk}' },
  anyOrganism: 'every organism',
  anyAgent: 'Every drug',
  ends: {
    nothing: 'No value is stated.',
    wild: 'wild type {end}',
    stepDose: '{value} at {dose}',
    dose: 'S assumes {dose}.',
  },
  noRows: 'This edition holds no value.',
} as const
