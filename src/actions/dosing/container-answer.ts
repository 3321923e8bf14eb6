import { infusionWords as words } from '#content/wording/infusions.ts'
import type { Convention, Poured } from '#core/dosing/container.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import { fill } from '#core/outcome/finding.ts'
import { type AnyQuantity, plain } from '#core/units/quantity.ts'
import { unitWord } from '#core/units/unit-words.ts'
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
    steps: stepsOf(poured, lines),
  }
}

/**
 * How one container is made, step by step, as a nurse does it.
 *
 * @example stepsOf(poured, result.lines)[0] // 'Draw 2.4 mL of morphine 10 mg/mL: 24 mg.'
 */
export function stepsOf(
  { container, convention, fluid, final, pump, lasts, parts }: Poured,
  lines: readonly DoseLine[],
): string[] {
  const nameOf = (id: string) => lines.find((line) => line.id === id)?.drug ?? id
  const about = {
    kind: container.kind,
    volume: said(container.volume),
    fluid: said(fluid),
    final: said(final),
    rate: said(pump),
    hours: plain(lasts.value.toSignificantDigits(3)),
    contents: parts.map(({ line, amount }) => `${nameOf(line)} ${said(amount)}`).join(', '),
  }
  return [
    ...parts.flatMap(({ line, drawn, from, amount, dilutedTo }) => {
      const part = { drug: nameOf(line), drawn: said(drawn), from: said(from), amount: said(amount) }
      const stock = `${plain(from.value.times(dilutedTo))} ${unitWord(from.unit)}`
      return [
        ...(dilutedTo > 1 ? [fill(words.dilute, { ...part, parts: String(dilutedTo), stock })] : []),
        fill(words.draw, part),
      ]
    }),
    fill(words.fluid[convention], about),
    fill(words.label, about),
    fill(words.tied, about),
  ]
}

function said({ value, unit }: AnyQuantity): string {
  return `${plain(value.toSignificantDigits(6))} ${unitWord(unit)}`
}
