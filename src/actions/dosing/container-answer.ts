import { infusionWords as words } from '#content/wording/infusions.ts'
import type { Convention, Poured } from '#core/dosing/container.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import { pouringSteps } from '#documents/case/line-steps.ts'
import { type QuantityAnswer, write } from './write-quantity.ts'

/** A bag or syringe as a program reads it: what goes in, what it gives, and every step in words. */
export type ContainerAnswer = {
  readonly name: string
  readonly volume: QuantityAnswer
  readonly rate: QuantityAnswer
  readonly convention: Convention
  readonly conventionText: string
  /** Fluid to take out of the bag, to draw beside the drugs, or the full bag, as the convention says. */
  readonly fluid: QuantityAnswer
  readonly final: QuantityAnswer
  /** Of this line's drug: what is written on the label, and the strength it is drawn from. */
  readonly amount: QuantityAnswer
  readonly from: QuantityAnswer
  readonly dilutedTo: number
  readonly hoursToEmpty: QuantityAnswer
  /** How far the dose worked back from the label lies from the prescribed one; 0.02 is 2 %. */
  readonly off: number
  readonly lines: readonly string[]
  readonly steps: readonly string[]
}

/** Writes the filled container of one line; the names of the others come from the result's lines. */
export function writeContainer(poured: Poured, lines: readonly DoseLine[]): ContainerAnswer {
  const { container, convention, fluid, final, mine, pump, lasts, off, parts } = poured
  return {
    name: container.name,
    volume: write(container.volume),
    rate: write(pump),
    convention,
    conventionText: words.conventions[convention],
    fluid: write(fluid),
    final: write(final),
    amount: write(mine.amount),
    from: write(mine.from),
    dilutedTo: mine.dilutedTo,
    hoursToEmpty: write(lasts),
    off: off.toDecimalPlaces(6).toNumber(),
    lines: parts.map(({ line }) => line),
    steps: pouringSteps(poured, lines),
  }
}
