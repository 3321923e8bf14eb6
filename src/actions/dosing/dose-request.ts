import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'
import { bloodGroups, speciesOfGroup } from '#core/animal/blood-group.ts'
import { animalWords } from '#core/animal/conditions.ts'
import { speciesList } from '#core/animal/species.ts'
import type { DosedAnimal, DoseRequest, Emergency, Given, Haematocrit, PlannedLine } from '#core/dosing/request.ts'
import { carriers } from '#core/formulary/carriers.ts'
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
  'topical ear': 'topical-ear',
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
  rounds: listed(['up', 'down'], 'way to round').optional(),
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
  breed: z.string().min(1).optional(),
  bodyCondition: z.number().min(1).max(9).optional(),
  flags: conditions,
  conditions,
  bloodGroup: listed(bloodGroups, 'blood group').optional(),
  transfusedBefore: listed(['yes', 'no'], 'answer').optional(),
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

const percent = positiveQuantityIn('%').refine(({ value }) => value.lte(100), { message: 'must not be above 100 %.' })
const containerFields = {
  name: z.string().min(1).optional(),
  volume: positiveQuantityIn('mL'),
  rate: positiveQuantityIn('mL/h', 'mL/kg/h'),
  ownVolume: listed(['withdrawn', 'added'], 'way to treat the drug’s own volume').optional(),
  fluid: listed(carriers, 'fluid').optional(),
}

const lineFields = z.strictObject({
  id: z.string().min(1),
  drug: z.string().min(1),
  use: listed(uses, 'use'),
  route: routeWords.optional(),
  qualifier: z.string().min(1).optional(),
  formulation: z.string().min(1).optional(),
  dose: positiveQuantityIn(...doseUnits).optional(),
  stock: stock.optional(),
  mixed: z.strictObject({ from: stock, product: positiveQuantityIn('mL'), final: positiveQuantityIn('mL') }).optional(),
  tablet: tablet.optional(),
  xylitolFree: z.boolean().optional(),
  days: z.number().positive().optional(),
  over: positiveQuantityIn('min').optional(),
  plan: z.string().min(1).optional(),
  donor: listed(bloodGroups, 'blood group').optional(),
  crossMatch: listed(['compatible', 'incompatible'], 'result of a cross-match').optional(),
  every: positiveQuantityIn('h').optional(),
  mark: positiveQuantityIn('mL').optional(),
  bag: z.strictObject(containerFields).optional(),
  syringe: z.strictObject(containerFields).optional(),
  loading: z
    .strictObject({ dose: positiveQuantityIn('mg/kg', 'ug/kg'), over: positiveQuantityIn('min').optional() })
    .optional(),
  set: positiveQuantityIn('[drp]/mL').optional(),
  deficit: z.strictObject({ percent, over: positiveQuantityIn('h') }).optional(),
  goal: z.strictObject({ now: percent, aim: percent, donorPcv: percent }).optional(),
})

/** `buprenorphine` or, with the formulation behind it, `buprenorphine (high concentration)`. */
function named(text: string) {
  const [, drug = text, formulation] = /^(.*?) \((.*)\)$/.exec(text.trim()) ?? []
  return { drug, formulation }
}

const line = lineFields
  .superRefine(({ bag, syringe }, context) => {
    if (!bag || !syringe) return
    const message = 'a line runs from a bag or from a syringe; state one of them.'
    context.addIssue({ code: 'custom', path: ['syringe'], message, params: { code: 'bag-and-syringe' } })
  })
  .transform(({ route, qualifier, drug, formulation, bag, syringe, loading, ...rest }) => ({
    ...rest,
    drug: named(drug).drug,
    formulation: formulation ?? named(drug).formulation,
    route: route?.route,
    qualifier: qualifier ?? route?.qualifier,
    loading: loading && said(loading),
    container: containerOf(rest.id, bag, syringe),
  }))

type Sent = z.infer<z.ZodObject<typeof containerFields>>

/** A bag or syringe without a name is this line's own. */
function containerOf(id: string, bag: Sent | undefined, syringe: Sent | undefined) {
  const sent = bag ?? syringe
  return sent && said({ ...sent, kind: bag ? ('bag' as const) : ('syringe' as const), name: sent.name ?? id })
}

const requestFields = z
  .strictObject({
    animal,
    given: z.array(givenFields).default([]),
    at: instant.optional(),
    plan: z.string().min(1).optional(),
    emergency: z
      .strictObject({ by: z.string().min(1), reason: z.string().min(1), lifts: z.string().min(1).optional() })
      .transform((sent) => said(sent) as Emergency)
      .optional(),
    lines: z.array(line).optional(),
    haematocrit: z.strictObject({ start: percent, lowest: percent }).optional(),
  })
  .superRefine(({ animal: { species, bloodGroup }, lines = [], haematocrit }, context) => {
    if (haematocrit?.lowest.value.gt(haematocrit.start.value)) {
      const message = `${haematocrit.lowest} is above the start of ${haematocrit.start}; write a lowest value below it.`
      const path = ['haematocrit', 'lowest']
      context.addIssue({ code: 'custom', path, message, params: { code: 'wrong-order' } })
    }
    const said = [
      { path: ['animal', 'bloodGroup'], group: bloodGroup },
      ...lines.map(({ donor }, index) => ({ path: ['lines', index, 'donor'], group: donor })),
    ]
    for (const { path, group } of said) {
      if (group === undefined || speciesOfGroup(group) === species) continue
      const fitting = bloodGroups.filter((one) => speciesOfGroup(one) === species).join(', ')
      const message = `${JSON.stringify(group)} is no blood group of a ${species}; write one of ${fitting}.`
      context.addIssue({ code: 'custom', path, message, params: { code: 'wrong-species' } })
    }
  })

/** A request as it was sent: its lines may be left to the named plan. */
export type AskedDose = Omit<DoseRequest, 'lines'> & {
  readonly lines?: readonly PlannedLine[]
  readonly haematocrit?: Haematocrit
}

/** Reads a request at the door; a wrong field throws an InputError that says what would be right. */
export function readDoseRequest(input: unknown): AskedDose {
  const asked = readInput(requestFields, input)
  return {
    ...said({ at: asked.at, plan: asked.plan, emergency: asked.emergency, haematocrit: asked.haematocrit }),
    animal: said(asked.animal) as DosedAnimal,
    given: asked.given.map(givenOf),
    ...(asked.lines && { lines: asked.lines.map((entry) => said(entry) as PlannedLine) }),
  }
}

const surfaceRoutes: ReadonlySet<string | undefined> = new Set(['topical', 'topical-eye', 'topical-ear'])

/** Drops and ointments count from the surface: a steroid in them still meets an NSAID. */
function givenOf({ route, ...entry }: z.output<typeof givenFields>): Given {
  const onSurface = surfaceRoutes.has(route?.route) ? true : undefined
  return said({ ...entry, route: route?.route, onSurface }) as Given
}

/** Leaves out what was not said, so that "absent" has one spelling inside. */
function said<T extends object>(value: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, entry]) => entry !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}
