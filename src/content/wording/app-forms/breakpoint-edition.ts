import type { FormWords } from '#core/forms/words.ts'
import { breakpointsInEnglish as words } from '../app-breakpoints.ts'

export const breakpointEdition = {
  kind: 'breakpoint-edition',
  purpose: 'The clinic’s own copy of an edition of breakpoints, loaded from its file.',
  sections: { edition: 'Edition' },
  fields: {
    standard: { label: 'Standard' },
    edition: { label: 'Edition' },
    year: { label: 'Year' },
    convention: { label: 'How the ends are read', options: { CLSI: 'CLSI', EUCAST: 'EUCAST' } },
    audience: { label: 'Made for', options: words.audiences },
    from: { label: 'Whose copy' },
    rows: { label: 'Rows', add: 'Add a row', item: 'Row {number}' },
    'rows.kind': {
      label: 'What it is',
      options: {
        clinical: 'a value for animals',
        'human-derived': 'taken from people, printed for animals',
        human: 'a value for people',
        screen: 'a screening test',
        none: 'no value',
      },
    },
    'rows.host': { label: 'Animal', options: { dog: 'dog', cat: 'cat', human: 'people' } },
    'rows.organisms': { label: 'Organism' },
    'rows.agent': { label: 'Drug' },
    'rows.sites': { label: 'Sites', options: words.sites },
    'rows.route': { label: 'Route', options: words.routes, none: 'not stated' },
    'rows.method': { label: 'Method', options: { MIC: 'MIC', DISK: 'zone' } },
    'rows.disk': { label: 'Load of the disk', none: 'no disk' },
    'rows.susceptible': { label: 'Susceptible' },
    'rows.between': { label: 'Between' },
    'rows.resistant': { label: 'Resistant' },
    'rows.dose': { label: 'Dose that S assumes', none: 'not stated' },
    'rows.remark': { label: 'Remark', none: 'none' },
  },
} as const satisfies FormWords
