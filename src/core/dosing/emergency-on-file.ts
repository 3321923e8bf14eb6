import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Emergency } from './request.ts'
import type { DosingRules } from './rules.ts'

type Declared = Line<BodyOf<'emergency-declared'>>

/**
 * The emergency that counts for an operation at an instant: the last one of it or of its animal that is neither taken
 * back nor older than the house lets it count. An old one lifts nothing; it is declared again, with a reason of its own.
 *
 * @example emergencyAt(file, operation.id, at, rules)?.by // 'A. Person'
 */
export function emergencyAt(
  file: CaseFile,
  operation: string,
  at: string,
  { emergencyCounts }: Pick<DosingRules, 'emergencyCounts'>,
): Emergency | undefined {
  const span = emergencyCounts.value.value.times(3_600_000).toNumber()
  const last = file.theCase
    .live('emergency-declared')
    .filter(
      (line) =>
        (line.header.subject.kind === 'animal' || isAbout(line, operation)) &&
        line.at <= at &&
        Date.parse(at) < Date.parse(line.at) + span,
    )
    .at(-1)
  return last && asEmergency(last, file)
}

/** Who declared it, why and when, as it is said. */
function asEmergency({ header, body }: Declared, { people }: CaseFile): Emergency {
  const { author } = header
  const by = author.kind === 'person' ? (people.get(author.person)?.name ?? author.person) : author.kind
  const { because: reason, lifts } = body
  return { by, reason, ...(lifts !== null && { lifts }), at: sayMoment(header.happenedAt) }
}
