import type { DoseRow } from '#core/formulary/drug.ts'
import { type DoseKind, kindOf } from './amount.ts'
import { drawInfusion } from './draw-infusion.ts'
import { drawSyringe } from './draw-syringe.ts'
import { drawTablets } from './draw-tablets.ts'
import { type Drawing, type Drawn, strengthNotAsMixed, strengthOfOther, strengthUnusual, undiluted } from './drawing.ts'
import { withDrip } from './drip.ts'
import { isBlock } from './findings.ts'
import { strengthForOtherRoute, strengthWithXylitol } from './strength-checks.ts'

/**
 * Volume, syringe, tablets or pump rate of an amount, and what they really give.
 *
 * @example draw({ amount: quantity('8.2', 'mg'), line: { stock: quantity('5', 'mg/mL') }, ... }).measured.drawn // 1.6 mL
 */
export function draw(drawing: Drawing): Drawn {
  // What is poured was judged by what runs out of its bag or syringe.
  const alone = drawing.poured ? [] : undiluted(drawing, drawing.line.stock)
  const mixedUp = [...strengthOfOther(drawing), ...strengthNotAsMixed(drawing), ...alone]
  if (mixedUp.some(isBlock)) return { measured: {}, findings: mixedUp }
  const unusual = [
    ...mixedUp,
    ...strengthUnusual(drawing),
    ...strengthForOtherRoute(drawing),
    ...strengthWithXylitol(drawing),
  ]
  if (unusual.some(isBlock)) return { measured: {}, findings: unusual }
  const drawn = withDrip(drawing, drawByKind(drawing))
  return { ...drawn, findings: [...unusual, ...drawn.findings] }
}

function drawByKind(drawing: Drawing): Drawn {
  const kind = kindOf(drawing.dose)
  if (!isMeasured(kind, drawing.row)) return { measured: {}, findings: [] }
  if (drawing.line.tablet) return drawTablets(drawing, drawing.line.tablet)
  if (kind === 'infusion-per-weight') return drawInfusion(drawing)
  return drawSyringe(drawing)
}

/** Patches, eye drops and vaporiser settings are not drawn into a syringe. */
function isMeasured(kind: DoseKind, row: DoseRow): boolean {
  if (row.use === 'transdermal' || kind === 'infusion-flat') return false
  return kind !== 'flat' || row.range.value.low.unit === 'mg/{animal}'
}
