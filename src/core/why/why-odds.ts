import type { Published, PublishedCount } from '#core/evidence/published.ts'
import { type OddsWording, sayPublished } from '#core/evidence/say-published.ts'
import { input, said, type Why, type WhyInput, why } from './why.ts'

/**
 * Why an owner hears these odds: every study's own count with its exact interval, what was found and set aside, and the
 * sentence itself. Counts are never merged here.
 *
 * @example whyOdds(publishedFor(question, studies), oddsInEnglish).inputs[0].value // '81 ÷ 309'
 * Reference: one study is one study; exact interval after Clopper and Pearson 1934.
 */
export function whyOdds(published: Published, wording: OddsWording): Why {
  const found = foundIn(published)
  const spoken = sayPublished(published, wording)
  return why({
    title: said('title-odds', { what: wording.outcomes[published.question.outcome].operated }),
    inputs: [...found.map(counted), ...published.aside.flatMap(asideCount)],
    formula: [
      ...found.map(share),
      ...found.map(interval),
      ...(found.length > 1 ? [said('not-merged', { number: String(found.length) })] : []),
    ],
    result: said('text', { text: spoken.sentence }),
    notes: [
      ...[...spoken.lines, ...spoken.notes].map((text) => said('text', { text })),
      ...published.aside.map(({ row, because }) => said('aside', { study: row.study, because })),
    ],
    facts: found.map(({ row }) => row),
  })
}

function foundIn(published: Published): readonly PublishedCount[] {
  if (published.kind === 'unknown') return []
  return published.kind === 'one-study' ? [published.found] : published.found
}

function counted({ row, count }: PublishedCount): WhyInput {
  return input('count', `${count.events} ÷ ${count.total}`, { of: row.study, fact: row })
}

function asideCount({ row }: Published['aside'][number]): WhyInput[] {
  const { counted: what } = row
  const value = what.kind === 'count' ? `${what.events} ÷ ${what.total}` : what.printed
  return [input('set-aside', value, { of: row.study })]
}

function share({ row, count, share: part }: PublishedCount) {
  const about = { study: row.study, events: String(count.events), total: String(count.total), share: ofHundred(part) }
  return said('share-of-total', about)
}

function interval({ row, exact }: PublishedCount) {
  return said('exact-interval', { study: row.study, low: ofHundred(exact.low), high: ofHundred(exact.high) })
}

/** One decimal: enough to check the arithmetic; what the owner hears is rounded further. */
function ofHundred(part: number): string {
  return (100 * part).toFixed(1)
}
