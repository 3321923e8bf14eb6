import { reasonGroupNames } from '#content/wording/main-reasons.ts'
import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import { yearlyReportWords } from '#content/wording/yearly-report.ts'
import { partCounts } from '#core/evidence/own/silent-counts.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { YearlyReason } from '#core/yearly/report-of.ts'
import { type Block, heading, list, paragraph } from '../render/model.ts'
import { drawRates } from './draw-rates.ts'
import { sayRate, tableOfRates } from './say-rates.ts'

const words = yearlyReportWords.reasons

/** The ears of one operation by what they were operated for: how much is known of each, sentences, chart, table. */
export function reasonBlocks(reasons: readonly YearlyReason[], shownFrom: number): Block[] {
  const title = heading(2, words.title)
  if (reasons.every(({ reason }) => reason === 'not-recorded')) return [title, paragraph(words.none)]
  return [title, paragraph(words.lead), ...reasons.flatMap((one) => blocksOf(one, shownFrom))]
}

function blocksOf({ reason, ears, rates }: YearlyReason, shownFrom: number): Block[] {
  const name = { reason: capital(reasonGroupNames[reason]), ears: String(ears) }
  const { said, silent } = partCounts(rates)
  const sentences = said.map((rate) => sayRate(rate, shownFrom))
  const chart = drawRates(said, sentences.join(' '), fill(words.chart, name))
  const unsaid = silent.flatMap(({ counts }) => counts.map(({ outcome }) => ownOutcomeNames[outcome]))
  return [
    heading(3, fill(words.of, name)),
    paragraph(sayKnown(rates)),
    ...(sentences.length > 0 ? [list(sentences)] : []),
    ...(unsaid.length > 0 ? [paragraph(fill(words.silent, { outcomes: unsaid.join('; ') }))] : []),
    ...(chart ? [chart] : []),
    ...(said.length > 0 ? [tableOfRates(said, 'ear', fill(words.table, name))] : []),
  ]
}

/** How much is known comes first, of each reason too. */
function sayKnown(rates: YearlyReason['rates']): string {
  const year = rates.find(({ outcome }) => outcome === 'resolution_or_improved')
  const known = year?.total ?? 0
  const lost = year?.lost ?? 0
  if (known + lost === 0) return words.yearNone
  return fill(words.year, { due: String(known + lost), known: String(known), lost: String(lost) })
}
