import { antibiogramRules } from '#content/susceptibility/antibiogram-rules.ts'
import { antibiogramInEnglish as words } from '#content/wording/antibiogram.ts'
import type { AntibiogramMethod } from '#core/antibiogram/method.ts'
import { fill } from '#core/outcome/finding.ts'

/** How a table was made, in sentences: a share without its method cannot be compared with any other. */
export function sayMethod({ first, sites }: AntibiogramMethod, standard: string): string[] {
  return [sayFirst(first), words.sites[sites], fill(words.share, { standard })]
}

function sayFirst(first: AntibiogramMethod['first']): string {
  const template = words.first[first.kind]
  if (first.kind === 'calendar-year') return template
  const days = String(first.days)
  if (first.kind === 'episode') return fill(template, { days })
  const { susceptibleToResistant, byOneStep } = antibiogramRules.points.value
  const threshold = fill(words.threshold[first.when], { points: String(first.points) })
  return fill(template, { days, threshold, full: String(susceptibleToResistant), half: String(byOneStep) })
}
