import { fill } from '#core/outcome/finding.ts'
import type { AgainstIsolate, CultureOption, Dosing, OptionFindingCode } from './option.ts'
import type { StandingCode } from './standing.ts'

/** The sentences that an option is said with; they stand in content/wording. */
export type OptionWords = {
  readonly standing: Readonly<Record<StandingCode, string>>
  readonly findings: Readonly<Record<OptionFindingCode, string>>
  readonly dosing: Readonly<Record<Exclude<Dosing['kind'], 'rows'>, string>>
  /** The dose that a standard assumes where it calls the organism susceptible. */
  readonly assumes: string
  readonly because: string
  /** Whose breakpoint it is, as people say it. */
  readonly hosts: Readonly<Record<string, string>>
  readonly rawMissing: string
  readonly or: string
}

/**
 * How a drug stands against one isolate, as a sentence.
 *
 * @example sayAgainst(option.against[0], words) // 'Proteus mirabilis is resistant: 4 mg/L; …'
 */
export function sayAgainst({ because, printed, reading }: AgainstIsolate, words: OptionWords): string {
  const breakpoint = reading?.breakpoint
  const said = fill(words.standing[because], {
    organism: printed,
    raw: reading?.raw || words.rawMissing,
    standard: breakpoint?.standard ?? '',
    susceptible: breakpoint?.susceptible ?? '',
    resistant: breakpoint?.resistant ?? '',
    dose: breakpoint?.dose ?? '',
    possible: (reading?.possible ?? []).join(words.or),
    fallback: reading?.fallback?.breakpoint.standard ?? '',
    fallbackCategory: reading?.fallback?.category ?? '',
    fallbackHost: words.hosts[reading?.fallback?.breakpoint.host ?? ''] ?? reading?.fallback?.breakpoint.host ?? '',
    laboratory: reading?.laboratory ?? '',
  })
  const dose = because === 'susceptible' && breakpoint?.dose
  return dose ? `${said} ${fill(words.assumes, { dose })}` : said
}

/** Why it could be used, and why not: what speaks for it first, each isolate by itself. */
export function sayWhyOf(
  option: Pick<CultureOption, 'against' | 'findings' | 'dosing'>,
  words: OptionWords,
): { readonly why: readonly string[]; readonly whyNot: readonly string[] } {
  const works = ({ standing }: AgainstIsolate) => standing === 'works' || standing === 'works-at-dose'
  const said = (some: readonly AgainstIsolate[]) => some.map((one) => sayAgainst(one, words))
  return {
    why: said(option.against.filter(works)),
    whyNot: [
      ...said(option.against.filter((one) => !works(one))),
      ...option.findings.map(({ code, about }) => fill(words.findings[code], about)),
      ...sayDosing(option.dosing, words),
    ],
  }
}

function sayDosing(dosing: Dosing, words: OptionWords): string[] {
  if (dosing.kind === 'rows') return []
  const why = 'because' in dosing && dosing.because !== '' ? fill(words.because, { because: dosing.because }) : ''
  return [fill(words.dosing[dosing.kind], { because: why })]
}
