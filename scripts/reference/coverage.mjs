import { factsIn, inWords } from './facts.mjs'
import { head, table } from './markdown.mjs'

const kinds = ['read', 'remembered', 'common-practice', 'house']
const heads = ['read', 'remembered', 'common practice', 'house']

/** What the formulary holds for which species and use, and how much of it anybody has read. */
export function coveragePage({ formulary, speciesList, caution }) {
  const all = formulary.flatMap((drug) => factsIn(drug).map(({ path, fact }) => ({ drug, what: whatOf(path), fact })))
  const numbers = all.filter(({ what }) => what)
  const perKind = [...new Set(numbers.map(({ what }) => what))]
  return [
    ...head(
      'Coverage of the formulary',
      'How many figures there are for each drug, species and use, and how they are known. A figure is a range, another source’s range, an interval, a maximum, a list of strengths or a limit. "Read" says that somebody read it there, not that it is right; what is missing is unknown, not unlimited.',
      caution,
    ),
    `${formulary.length} drugs, ${count(formulary, (drug) => drug.doses.length)} rows, ${numbers.length} figures, ${count(formulary, (drug) => drug.none.length)} written "none".`,
    '',
    '## By kind of figure',
    '',
    ...table(
      ['figure', 'number', ...heads],
      [...perKind.map((what) => [what, numbers.filter((one) => one.what === what)]), ['all', numbers]].map(
        ([what, some]) => [what, some.length, ...shares(some.map(({ fact }) => fact))],
      ),
    ),
    '## By drug, species and use',
    '',
    'The last column is how surely the range itself was copied. Strengths of products are common practice throughout and are left out here.',
    '',
    ...table(
      ['drug', 'species', 'use', 'rows', 'figures', ...heads, 'range'],
      formulary.flatMap((drug) => speciesList.flatMap((species) => linesOf(drug, species))),
    ),
  ]
}

function linesOf(drug, species) {
  const rows = drug.doses.filter((row) => row.species === species)
  const uses = [...new Set(rows.map(({ use }) => use))]
  const name = `[${drug.name}](formulary.md#${drug.id})`
  const without = drug.none.filter((none) => none.species === species)
  return [
    ...uses.map((use) => {
      const some = rows.filter((row) => row.use === use)
      const facts = factsIn(some).flatMap(({ path, fact }) => {
        const what = whatOf(['doses', ...path])
        return what && what !== 'strengths' && what !== 'tablets' ? [fact] : []
      })
      const surely = [...new Set(some.map(({ range }) => range.confidence))].join(', ')
      return [name, species, inWords(use), some.length, facts.length, ...shares(facts), surely]
    }),
    ...without.map((none) => [
      name,
      species,
      none.formulation ?? (none.use ? inWords(none.use) : 'every use'),
      none.why === 'never' ? '**never**' : 'none found',
      '',
      '',
      '',
      '',
      '',
      none.confidence,
    ]),
  ]
}

const columns = {
  range: 'range',
  otherRanges: 'range of another source',
  interval: 'interval',
  otherIntervals: 'interval of another source',
  maxSingle: 'most at once',
  maxCumulative: 'most in all',
  stocks: 'strengths',
  tablets: 'tablets',
}

/** Which figure a fact is, by where it stands; words without a figure (cautions, exclusions, "none") are none. */
function whatOf([part, , column]) {
  if (part === 'localAnaesthetic') return 'local anaesthetic: limit and washout'
  return part === 'doses' ? columns[column] : undefined
}

function shares(facts) {
  return kinds.map((kind) => {
    const some = facts.filter(({ known }) => known === kind).length
    return some === 0 ? '–' : `${Math.round((100 * some) / facts.length)} %`
  })
}

const count = (drugs, of) => drugs.reduce((sum, drug) => sum + of(drug), 0)
