import type { VetLinkState } from '#core/people/vet-link-state.ts'
import type { VetStretch } from '../follow-up/vet-link-rules.ts'
import { caseLinksInEnglish } from './app-case-links.ts'

/** The links for referring practices, on the page of the case. */
export const vetLinksInEnglish = {
  ...caseLinksInEnglish,
  title: 'Referring practice',
  open: 'Show the links for the referring practice',
  lead: 'A short form with our coded questions about the operated ear, for a look made at another practice. It opens without an account for whoever has its address, and shows name, species, ear and day, nothing else of the record.',
  noVet: 'No practice is named for this animal. Name its referring vet, or add a vet to its people; then make a link.',
  notOperated: 'No ear is on record as operated yet: there is nothing to look at.',
  died: 'The animal has died: nobody is asked about it any more.',
  whom: 'Practice',
  what: 'What they are asked to look at',
  stretchesTitle: 'Whatever they see for some time',
  looksTitle: 'One look that is owed',
  look: '{what}, until {day}',
  stretches: {
    'weeks-6': 'for 6 weeks',
    'months-6': 'for 6 months',
    'months-14': 'for 14 months',
  } satisfies Record<VetStretch, string>,
  make: 'Make a link',
  list: 'Links of the referring practice',
  whose: 'For {name}: {asked}',
  whoseEar: 'For {name}: {asked}, {side} ear',
  asks: {
    stitches: 'stitches and wound',
    wound: 'the wound in week 4',
    'face-and-eye': 'face and eye',
    recheck: 'recheck',
    year: 'after a year',
    stretch: 'whatever they see',
  },
  states: {
    ...caseLinksInEnglish.states,
    'vet-gone': 'closed: no longer a practice of this animal',
  } satisfies Record<VetLinkState, string>,
} as const
