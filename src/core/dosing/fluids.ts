import type { Species } from '#core/animal/species.ts'
import { Decimal, Quantity, scale, times } from '#core/units/quantity.ts'
import type { FluidRules } from './rules.ts'

/** What a line of fluid means hour by hour. */
export type FluidPlan = {
  readonly maintenance: { readonly perDay: Quantity<'mL'>; readonly perHour: Quantity<'mL/h'> }
  /** Hour by hour while the animal is stable; the first is the rate of the line. */
  readonly hours: readonly { readonly hour: number; readonly rate: Quantity<'mL/h'> }[]
  /** What has run in when every hour was cut so. */
  readonly hoursTotal?: Quantity<'mL'>
  readonly deficit?: {
    readonly volume: Quantity<'mL'>
    readonly over: Quantity<'h'>
    readonly perHour: Quantity<'mL/h'>
    /** The line's own rate and the deficit together. */
    readonly together: Quantity<'mL/h'>
  }
}

/**
 * What an animal at rest needs: factor × kg^0.75 in 24 hours (AAHA 2013).
 *
 * @example maintenanceOf('dog', quantity('10', 'kg'), rules).perDay // 742.3… mL
 */
export function maintenanceOf(species: Species, weight: Quantity<'kg'>, rules: FluidRules): FluidPlan['maintenance'] {
  const { factor, power } = rules.maintenance[species].value
  const perDay = new Quantity(factor.times(weight.value.pow(power)), 'mL')
  return { perDay, perHour: new Quantity(perDay.value.div(24), 'mL/h') }
}

/**
 * The rate of every started hour: each a quarter less than the one before, never below maintenance; a start at or
 * below maintenance stays as it is (AAHA 2013, anaesthetic rates).
 *
 * @example hourlyCut(quantity('100', 'mL/h'), quantity('25', 'mL/h'), quantity('120', 'min'), rules) // 100, 75 mL/h
 */
export function hourlyCut(
  start: Quantity<'mL/h'>,
  floor: Quantity<'mL/h'>,
  over: Quantity<'min'>,
  { cut }: Pick<FluidRules, 'cut'>,
): FluidPlan['hours'] {
  const count = Math.min(longest, over.value.div(60).ceil().toNumber())
  const lowest = Decimal.min(floor.value, start.value)
  const left = new Decimal(1).minus(cut.value)
  return Array.from({ length: count }, (_, index) => {
    const rate = Decimal.max(start.value.times(left.pow(index)), lowest)
    return { hour: index + 1, rate: new Quantity(rate, 'mL/h') }
  })
}

/** Nobody is anaesthetised longer; a longer line is not written out. */
const longest = 24

/** What ran in over the stated minutes when each hour had its own rate. */
function totalOf(hours: FluidPlan['hours'], over: Quantity<'min'>): Quantity<'mL'> {
  const sum = hours.reduce((total, { rate }, index) => {
    const minutes = Decimal.min(60, over.value.minus(index * 60))
    return total.plus(rate.value.times(minutes).div(60))
  }, new Decimal(0))
  return new Quantity(sum, 'mL')
}

/**
 * Maintenance, the hourly cuts and the deficit of one line of fluid.
 *
 * @example fluidPlan({ species: 'dog', weight, rate: quantity('100', 'mL/h'), over: quantity('180', 'min') }, rules)
 */
export function fluidPlan(
  asked: {
    readonly species: Species
    readonly weight: Quantity<'kg'>
    readonly rate: Quantity<'mL/h'>
    readonly over?: Quantity<'min'>
    readonly deficit?: { readonly percent: Quantity<'%'>; readonly over: Quantity<'h'> }
  },
  rules: FluidRules,
): FluidPlan {
  const { species, weight, rate, over, deficit } = asked
  const maintenance = maintenanceOf(species, weight, rules)
  const hours = over ? hourlyCut(rate, maintenance.perHour, over, rules) : []
  return {
    maintenance,
    hours,
    ...(over?.value.lte(longest * 60) && { hoursTotal: totalOf(hours, over) }),
    ...(deficit && { deficit: deficitOf(weight, rate, deficit, rules) }),
  }
}

function deficitOf(
  weight: Quantity<'kg'>,
  rate: Quantity<'mL/h'>,
  { percent, over }: { readonly percent: Quantity<'%'>; readonly over: Quantity<'h'> },
  rules: FluidRules,
): NonNullable<FluidPlan['deficit']> {
  const volume = scale(times(rules.deficit.value, weight, 'mL'), percent.value)
  const perHour = new Quantity(volume.value.div(over.value), 'mL/h')
  return { volume, over, perHour, together: new Quantity(perHour.value.plus(rate.value), 'mL/h') }
}
