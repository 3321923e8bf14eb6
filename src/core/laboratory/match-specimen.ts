import type { Side } from '#core/animal/species.ts'
import { plainName } from '#core/identity/names.ts'
import type { Case } from '#core/journal/fold.ts'
import { rootOf } from '#core/owed/operations.ts'
import { type ResultLine, type SpecimenLine, sideOf, specimenOf } from '#core/owed/specimen-loop.ts'
import type { LaboratoryReport } from './report.ts'

/** Which tube of the case a report speaks of. `choose`: a person says so; `other-side`: nobody may file it there. */
export type SpecimenMatch =
  | { readonly kind: 'one'; readonly specimen: SpecimenLine; readonly by: 'accession' | 'label' }
  | { readonly kind: 'choose'; readonly among: readonly SpecimenLine[] }
  | { readonly kind: 'other-side'; readonly specimen: SpecimenLine; readonly says: Side | 'BOTH' }
  | { readonly kind: 'none' }

/**
 * The tube that a report names by its number or its label. A report of the other ear, or of both, is not filed to it.
 *
 * @example matchSpecimen(report, theCase).kind // 'one'
 */
export function matchSpecimen(
  report: Pick<LaboratoryReport, 'label' | 'accession' | 'side'>,
  theCase: Case,
): SpecimenMatch {
  const all = theCase.live('specimen')
  const [earlier] = resultsUnder(report.accession, theCase)
  const known = earlier && specimenOf(theCase, earlier.body.specimen)
  const { label } = report
  const named = label === null ? [] : all.filter(({ body }) => plainName(body.label) === plainName(label))
  const specimen = known ?? (named.length === 1 ? named[0] : undefined)
  if (specimen) {
    const says = report.side
    if (says !== null && says !== sideOf(specimen)) return { kind: 'other-side', specimen, says }
    return { kind: 'one', specimen, by: known ? 'accession' : 'label' }
  }
  const among = all.filter((one) => report.side === null || report.side === sideOf(one))
  return among.length === 0 ? { kind: 'none' } : { kind: 'choose', among }
}

/** The live results of a case that stand under a laboratory's number. */
export function resultsUnder(accession: string | null, theCase: Case): ResultLine[] {
  return accession === null ? [] : theCase.live('specimen-result').filter(({ body }) => body.accession === accession)
}

export function sameRoot(theCase: Case, one: string, other: string): boolean {
  return rootOf(theCase, one) === rootOf(theCase, other)
}
