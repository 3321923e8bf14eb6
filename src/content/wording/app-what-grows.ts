import type { GrownSite } from '#core/antibiogram/grown-in-journal.ts'
import type { SitesTold } from '#core/antibiogram/method.ts'
import { specimenWords } from './report.ts'

/** The page of the clinic's own cumulative antibiogram. */
export const whatGrowsInEnglish = {
  title: 'What grows here',
  lead: 'What our own samples grew, and how often each drug was read as susceptible. It guides the first dose while a culture grows; the culture of the animal itself stands above it.',
  link: 'What grows here',
  linkLead: 'Organisms of our own samples, and how often each drug was susceptible.',
  first: {
    label: 'Which isolates count',
    'calendar-year': 'The first of each animal in a calendar year',
    episode: 'The first of each animal in 365 days',
    phenotype: 'The first, and later ones with another pattern',
  },
  sites: {
    label: 'Places of sampling',
    apart: 'Apart, first isolates chosen over all',
    each: 'Apart, each with its own first isolates',
    together: 'All together',
  } satisfies Record<SitesTold | 'label', string>,
  from: 'Sampled from',
  until: 'Sampled until',
  backwards: 'This day lies before the first one. Choose a later one.',
  all: 'all places',
  places: { ...specimenWords.sites, 'second-operation': 'second operation on the same ear' } satisfies Record<
    GrownSite,
    string
  >,
  secondOperation: 'A second operation is known only where the first one is signed in our own record.',
  counted: 'Isolates on record: {isolates}. Counted here: {counted}. As of {day}.',
  preliminary: 'Isolates of reports that are not final yet: {count}. They do not count.',
  withoutSpecies: 'Isolates of animals of which nobody wrote the species: {count}. They do not count.',
  none: 'No isolate of our own counts yet. The first ones appear here with the first final culture that grew.',
  of: '{animals}: {place}',
  caption: '{organism}, {isolates}',
  captionFew: '{organism}, {isolates} (fewer than {flagBelow})',
  captionDays: '{caption}; {from} to {until}',
  noDrugs: 'No drug was tested.',
  borrowed: '{organism}, by a borrowed breakpoint',
  how: 'How this was counted',
  sources: 'Sources',
  print: 'Print',
  save: 'Save for a spreadsheet',
  file: 'What grows here {day}',
  printed: '{clinic}, printed {when}.',
} as const
