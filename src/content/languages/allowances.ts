import type { WordsAllowances } from '#core/agreement/compare-words.ts'

/** What a translation may have in common with the English, or may leave out, each with its reason. `*` stands for one place. */
export const allowances: WordsAllowances = {
  facts: ['calendar.alarms', 'odds.outcomes.*.during'],
  own: ['aboutTranslation', 'papers.language', 'plate.language', 'odds.followed', 'unpublished'],
  forTheClinic: [{ path: 'odds.outcomes.*.meaning', because: 'said to the surgeon only, on the sources page' }],
  same: {
    es: [
      { path: 'leaflet.source', because: 'a number in brackets' },
      { path: 'leaflet.sourceLine', because: 'a number in brackets and a citation' },
      { path: 'odds.units.animal', because: 'the same word' },
      { path: 'plate.described.layers.bulla', because: 'the same word' },
      { path: 'page.groups.animal', because: 'only places to fill' },
      { path: 'page.sourceLine', because: 'a number in brackets and a citation' },
      { path: 'link.quiet.title', because: 'only a place to fill' },
      { path: 'page.closed.phone', because: 'a name and a number' },
      { path: 'told.groups.animal', because: 'only places to fill' },
      { path: 'odds.groups.animal.one', because: 'only places to fill' },
      { path: 'odds.groups.animal.many', because: 'only places to fill' },
      { path: 'told.quoted.alone', because: 'only a place to fill' },
      { path: 'home.units.liquid.*', because: 'mL' },
      { path: 'home.units.eye-ointment.*', because: 'cm' },
      { path: 'calendar.phone', because: 'a name and a number' },
      { path: 'papers.source', because: 'a citation' },
      { path: 'papers.sourceAt', because: 'a citation' },
      { path: 'agreement.box', because: 'a box to tick' },
      { path: 'agreement.adultValue.no', because: 'the same word' },
      { path: 'questions.*.choices.no', because: 'the same word' },
      { path: 'plate.massPlaced', because: 'only places to fill' },
      { path: 'plate.subtitle', because: 'only places to fill' },
    ],
  },
}
