import { type Drug, isAntibiotic } from '#core/formulary/drug.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { Case } from '#core/journal/fold.ts'
import { dayOf } from '#core/time/calendar-day.ts'

/** One antibiotic that the animal had after a sample was taken, with the entry that says so. */
export type AntibioticSince = {
  readonly entry: string
  readonly drug: string
  readonly how: 'given' | 'sent-home'
  readonly day: string
  /** Days of a course that was sent home. */
  readonly days: number | null
}

/**
 * The antibiotics between a sample and a later moment, as far as entries say: each drug given here once, at its first
 * time, and each course sent home that had begun by then.
 *
 * @example antibioticsSince(theCase, { after: specimen.at, until: now, zone }, formulary).map(({ drug }) => drug)
 */
export function antibioticsSince(
  theCase: Case,
  { after, until, zone }: { readonly after: string; readonly until: string; readonly zone: string },
  drugs: readonly Drug[],
): AntibioticSince[] {
  const given = theCase
    .live('drug-given')
    .filter(
      ({ at, body }) =>
        at > after && at <= until && (body.use.startsWith('antibiotic') || isAntibiotic(drugs, body.drug)),
    )
    .map(({ header, body, at }) => ({
      entry: header.id,
      drug: body.drug,
      how: 'given' as const,
      day: dayOf({ at, zone }),
      days: null,
    }))
  const isBegun = ({ drug, firstDay }: { readonly drug: string; readonly firstDay: string }) =>
    isAntibiotic(drugs, drug) && firstDay <= dayOf({ at: until, zone })
  const sent = theCase
    .live('discharge')
    .map(({ header, body, at }) => ({ header, at, medicines: body.medicines }))
    .concat(theCase.live('medicine-change').map(({ header, body, at }) => ({ header, at, medicines: body.starts })))
  const home = sent
    .filter(({ at }) => at > after)
    .flatMap(({ header, medicines }) =>
      medicines.filter(isBegun).map(({ drug, firstDay, days }) => ({
        entry: header.id,
        drug,
        how: 'sent-home' as const,
        day: firstDay,
        days,
      })),
    )
  const first = given.filter((one, place) => given.findIndex(({ drug }) => drug === one.drug) === place)
  return [...first, ...home].sort((a, b) => compareText(a.day, b.day))
}
