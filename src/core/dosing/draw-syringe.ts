import type { DoseRow, Drug } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, plain, Quantity } from '#core/units/quantity.ts'
import { type Body, deliveredBy } from './amount.ts'
import { dispense } from './dispense.ts'
import { type Drawing, type Drawn, shift, strengthMissing, strengthUnfit } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import { roundingCeiling } from './limits.ts'
import { dilutionBar } from './mixing.ts'
import type { DosingRules } from './rules.ts'
import { drawnFrom, type Syringe, smallestDrawable } from './syringe.ts'
import { heldBy, volumeOf, weakerDilution } from './volume.ts'

/** The exact volume, the mark of the syringe, and what that mark really gives; or a dilution that can be drawn. */
export function drawSyringe(drawing: Drawing): Drawn {
  const { amount, line, dose, row, rules, drug, body } = drawing
  const { volume, finding } = exactVolume(drawing)
  if (!volume) return { measured: {}, findings: finding ? [finding] : [] }
  const syringes = syringesFor(drawing)
  const options = { down: drawing.down, ...(syringes && { syringes }) }
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
  const { dispensed, findings } = dispense(drug.name, row, drawn, isTakenHome(row) ? line.days : undefined)
  const measured = {
    volume,
    drawn,
    delivered,
    ...(line.over && { rate: rateOver(volume, line.over) }),
    ...(dispensed && { dispense: dispensed }),
  }
  return { measured, findings: [...findings, ...shift(drawing, delivered), ...large(volume, body, row, drug, rules)] }
}

/** A liquid by mouth leaves the clinic in a bottle; an injection does not. */
function isTakenHome({ routes }: DoseRow): boolean {
  return routes.includes('PO') || routes.includes('OTM')
}

/** The syringe in hand, when its marks were stated; else those of the drawer. */
function syringesFor({ line, syringes }: Drawing): readonly Syringe[] | undefined {
  return line.mark ? [{ holds: '60', mark: plain(line.mark.value) }] : syringes
}

function exactVolume(drawing: Drawing): { volume?: Quantity<'mL'>; finding?: DoseFinding } {
  const { amount, line } = drawing
  const direct = convert(amount, 'mL')
  if (direct) return { volume: direct }
  if (!line.stock) return { finding: strengthMissing(drawing) }
  const volume = volumeOf(amount, line.stock)
  if (volume) return { volume }
  return { finding: strengthUnfit(drawing, line.stock.toString()) }
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
  const { amount, line, row, rules, drug, dose } = drawing
  const bar = dilutionBar(drug, rules.mixing)
  if (bar)
    return {
      measured: {},
      findings: [found('block', 'dilution-forbidden', { drug: drug.name, because: bar.because }, [bar])],
    }
  const dilute = (down: boolean) =>
    line.stock && weakerDilution(amount, line.stock, rules.dilutions.value, { ...options, down })
  const most = roundingCeiling(row, dose, amount)
  const nearest = dilute(options.down)
  const isOver = most && nearest && heldBy(nearest.drawn, nearest.strength, amount.unit).value.gt(most.value)
  const weaker = isOver ? dilute(true) : nearest
  const about = {
    drug: drug.name,
    volume: `${plain(volume.value.toSignificantDigits(4))} mL`,
    least: smallestDrawable.toString(),
    offer: weaker
      ? `1 in ${weaker.parts} gives ${weaker.strength}: draw ${weaker.drawn}. To make it, ${weaker.recipe.product} of the product and ${weaker.recipe.diluent} of diluent`
      : 'no listed dilution is weak enough: take a weaker product',
  }
  const findings = [found('note', 'volume-too-small', about, [rules.dilutions])]
  if (!weaker) return { measured: {}, findings }
  const held = heldBy(weaker.drawn, weaker.strength, amount.unit) as Quantity<AnyQuantity['unit']>
  const delivered = deliveredBy(held, amount as Quantity<AnyQuantity['unit']>, dose)
  return { measured: { dilution: weaker, delivered }, findings: [...findings, ...shift(drawing, delivered)] }
}

function large(volume: Quantity<'mL'>, body: Body, row: DoseRow, drug: Drug, rules: DosingRules): DoseFinding[] {
  const injected = row.routes.some((route) => route === 'IV' || route === 'IM' || route === 'SC')
  // A dose in millilitres (fluid, blood, lipid) has no strength that could be mistaken.
  if (!injected || drug.groups.includes('induction-agent') || row.range.value.low.unit === 'mL/kg') return []
  const perWeight = volume.value.div(body.weight.value)
  if (perWeight.lte(rules.largeBolus.value.value)) return []
  const about = { drug: drug.name, volume: volume.toString(), most: rules.largeBolus.value.toString() }
  return [found('note', 'volume-large', about, [rules.largeBolus])]
}
