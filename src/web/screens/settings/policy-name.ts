import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'

/** A policy as people call it; its own name where the tool knows none. */
export function policyName(policy: string): string {
  const names: Readonly<Record<string, string>> = words.names
  return names[policy] ?? policy
}
