import { susceptibility } from '#content/susceptibility/index.ts'
import { breakpointSettings } from '#content/wording/app-settings-breakpoints.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { editionPolicy, factsOfHouse } from '#core/culture/house-facts.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'

/** A policy as people call it; its own name where the tool knows none. */
export function policyName(policy: string): string {
  const names: Readonly<Record<string, string>> = { ...words.names, [editionPolicy]: breakpointSettings.policy }
  return names[policy] ?? policy
}

/** What it sets, in words: an edition is kept by its id and said by its name. */
export function policyValue(
  { policy, value }: BodyOf<'house-policy'>,
  file: Pick<CaseFile, 'house' | 'people'>,
): string {
  if (policy !== editionPolicy) return value
  const named = factsOfHouse(file, susceptibility).editions.find(({ id }) => id === value)
  return named ? editionName(named) : value
}
