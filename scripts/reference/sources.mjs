import { head, plainText, table } from './markdown.mjs'

/** The publications, labels, pages and house decisions, and what rests on each. */
export function sourcesPage({ sources, usedBy, caution }) {
  return [
    ...head(
      'Sources',
      'What every number rests on. “Where it was read” says so when the publication itself was not in hand: an abstract, a page that quotes it, a copy.',
      caution,
    ),
    ...table(
      ['id', 'citation', 'kind', 'where it was read', 'used by'],
      sources.map((source) => [
        `<a id="${source.id}"></a>${source.id}`,
        plainText(source.citation),
        source.strength,
        plainText(source.seenAt ?? 'not recorded'),
        (usedBy.get(source.id) ?? []).join(', ') || 'nothing yet',
      ]),
    ),
  ]
}
