import { routeWords } from '#content/wording/app-form-words.ts'
import { speciesInEnglish, usesInEnglish } from '#content/wording/app-formulary.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { drugs } from './drugs.ts'

/** What a dose policy is about, without its dose. */
export function dosePolicyName({ drug, species, use, route, qualifier }: BodyOf<'dose-policy'>): string {
  const name = drugs.find(({ id }) => id === drug)?.name ?? drug
  const way = route ? routeWords[route] : words.anyRoute
  return `${name}, ${speciesInEnglish[species].toLowerCase()}, ${usesInEnglish[use]}, ${way}${qualifier ? ` (${qualifier})` : ''}`
}
