import type { Case } from '#core/journal/fold.ts'
import type { OwnCountingRules } from './own-outcome.ts'

/** The clinic may say itself from which day on a deficit is called lasting, and from how many known ears on its own rate is shown. */
export const figurePolicies = ['lasting-deficit-days', 'own-figures-from'] as const
type FigurePolicy = (typeof figurePolicies)[number]

/**
 * The rules of counting as this clinic has them: its policy where it is set once and can be read, else the tool's own.
 *
 * @example ownRulesOf(file.house, ownCounting).lastingFromDay.value // 180
 */
export function ownRulesOf(house: Case, rules: OwnCountingRules): OwnCountingRules {
  const days = policyNumber(house, 'lasting-deficit-days')
  const least = policyNumber(house, 'own-figures-from')
  return {
    ...rules,
    ...(days !== undefined && { lastingFromDay: { ...rules.lastingFromDay, ...byHouse, value: days } }),
    ...(least !== undefined && { shownFrom: { ...rules.shownFrom, ...byHouse, value: least } }),
  }
}

const byHouse = { sources: ['house-policy'], known: 'house', strength: 'practice', confidence: 'high' } as const

function policyNumber(house: Case, policy: FigurePolicy): number | undefined {
  const set = house.live('house-policy').filter(({ body }) => body.policy === policy)
  return set.length === 1 ? readFigurePolicy(set[0]?.body.value ?? '') : undefined
}

/** A whole number from 1 to 9999; undefined for anything else, which then changes nothing. */
export function readFigurePolicy(text: string): number | undefined {
  return /^[1-9]\d{0,3}$/u.test(text.trim()) ? Number(text.trim()) : undefined
}

/** A policy of this kind that says no number: nothing uses it, and the settings say so. */
export function isUnreadableFigurePolicy({ policy, value }: { readonly policy: string; readonly value: string }) {
  return figurePolicies.some((one) => one === policy) && readFigurePolicy(value) === undefined
}
