import type { CultureOption } from './option.ts'
import type { IsolateReading } from './reading.ts'

/** What a laboratory can be asked when a report leaves nobody with a drug; content/wording holds the sentence. */
export type LaboratoryQuestion = {
  readonly code:
    | 'name-the-organism'
    | 'extend-the-dilution'
    | 'give-the-number'
    | 'test-methicillin'
    | 'repeat-or-identify-again'
    | 'test-these'
    | 'advice'
  readonly about: Readonly<Record<string, string>>
}

/**
 * What would settle the doubts of a report, most telling first. `others` are drugs with a dose for this animal that the
 * report does not name.
 *
 * @example askLaboratory(options, isolates, []).map(({ code }) => code) // ['extend-the-dilution', 'advice']
 */
export function askLaboratory(
  options: readonly CultureOption[],
  isolates: readonly IsolateReading[],
  others: readonly string[],
): LaboratoryQuestion[] {
  const named = (because: CultureOption['against'][number]['because']) =>
    options.filter(({ against }) => against.some((one) => one.because === because)).map(({ name }) => name)
  const list = (code: LaboratoryQuestion['code'], drugs: readonly string[]): LaboratoryQuestion[] =>
    drugs.length === 0 ? [] : [{ code, about: { drugs: drugs.join(', ') } }]
  const numberless = [...named('laboratory-susceptible'), ...named('laboratory-intermediate')]
  const unsure = [...named('not-interpretable'), ...named('susceptible-at-some-dose')]
  const possible = isolates.filter(({ phenotype }) => phenotype.methicillinResistant === 'possible')
  return [
    ...isolates
      .filter(({ organism }) => organism === null)
      .map(({ printed }) => ({ code: 'name-the-organism' as const, about: { organism: printed } })),
    ...possible.map(({ printed }) => ({ code: 'test-methicillin' as const, about: { organism: printed } })),
    ...list('extend-the-dilution', unsure),
    ...list('give-the-number', numberless),
    ...list('repeat-or-identify-again', named('laboratory-says-resistant')),
    ...list('test-these', others),
    { code: 'advice', about: {} },
  ]
}
