import { Decimal as Base } from 'decimal.js'
import { isUnit, likelyUnit, type Unit, units } from './unit.ts'

/** Exact decimals with 40 significant digits; halves round away from zero, as on a syringe chart. */
export const Decimal = Base.clone({ precision: 40, rounding: Base.ROUND_HALF_UP, toExpNeg: -30, toExpPos: 30 })
export type Decimal = Base

declare const unitOf: unique symbol

/**
 * An immutable exact number with a unit from the closed list.
 * Invariant in its unit, so that mg can never be passed where mL is wanted. The unit is checked at run time too.
 */
export class Quantity<in out U extends Unit> {
  declare readonly [unitOf]: (unit: U) => U
  readonly value: Decimal
  readonly unit: U

  constructor(value: Decimal, unit: U) {
    if (!value.isFinite()) throw new Error(`A quantity must be a finite number, not ${value.toString()}.`)
    this.value = value
    this.unit = unit
    Object.freeze(this)
  }

  /** `12.5 kg`: the shortest exact decimal and the UCUM unit. */
  toString(): string {
    return `${plain(this.value)} ${this.unit}`
  }

  /** The form of journal bodies: an exact decimal as text. */
  toJSON(): { value: string; unit: U } {
    return { value: plain(this.value), unit: this.unit }
  }
}

/** Any quantity, when the unit is known only at run time. */
export type AnyQuantity = { [U in Unit]: Quantity<U> }[Unit]

/** An exact quantity from decimal text. Example: `quantity('12.5', 'kg')`. Throws on text that is not a plain decimal. */
export function quantity<const U extends Unit>(value: string | Decimal, unit: U): Quantity<U> {
  if (typeof value === 'string' && !/^-?\d+(\.\d+)?$/.test(value)) {
    throw new Error(`"${value}" is not a plain decimal number.`)
  }
  if (!isUnit(unit)) throw new Error(`"${String(unit)}" is not a unit of the list.`)
  return new Quantity(new Decimal(value), unit)
}

/** Decimal digits without exponent and without trailing zeros. */
export function plain(value: Decimal): string {
  return value.toFixed()
}

/** Checks at run time that a quantity carries the unit the types promise; throws otherwise. */
export function expectUnit<U extends Unit>(found: { readonly unit: Unit }, unit: U): void {
  if (found.unit !== unit) throw new Error(`Expected a quantity in ${unit}, got ${found.unit}.`)
}

export function add<U extends Unit>(a: Quantity<U>, b: Quantity<U>): Quantity<U> {
  expectUnit(b, a.unit)
  return new Quantity(a.value.plus(b.value), a.unit)
}

export function subtract<U extends Unit>(a: Quantity<U>, b: Quantity<U>): Quantity<U> {
  expectUnit(b, a.unit)
  return new Quantity(a.value.minus(b.value), a.unit)
}

/** The same unit, `factor` times as much. */
export function scale<U extends Unit>(a: Quantity<U>, factor: Decimal | string): Quantity<U> {
  return new Quantity(a.value.times(factor), a.unit)
}

/** A rate times its denominator: `times(mg/kg, kg, 'mg')` is in mg. */
export function times<N extends Unit, D extends Unit>(
  rate: Quantity<Extract<`${N}/${D}`, Unit>>,
  by: Quantity<D>,
  out: N,
): Quantity<N> {
  if (rate.unit !== `${out}/${by.unit}`) throw new Error(`${rate.unit} times ${by.unit} is not ${out}.`)
  return new Quantity(rate.value.times(by.value), out)
}

/** An amount divided by what it is per: `per(mg, mL, 'mg/mL')`. */
export function per<N extends Unit, D extends Unit>(
  amount: Quantity<N>,
  by: Quantity<D>,
  out: Extract<`${N}/${D}`, Unit>,
): Quantity<Extract<`${N}/${D}`, Unit>> {
  if (out !== `${amount.unit}/${by.unit}`) throw new Error(`${amount.unit} divided by ${by.unit} is not ${out}.`)
  if (by.value.isZero()) throw new Error(`Cannot divide ${amount.toString()} by zero ${by.unit}.`)
  return new Quantity(amount.value.div(by.value), out)
}

/** An amount divided by a strength: `volumeOf(mg, mg/mL, 'mL')` is in mL. */
export function divide<N extends Unit, D extends Unit>(
  amount: Quantity<N>,
  rate: Quantity<Extract<`${N}/${D}`, Unit>>,
  out: D,
): Quantity<D> {
  if (rate.unit !== `${amount.unit}/${out}`) throw new Error(`${amount.unit} divided by ${rate.unit} is not ${out}.`)
  if (rate.value.isZero()) throw new Error(`Cannot divide ${amount.toString()} by zero ${rate.unit}.`)
  return new Quantity(amount.value.div(rate.value), out)
}

/** How many times `b` goes into `a`: a bare number, both in the same unit. */
export function ratio<U extends Unit>(a: Quantity<U>, b: Quantity<U>): Decimal {
  expectUnit(b, a.unit)
  if (b.value.isZero()) throw new Error(`Cannot divide ${a.toString()} by zero.`)
  return a.value.div(b.value)
}

export function compare<U extends Unit>(a: Quantity<U>, b: Quantity<U>): -1 | 0 | 1 {
  expectUnit(b, a.unit)
  return a.value.comparedTo(b.value) as -1 | 0 | 1
}

/** The same amount in another unit of the same dimension, exactly; undefined when the dimensions differ. */
export function convert<const T extends Unit>(
  from: { readonly value: Decimal; readonly unit: Unit },
  to: T,
): Quantity<T> | undefined {
  if (from.unit === to) return new Quantity(from.value, to)
  const a = units[from.unit]
  const b = units[to]
  if (a.dimension !== b.dimension) return undefined
  return new Quantity(from.value.times(a.per).div(b.per), to)
}

/** Why a value cannot be read as a quantity. `suggestion` is a unit to write instead. */
export type QuantityRefusal =
  | { readonly because: 'bare-number'; readonly given: string }
  | { readonly because: 'not-a-quantity'; readonly given: string }
  | { readonly because: 'unknown-unit'; readonly given: string; readonly suggestion?: Unit }
  | { readonly because: 'wrong-unit'; readonly given: string; readonly wanted: readonly Unit[] }
  | { readonly because: 'ambiguous'; readonly given: string; readonly readings: readonly string[] }
  | { readonly because: 'not-plain-decimal'; readonly given: string }

/** `{"value": 12.5, "unit": "kg"}` or the same with decimal text, as programs send it. */
export function readQuantity(input: unknown): AnyQuantity | QuantityRefusal {
  if (typeof input === 'number') return { because: 'bare-number', given: String(input) }
  if (typeof input !== 'object' || input === null) return { because: 'not-a-quantity', given: String(input) }
  const { value, unit } = input as { value?: unknown; unit?: unknown }
  const text = typeof value === 'number' && Number.isFinite(value) ? new Decimal(value).toFixed() : value
  if (typeof text !== 'string' || !/^-?\d+(\.\d+)?$/.test(text)) {
    return { because: 'not-plain-decimal', given: String(value) }
  }
  if (typeof unit !== 'string') return { because: 'bare-number', given: text }
  if (!isUnit(unit)) {
    const suggestion = likelyUnit(unit)
    return suggestion ? { because: 'unknown-unit', given: unit, suggestion } : { because: 'unknown-unit', given: unit }
  }
  return new Quantity(new Decimal(text), unit) as AnyQuantity
}

export function isQuantity(value: unknown): value is AnyQuantity {
  return value instanceof Quantity
}
