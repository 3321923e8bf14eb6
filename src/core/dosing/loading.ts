import type { Dose, DoseRow } from '#core/formulary/drug.ts'
import { convert, plain } from '#core/units/quantity.ts'
import { amountOf } from './amount.ts'
import { drawSyringe } from './draw-syringe.ts'
import type { Drawing, Drawn } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'

/**
 * The dose given at once before an infusion, drawn like any single dose. Nobody is given one that was not chosen; an
 * infusion whose drug has a known loading dose says that it is missing.
 *
 * @example loadingOf(drawing).measured.loading?.drawn // 1.2 mL for 0.3 mg/kg of 10 mg/mL in 40 kg
 */
export function loadingOf(drawing: Drawing): Drawn {
  const { line, row, drug, body } = drawing
  if (!line.loading) return { measured: {}, findings: notChosen(drawing) }
  const { dose, over } = line.loading
  const amount = amountOf(dose, body)
  // Ceilings of the infusion's row are rates; a single dose has none of them.
  const { maxSingle: _, maxCumulative: __, ...single } = row
  const { over: ___, loading: ____, container: _____, ...plainLine } = line
  const drawn = drawSyringe({
    ...drawing,
    row: single satisfies DoseRow,
    dose,
    amount,
    line: { ...plainLine, ...(over && { over }) },
    down: drawing.loadingDown ?? false,
  })
  const { volume, drawn: taken, delivered, dilution, rate } = drawn.measured
  const incomplete = !taken && !dilution
  const loading = {
    dose,
    amount,
    ...(volume && { volume }),
    ...(taken && { drawn: taken }),
    ...(delivered && { delivered }),
    ...(dilution && { dilution }),
    ...(rate && { rate }),
  }
  const about = { drug: drug.name, dose: dose.toString() }
  return {
    measured: { loading },
    findings: [
      ...drawn.findings,
      ...(incomplete && line.stock ? [found('block', 'loading-not-worked-out', about)] : []),
      ...outside(drug.name, row, dose),
    ],
  }
}

function outside(drug: string, row: DoseRow, dose: Dose): DoseFinding[] {
  const { loading } = row
  const low = loading && convert(loading.value.low, dose.unit)
  const high = loading && convert(loading.value.high, dose.unit)
  if (!loading || !low || !high) return [found('confirm', 'loading-range-unknown', { drug, dose: dose.toString() })]
  if (dose.value.gte(low.value) && dose.value.lte(high.value)) return []
  const about = { drug, dose: dose.toString(), low: low.toString(), high: high.toString() }
  const level = dose.value.gt(high.value.times(5)) ? 'block' : 'confirm'
  return [found(level, 'loading-outside-range', about, [loading])]
}

function notChosen({ row, drug, rules, loaded }: Drawing): DoseFinding[] {
  const { loading } = row
  if (!loading || loaded) return []
  const { halfLives, reached } = rules.infusions.plateau.value
  const about = {
    drug: drug.name,
    halfLives: String(halfLives),
    reached: plain(reached.times(100)),
    low: loading.value.low.toString(),
    high: loading.value.high.toString(),
  }
  return [found('note', 'loading-not-chosen', about, [loading, rules.infusions.plateau])]
}
