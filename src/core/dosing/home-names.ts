import { type Drug, drugById } from '#core/formulary/drug.ts'
import type { HomeMedicine } from '#core/home/medicine-times.ts'

/** The drug of a medicine for home, and whether it was chosen or named exactly, or only stands among its words. */
export type NamedDrug = { readonly drug: Drug; readonly isExact: boolean }

/** Shorter names than this are found by chance inside other words of a label. */
const shortest = 5

/**
 * The drug by its id, name or alias; else the one whose whole name stands among the words that were typed
 * ("Ibuprofen 200 mg"). A near name is never taken for it.
 *
 * @example drugOfHome(formulary, { drug: 'Carprofen 20 mg', label: 'Carprofen' })?.isExact // false
 */
export function drugOfHome(
  drugs: readonly Drug[],
  { drug, label }: Pick<HomeMedicine, 'drug' | 'label'>,
): NamedDrug | undefined {
  const exact = drugById(drugs, drug)
  if (exact) return { drug: exact, isExact: true }
  const typed = spaced(`${drug} ${label}`)
  const named = drugs.find(({ id, name, aliases }) =>
    [id, name, ...aliases].some((one) => one.length >= shortest && typed.includes(spaced(one))),
  )
  return named && { drug: named, isExact: false }
}

function spaced(text: string): string {
  return ` ${(text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).join(' ')} `
}
