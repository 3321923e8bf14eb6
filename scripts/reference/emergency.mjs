import { howKnown, say, whereFrom } from './facts.mjs'
import { head, plainText, table } from './markdown.mjs'

/** The emergency rows: one number each, with the edition, the reason, and what other editions say. */
export function emergencyPage({ emergency, emergencyCalls, caution }) {
  const groups = [...emergency].sort((a, b) => emergencyCalls.indexOf(a.call) - emergencyCalls.indexOf(b.call))
  return [
    ...head(
      'Emergency sheet',
      'Grouped by what is shouted. Each row holds one number, chosen with its edition and reason; what other editions give is kept beside it so that an old chart on the wall is recognised.',
      caution,
    ),
    ...groups.flatMap((group) => [
      `## ${group.call}`,
      '',
      ...table(
        ['do', 'species', 'how known', 'source'],
        group.steps.map((step) => [plainText(step.value), step.species.join(', '), howKnown(step), whereFrom(step)]),
      ),
      ...table(
        [
          'drug',
          'species',
          'route',
          'dose',
          'why this number',
          'strength',
          'give',
          'other editions (not used)',
          'how known',
          'source',
        ],
        group.rows.map((row) => [
          row.name,
          row.species.join(', '),
          row.routes.join(' or '),
          `${say(row.dose.value)}${row.follow ? `\nthen ${say(row.follow.value)}` : ''}`,
          `${plainText(row.edition)}: ${plainText(row.reason)}`,
          row.stock ? say(row.stock) : 'the product itself',
          plainText(row.give),
          row.otherEditions
            .map((other) => `${say(other.value)}: ${plainText(other.edition)}, ${whereFrom(other)}`)
            .join('\n') || 'none recorded',
          `${howKnown(row.dose)}${row.follow ? `\n${howKnown(row.follow)}` : ''}`,
          `${whereFrom(row.dose)}${row.follow ? `\n${whereFrom(row.follow)}` : ''}`,
        ]),
      ),
    ]),
  ]
}
