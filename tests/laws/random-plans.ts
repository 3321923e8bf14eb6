import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { formulary } from '#content/formulary/index.ts'
import { animalWords } from '#core/animal/conditions.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import type { Tablet } from '#core/dosing/plan.ts'
import type { DosedAnimal, DoseRequest, Given, PlannedLine } from '#core/dosing/request.ts'
import type { Divides, Dose, DoseRow, Drug, Stock } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, Decimal, Quantity, quantity } from '#core/units/quantity.ts'

/** One random plan, and what is to be changed about it for the laws that compare two plans. */
export type RandomPlan = {
  readonly request: DoseRequest
  /** What else the animal gets, in front of everything else it had. */
  readonly another: Given
  /** What else is planned, in front of the plan. */
  readonly anotherLine: PlannedLine
  readonly anotherCondition: DosedAnimal['conditions'][number]
  /** By how much the animal is heavier in the second plan. */
  readonly heavier: Quantity<'kg'>
  /** The weight once more, as hundredths of a pound. */
  readonly pounds: Decimal
}

export const drugs: readonly Drug[] = formulary
export const now = Temporal.Instant.from('2026-03-02T09:00:00Z')

type Entry = { readonly drug: Drug; readonly row: DoseRow }
const entries: readonly Entry[] = drugs.flatMap((drug) => drug.doses.map((row) => ({ drug, row })))
/** Drugs that share a limit or must not meet are drawn more often than chance would. */
const meeting = entries.filter(({ drug }) =>
  ['local-anaesthetic', 'nsaid', 'steroid', 'aminoglycoside', 'loop-diuretic', 'fluoroquinolone'].some((group) =>
    drug.groups.some((mine) => mine === group),
  ),
)
const anaesthetics = entries.filter(({ drug }) => drug.localAnaesthetic)

const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((n) => new Decimal(n).div(100))
const chance = (percent: number) => fc.nat(99).map((n) => n < percent)
const maybe = <T>(arbitrary: fc.Arbitrary<T>, percent: number) =>
  fc.tuple(chance(percent), arbitrary).map(([is, value]) => (is ? value : undefined))

const entry = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...entries) },
  { weight: 3, arbitrary: fc.constantFrom(...meeting) },
  { weight: 3, arbitrary: fc.constantFrom(...anaesthetics) },
)

/** Inside the range as a share of it, or a factor on its upper end. */
const size = fc.oneof(
  { weight: 3, arbitrary: hundredths(0, 100).map((share) => ({ share })) },
  { weight: 1, arbitrary: hundredths(1, 1300).map((factor) => ({ factor })) },
)
type Size = { readonly share: Decimal } | { readonly factor: Decimal }

function doseOf({ range }: DoseRow, size: Size): Dose {
  const { low, high } = range.value
  const value =
    'share' in size ? low.value.plus(high.value.minus(low.value).times(size.share)) : high.value.times(size.factor)
  // Nobody types twenty figures.
  return new Quantity(Decimal.max(value.toSignificantDigits(4), '0.0001'), low.unit) as Dose
}

const oddStocks = ['0.1', '0.5', '1', '2.5', '5', '10', '20', '50', '100'].map((value) => quantity(value, 'mg/mL'))
const stockPick = fc.nat(11)

/** Mostly a strength that the row lists, sometimes any other, sometimes none. */
function stockOf({ stocks }: DoseRow, pick: number): Stock | undefined {
  const listed = stocks.value.flatMap(({ strength }) => (strength ? [strength] : []))
  if (pick === 0) return undefined
  if (pick <= 8 && listed.length > 0) return listed[pick % listed.length]
  return oddStocks[pick % oddStocks.length] as unknown as Stock
}

const tabletPick = fc.record({
  pick: fc.nat(3),
  strength: fc.constantFrom('1', '5', '20', '50', '250'),
  divides: maybe(fc.constantFrom<Divides>('whole', 'halves', 'quarters', 'unknown'), 20),
})
type TabletPick = typeof tabletPick extends fc.Arbitrary<infer T> ? T : never

/** Mostly a size that the row lists, mostly breaking as it is listed. */
function tabletOf({ tablets, routes }: DoseRow, { pick, strength, divides }: TabletPick): Tablet | undefined {
  if (!routes.includes('PO') || pick === 0) return undefined
  const listed = tablets?.value[pick % tablets.value.length]
  const size = listed && pick < 3 ? listed.strength : quantity(strength, 'mg')
  return { strength: size, ...(divides && { divides }) }
}

const lineFacts = fc.record({
  entry,
  size,
  stockPick,
  tabletPick,
  isOral: chance(40),
  saysRoute: chance(70),
  routePick: fc.nat(5),
  isUnchosen: chance(4),
  over: maybe(fc.integer({ min: 5, max: 600 }), 30),
  days: maybe(fc.integer({ min: 1, max: 14 }), 30),
})
type LineFacts = typeof lineFacts extends fc.Arbitrary<infer T> ? T : never

/** A row of the other species is asked for as it is: the gate has to refuse it. */
function lineOf(facts: LineFacts, species: Species, id: string): PlannedLine {
  const { drug } = facts.entry
  const own = drug.doses.filter((row) => row.species === species)
  const row = own[facts.routePick % Math.max(1, own.length)] ?? facts.entry.row
  const route = row.routes[facts.routePick % row.routes.length]
  const tablet = facts.isOral ? tabletOf(row, facts.tabletPick) : undefined
  const stock = tablet ? undefined : stockOf(row, facts.stockPick)
  return {
    id,
    drug: drug.id,
    use: row.use,
    ...(facts.saysRoute && route && { route }),
    ...(row.qualifier && { qualifier: row.qualifier }),
    ...(row.formulation && { formulation: row.formulation }),
    ...(!facts.isUnchosen && { dose: doseOf(row, facts.size) }),
    ...(stock && { stock }),
    ...(tablet && { tablet }),
    ...(facts.days !== undefined && { days: facts.days }),
    ...(facts.over !== undefined && { over: new Quantity(new Decimal(facts.over), 'min') }),
  }
}

const hoursAgo = fc.constantFrom(undefined, 0.5, 2, 3, 5, 7.9, 11, 20, 23.5, 60, 119, 150, 300)
const givenFacts = fc.record({
  entry,
  mg: hundredths(1, 20_000),
  kind: fc.nat(5),
  hoursAgo,
  unknownDrug: chance(2),
  isInfusion: chance(10),
})
type GivenFacts = typeof givenFacts extends fc.Arbitrary<infer T> ? T : never

function givenOf({ entry, mg, kind, hoursAgo, unknownDrug, isInfusion }: GivenFacts): Given {
  const amounts: readonly Partial<Given>[] = [
    {},
    { amount: new Quantity(mg.div(10), 'mL') as AnyQuantity },
    { amount: new Quantity(mg.div(10), 'mL') as AnyQuantity, stock: quantity('5', 'mg/mL') as unknown as Stock },
  ]
  return {
    drug: unknownDrug ? 'some drops' : entry.drug.id,
    ...(amounts[kind] ?? { amount: new Quantity(mg, 'mg') as AnyQuantity }),
    ...(hoursAgo !== undefined && { at: now.subtract({ minutes: hoursAgo * 60 }) }),
    ...(isInfusion && { use: 'cri' as const }),
  }
}

const grams = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 2000, max: 9000 }) },
  { weight: 2, arbitrary: fc.integer({ min: 1500, max: 80_000 }) },
  { weight: 1, arbitrary: fc.integer({ min: 200, max: 120_000 }) },
)
const kilograms = grams.map((n) => new Quantity(new Decimal(n).div(1000), 'kg'))

const animal = fc.record({
  species: fc.constantFrom(...speciesList),
  pounds: fc.oneof(fc.integer({ min: 400, max: 2000 }), fc.integer({ min: 80, max: 26_000 })),
  isInPounds: chance(30),
  kilograms,
  hasWeight: chance(97),
  weighedHoursAgo: maybe(fc.constantFrom(0, 2, 23, 30, -1), 80),
  isEstimated: chance(10),
  previousWeight: maybe(kilograms, 15),
  ageMonths: maybe(fc.integer({ min: 1, max: 200 }), 80),
  bodyCondition: maybe(fc.integer({ min: 1, max: 9 }), 60),
  conditions: fc.oneof(
    { weight: 3, arbitrary: fc.constant<DosedAnimal['conditions']>([]) },
    { weight: 1, arbitrary: fc.subarray([...animalWords], { maxLength: 3 }) },
  ),
})
type AnimalFacts = typeof animal extends fc.Arbitrary<infer T> ? T : never

/** The clinical pound, exactly. */
export const kilogramsOfPounds = (pounds: Decimal): Quantity<'kg'> => {
  const kilograms = convert(new Quantity(pounds, '[lb_av]'), 'kg')
  if (!kilograms) throw new Error('A pound is a weight.')
  return kilograms
}

function animalOf(facts: AnimalFacts): DosedAnimal {
  const weight = facts.isInPounds ? kilogramsOfPounds(new Decimal(facts.pounds).div(100)) : facts.kilograms
  return {
    species: facts.species,
    ...(facts.hasWeight && { weight }),
    ...(facts.isEstimated && { weightIs: 'estimated' as const }),
    ...(facts.weighedHoursAgo !== undefined && { weighedAt: now.subtract({ hours: facts.weighedHoursAgo }) }),
    ...(facts.previousWeight && { previousWeight: facts.previousWeight }),
    ...(facts.ageMonths !== undefined && { ageMonths: facts.ageMonths }),
    ...(facts.bodyCondition !== undefined && { bodyCondition: facts.bodyCondition }),
    conditions: facts.conditions,
  }
}

/** Every drug, species, strength, weight and condition that the contents know, in plans of one to four lines. */
export const randomPlans: fc.Arbitrary<RandomPlan> = fc
  .record({
    animal,
    lines: fc.array(lineFacts, { minLength: 1, maxLength: 4 }),
    given: fc.array(givenFacts, { maxLength: 3 }),
    hasTime: chance(85),
    another: givenFacts,
    anotherLine: lineFacts,
    anotherCondition: fc.constantFrom(...animalWords),
    more: fc.integer({ min: 1, max: 20_000 }),
  })
  .map(({ animal, lines, given, hasTime, another, anotherLine, anotherCondition, more }) => {
    const patient = animalOf(animal)
    const weight = patient.weight ?? new Quantity(new Decimal(1), 'kg')
    return {
      request: {
        animal: patient,
        given: given.map(givenOf),
        ...(hasTime && { at: now }),
        lines: lines.map((facts, place) => lineOf(facts, animal.species, `l${place}`)),
      },
      another: givenOf(another),
      anotherLine: lineOf(anotherLine, animal.species, 'another'),
      anotherCondition,
      heavier: new Quantity(weight.value.plus(new Decimal(more).div(1000)), 'kg'),
      pounds: new Decimal(animal.pounds).div(100),
    }
  })

/** The same strength or dose in another unit of its kind, so that the unit is seen to make no difference. */
export function inOtherUnit<U extends AnyQuantity['unit']>(value: { value: Decimal; unit: U }): AnyQuantity {
  const other: Partial<Record<AnyQuantity['unit'], AnyQuantity['unit']>> = {
    'mg/kg': 'ug/kg',
    'ug/kg': 'mg/kg',
    'mg/kg/h': 'ug/kg/min',
    'ug/kg/min': 'mg/kg/h',
    'mg/m2': 'ug/m2',
    'ug/m2': 'mg/m2',
    'mg/mL': 'ug/mL',
    'ug/mL': 'mg/mL',
  }
  const unit = other[value.unit]
  return (unit ? convert(value, unit) : new Quantity(value.value, value.unit)) as AnyQuantity
}
