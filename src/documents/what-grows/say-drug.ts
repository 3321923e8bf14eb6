import { antibiogramInEnglish as words } from '#content/wording/antibiogram.ts'
import type { AntibiogramDrug } from '#core/antibiogram/antibiogram.ts'
import type { AntibiogramMethod } from '#core/antibiogram/method.ts'
import type { NamedFallback } from '#core/antibiogram/named-rows.ts'
import { fill } from '#core/outcome/finding.ts'

type Said = NamedFallback & Partial<Pick<AntibiogramDrug, 'untold' | 'categoryOnly' | 'doses'>>

/** `18 of 36`, `50 %`, `34–66 %`; a dash where no share is told. Whole numbers for the eye, the decimal stays in the file. */
export function shareOf({
  s,
  n,
  percent,
  interval,
  untold = null,
}: Said): [counted: string, share: string, interval: string] {
  if (percent === null || interval === null) return [n === 0 || untold === 'intrinsic' ? '–' : `${s} of ${n}`, '–', '–']
  const [low, high] = interval.map(Math.round)
  return [`${s} of ${n}`, `${Math.round(percent)} %`, `${low}–${high} %`]
}

type About = Pick<AntibiogramMethod, 'minimum' | 'flagBelow'> & {
  /** Said of the whole organism already. */
  readonly fewInAll: boolean
}

/** What stands beside the share: why there is none, that they are few, and what is not in the denominator. */
export function besideOf(drug: Said, { minimum, flagBelow, fewInAll }: About): string[] {
  const { untold = null, categoryOnly = 0, doses = [] } = drug
  if (!drug.known) return [words.notKnown]
  if (untold === 'intrinsic') return [words.untold.intrinsic]
  const counts = { ...drug, categoryOnly }
  const count = (what: keyof typeof words.counts) =>
    counts[what] === 0 ? [] : [fill(words.counts[what], { count: String(counts[what]) })]
  const needs = (share: string) => (doses.length === 0 ? share : fill(words.needs, { share, dose: doses.join('; ') }))
  return [
    ...(untold === null ? [] : [fill(words.untold[untold], { minimum: String(minimum) })]),
    ...count('sdd').map(needs),
    ...(['i', 'ns', 'notInterpretable', 'noBreakpoint', 'notTested', 'categoryOnly'] as const).flatMap(count),
    ...(drug.flag === null || drug.n === 0 || fewInAll ? [] : [fill(words.flag, { flagBelow: String(flagBelow) })]),
  ]
}
