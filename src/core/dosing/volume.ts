import type { DoseRow, Stock } from '#core/formulary/drug.ts'
import { never } from '#core/outcome/outcome.ts'
import { type AnyQuantity, convert, Decimal, divide, Quantity, scale, times } from '#core/units/quantity.ts'
import { drawnFrom, type Syringe, smallestDrawable } from './syringe.ts'

/** A weaker product to draw from. */
export type Dilution = {
  readonly parts: number
  readonly strength: Stock
  readonly volume: Quantity<'mL'>
  readonly drawn: Quantity<'mL'>
  /** How to make it: so much of the product and so much diluent, enough for the drawn volume. */
  readonly recipe: { readonly product: Quantity<'mL'>; readonly diluent: Quantity<'mL'> }
}

/**
 * The exact volume that holds an amount; undefined when a strength of this kind cannot hold it
 * (millimoles from a bottle in mg/mL).
 *
 * @example volumeOf(quantity('8.2', 'mg'), quantity('5', 'mg/mL')) // 1.64 mL
 */
export function volumeOf(amount: AnyQuantity, stock: Stock): Quantity<'mL'> | undefined {
  switch (stock.unit) {
    case 'mg/mL':
      return over(convert(amount, 'mg'), (mass) => divide(mass, stock, 'mL'))
    case 'ug/mL':
      return over(convert(amount, 'ug'), (mass) => divide(mass, stock, 'mL'))
    case 'g/L':
      return over(convert(amount, 'g'), (mass) => scale(new Quantity(mass.value.div(stock.value), 'mL'), '1000'))
    case '[iU]/mL':
      return over(convert(amount, '[iU]'), (activity) => divide(activity, stock, 'mL'))
    case 'mmol/mL':
      return over(convert(amount, 'mmol'), (substance) => divide(substance, stock, 'mL'))
    default:
      return never(stock)
  }
}

/** Whether a strength is one of the row's usual products. */
export function listsStrength({ stocks }: DoseRow, stock: Stock): boolean {
  return stocks.value.some(({ strength }) => strength && convert(stock, strength.unit)?.value.eq(strength.value))
}

/** The amount a drawn volume holds, in the unit of the planned amount. */
export function heldBy(volume: Quantity<'mL'>, stock: Stock, unit: AnyQuantity['unit']): AnyQuantity {
  const held = ((): AnyQuantity => {
    switch (stock.unit) {
      case 'mg/mL':
        return times(stock, volume, 'mg')
      case 'ug/mL':
        return times(stock, volume, 'ug')
      case 'g/L':
        return new Quantity(stock.value.times(volume.value), 'mg')
      case '[iU]/mL':
        return times(stock, volume, '[iU]')
      case 'mmol/mL':
        return times(stock, volume, 'mmol')
      default:
        return never(stock)
    }
  })()
  const converted = convert(held, unit)
  if (!converted) throw new Error(`${held} cannot be read in ${unit}.`)
  return converted as AnyQuantity
}

function over<In, Out>(value: In | undefined, work: (value: In) => Out): Out | undefined {
  return value === undefined ? undefined : work(value)
}

/**
 * The first weaker dilution from which the amount can be drawn. "1 in 10" is one part of the product
 * made up to ten parts.
 *
 * @example weakerDilution(quantity('0.2', 'mg'), quantity('10', 'mg/mL'), [10, 100]) // 1 in 10: 1 mg/mL, 0.2 mL
 */
export function weakerDilution(
  amount: AnyQuantity,
  stock: Stock,
  parts: readonly number[],
  options: { readonly syringes?: readonly Syringe[]; readonly down?: boolean } = {},
): Dilution | undefined {
  for (const part of parts) {
    const strength = new Quantity(stock.value.div(part), stock.unit) as Stock
    const volume = volumeOf(amount, strength)
    if (volume?.value.gte(smallestDrawable.value)) {
      const drawn = drawnFrom(volume, options)
      return { parts: part, strength, volume, drawn, recipe: recipeFor(drawn, part) }
    }
  }
  return undefined
}

/** As much of the product as can be measured well; one of these steps makes enough. */
const productSteps = ['0.1', '0.2', '0.5', '1', '2', '5']

/**
 * How much product and how much diluent make enough of "1 in so many" for one drawn volume.
 *
 * @example recipeFor(quantity('0.16', 'mL'), 10) // 0.1 mL of the product and 0.9 mL of diluent
 */
export function recipeFor(drawn: Quantity<'mL'>, parts: number): Dilution['recipe'] {
  const step = productSteps.find((volume) => new Decimal(volume).times(parts).gte(drawn.value))
  const product = step ? new Decimal(step) : drawn.value.div(parts).ceil()
  return { product: new Quantity(product, 'mL'), diluent: new Quantity(product.times(parts - 1), 'mL') }
}
