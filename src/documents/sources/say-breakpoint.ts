import { breakpointsInEnglish as words } from '#content/wording/app-breakpoints.ts'
import type { BetweenStep, Breakpoint, Edition } from '#core/culture/breakpoint.ts'
import { fill } from '#core/outcome/finding.ts'

/**
 * The ends of a row in the signs of its convention.
 *
 * @example sayEnds(row, 'CLSI') // 'S ≤ 0.06; SDD 0.12 at 10 mg/kg; R ≥ 0.25'
 */
export function sayEnds({ kind, method, ends }: Breakpoint, convention: Edition['convention']): string {
  const { susceptible, between, resistant } = ends.value
  const [toS, toR] = method === 'MIC' ? ['≤', '≥'] : ['≥', '≤']
  const beyond = convention === 'EUCAST' ? (method === 'MIC' ? '>' : '<') : toR
  if (kind === 'wild-type-limit' && susceptible !== null) return fill(words.ends.wild, { end: `${toS} ${susceptible}` })
  const said = [
    susceptible === null ? [] : `S ${toS} ${susceptible}`,
    between === null ? [] : `${between.category} ${between.steps.map(sayStep).join(', ')}`,
    resistant === null ? [] : `R ${beyond} ${resistant}`,
  ].flat()
  return said.length === 0 ? words.ends.nothing : said.join('; ')
}

function sayStep({ value, upTo, dose }: BetweenStep): string {
  const span = upTo === undefined ? value : `${value}–${upTo}`
  return dose === undefined ? span : fill(words.ends.stepDose, { value: span, dose })
}
