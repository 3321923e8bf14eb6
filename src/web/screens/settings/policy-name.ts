import { breakpointSettings } from '#content/wording/app-settings-breakpoints.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { editionPolicy } from '#core/culture/house-facts.ts'

/** A policy as people call it; its own name where the tool knows none. */
export function policyName(policy: string): string {
  const names: Readonly<Record<string, string>> = { ...words.names, [editionPolicy]: breakpointSettings.policy }
  return names[policy] ?? policy
}
