import { fill } from '#core/outcome/finding.ts'
import type { Missing, MissingCode } from './missing.ts'

/** The sentences of what is missing in one language. */
export type MissingWording = {
  readonly missing: Readonly<Record<MissingCode, string>>
  readonly codes: Readonly<Record<string, string>>
}

/**
 * What a missing thing is called. Lists of codes are said in words; a code without words is said as it is.
 *
 * @example sayMissing(missing, chaptersInEnglish) // 'LEFT ear, not assessed: drum, narrowing'
 */
export function sayMissing({ code, about, side }: Missing, wording: MissingWording): string {
  const said = Object.entries(about).map(([key, value]) => [
    key,
    value
      .split(', ')
      .map((part) => wording.codes[part] ?? part)
      .join(', '),
  ])
  return fill(wording.missing[code], { ...Object.fromEntries(said), ...(side ? { side } : {}) })
}
