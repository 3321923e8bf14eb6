import { formulary } from '#content/formulary/index.ts'
import { drugById } from '#core/formulary/drug.ts'

/** The name of the formulary; an id it does not know stays as it was written. */
export function drugName(id: string): string {
  return drugById(formulary, id)?.name ?? id
}
