import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import type { Drug } from '#core/formulary/drug.ts'

export const drugs: readonly Drug[] = [...formulary].sort((a, b) => (a.name < b.name ? -1 : 1))
export const choosingFacts = { drugs, rules: dosingRules } as const
