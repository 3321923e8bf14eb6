import type { Provenance } from '#core/evidence/sourced.ts'
import type { DoseRow, Drug, When } from '#core/formulary/drug.ts'
import { never } from '#core/outcome/outcome.ts'
import { convert, type Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { stillCounts } from './elapsed.ts'
import { type DoseFinding, found } from './findings.ts'
import { isGivenDrug } from './given-drug.ts'
import type { Counted, DoseRequest, Given, PlannedAmount } from './request.ts'
import { volumeOf } from './volume.ts'

type Verdict = { readonly kind: 'no' } | { readonly kind: 'yes'; readonly why: string } | { readonly kind: 'unknown' }

/**
 * What this animal is, has, or was given that bars the row (a block) or asks for care (a note).
 * An age that nobody stated is said to be unknown where an age matters.
 */
export function judgeExclusions(
  drug: Drug,
  row: DoseRow,
  request: DoseRequest,
  drugs: readonly Drug[],
  lean = request.animal.weight,
): DoseFinding[] {
  const blocks = row.exclusions.value.flatMap((exclusion) =>
    findingFor(drug, exclusion.when, exclusion.because, true, row.exclusions, request, drugs, lean),
  )
  const cautions = row.cautions.value.flatMap((caution) =>
    caution.when ? findingFor(drug, caution.when, caution.words, false, row.cautions, request, drugs, lean) : [],
  )
  return [...blocks, ...cautions]
}

function findingFor(
  drug: Drug,
  when: When,
  because: string,
  bars: boolean,
  from: Provenance,
  request: DoseRequest,
  drugs: readonly Drug[],
  lean: Quantity<'kg'> | undefined,
): DoseFinding[] {
  const verdict = applies(when, request, drugs, lean)
  const about = { drug: drug.name, because, why: verdict.kind === 'yes' ? verdict.why : '' }
  switch (verdict.kind) {
    case 'no':
      return []
    case 'unknown':
      return [found('note', 'age-unknown', about, [from])]
    case 'yes':
      if (!bars) return [found('note', 'caution', about, [from])]
      return [found('block', isAboutGiven(when) ? 'excluded-by-given' : 'excluded', about, [from])]
    default:
      return never(verdict)
  }
}

/** A dose of another line of the same plan that bars this row, as if it had been given. */
export function barredByPlanned(
  drug: Drug,
  row: DoseRow,
  others: readonly PlannedAmount[],
  weight: Quantity<'kg'>,
): DoseFinding[] {
  return row.exclusions.value.flatMap(({ when, because }) => {
    if (when.kind !== 'given-at-least') return []
    const most = when.dose.value.times(weight.value)
    const other = others.find(
      ({ drug: { id }, amount }) => id === when.drug && amount.unit === 'mg' && amount.value.gte(most),
    )
    if (!other) return []
    const why = `${plain(other.amount.value.toSignificantDigits(6))} mg of ${other.drug.name} in line ${other.line}`
    return [found('block', 'excluded-by-given', { drug: drug.name, because, why }, [row.exclusions])]
  })
}

function isAboutGiven(when: When): boolean {
  return when.kind === 'given-within' || when.kind === 'given-at-least'
}

function applies(when: When, request: DoseRequest, drugs: readonly Drug[], lean: Quantity<'kg'> | undefined): Verdict {
  const { animal } = request
  const has = animal.conditions
  switch (when.kind) {
    case 'any-of': {
      const here = when.words.filter((word) => has.includes(word))
      return here.length > 0 ? { kind: 'yes', why: here.join(', ') } : { kind: 'no' }
    }
    case 'all-of':
      return when.words.every((word) => has.includes(word))
        ? { kind: 'yes', why: when.words.join(', ') }
        : { kind: 'no' }
    case 'lighter-than':
      if (!animal.weight || animal.weight.value.gte(when.weight.value)) return { kind: 'no' }
      return { kind: 'yes', why: `${animal.weight} is under ${when.weight}` }
    case 'younger-than':
      if (when.only && !has.includes(when.only)) return { kind: 'no' }
      if (animal.ageMonths === undefined) return { kind: 'unknown' }
      if (animal.ageMonths >= when.months) return { kind: 'no' }
      return { kind: 'yes', why: `${animal.ageMonths} months old` }
    case 'given-within': {
      const given = request.given.find((entry) => isGivenWithin(entry, when.drug, when.time, request, drugs))
      return given ? { kind: 'yes', why: saidOf(given) } : { kind: 'no' }
    }
    case 'given-at-least': {
      const given = request.given.find((entry) => isGivenAtLeast(entry, when.drug, when.dose, lean, drugs))
      return given ? { kind: 'yes', why: saidOf(given) } : { kind: 'no' }
    }
    default:
      return never(when)
  }
}

function isGivenWithin(
  given: Given,
  drug: string,
  time: Quantity<'min'>,
  request: DoseRequest,
  drugs: readonly Drug[],
): boolean {
  if (!isGivenDrug(drugs, given.drug, drug)) return false
  return stillCounts(given.at, request.at, new Quantity(time.value.div(60), 'h'))
}

function isGivenAtLeast(
  given: Given,
  drug: string,
  dose: Quantity<'mg/kg'>,
  weight: Quantity<'kg'> | undefined,
  drugs: readonly Drug[],
): boolean {
  if (!isGivenDrug(drugs, given.drug, drug)) return false
  const mass = massGiven(given)
  // What cannot be counted is taken as enough: an unknown amount never opens a door.
  if (!mass || !weight) return true
  return mass.value.gte(dose.value.times(weight.value))
}

/** How many milligrams were given; undefined when the record does not say (millilitres without a strength). */
export function massGiven(given: Given): Quantity<'mg'> | undefined {
  if (!given.amount) return undefined
  const direct = convert(given.amount, 'mg')
  if (direct) return direct
  const volume = convert(given.amount, 'mL')
  const strength = given.stock && convert(given.stock, 'mg/mL')
  return volume && strength ? new Quantity(volume.value.times(strength.value), 'mg') : undefined
}

/** How much was given in the unit a day is summed in; undefined when the record does not say. */
export function countedGiven(given: Given, unit: Counted['unit']): Decimal | undefined {
  if (unit === 'mg') return massGiven(given)?.value
  const direct = given.amount && convert(given.amount, 'mL')
  if (direct || !given.amount || !given.stock) return direct?.value
  return volumeOf(given.amount, given.stock)?.value
}

export function saidOf(given: Given): string {
  const when = given.at ? ` at ${given.at.toString()}` : ' at a time nobody wrote down'
  if (!given.amount) return `${given.drug}${when}`
  return `${given.amount} of ${given.drug}${when}`
}
