import { foundIn, type Published, type PublishedCount } from '#core/evidence/published.ts'
import { type AllOddsWording, sayTold } from '#core/evidence/say-told.ts'
import { conflictOf, type EvidenceRules, type Middle, middleOf, type Told } from '#core/evidence/told.ts'
import { effectiveSize } from '#core/stats/predictive/effective-size.ts'
import { input, said, type Why, type WhyInput, type WhySaid, why } from './why.ts'

/**
 * Why an owner hears these odds: every study's own count with its exact interval, what a clinic should expect that nobody
 * has counted, our own approved count and what both say together, what was set aside, and the sentence itself.
 *
 * @example whyOdds(told, wording, evidenceRules).inputs[0].value // '81 ÷ 309'
 * Reference: exact interval after Clopper and Pearson 1934; one study is one study.
 */
export function whyOdds(told: Told, wording: AllOddsWording, rules: EvidenceRules): Why {
  const { published, own, expected } = told
  const found = foundIn(published)
  const spoken = sayTold(told, wording)
  return why({
    title: said('title-odds', { what: wording.odds.outcomes[published.question.outcome].operated }),
    inputs: [
      ...found.map(counted),
      ...(own ? [input('own-count', `${own.events} ÷ ${own.total}`)] : []),
      ...published.aside.flatMap(asideCount),
    ],
    formula: [...found.map(share), ...found.map(interval), ...joining(told, rules)],
    result: said('text', { text: spoken.sentence }),
    notes: [
      ...[...spoken.lines, ...spoken.own, ...spoken.notes].map((text) => said('text', { text })),
      ...published.aside.map(({ row, because }) => said('aside', { study: row.study, because })),
    ],
    facts: [
      ...told.quoted,
      ...found.map(({ row }) => row),
      ...(expected ? [rules.priors] : []),
      ...(own ? [rules.weakWeight] : []),
    ],
  })
}

/** From the studies to what a new clinic should expect, and from there to what our own count makes of it. */
function joining(told: Told, { priors, weakWeight }: EvidenceRules): WhySaid[] {
  const { expected, own, updated } = told
  const conflict = conflictOf(told)
  if (!expected) return []
  const { mu, tauScale } = priors.value
  return [
    said('predictive', {
      studies: String(expected.studies),
      mean: String(mu.mean),
      sd: String(mu.sd),
      tau: String(tauScale),
      ...middleText(middleOf(expected.predictive.distribution)),
      worth: effectiveSize(expected.predictive.distribution).moment.toFixed(1),
    }),
    ...(own && updated
      ? [
          said(updated.trusted ? 'joined' : 'joined-untrusted', {
            weight: String(weakWeight.value),
            events: String(own.events),
            total: String(own.total),
            after: updated.weakWeight.toFixed(2),
            ...middleText(updated),
          }),
        ]
      : []),
    ...(conflict?.kind === 'compared' ? [said('conflict', { p: conflict.box.toFixed(3) })] : []),
    ...(conflict?.kind === 'cannot-conflict' ? [said('cannot-conflict', { total: String(conflict.total) })] : []),
  ]
}

function middleText({ mean, median, interval: { low, high } }: Middle) {
  return { middle: ofHundred(mean), median: ofHundred(median), low: ofHundred(low), high: ofHundred(high) }
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
