import { howKnown, inWords, say, whereFrom } from './facts.mjs'
import { head, plainText, table } from './markdown.mjs'

/** Everything sources say differently, collected from the facts, and what the tool does with it. */
export function disagreementsPage({ formulary, emergency, disagreements, rowKey, over, caution }) {
  const rows = formulary.flatMap((drug) =>
    drug.doses.map((row) => ({ drug, row, key: `${drug.name}, ${row.species}` })),
  )
  return [
    ...head(
      'Where sources disagree',
      'Both sides are kept, never averaged, and neither is a default. The first side is the one that checks are held against. Doses are chosen by a person, a house policy or a named plan.',
      caution,
    ),
    '## Ranges of a dose',
    '',
    `A dose is judged against the first range. Above it the finding names every other source that reaches the dose; from ${say(over.confirm)} times its upper end a second person and a reason are asked for, from ${say(over.block)} times it is refused.`,
    '',
    ...table(
      ['drug', 'row', 'judged against', 'another source', 'also'],
      rows
        .filter(({ row }) => row.otherRanges?.length)
        .map(({ row, key }) => [
          key,
          keyOf(rowKey, row),
          side(row.range),
          row.otherRanges.map(side).join('\n'),
          most(row),
        ]),
    ),
    '## How often',
    '',
    'The first interval counts for "too soon" and for what falls due.',
    '',
    ...table(
      ['drug', 'row', 'counts', 'another source'],
      rows
        .filter(({ row }) => row.otherIntervals?.length)
        .map(({ row, key }) => [
          key,
          keyOf(rowKey, row),
          worded(row.interval),
          row.otherIntervals.map(worded).join('\n'),
        ]),
    ),
    '## Limits of local anaesthetics',
    '',
    'The lower limit is the one that fills up; the other is shown and never used.',
    '',
    ...table(
      ['drug', 'species', 'limit', 'another source'],
      formulary.flatMap((drug) =>
        (drug.localAnaesthetic?.otherLimits ?? []).map((other) => [
          drug.name,
          other.species,
          side(drug.localAnaesthetic.limits[other.species]),
          side(other),
        ]),
      ),
    ),
    '## Editions of the emergency sheet',
    '',
    'The sheet prints one number, with its edition and the reason; an old chart on the wall is recognised by the others.',
    '',
    ...table(
      ['call', 'drug', 'species', 'printed', 'other edition'],
      emergency.flatMap((group) =>
        group.rows
          .map((row) => ({ row, others: row.otherEditions.filter((one) => say(one.value) !== say(row.dose.value)) }))
          .filter(({ others }) => others.length > 0)
          .map(({ row, others }) => [
            inWords(group.call),
            row.name,
            row.species.join(', '),
            `${side(row.dose)}: ${plainText(row.edition)}. ${plainText(row.reason)}`,
            others.map((one) => `${side(one)}: ${plainText(one.edition)}`).join('\n'),
          ]),
      ),
    ),
    '## Rows and rules that stand side by side',
    '',
    ...table(
      ['about', 'one side and the other', 'what the tool does'],
      disagreements.map(({ about, says, rows: named = [], does }) => [
        plainText(about),
        [...named.map((one) => rowSide(one, formulary, rowKey)), ...says.map(side)].join('\n'),
        plainText(does),
      ]),
    ),
  ]
}

function rowSide({ drug, species, row: wanted }, formulary, rowKey) {
  const row = formulary
    .find(({ id }) => id === drug)
    ?.doses.find((one) => one.species === species && rowKey(one) === wanted)
  if (!row) throw new Error(`${drug} has no row "${wanted}" for a ${species}.`)
  return `${keyOf(rowKey, row)}: ${side(row.range)}`
}

const keyOf = (rowKey, row) => plainText(rowKey(row))
const from = (fact) => `${howKnown(fact)}; ${whereFrom(fact)}`
const side = (fact) => `${plainText(say(fact.value))} (${from(fact)})`
const worded = (fact) => `${plainText(fact.value.words)} (${from(fact)})`
const most = ({ maxSingle }) => (maxSingle ? `over ${say(maxSingle.value.limit)} at once is refused` : '')
