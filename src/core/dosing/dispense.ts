import type { DoseRow, Drug, Interval } from '#core/formulary/drug.ts'
import { type AnyQuantity, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import type { Dispensed } from './request.ts'

/**
 * The row with the gap that a person chose instead of the listed one. The listed words stay beside it.
 *
 * @example withInterval(row, quantity('12', 'h')).interval.value.hours // ['12', '12']
 */
export function withInterval(row: DoseRow, every: Quantity<'h'> | undefined): DoseRow {
  if (!every) return row
  const hours = plain(every.value)
  const words = `every ${hours} h`
  return { ...row, interval: { ...row.interval, value: { words, hours: [hours, hours] } } }
}

/**
 * A gap that the formulary does not list asks for a person. An NSAID more often than its label says is refused: the
 * label gives one dose in that time.
 */
export function judgeInterval(drug: Drug, row: DoseRow, every: Quantity<'h'> | undefined): DoseFinding[] {
  if (!every) return []
  const { hours, words } = row.interval.value
  if (hours && every.value.gte(hours[0]) && every.value.lte(hours[1])) return []
  const about = { drug: drug.name, every: every.toString(), interval: words }
  const isTooOften = drug.groups.includes('nsaid') && (!hours || every.value.lt(hours[0]))
  if (isTooOften) return [found('block', 'interval-too-short', about, [row.interval])]
  return [found('confirm', 'interval-other', about, [row.interval])]
}

/**
 * A course longer than its source knows asks for a person: the words of the row alone stop nobody.
 *
 * @example judgeCourse(meloxicam, catByMouth, 14)[0]?.code // 'course-too-long': 4 days after surgery
 */
export function judgeCourse(drug: Drug, { maxCumulative }: DoseRow, days: number | undefined): DoseFinding[] {
  const most = maxCumulative?.value.days
  if (!maxCumulative || most === undefined || days === undefined || days <= most) return []
  const about = { drug: drug.name, days: String(days), words: maxCumulative.value.words }
  return [found('confirm', 'course-too-long', about, [maxCumulative])]
}

/**
 * How many doses a course has; undefined unless the gap is one number of hours.
 *
 * @example dosesOf({ words: 'every 12 h', hours: ['12', '12'] }, 7) // 14
 */
export function dosesOf({ hours }: Interval, days: number): Decimal | undefined {
  const [shortest, longest] = hours ?? []
  if (shortest === undefined || shortest !== longest) return undefined
  return new Decimal(24).div(shortest).times(days).ceil()
}

/**
 * What leaves the clinic: whole tablets, or the drawn millilitres of every dose. When the gap is not settled nothing
 * is counted, and that is said.
 *
 * @example dispense('meloxicam', row, quantity('0.5', '{tablet}'), 7).dispensed?.amount // 4 tablets at once a day
 */
export function dispense(
  drug: string,
  row: DoseRow,
  each: Quantity<'{tablet}'> | Quantity<'mL'>,
  days: number | undefined,
): { readonly dispensed?: Dispensed; readonly findings: readonly DoseFinding[] } {
  if (days === undefined) return { findings: [] }
  const doses = dosesOf(row.interval.value, days)
  if (!doses) {
    const about = { drug, interval: row.interval.value.words, days: String(days) }
    return { findings: [found('note', 'interval-not-chosen', about, [row.interval])] }
  }
  const sum = (each as AnyQuantity).value.times(doses)
  const amount = each.unit === '{tablet}' ? new Quantity(sum.ceil(), '{tablet}') : new Quantity(sum, 'mL')
  return { dispensed: { doses: doses.toNumber(), days, amount }, findings: [] }
}
