import { factsIn, howKnown, inWords, sayFact, whereFrom } from './facts.mjs'
import { head, table } from './markdown.mjs'

/** Every sourced number that belongs to no single drug, study or operation. */
export function rulesPage({ protocols, caution }) {
  return [
    ...head(
      'Rules and protocols',
      'The numbers behind the checks, the formulas, the blood marks, the scores and what falls due, each with its source.',
      caution,
    ),
    ...protocols.flatMap(({ name, value }) => {
      const facts = factsIn(value)
      if (facts.length === 0) return []
      return [
        `## ${inWords(name)}`,
        '',
        ...table(
          ['what', 'value', 'how known', 'source'],
          facts.map(({ path, fact }) => [
            path.map((step) => (/^\d+$/.test(step) ? `${Number(step) + 1}` : inWords(step))).join(', ') ||
              inWords(name),
            sayFact(fact) || 'rests on this source',
            howKnown(fact),
            whereFrom(fact),
          ]),
        ),
      ]
    }),
  ]
}
