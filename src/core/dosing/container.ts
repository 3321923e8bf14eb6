import type { Carrier } from '#core/formulary/carriers.ts'
import type { Stock } from '#core/formulary/drug.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type AnyQuantity, convert, Decimal, Quantity } from '#core/units/quantity.ts'
import type { InfusionRules } from './rules.ts'
import { drawnFrom, type Syringe, smallestDrawable } from './syringe.ts'
import { heldBy, volumeOf } from './volume.ts'

/** A bag or a syringe that runs at one rate. Lines that name the same one share it. */
export type Container = {
  readonly kind: 'bag' | 'syringe'
  readonly name: string
  readonly volume: Quantity<'mL'>
  readonly rate: Quantity<'mL/h'> | Quantity<'mL/kg/h'>
  /** Whether as much fluid as drug is taken out of a bag first. Absent: by the house's share. A syringe is made up to its volume. */
  readonly ownVolume?: 'withdrawn' | 'added'
  readonly fluid?: Carrier
}

/** One drug of a container: what an hour of it holds, and the strength it is drawn from. */
export type Part = {
  readonly line: string
  readonly perHour: AnyQuantity
  readonly stock: Stock
  readonly down?: boolean
}

export type Convention = 'made-up' | 'withdrawn' | 'added'

export type PouredPart = {
  readonly line: string
  /** One part of the product made up to so many before it is drawn; 1 is undiluted. */
  readonly dilutedTo: number
  /** The strength it is drawn from: the product's, or that of the dilution. */
  readonly from: Stock
  readonly volume: Quantity<'mL'>
  readonly drawn: Quantity<'mL'>
  /** What the drawn volume holds: the amount a nurse writes on the container. */
  readonly amount: AnyQuantity
  /** What the pump then gives in an hour, worked back from the label. */
  readonly perHour: AnyQuantity
}

export type Filled = {
  readonly convention: Convention
  /** The drugs' own volume as a share of the container. */
  readonly share: Decimal
  /** Fluid to take out of a full bag, or to draw into an empty syringe. */
  readonly fluid: Quantity<'mL'>
  readonly final: Quantity<'mL'>
  readonly pump: Quantity<'mL/h'>
  readonly lasts: Quantity<'h'>
  readonly parts: readonly PouredPart[]
}

/** One line's share of a filled bag or syringe. */
export type Poured = Filled & {
  readonly container: Container
  readonly mine: PouredPart
  /** How far what the pump gives lies from the prescribed dose, as a share. */
  readonly off: Decimal
}

export type FillRefusal =
  | { readonly because: 'too-slow'; readonly least: Quantity<'mL/h'>; readonly rate: Quantity<'mL/h'> }
  | { readonly because: 'pump-cannot'; readonly rate: Quantity<'mL/h'>; readonly step: Quantity<'mL/h'> }
  | { readonly because: 'too-little'; readonly line: string; readonly volume: Quantity<'mL'> }
  | { readonly because: 'strength-does-not-fit'; readonly line: string }

/**
 * What goes into one bag or syringe so that its rate gives every drug's dose, and what the pump then really gives.
 * Drug to add = amount per hour × volume ÷ rate (veterinary formula pages and the Florida hand-out); when the drug
 * comes on top of a full bag, the volume it adds counts too. Rounded to syringe marks and to the step of the pump.
 *
 * @example fill({ kind: 'syringe', name: 's', volume: 60 mL, rate: 20 mL/h }, [morphine 8 mg/h of 10 mg/mL], ...) // 2.4 mL
 */
export function fill(
  container: Container,
  parts: readonly Part[],
  weight: Quantity<'kg'>,
  rules: InfusionRules,
  options: { readonly syringes?: readonly Syringe[]; readonly dilutions: readonly number[] },
): Outcome<Filled, FillRefusal> {
  const rate = rateOf(container, weight)
  const { volume } = container
  const step = rules.pumpStep.value
  const pump = new Quantity(rate.value.div(step.value).toDecimalPlaces(0).times(step.value), 'mL/h')
  if (pump.value.isZero()) return refuse({ because: 'pump-cannot', rate, step })

  const strong = parts.map((part) => ({ part, neat: volumeOf(hourOf(part.perHour), part.stock) }))
  const unfit = strong.find(({ neat }) => !neat)
  if (unfit) return refuse({ because: 'strength-does-not-fit', line: unfit.part.line })
  const chosen = parts.map((part) => drawable(part, volume, rate, options.dilutions))
  const little = chosen.find(({ enough }) => !enough)
  if (little) return refuse({ because: 'too-little', line: little.part.line, volume: little.exact })

  const neat = chosen.reduce((sum, { neat }) => sum.plus(neat.value), new Decimal(0))
  const share = neat.div(rate.value)
  const convention = conventionOf(container, share, rules)
  if (convention === 'added' ? share.gte(1) : share.gt(1)) {
    return refuse({ because: 'too-slow', least: new Quantity(neat, 'mL/h'), rate })
  }
  const whole = convention === 'added' ? volume.value.div(new Decimal(1).minus(share)) : volume.value
  const drawn = chosen.map(({ part, neat, stock, dilutedTo }) => {
    const exact = new Quantity(neat.value.times(whole).div(rate.value), 'mL')
    const marks = { down: part.down ?? false, ...(options.syringes && { syringes: options.syringes }) }
    return { part, stock, dilutedTo, exact, drawn: drawnFrom(exact, marks) }
  })
  const own = drawn.reduce((sum, one) => sum.plus(one.drawn.value), new Decimal(0))
  const final = new Quantity(convention === 'added' ? volume.value.plus(own) : volume.value, 'mL')
  return answer({
    convention,
    share,
    fluid: new Quantity(fluidOf(convention, volume.value, own), 'mL'),
    final,
    pump,
    lasts: new Quantity(final.value.div(pump.value), 'h'),
    parts: drawn.map(({ part, stock, dilutedTo, exact, drawn: taken }): PouredPart => {
      const amount = written(heldBy(taken, stock, hourOf(part.perHour).unit))
      const inUnit = convert(amount, hourOf(part.perHour).unit)
      if (!inUnit) throw new Error(`${amount} is not what ${part.perHour} is made of.`)
      const perHour = new Quantity(inUnit.value.times(pump.value).div(final.value), part.perHour.unit) as AnyQuantity
      return { line: part.line, dilutedTo, from: stock, volume: exact, drawn: taken, amount, perHour }
    }),
  })
}

/** The rate of the container in millilitres an hour, on the measured weight when it is written per kilogram. */
export function rateOf({ rate }: Container, weight: Quantity<'kg'>): Quantity<'mL/h'> {
  return rate.unit === 'mL/h' ? new Quantity(rate.value, 'mL/h') : new Quantity(rate.value.times(weight.value), 'mL/h')
}

/** A syringe is made up to its volume; from a bag the drug's volume is taken out first when it is more than the house's share. */
function conventionOf({ kind, ownVolume }: Container, share: Decimal, rules: InfusionRules): Convention {
  if (kind === 'syringe') return ownVolume === 'added' ? 'added' : 'made-up'
  return ownVolume ?? (share.gt(rules.ownShare.value) ? 'withdrawn' : 'added')
}

function fluidOf(convention: Convention, volume: Decimal, own: Decimal): Decimal {
  switch (convention) {
    case 'made-up':
      return Decimal.max(0, volume.minus(own))
    case 'withdrawn':
      return own
    case 'added':
      return volume
  }
}

/** The product itself, or the first dilution of it, of which enough goes into the container to be drawn. */
function drawable(part: Part, volume: Quantity<'mL'>, rate: Quantity<'mL/h'>, dilutions: readonly number[]) {
  const tries = [1, ...dilutions].map((dilutedTo) => {
    const stock = new Quantity(part.stock.value.div(dilutedTo), part.stock.unit) as Stock
    const neat = volumeOf(hourOf(part.perHour), stock)
    if (!neat) throw new Error(`${part.perHour} cannot be taken from ${stock}.`)
    const exact = new Quantity(neat.value.times(volume.value).div(rate.value), 'mL')
    return { part, stock, dilutedTo, neat, exact, enough: exact.value.gte(smallestDrawable.value) }
  })
  const first = tries[0]
  if (!first) throw new Error('There is always the product itself.')
  return tries.find(({ enough }) => enough) ?? first
}

/** What one hour of a rate holds. */
export function hourOf(rate: AnyQuantity): AnyQuantity {
  switch (rate.unit) {
    case 'mg/h':
      return new Quantity(rate.value, 'mg')
    case 'ug/h':
      return new Quantity(rate.value, 'ug')
    case 'mmol/h':
      return new Quantity(rate.value, 'mmol')
    case 'mL/h':
      return new Quantity(rate.value, 'mL')
    default:
      throw new Error(`${rate} is no rate of an infusion.`)
  }
}

/** An amount as somebody writes it on a label: four figures, micrograms only below a milligram. */
function written(amount: AnyQuantity): AnyQuantity {
  const mass = convert(amount, 'mg')
  const said = mass && (mass.value.gte(1) ? mass : convert(amount, 'ug'))
  const { value, unit } = said ?? amount
  return new Quantity(value.toSignificantDigits(4), unit) as AnyQuantity
}
