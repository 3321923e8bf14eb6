import { Temporal } from 'temporal-polyfill'
import type { Day } from '#core/evidence/sourced.ts'
import type { Dose, Stock } from '#core/formulary/drug.ts'
import { type Route, routes, stockUnits, type Use, uses } from '#core/formulary/words.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { wallClock } from '#core/time/moment.ts'
import { type AnyQuantity, convert, Quantity } from '#core/units/quantity.ts'
import { askedOfBody } from './asked-of-body.ts'
import { type ConditionRules, conditionsOf } from './conditions-from-journal.ts'
import { readHow } from './how-given.ts'
import type { Chosen, DosePolicy, UsualPlan, UsualPlanLine } from './plan.ts'
import type { DosedAnimal, Given, PlannedLine } from './request.ts'
import { heldBy } from './volume.ts'

type Shelf = ReadonlyMap<string, BodyOf<'shelf-item'>>

function shelfOf(house: Case): Shelf {
  return new Map(house.live('shelf-item').map((line) => [line.body.item, line.body]))
}

/** The clinic's usual plans as its own stream holds them. */
export function plansOf(house: Case): UsualPlan[] {
  const shelf = shelfOf(house)
  return house.live('usual-plan').map((line) => ({
    name: line.body.plan,
    title: line.body.plan,
    species: line.body.species,
    lines: line.body.lines.map((planned) => planLineOf(planned, line, shelf)),
  }))
}

function planLineOf(planned: BodyOf<'usual-plan'>['lines'][number], entry: Line, shelf: Shelf): UsualPlanLine {
  const found = planned.shelfItem === null ? undefined : shelf.get(planned.shelfItem)
  // A place on the shelf may hold another drug by now: its strength is no strength of this one.
  const item = found?.drug === planned.drug ? found : undefined
  return {
    id: planned.line,
    drug: planned.drug,
    use: planned.use,
    route: planned.route,
    ...(planned.qualifier === null ? {} : { qualifier: planned.qualifier }),
    dose: fromStored(planned.dose) as Dose,
    ...(item && { shelfItem: item.item }),
    ...readHow(planned.how),
    ...strengthOf(item),
    ...chosenIn(planned.because, entry),
  }
}

/** The doses this house starts from when nobody chose one. */
export function policiesOf(house: Case): DosePolicy[] {
  return house.live('dose-policy').map((line) => {
    const { drug, species, use, route, qualifier, dose, because } = line.body
    return {
      drug,
      species,
      use,
      ...(route && { route }),
      ...(qualifier && { qualifier }),
      dose: fromStored(dose) as Dose,
      ...chosenIn(because, line),
    }
  })
}

/** Who chose it and when: the author and the day of the entry. */
function chosenIn(reason: string, entry: Line): Chosen {
  const date = wallClock(entry.header.happenedAt).toPlainDate().toString() as Day
  return { reason, person: personOf(entry), date }
}

/** What a product of the shelf is drawn or counted from; nothing where it has no strength that a dose is taken from. */
export function strengthOf(item: BodyOf<'shelf-item'> | undefined): Pick<UsualPlanLine, 'stock' | 'tablet'> {
  if (!item?.strength) return {}
  if (item.strength.unit === 'mg/{tablet}') {
    const strength = new Quantity(fromStored(item.strength).value, 'mg')
    return { tablet: { strength, ...(item.divides === null ? {} : { divides: item.divides }) } }
  }
  const unit = stockUnits.find((word) => word === item.strength?.unit)
  return unit ? { stock: fromStored({ ...item.strength, unit }) as NonNullable<UsualPlanLine['stock']> } : {}
}

function personOf(entry: Line): string {
  const { author } = entry.header
  return author.kind === 'person' ? author.person : author.kind
}

/**
 * The animal as the dose engine asks for it, from what the case knew at that instant: last weight and the one before,
 * age, body condition, breed, and the words that decide about drugs; what was measured among them, when the rules are given.
 */
export function dosedAnimalOf(theCase: Case, at: string, rules?: ConditionRules): DosedAnimal | undefined {
  const identity = theCase.latest('identity')?.body
  if (!identity) return undefined
  const weights = theCase.live('weight').filter((line) => line.at <= at)
  const [before, last] = [weights.at(-2), weights.at(-1)]
  return {
    species: identity.species,
    ...(last && { weight: fromStored(last.body.weight), weighedAt: Temporal.Instant.from(last.at) }),
    ...(last && { weightIs: last.body.how === 'scale' ? 'measured' : 'estimated' }),
    ...(before && { previousWeight: fromStored(before.body.weight) }),
    ...(last && last.body.bodyCondition !== null && { bodyCondition: last.body.bodyCondition }),
    ...bloodGroupOf(theCase, at),
    ...(identity.born && { ageMonths: monthsBetween(identity.born, at) }),
    ...(identity.breed !== null && { breed: identity.breed }),
    conditions: conditionsOf(theCase, at, identity, rules),
  }
}

/** The blood group as typed; untyped stays unsaid. */
function bloodGroupOf(theCase: Case, at: string): Pick<DosedAnimal, 'bloodGroup'> {
  const typed = theCase.live('blood-type').findLast((line) => line.at <= at)?.body
  if (typed?.system === 'ab') return typed.ab === 'unknown' ? {} : { bloodGroup: typed.ab }
  if (!typed || typed.dea1 === 'not-typed') return {}
  return { bloodGroup: typed.dea1 === 'negative' ? 'dea-1-negative' : 'dea-1-positive' }
}

function monthsBetween(born: { readonly at: string; readonly zone: string }, at: string): number {
  const birthday = wallClock(born).toPlainDate()
  const day = wallClock({ at, zone: born.zone }).toPlainDate()
  return birthday.until(day, { largestUnit: 'months' }).months
}

const surfaces: ReadonlySet<string> = new Set(['ear', 'eye', 'skin'])

/** What the animal has had before that instant: medicines of the past, also those whose active nobody settled, and what we gave. */
export function givenOf(theCase: Case, at: string): Given[] {
  const given = theCase.live('drug-given').filter((line) => line.at < at)
  return [...medicinesBefore(theCase), ...given.map((line) => oneGiven(theCase, line))]
}

/**
 * What the animal had had when this dose was given: everything before it in the order of the case, so that of two
 * doses of one minute the second still counts the first.
 */
export function givenBefore(theCase: Case, dose: string): Given[] {
  const all = theCase.live('drug-given')
  const mine = all.findIndex(({ header }) => header.id === dose)
  const earlier = all.slice(0, Math.max(0, mine))
  return [...medicinesBefore(theCase), ...earlier.map((line) => oneGiven(theCase, line))]
}

function medicinesBefore(theCase: Case): Given[] {
  return theCase.live('medicine-before').map(({ body }) => {
    const last = body.ongoing ? undefined : body.until
    const isCoarse = last?.precision === 'day' || last?.precision === 'month' || last?.precision === 'year'
    const when = last ? { at: endOf(last), ...(isCoarse && { isCoarse }) } : {}
    const ear = body.route === 'ear' ? { route: 'topical-ear' as const } : {}
    const where = surfaces.has(body.route) ? { onSurface: true, ...ear } : {}
    if (body.substance !== null) return { drug: body.substance, ...where, ...when }
    return { drug: body.written, unsettled: { route: body.route }, ...where, ...when }
  })
}

/** Millilitres become milligrams when the planned line of that dose says the strength; otherwise they stay uncounted. */
function oneGiven(theCase: Case, { body, at }: Line<BodyOf<'drug-given'>>): Given {
  const use = uses.find((word): word is Use => word === body.use)
  const route = routes.find((word): word is Route => word === body.route)
  const stock = plannedFor(theCase, body)?.stock
  return {
    drug: body.drug,
    amount: amountGiven(theCase, body),
    at: Temporal.Instant.from(at),
    ...(stock && { stock }),
    ...(use && { use }),
    ...(route && { route }),
  }
}

/**
 * What was given as a mass where it is known: as it was written, or counted in the tablets of its planned line, or in
 * millilitres of a product that line is drawn from undiluted. Otherwise the amount as it was written.
 */
export function amountGiven(theCase: Case, body: BodyOf<'drug-given'>): AnyQuantity {
  const amount = fromStored(body.amount) as unknown as AnyQuantity
  const mass = convert(amount, 'mg')
  if (mass) return mass
  const planned = linePlannedFor(theCase, body)
  const { stock, tablet } = (planned && askedOfBody(planned)) ?? {}
  if (amount.unit === '{tablet}' && tablet) return new Quantity(amount.value.times(tablet.strength.value), 'mg')
  // What was drawn for the line came from the product itself: no dilution was made, and it hangs in no bag.
  const isUndiluted = planned?.drawn !== null && planned?.how?.container == null
  const held = amount.unit === 'mL' && stock && isUndiluted ? heldBy(amount, stock, massIn(stock)) : undefined
  return (held && convert(held, 'mg')) ?? amount
}

function massIn({ unit }: Stock): AnyQuantity['unit'] {
  switch (unit) {
    case '[iU]/mL':
      return '[iU]'
    case 'mmol/mL':
      return 'mmol'
    default:
      return 'mg'
  }
}

/** The planned line that a given dose names, when it is of the same drug. */
export function plannedFor(theCase: Case, given: BodyOf<'drug-given'>): PlannedLine | undefined {
  const planned = linePlannedFor(theCase, given)
  return planned && askedOfBody(planned)
}

function linePlannedFor(theCase: Case, given: BodyOf<'drug-given'>): BodyOf<'planned-line'> | undefined {
  if (given.line === null) return undefined
  return theCase.live('planned-line').find(({ body }) => body.line === given.line && body.drug === given.drug)?.body
}

/** A coarse stop date counts to its end: "January 2025" may have been the 31st. */
function endOf(moment: { readonly at: string; readonly zone: string; readonly precision: string }): Temporal.Instant {
  const local = wallClock(moment)
  switch (moment.precision) {
    case 'year':
      return local.add({ years: 1 }).toInstant()
    case 'month':
      return local.add({ months: 1 }).toInstant()
    case 'day':
      return local.add({ days: 1 }).toInstant()
    default:
      return local.toInstant()
  }
}

/** The planned lines of one operation as lines to be judged again, with the doses and strengths they were written with. */
export function linesOfOperation(
  theCase: Case,
  operation: string,
): { readonly at: string | undefined; readonly lines: PlannedLine[] } {
  const planned = linesAbout(theCase, 'planned-line', operation)
  return {
    at: planned
      .map((line) => line.at)
      .sort()
      .at(-1),
    lines: planned.flatMap(({ body }) => askedOfBody(body) ?? []),
  }
}

/** The lines of a plan as lines to be worked out. */
export function linesOfPlan(plan: UsualPlan): PlannedLine[] {
  return plan.lines.map(({ dose: _, reason: __, person: ___, date: ____, shelfItem: _____, ...line }) => ({
    ...line,
    plan: plan.name,
  }))
}
