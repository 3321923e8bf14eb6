import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { caution } from '#content/wording/caution.ts'
import { bloodOf } from '#core/dosing/blood-answer.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import { linesOfPlan } from '#core/dosing/from-journal.ts'
import type { OwnDefaults } from '#core/dosing/own-default.ts'
import { withOwn } from '#core/dosing/own-defaults.ts'
import type { DosePolicy, UsualPlan } from '#core/dosing/plan.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import { InputError } from '../input.ts'
import { type DoseAnswer, writeAnswer } from './dose-answer.ts'
import { readDoseRequest } from './dose-request.ts'

export type { DoseAnswer } from './dose-answer.ts'

/** What this clinic brings to the engine: its usual plans, its policies, the defaults it changed. */
export type DosingClinic = {
  readonly plans: readonly UsualPlan[]
  readonly policies: readonly DosePolicy[]
  readonly own?: OwnDefaults
}

/**
 * Judges a plan as programs send it and answers in the shape of the `dose` contract.
 * Malformed input throws an InputError; a drug that may not be given is an answer, not an error.
 */
export function dose(input: unknown, clinic: DosingClinic): DoseAnswer {
  const asked = readDoseRequest(input)
  const lines = asked.lines ?? linesOf(asked.plan, clinic)
  expectUniqueIds(lines)
  const { plans, policies, own } = clinic
  const knowledge = { drugs: formulary, rules: dosingRules, plans, policies }
  const result = doseLines({ ...asked, lines }, own ? withOwn(knowledge, own) : knowledge)
  const blood = asked.haematocrit && bloodOf(asked.animal, asked.haematocrit, dosingRules)
  return writeAnswer(result, caution, blood)
}

/** Without lines of their own, the lines of the named plan are what is asked. */
function linesOf(name: string | undefined, { plans }: DosingClinic): PlannedLine[] {
  const plan = plans.find((entry) => entry.name === name)
  if (!plan) {
    const known = plans.map((entry) => `"${entry.name}"`).join(', ') || 'none'
    throw new InputError(
      'no-lines',
      'lines',
      `lines: give the lines of the plan, or the name of a usual plan (${known}).`,
    )
  }
  return linesOfPlan(plan)
}

function expectUniqueIds(lines: readonly PlannedLine[]): void {
  const twice = lines.find((entry, i) => lines.findIndex((other) => other.id === entry.id) !== i)
  if (twice)
    throw new InputError('id-twice', 'lines', `lines: the id "${twice.id}" stands twice; give every line its own.`)
}
