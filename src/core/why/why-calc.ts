import type { Calculated, Operation } from '#core/dosing/calc/operation.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { plain } from '#core/units/quantity.ts'
import { input, said, type Why, why } from './why.ts'

/**
 * Why the calculator answers so: the fields as they were given, its formula, its sources.
 *
 * @example whyCalculated('dose_mass', operations.dose_mass, { dose_mg_kg: '3', weight_kg: '18.4' }, answer, calcFormulas.dose_mass)
 */
export function whyCalculated(
  name: string,
  operation: Pick<Operation, 'fields' | 'formula'>,
  given: Readonly<Record<string, string>>,
  { value, unit, formula, detail }: Calculated,
  facts: readonly Provenance[],
): Why {
  return why({
    title: said('title-calc', { name }),
    inputs: Object.entries(given).map(([field, typed]) =>
      input('field', `${typed} ${operation.fields[field]?.unit ?? ''}`.trim(), { of: field }),
    ),
    formula: [said('calc-formula', { formula: formula ?? operation.formula })],
    result: said('calc-is', { value: plain(value), unit }),
    notes: detail === undefined ? [] : [said('text', { text: detail })],
    facts,
  })
}
