import type { Dose, DoseRow, Drug } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, plain, Quantity } from '#core/units/quantity.ts'
import { type Body, type DoseKind, deliveredBy, kindOf } from './amount.ts'
import { type DoseFinding, found } from './findings.ts'
import { roundingCeiling } from './limits.ts'
import type { Measured, PlannedLine } from './request.ts'
import type { DosingRules } from './rules.ts'
import { drawnFrom, type Syringe, smallestDrawable } from './syringe.ts'
import { countTablets, courseOf, dividesOf } from './tablets.ts'
import { heldBy, volumeOf, weakerDilution } from './volume.ts'

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
}

export type Drawn = { readonly measured: Partial<Measured>; readonly findings: readonly DoseFinding[] }

/**
 * Volume, syringe, tablets or pump rate of an amount, and what they really give.
 *
 * @example draw({ amount: quantity('8.2', 'mg'), line: { stock: quantity('5', 'mg/mL') }, ... }).measured.drawn // 1.6 mL
 */
export function draw(drawing: Drawing): Drawn {
  const drawn = drawByKind(drawing)
  return { ...drawn, findings: [...strengthUnusual(drawing), ...drawn.findings] }
}

function drawByKind(drawing: Drawing): Drawn {
  const kind = kindOf(drawing.dose)
  if (!isMeasured(kind, drawing.row)) return { measured: {}, findings: [] }
  if (drawing.line.tablet) return tablets(drawing, drawing.line.tablet)
  if (kind === 'infusion-per-weight') return infusion(drawing)
  return syringe(drawing)
}

/** Patches, eye drops and vaporiser settings are not drawn into a syringe. */
function isMeasured(kind: DoseKind, row: DoseRow): boolean {
  if (row.use === 'transdermal' || kind === 'infusion-flat') return false
  return kind !== 'flat' || row.range.value.low.unit === 'mg/{animal}'
}

function strengthMissing({ drug, row }: Drawing): DoseFinding {
  const known = row.stocks.value.map(({ strength, words }) => [strength?.toString(), words].filter(Boolean).join(' '))
  const sizes = (row.tablets?.value ?? []).map(({ strength }) => `tablet of ${strength}`)
  const about = { drug: drug.name, known: [...known, ...sizes].join('; ') || 'none on record' }
  return found('note', 'strength-not-chosen', about, [row.stocks])
}

/** A strength that no usual product has: a misread label is more likely than a rare product. */
function strengthUnusual({ drug, row, line }: Drawing): DoseFinding[] {
  const inHand = line.stock && convert(line.stock, 'mg/mL')
  const usual = row.stocks.value.flatMap(({ strength }) => (strength ? [strength] : []))
  if (!line.stock || !inHand || usual.length === 0) return []
  if (usual.some((strength) => convert(strength, 'mg/mL')?.value.eq(inHand.value))) return []
  const about = { drug: drug.name, stock: line.stock.toString(), known: usual.join('; ') }
  return [found('note', 'strength-not-listed', about, [row.stocks])]
}

function exactVolume(drawing: Drawing): { volume?: Quantity<'mL'>; finding?: DoseFinding } {
  const { amount, line, drug } = drawing
  const direct = convert(amount, 'mL')
  if (direct) return { volume: direct }
  if (!line.stock) return { finding: strengthMissing(drawing) }
  const volume = volumeOf(amount, line.stock)
  if (volume) return { volume }
  const about = { drug: drug.name, stock: line.stock.toString(), amount: amount.toString() }
  return { finding: found('block', 'strength-does-not-fit', about) }
}

function syringe(drawing: Drawing): Drawn {
  const { amount, line, dose, row, rules, drug, body } = drawing
  const { volume, finding } = exactVolume(drawing)
  if (!volume) return { measured: {}, findings: finding ? [finding] : [] }
  const options = { down: drawing.down, ...(drawing.syringes && { syringes: drawing.syringes }) }
  if (volume.value.lt(smallestDrawable.value)) return tooSmall(drawing, volume, options)

  const nearest = drawnFrom(volume, options)
  const most = roundingCeiling(row, dose, amount)
  const isOver = most && given(nearest, drawing).value.gt(most.value)
  const drawn = isOver ? drawnFrom(volume, { ...options, down: true }) : nearest
  if (drawn.value.isZero()) {
    return {
      measured: {},
      findings: [found('block', 'rounded-to-nothing', { drug: drug.name, volume: volume.toString() })],
    }
  }
  const delivered = deliveredBy(given(drawn, drawing), amount as Quantity<AnyQuantity['unit']>, dose)
  const measured = { volume, drawn, delivered, ...(line.over && { rate: rateOver(volume, line.over) }) }
  return { measured, findings: [...shift(drawing, delivered), ...large(volume, body, row, drug, rules)] }
}

function given(volume: Quantity<'mL'>, { amount, line }: Drawing): Quantity<AnyQuantity['unit']> {
  const held =
    line.stock && amount.unit !== 'mL' ? heldBy(volume, line.stock, amount.unit) : convert(volume, amount.unit)
  if (!held) throw new Error(`${volume} holds no amount in ${amount.unit}.`)
  return held as Quantity<AnyQuantity['unit']>
}

function rateOver(volume: Quantity<'mL'>, over: Quantity<'min'>): Quantity<'mL/h'> {
  return new Quantity(volume.value.div(over.value).times(60), 'mL/h')
}

function tooSmall(
  drawing: Drawing,
  volume: Quantity<'mL'>,
  options: { readonly down: boolean; readonly syringes?: readonly Syringe[] },
): Drawn {
  const { amount, line, rules, drug, dose } = drawing
  const weaker = line.stock && weakerDilution(amount, line.stock, rules.dilutions.value, options)
  const about = {
    drug: drug.name,
    volume: `${plain(volume.value.toSignificantDigits(4))} mL`,
    least: smallestDrawable.toString(),
    offer: weaker
      ? `1 in ${weaker.parts} gives ${weaker.strength}: draw ${weaker.drawn}`
      : 'no listed dilution is weak enough: take a weaker product',
  }
  const findings = [found('note', 'volume-too-small', about, [rules.dilutions])]
  if (!weaker) return { measured: {}, findings }
  const held = heldBy(weaker.drawn, weaker.strength, amount.unit) as Quantity<AnyQuantity['unit']>
  const delivered = deliveredBy(held, amount as Quantity<AnyQuantity['unit']>, dose)
  return { measured: { dilution: weaker, delivered }, findings: [...findings, ...shift(drawing, delivered)] }
}

function shift({ drug, dose, rules }: Drawing, delivered: Dose): DoseFinding[] {
  const share = delivered.value.div(dose.value).minus(1)
  if (share.abs().lte(rules.rounding.value.confirm)) return []
  const about = {
    drug: drug.name,
    dose: dose.toString(),
    delivered: `${plain(delivered.value.toSignificantDigits(4))} ${delivered.unit}`,
    percent: plain(share.times(100).abs().toDecimalPlaces(0)),
  }
  return [found('confirm', 'rounding-shifts-dose', about, [rules.rounding])]
}

function large(volume: Quantity<'mL'>, body: Body, row: DoseRow, drug: Drug, rules: DosingRules): DoseFinding[] {
  const injected = row.routes.some((route) => route === 'IV' || route === 'IM' || route === 'SC')
  if (!injected || drug.groups.includes('induction-agent')) return []
  const perWeight = volume.value.div(body.weight.value)
  if (perWeight.lte(rules.largeBolus.value.value)) return []
  const about = { drug: drug.name, volume: volume.toString(), most: rules.largeBolus.value.toString() }
  return [found('note', 'volume-large', about, [rules.largeBolus])]
}

function infusion(drawing: Drawing): Drawn {
  const { amount, line, drug } = drawing
  const total = line.over && totalOf(amount, line.over)
  const findings: DoseFinding[] = []
  if (!line.over) findings.push(found('note', 'duration-not-chosen', { drug: drug.name }))
  const perHour = massPerHour(amount)
  const direct = convert(amount, 'mL/h')
  const rate = direct ?? (perHour && line.stock && asRate(volumeOf(perHour, line.stock)))
  if (!direct && !line.stock) findings.push(strengthMissing(drawing))
  if (!rate && line.stock) {
    const about = { drug: drug.name, stock: line.stock.toString(), amount: amount.toString() }
    findings.push(found('block', 'strength-does-not-fit', about))
  }
  const least = drawing.rules.slowestRate
  if (rate?.value.lt(least.value.value)) {
    const about = {
      drug: drug.name,
      rate: `${plain(rate.value.toSignificantDigits(3))} mL/h`,
      least: least.value.toString(),
    }
    findings.push(found('note', 'rate-too-slow', about, [least]))
  }
  return { measured: { ...(rate && { rate }), ...(total && { total }) }, findings }
}

/** What one hour of a rate holds. */
function massPerHour(rate: AnyQuantity): AnyQuantity | undefined {
  if (rate.unit === 'mg/h') return new Quantity(rate.value, 'mg')
  if (rate.unit === 'ug/h') return new Quantity(rate.value, 'ug')
  if (rate.unit === 'mL/h') return new Quantity(rate.value, 'mL')
  return undefined
}

function asRate(volume: Quantity<'mL'> | undefined): Quantity<'mL/h'> | undefined {
  return volume && new Quantity(volume.value, 'mL/h')
}

function totalOf(rate: AnyQuantity, over: Quantity<'min'>): AnyQuantity | undefined {
  const hour = massPerHour(rate)
  return hour && (new Quantity(hour.value.times(over.value).div(60), hour.unit) as AnyQuantity)
}

function tablets(drawing: Drawing, tablet: NonNullable<PlannedLine['tablet']>): Drawn {
  const { drug, row, dose, amount, line } = drawing
  const mass = convert(amount, 'mg')
  if (!mass) {
    const about = { drug: drug.name, stock: `tablet of ${tablet.strength}`, amount: amount.toString() }
    return { measured: {}, findings: [found('block', 'strength-does-not-fit', about)] }
  }
  const divides = dividesOf(tablet, row)
  const perDose = (end: Dose): Quantity<'mg'> => {
    const same = convert(end, dose.unit)
    if (!same) throw new Error(`${end} and ${dose} are not of one kind.`)
    return new Quantity(mass.value.times(same.value).div(dose.value), 'mg')
  }
  const most = roundingCeiling(row, dose, mass)
  const ceiling = most && convert(most, 'mg')
  const band = { low: perDose(row.range.value.low), high: perDose(row.range.value.high), ...(ceiling && { ceiling }) }
  const count = countTablets(mass, tablet.strength, divides, band)
  const about = { drug: drug.name, amount: mass.toString(), strength: tablet.strength.toString(), divides }
  if (count.kind === 'none') return { measured: {}, findings: [found('block', 'tablet-does-not-fit', about)] }

  const held = new Quantity(count.count.value.times(tablet.strength.value), 'mg')
  const delivered = deliveredBy(held, mass, dose)
  const shown = {
    ...about,
    count: plain(count.count.value),
    delivered: `${plain(delivered.value.toSignificantDigits(4))} ${delivered.unit}`,
  }
  const total = courseOf(count.count, row.interval.value, line.days)
  const findings = [
    ...(divides === 'unknown' ? [found('note', 'tablet-not-cut', shown, row.tablets ? [row.tablets] : [])] : []),
    ...(shift(drawing, delivered).length > 0
      ? [
          found(count.kind === 'fits' ? 'note' : 'confirm', 'tablet-rounding', shown, [
            row.range,
            drawing.rules.rounding,
          ]),
        ]
      : []),
  ]
  return {
    measured: { delivered, tablets: { each: count.count, strength: tablet.strength, ...(total && { total }) } },
    findings,
  }
}
