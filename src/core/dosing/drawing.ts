import type { Dose, DoseRow, Drug, Stock, StockProduct } from '#core/formulary/drug.ts'
import type { Level } from '#core/outcome/finding.ts'
import { type AnyQuantity, convert, Decimal, plain } from '#core/units/quantity.ts'
import { type Body, kindOf } from './amount.ts'
import type { Poured } from './container.ts'
import { type DoseFinding, found } from './findings.ts'
import type { Measured, PlannedLine } from './request.ts'
import type { DosingRules } from './rules.ts'
import { productOf, strengthMixed } from './strength-in-hand.ts'
import type { Syringe } from './syringe.ts'
import { listsStrength } from './volume.ts'

/** One amount that is to be drawn up, counted out or run in. */
export type Drawing = {
  readonly drug: Drug
  readonly row: DoseRow
  readonly line: PlannedLine
  readonly dose: Dose
  readonly amount: AnyQuantity
  readonly body: Body
  readonly rules: DosingRules
  readonly syringes?: readonly Syringe[]
  /** Round down whatever the nearest mark is, because a shared ceiling is near. */
  readonly down: boolean
  /** The same for its loading dose. */
  readonly loadingDown?: boolean
  /** Its bag or syringe, once it is filled. */
  readonly poured?: Poured
  /** The drug was given, or is planned, as a single dose before its infusion. */
  readonly loaded?: boolean
}

export type Drawn = { readonly measured: Partial<Measured>; readonly findings: readonly DoseFinding[] }

export function strengthMissing({ drug, row }: Drawing): DoseFinding {
  const known = row.stocks.value.map(({ strength, words }) => [strength?.toString(), words].filter(Boolean).join(' '))
  const sizes = (row.tablets?.value ?? []).map(({ strength }) => `tablet of ${strength}`)
  const about = { drug: drug.name, known: [...known, ...sizes].join('; ') || 'none on record' }
  return found('note', 'strength-not-chosen', about, [row.stocks])
}

/**
 * A strength that no usual product has: a misread label is more likely than a rare product, tenfold off a slipped
 * point, and a hundredfold off another unit. What runs into a vein by the hour is mixed weaker than its product as a
 * rule; there only a slip of the point or of the unit, by itself, is taken for one, and the rest is asked about.
 */
export function strengthUnusual(drawing: Drawing): DoseFinding[] {
  const { drug, row, rules } = drawing
  const stock = productOf(drawing.line)
  if (!stock) return []
  const usual = row.stocks.value.flatMap(({ strength }) =>
    strength && convert(strength, stock.unit) ? [strength] : [],
  )
  if (usual.length === 0 || listsStrength(row, stock)) return []
  // Weaker than a product that is always mixed into a bag: that is the bag.
  if (isBag(row, stock)) return []
  const about = { drug: drug.name, stock: stock.toString(), known: usual.join('; ') }
  const listed = usual.map((strength) => new Decimal(convert(strength, stock.unit)?.value ?? stock.value))
  const off = Decimal.min(...listed.map((value) => timesOff(stock.value, value)))
  const { confirm, block } = rules.strengthOff.value
  if (off.gte(block) && !isMixedWeaker(drawing, stock.value, listed)) {
    return [found('block', 'strength-unit-suspected', about, [row.stocks, rules.strengthOff])]
  }
  // Per cent holds ten times as many mg/mL, and a slipped point is tenfold whatever other strengths lie between.
  if (stock.unit === 'mg/mL' && listed.some((value) => value.eq(stock.value.times(10)))) {
    return [found('confirm', 'strength-percent-suspected', about, [row.stocks, rules.strengthOff])]
  }
  const isTenfold = listed.some((value) => timesOff(stock.value, value).eq(10))
  return [found(isTenfold || off.gte(confirm) ? 'confirm' : 'note', 'strength-not-listed', about, [row.stocks])]
}

/** Of an infusion outside any bag of this plan: weaker than every product, and by no power of ten that a slip would make. */
function isMixedWeaker({ dose, line }: Drawing, inHand: Decimal, listed: readonly Decimal[]): boolean {
  if (kindOf(dose) !== 'infusion-per-weight' || line.container || line.mixed) return false
  return listed.every((value) => {
    const times = value.div(inHand)
    return times.gt(1) && !times.log(10).isInteger()
  })
}

/** What was said to be mixed gives another strength than the one stated, or more product than the whole. */
export function strengthNotAsMixed({ drug, line, rules }: Drawing): DoseFinding[] {
  const { mixed, stock } = line
  if (!mixed || !stock) return []
  const made = strengthMixed(mixed)
  const stated = convert(stock, made.unit)
  const { within } = rules.infusions
  const agrees = stated?.value.div(made.value).minus(1).abs().lte(within.value) === true
  if (agrees && mixed.product.value.lte(mixed.final.value)) return []
  const about = {
    drug: drug.name,
    product: `${mixed.product} of ${mixed.from}`,
    final: mixed.final.toString(),
    made: `${plain(made.value.toSignificantDigits(4))} ${made.unit}`,
    stock: stock.toString(),
  }
  return [found('block', 'strength-not-as-mixed', about, [within])]
}

/**
 * A product that is always mixed into a bag, about to run as it is or stronger; less than tenfold weaker asks for a
 * person, because a bag is many times weaker.
 */
export function undiluted(
  { drug, row, rules }: Pick<Drawing, 'drug' | 'row' | 'rules'>,
  running: Stock | undefined,
): DoseFinding[] {
  const mixed = neverAlone(row)
  if (!running || mixed.length === 0) return []
  const stock = `${plain(running.value.toSignificantDigits(4))} ${running.unit}`
  const about = { drug: drug.name, stock, known: mixed.map(({ strength }) => strength?.toString() ?? '').join('; ') }
  if (!isBag(row, running)) return [found('block', 'strength-undiluted', about, [row.stocks])]
  const weakest = Decimal.min(
    ...mixed.flatMap(({ strength }) => (strength && convert(strength, running.unit)?.value) ?? []),
  )
  if (weakest.div(running.value).gte(rules.strengthOff.value.confirm)) return []
  return [found('confirm', 'strength-hardly-diluted', about, [row.stocks, rules.strengthOff])]
}

function neverAlone(row: DoseRow): readonly StockProduct[] {
  return row.stocks.value.filter(({ neverUndiluted }) => neverUndiluted)
}

function isBag(row: DoseRow, stock: Stock): boolean {
  const mixed = neverAlone(row)
  return (
    mixed.length > 0 &&
    mixed.every(({ strength }) => strength && convert(strength, stock.unit)?.value.gt(stock.value) === true)
  )
}

/** How many times more or less. */
function timesOff(inHand: Decimal, listed: Decimal): Decimal {
  return Decimal.max(inHand.div(listed), listed.div(inHand))
}

/**
 * The strength in hand belongs to another formulation of this drug, whose doses are other doses: the bottles were
 * mixed up, or the row was.
 */
export function strengthOfOther({ drug, row, line }: Drawing): DoseFinding[] {
  const stock = productOf(line)
  const others = drug.doses.filter(({ formulation }) => formulation !== row.formulation)
  const other = others.find((entry) => stock && listsStrength(entry, stock))
  if (!stock || !other || listsStrength(row, stock)) return []
  const about = {
    drug: drug.name,
    stock: stock.toString(),
    other: other.formulation ?? 'the usual product',
    known: row.stocks.value.map(({ strength, words }) => strength?.toString() ?? words ?? '').join('; '),
  }
  return [found('block', 'strength-of-other-formulation', about, [other.stocks, other.range])]
}

/** The strength in hand is of a kind that cannot hold this amount. */
export function strengthUnfit({ drug, amount }: Drawing, product: string): DoseFinding {
  return found('block', 'strength-does-not-fit', { drug: drug.name, stock: product, amount: amount.toString() })
}

/** How far rounding moved the dose, when that is more than the house lets pass in silence for drugs of this class. */
export function shift({ drug, dose, rules }: Drawing, delivered: Dose): DoseFinding[] {
  const share = delivered.value.div(dose.value).minus(1)
  const level = shiftLevel(share.abs(), drug, rules)
  if (!level) return []
  const about = {
    drug: drug.name,
    dose: dose.toString(),
    delivered: `${plain(delivered.value.toSignificantDigits(4))} ${delivered.unit}`,
    percent: plain(share.times(100).abs().toDecimalPlaces(0)),
  }
  return [found(level, 'rounding-shifts-dose', about, [rules.rounding])]
}

function shiftLevel(share: Decimal, drug: Drug, { rounding }: DosingRules): Level | undefined {
  const { confirm, classes } = rounding.value
  const own = classes.find(({ groups }) => groups.some((group) => drug.groups.includes(group)))
  if (own?.block && share.gt(own.block)) return 'block'
  if (share.gt(confirm)) return 'confirm'
  return own && share.gt(own.note) ? 'note' : undefined
}
