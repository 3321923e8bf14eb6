import type { OwnCountingRules } from '#core/evidence/own/own-outcome.ts'
import { ownRulesOf, readFigurePolicy } from '#core/evidence/own/own-rules.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import { dayOf } from '#core/time/calendar-day.ts'

/** From which day on a deficit is called lasting, and who says so since when. */
export type LastingRule = {
  readonly days: Sourced<number>
  /** A look on this day or later that finds nothing new says that nothing lasts. */
  readonly free: Sourced<number>
  /** Null: the tool's own rule. */
  readonly policy: { readonly by: string; readonly on: string; readonly because: string; readonly entry: string } | null
}

/**
 * The rule as it stands: the clinic's policy with its name and day where one is set, else the tool's own with the day
 * on which it was last compared.
 *
 * @example lastingRuleOf(file, ownCounting).days.value // 180
 */
export function lastingRuleOf(file: CaseFile, counting: OwnCountingRules): LastingRule {
  const rules = ownRulesOf(file.house, counting)
  const set = file.house.live('house-policy').filter(({ body }) => body.policy === 'lasting-deficit-days')
  const [line] = set
  const stands = set.length === 1 && line && readFigurePolicy(line.body.value) !== undefined
  return {
    days: rules.lastingFromDay,
    free: rules.recoveredFromDay,
    policy: stands
      ? {
          by: authorNamed(file, line.header.author),
          on: dayOf({ at: line.at, zone: file.clinic.zone }),
          because: line.body.because,
          entry: line.header.id,
        }
      : null,
  }
}
