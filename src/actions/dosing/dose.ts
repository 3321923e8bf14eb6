import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { caution } from '#content/wording/caution.ts'
import { animalWords } from '#core/animal/conditions.ts'
import { speciesList } from '#core/animal/species.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import type { DosePolicy, UsualPlan } from '#core/dosing/plan.ts'
import type { DosedAnimal, DoseRequest, Given, PlannedLine } from '#core/dosing/request.ts'
import type { Syringe } from '#core/dosing/syringe.ts'

import { doseUnits, routes, stockUnits, uses } from '#core/formulary/words.ts'
import { positiveQuantityIn } from '#core/units/quantity-schema.ts'
import { InputError, readInput } from '../input.ts'
import { type DoseAnswer, writeAnswer } from './dose-answer.ts'

export type { DoseAnswer } from './dose-answer.ts'

const listed = <const Words extends readonly [string, ...string[]]>(words: Words, what: string) =>
  z.enum(words, {
    error: (issue) => `${JSON.stringify(issue.input)} is not a ${what}; write one of ${words.join(', ')}.`,
  })

const instant = z.string().transform((text, context) => {
  try {
    return Temporal.Instant.from(text)
  } catch {
    const message = `${JSON.stringify(text)} is not a time with its offset; write it like 2026-03-02T08:30:00+01:00.`
    context.addIssue({ code: 'custom', message, params: { code: 'wrong-time' } })
    return z.NEVER
  }
})

/** Spellings of a route that mean one of the list. */
const routeSpellings: Readonly<Record<string, string>> = {
  'topical eye': 'topical-eye',
  'wound catheter': 'wound-catheter',
}

/** `SC` or, with the words of the row's key, `SC (EU label)`. */
const routeWords = z.string().transform((text, context) => {
  const [, plain = text, qualifier] = /^(.*?)(?: \((.*)\))?$/.exec(text.trim()) ?? []
  const name = routeSpellings[plain] ?? plain
  const route = routes.find((entry) => entry === name)
  if (!route) {
    const message = `${JSON.stringify(text)} is not a route; write one of ${routes.join(', ')}.`
    context.addIssue({ code: 'custom', message, params: { code: 'unknown-route' } })
    return z.NEVER
  }
  return { route, qualifier }
})

const conditions = z.array(listed(animalWords, 'word of the list of conditions')).default([])
const stock = positiveQuantityIn(...stockUnits)
const tablet = z.object({
  strength: positiveQuantityIn('mg'),
  divides: listed(['whole', 'halves', 'quarters', 'unknown'], 'way to cut a tablet').optional(),
})

const animal = z
  .object({
    species: listed(speciesList, 'species'),
    weight: positiveQuantityIn('kg').optional(),
    weightIs: listed(['measured', 'estimated'], 'kind of weight').optional(),
    weighedAt: instant.optional(),
    previousWeight: positiveQuantityIn('kg').optional(),
    weightConfirmed: z.object({ by: z.string().min(1), reason: z.string().min(1) }).optional(),
    ageMonths: z.number().nonnegative().optional(),
    bodyCondition: z.number().min(1).max(9).optional(),
    flags: conditions,
    conditions,
  })
  .transform(({ flags, conditions, ...rest }) => ({ ...rest, conditions: [...new Set([...flags, ...conditions])] }))

const given = z.object({
  drug: z.string().min(1),
  amount: positiveQuantityIn('mg', 'mL', '[iU]', 'mmol').optional(),
  stock: stock.optional(),
  at: instant.optional(),
  route: listed(routes, 'route').optional(),
  use: listed(uses, 'use').optional(),
})

const line = z
  .object({
    id: z.string().min(1),
    drug: z.string().min(1),
    use: listed(uses, 'use'),
    route: routeWords.optional(),
    qualifier: z.string().min(1).optional(),
    formulation: z.string().min(1).optional(),
    dose: positiveQuantityIn(...doseUnits).optional(),
    stock: stock.optional(),
    tablet: tablet.optional(),
    days: z.number().positive().optional(),
    over: positiveQuantityIn('min').optional(),
    plan: z.string().min(1).optional(),
  })
  .transform(({ route, qualifier, ...rest }) => ({
    ...rest,
    route: route?.route,
    qualifier: qualifier ?? route?.qualifier,
  }))

const request = z.object({
  animal,
  given: z.array(given).default([]),
  at: instant.optional(),
  plan: z.string().min(1).optional(),
  lines: z.array(line).optional(),
})

/** What this clinic brings to the engine: its usual plans, its policies, its syringes. */
export type DosingClinic = {
  readonly plans: readonly UsualPlan[]
  readonly policies: readonly DosePolicy[]
  readonly syringes?: readonly Syringe[]
}

/**
 * Judges a plan as programs send it and answers in the shape of the `dose` contract.
 * Malformed input throws an InputError; a drug that may not be given is an answer, not an error.
 */
export function dose(input: unknown, clinic: DosingClinic): DoseAnswer {
  const asked = readInput(request, input)
  const read: DoseRequest = {
    ...(drop(asked) as Omit<typeof asked, 'lines'>),
    animal: drop(asked.animal) as DosedAnimal,
    given: asked.given.map((entry) => drop(entry) as Given),
    lines: asked.lines?.map((entry) => drop(entry) as PlannedLine) ?? linesOf(asked.plan, clinic),
  } as DoseRequest
  expectUniqueIds(read.lines)
  const result = doseLines(read, { drugs: formulary, rules: dosingRules, ...clinic })
  return writeAnswer(result, caution)
}

/** Without lines of their own, the lines of the named plan are what is asked. */
function linesOf(name: string | undefined, { plans }: DosingClinic): PlannedLine[] {
  const plan = plans.find((entry) => entry.name === name)
  if (!plan) {
    const known = plans.map((entry) => entry.name).join(', ') || 'none'
    throw new InputError(
      'no-lines',
      'lines',
      `lines: give the lines of the plan, or the name of a usual plan (${known}).`,
    )
  }
  return plan.lines.map(({ id, drug, use, route, qualifier }) => ({
    id,
    drug,
    use,
    ...(route && { route }),
    ...(qualifier && { qualifier }),
  }))
}

function expectUniqueIds(lines: readonly PlannedLine[]): void {
  const twice = lines.find((entry, i) => lines.findIndex((other) => other.id === entry.id) !== i)
  if (twice)
    throw new InputError('id-twice', 'lines', `lines: the id "${twice.id}" stands twice; give every line its own.`)
}

/** Leaves out what was not said, so that "absent" has one spelling inside. */
function drop<T extends object>(value: T): object {
  return Object.fromEntries(Object.entries(value).filter(([, entry]) => entry !== undefined))
}
