import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import { yearlyReportWords } from '#content/wording/yearly-report.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Ends, YearlyRate } from '#core/yearly/yearly-rate.ts'
import type { Block } from '../render/model.ts'

const words = yearlyReportWords.rates

/** Whole numbers of 100; an end of an interval is never rounded towards the middle. */
export function hundred([low, high]: Ends): { readonly low: string; readonly high: string } {
  return { low: String(Math.floor(tidy(100 * low))), high: String(Math.ceil(tidy(100 * high))) }
}

export function ofHundred(share: number): string {
  return String(Math.round(100 * share))
}

/** 0.57 times 100 is 56.99999999999999 to a machine, and would be rounded down. */
function tidy(value: number): number {
  return Math.round(value * 1e4) / 1e4
}

/** One rate in a sentence: what was counted, how sure it is, and how many are not in it. */
export function sayRate(rate: YearlyRate, shownFrom: number): string {
  return fill(words.of, { outcome: ownOutcomeNames[rate.outcome], sentence: sentenceOf(rate, shownFrom) })
}

function sentenceOf(rate: YearlyRate, shownFrom: number): string {
  const { events, total, lost } = rate
  const about = { events: String(events), total: String(total), due: String(total + lost), rest: restOf(rate) }
  switch (rate.said) {
    case 'nobody':
      return `${lost === 0 ? words.nobody : fill(words.unknown, about)}${waitingOf(rate)}`
    case 'none-yet':
      return fill(words.none, { ...about, upTo: hundred([0, rate.upTo ?? 1]).high })
    case 'withheld':
      return fill(words.withheld, { ...about, from: String(shownFrom) })
    case 'shown':
      return fill(words.shown, { ...about, share: ofHundred(rate.share ?? 0), ...hundred(rate.exact ?? [0, 1]) })
  }
}

function restOf(rate: YearlyRate): string {
  const { lost, bestAndWorst: span } = rate
  const said = span && {
    lost: String(lost),
    best: ofHundred(span[0]),
    worst: ofHundred(span[1]),
  }
  const side = rate.ofNoSide ? fill(words.lostSide, { count: String(rate.ofNoSide) }) : ''
  return `${lost > 0 && said ? fill(words.lost, said) : ''}${side}${waitingOf(rate)}`
}

function waitingOf({ notYetDue, notYetDueWithEvent }: YearlyRate): string {
  if (notYetDue === 0) return ''
  const about = { count: String(notYetDue), events: String(notYetDueWithEvent) }
  return fill(notYetDueWithEvent > 0 ? words.waitingWith : words.waiting, about)
}

/** The same numbers as a table, counted one way. */
export function tableOfRates(
  rates: readonly YearlyRate[],
  unit: YearlyRate['unit'],
  caption: string = fill(words.table, { unit: words.units[unit] }),
): Block {
  const { columns, cells } = words
  return {
    kind: 'table',
    caption,
    rowHeader: true,
    columns: [
      { head: columns.outcome, align: 'left', share: 2.6 },
      { head: columns.had, align: 'right', share: 1.2 },
      { head: columns.share, align: 'right', share: 1.2 },
      { head: columns.wilson, align: 'right', share: 0.8 },
      { head: columns.lost, align: 'right', share: 0.8 },
      { head: columns.span, align: 'right', share: 1.1 },
      { head: columns.waiting, align: 'right', share: 0.7 },
    ],
    rows: rates
      .filter((rate) => rate.unit === unit)
      .map((rate) => [
        ownOutcomeNames[rate.outcome],
        fill(cells.had, { events: String(rate.events), total: String(rate.total) }),
        shareCell(rate),
        rate.wilson ? range(rate.wilson) : cells.nobody,
        String(rate.lost),
        rate.bestAndWorst && rate.lost > 0
          ? `${ofHundred(rate.bestAndWorst[0])}–${ofHundred(rate.bestAndWorst[1])}`
          : cells.nobody,
        String(rate.notYetDue),
      ]),
  }
}

function shareCell(rate: YearlyRate): string {
  const { cells } = words
  switch (rate.said) {
    case 'nobody':
      return cells.nobody
    case 'none-yet':
      return fill(cells.upTo, { upTo: hundred([0, rate.upTo ?? 1]).high })
    case 'withheld':
      return cells.withheld
    case 'shown':
      return fill(cells.share, { share: ofHundred(rate.share ?? 0), ...hundred(rate.exact ?? [0, 1]) })
  }
}

/** The intervals that know that two ears of one animal are not two animals; null where there is none. */
export function sayAcross(rates: readonly YearlyRate[]): string | null {
  const said = rates.flatMap(({ outcome, acrossAnimals }) =>
    acrossAnimals ? [fill(words.acrossOne, { outcome: ownOutcomeNames[outcome], ...hundred(acrossAnimals) })] : [],
  )
  return said.length === 0 ? null : fill(words.across, { list: said.join('; ') })
}

function range(ends: Ends): string {
  const { low, high } = hundred(ends)
  return `${low}–${high}`
}
