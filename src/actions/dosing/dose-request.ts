import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'
import { animalWords } from '#core/animal/conditions.ts'
import { speciesList } from '#core/animal/species.ts'
import type { DosedAnimal, DoseRequest, Given, PlannedLine } from '#core/dosing/request.ts'
import { doseUnits, routes, stockUnits, uses } from '#core/formulary/words.ts'
import { Quantity } from '#core/units/quantity.ts'
import { positiveQuantityIn } from '#core/units/quantity-schema.ts'
import { listed, readInput } from '../input.ts'

const instant = z.string().transform((text, context) => {
  try {
    return Temporal.Instant.from(text)
  } catch {
    const message = `${JSON.stringify(text)} is not a time with its offset; write it like 2026-03-02T08:30:00+01:00.`
    context.addIssue({ code: 'custom', message, params: { code: 'wrong-time' } })
    return z.NEVER
  }
})

/** Spellings of a route that mean one of the list, some with the words of the row's key. */
const routeSpellings: Readonly<Record<string, string>> = {
  'topical eye': 'topical-eye',
  'wound catheter': 'wound-catheter',
  'IV slow': 'IV (slow)',
  'infiltration at closure': 'infiltration (at closure)',
}

/** `SC` or, with the words of the row's key, `SC (EU label)`. */
const routeWords = z.string().transform((text, context) => {
  const spelled = routeSpellings[text.trim()] ?? text.trim()
  const [, name = spelled, qualifier] = /^(.*?)(?: \((.*)\))?$/.exec(spelled) ?? []
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
/** `{strength, divides}`, or the strength alone. */
const tabletFields = z.strictObject({
  strength: positiveQuantityIn('mg', 'mg/{tablet}').transform((strength) => new Quantity(strength.value, 'mg')),
  divides: listed(['whole', 'halves', 'quarters', 'unknown'], 'way to cut a tablet').optional(),
})
const tablet = z.preprocess(
  (sent) => (typeof sent === 'object' && sent !== null && 'unit' in sent ? { strength: sent } : sent),
  tabletFields,
)

/** Strict, here and below: a misspelt `conditions` must never pass as "no conditions". */
const animalFields = z.strictObject({
  species: listed(speciesList, 'species'),
  weight: positiveQuantityIn('kg').optional(),
  weightIs: listed(['measured', 'estimated'], 'kind of weight').optional(),
  weighedAt: instant.optional(),
  previousWeight: positiveQuantityIn('kg').optional(),
  weightConfirmed: z.strictObject({ by: z.string().min(1), reason: z.string().min(1) }).optional(),
  ageMonths: z.number().nonnegative().optional(),
  bodyCondition: z.number().min(1).max(9).optional(),
  flags: conditions,
  conditions,
})

const animal = animalFields.transform(({ flags, conditions, ...rest }) => ({
  ...rest,
  conditions: [...new Set([...flags, ...conditions])],
}))

const givenFields = z.strictObject({
  drug: z.string().min(1),
  amount: positiveQuantityIn('mg', 'mL', '[iU]', 'mmol').optional(),
  stock: stock.optional(),
  at: instant.optional(),
  route: routeWords.optional(),
  use: listed(uses, 'use').optional(),
})

const lineFields = z.strictObject({
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

/** `buprenorphine` or, with the formulation behind it, `buprenorphine (high concentration)`. */
function named(text: string) {
  const [, drug = text, formulation] = /^(.*?) \((.*)\)$/.exec(text.trim()) ?? []
  return { drug, formulation }
}

const line = lineFields.transform(({ route, qualifier, drug, formulation, ...rest }) => ({
  ...rest,
  drug: named(drug).drug,
  formulation: formulation ?? named(drug).formulation,
  route: route?.route,
  qualifier: qualifier ?? route?.qualifier,
}))

const requestFields = z.strictObject({
  animal,
  given: z.array(givenFields).default([]),
  at: instant.optional(),
  plan: z.string().min(1).optional(),
  lines: z.array(line).optional(),
})

/** A request as it was sent: its lines may be left to the named plan. */
export type AskedDose = Omit<DoseRequest, 'lines'> & { readonly lines?: readonly PlannedLine[] }

/** Reads a request at the door; a wrong field throws an InputError that says what would be right. */
export function readDoseRequest(input: unknown): AskedDose {
  const asked = readInput(requestFields, input)
  return {
    ...said({ at: asked.at, plan: asked.plan }),
    animal: said(asked.animal) as DosedAnimal,
    given: asked.given.map((entry) => said({ ...entry, route: entry.route?.route }) as Given),
    ...(asked.lines && { lines: asked.lines.map((entry) => said(entry) as PlannedLine) }),
  }
}

/** Leaves out what was not said, so that "absent" has one spelling inside. */
function said<T extends object>(value: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, entry]) => entry !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}
