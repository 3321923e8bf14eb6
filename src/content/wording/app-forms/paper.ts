import type { FormWords } from '#core/forms/words.ts'
import { trayInEnglish } from '../app-tray.ts'

export const paper = {
  kind: 'paper',
  purpose: 'A paper filed to the animal or ear it belongs to.',
  sections: { paper: 'The paper' },
  fields: {
    what: { label: 'What it is', options: trayInEnglish.papers },
    title: { label: 'Title' },
    dated: { label: 'Date on the paper', help: 'As it gives itself: 14 January 2026.' },
    from: { label: 'From' },
    sideOnPaper: {
      label: 'Side named on the paper',
      help: 'As the paper says, whichever ear it is filed to.',
      options: { 'not-stated': 'no side named' },
    },
  },
} as const satisfies FormWords
