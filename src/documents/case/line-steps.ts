import { infusionWords as words } from '#content/wording/infusions.ts'
import type { Poured } from '#core/dosing/container.ts'
import type { DrawnLine } from '#core/dosing/request.ts'
import { fill } from '#core/outcome/finding.ts'
import { type AnyQuantity, plain } from '#core/units/quantity.ts'
import { unitBeside, unitWord } from '#core/units/unit-words.ts'

type Named = { readonly id: string; readonly drug: string }

/**
 * All that is done for one line besides drawing it up: the loading dose, how its bag is made, the rate of the pump hour
 * by hour, what leaves the clinic.
 *
 * @example lineSteps(line, result.lines) // ['First, at once: 1.2 mL (12 mg).', 'Draw 2.4 mL of …']
 */
export function lineSteps(line: DrawnLine, lines: readonly Named[]): string[] {
  const { loading, poured, fluid, dispense, rate, drip } = line
  return [
    ...(loading ? [sayLoading(loading)] : []),
    ...(poured ? pouringSteps(poured, lines) : []),
    ...(fluid ? sayFluid(fluid) : []),
    ...(drip ? sayDrip(drip) : []),
    ...(rate && !poured && !fluid && !drip ? [fill(words.pump, { rate: said(rate) })] : []),
    ...(dispense
      ? [
          fill(words.dispense, {
            days: String(dispense.days),
            doses: String(dispense.doses),
            amount: said(dispense.amount),
          }),
        ]
      : []),
  ]
}

function sayLoading({ amount, drawn, volume, dilution, rate }: NonNullable<DrawnLine['loading']>): string {
  const taken = dilution?.drawn ?? drawn ?? volume
  const about = {
    taken: taken ? said(taken) : said(amount),
    amount: said(amount),
    rate: rate ? said(rate) : '',
    parts: dilution ? String(dilution.parts) : '',
  }
  const first = fill(taken ? words.loading : words.loadingAmount, about)
  return [
    first,
    ...(dilution ? [fill(words.loadingDiluted, about)] : []),
    ...(rate ? [fill(words.pump, about)] : []),
  ].join(' ')
}

/** Drops as they are counted at the set, hour by hour where the rate is cut. */
function sayDrip({ set, count, gives, hours, together }: NonNullable<DrawnLine['drip']>): string[] {
  const about = { set: said(set), count: plain(count.value), gives: shortened(gives) }
  const cut = hours.some((one) => !one.count.value.eq(count.value))
  const byHour = hours.map((one) => fill(words.dripHour, { hour: String(one.hour), count: plain(one.count.value) }))
  return [
    fill(words.drip, about),
    ...(cut ? [fill(words.dripHours, { hours: byHour.join(', ') })] : []),
    ...(together ? [fill(words.dripTogether, { count: plain(together.count.value) })] : []),
  ]
}

/** A rate that stays the same is said once; one that is cut is said hour by hour. */
function sayFluid({ hours, hoursTotal, deficit, maintenance }: NonNullable<DrawnLine['fluid']>): string[] {
  const isCut = hours.some(({ rate }) => hours[0] && !rate.value.eq(hours[0].rate.value))
  return [
    ...(isCut
      ? [
          fill(words.hours, {
            hours: hours
              .map(({ hour, rate }) => fill(words.hour, { hour: String(hour), rate: shortened(rate) }))
              .join(', '),
            total: hoursTotal ? shortened(hoursTotal) : '',
          }),
        ]
      : []),
    ...(deficit
      ? [
          fill(words.deficit, {
            volume: shortened(deficit.volume),
            over: said(deficit.over),
            together: shortened(deficit.together),
          }),
        ]
      : []),
    fill(words.maintenance, { rate: shortened(maintenance.perHour) }),
  ]
}

/**
 * How one container is made, step by step, as a nurse does it.
 *
 * @example pouringSteps(poured, result.lines)[0] // 'Draw 2.4 mL of morphine 10 mg/mL: 24 mg.'
 */
export function pouringSteps(
  { container, convention, fluid, final, pump, lasts, parts }: Poured,
  lines: readonly Named[],
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
  return `${plain(value.toSignificantDigits(6))} ${unitBeside(value, unit)}`
}

/** Three figures: nobody sets a pump closer. */
function shortened({ value, unit }: AnyQuantity): string {
  return `${plain(value.toSignificantDigits(3))} ${unitWord(unit)}`
}
