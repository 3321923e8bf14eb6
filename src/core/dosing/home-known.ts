import type { Divides, Drug } from '#core/formulary/drug.ts'
import { type HomeMedicine, stretchesOf } from '#core/home/medicine-times.ts'
import { fromStored } from '#core/journal/stored.ts'
import { Decimal } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import { drugOfHome } from './home-names.ts'
import type { DosedAnimal, DosingKnowledge } from './request.ts'

/**
 * What could not be checked about a medicine for home, so that an unknown one is never taken for a good one: its drug,
 * its strength, its use in an eye; and an amount that no tablet can be cut into.
 */
export function judgeKnown(
  medicine: HomeMedicine,
  animal: DosedAnimal,
  { drugs, rules }: DosingKnowledge,
): DoseFinding[] {
  const named = drugOfHome(drugs, medicine)
  const said = (code: DoseFinding['code'], about: DoseFinding['about'] = {}) =>
    found('confirm', code, { drug: medicine.label, ...about }, [rules.withoutNumber])
  const unknown = !named
    ? [said('home-not-checked')]
    : !named.isExact
      ? [said('home-not-checked-named', { named: named.drug.name })]
      : []
  return [
    ...unknown,
    ...(named && isForEye(medicine) && !hasEyeRow(named.drug, animal)
      ? [said('home-not-checked-eye', { species: animal.species })]
      : []),
    ...(named && isWithoutMass(medicine) && named.drug.doses.length > 0 ? [said('home-dose-not-checked')] : []),
    ...partsOf(medicine, named?.drug, animal).map((about) => said('home-tablet-part', about)),
  ]
}

/** Whether it goes onto an eye. */
export function isForEye({ form }: Pick<HomeMedicine, 'form'>): boolean {
  return form === 'eye-gel' || form === 'eye-ointment'
}

function hasEyeRow({ doses }: Drug, { species }: DosedAnimal): boolean {
  return doses.some((row) => row.species === species && row.routes.includes('topical-eye'))
}

/** Swallowed, and nobody can say how many milligrams: the check of its dose had nothing to look at. */
function isWithoutMass({ form, side, strength }: HomeMedicine): boolean {
  const isSwallowed = form === 'tablet' || (form === 'liquid' && side === null)
  return isSwallowed && (strength === null || strength.unit === '%')
}

const steps: Readonly<Record<Divides, { readonly of: string; readonly parts: string }>> = {
  whole: { of: '1', parts: 'whole tablets' },
  halves: { of: '0.5', parts: 'halves' },
  quarters: { of: '0.25', parts: 'quarters' },
  unknown: { of: '0.25', parts: 'halves or quarters at most' },
}

/** Amounts of this medicine that its tablet cannot be cut into. */
function partsOf(
  medicine: HomeMedicine,
  drug: Drug | undefined,
  { species }: DosedAnimal,
): { each: string; parts: string }[] {
  if (medicine.form !== 'tablet') return []
  const { strength } = medicine
  const milligrams = strength === null ? null : fromStored(strength).value
  const products = (drug?.doses ?? [])
    .filter((row) => row.species === species)
    .flatMap(({ tablets }) => tablets?.value ?? [])
  const known = products.find((product) => milligrams !== null && product.strength.value.eq(milligrams))
  const { of, parts } = steps[known?.divides ?? 'unknown']
  const amounts = [...new Set(stretchesOf(medicine).map(({ each }) => each))]
  return amounts.filter((each) => !new Decimal(each).mod(of).isZero()).map((each) => ({ each, parts }))
}
