import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { sayMoment } from '#core/time/moment.ts'

/** Who wrote an entry and when it happened, as two pieces of a sentence. */
export function whoWrote(file: Pick<CaseFile, 'people' | 'contacts'>, { header }: Pick<Line, 'header'>) {
  return { who: authorNamed(file, header.author), when: sayMoment({ ...header.happenedAt, precision: 'day' }) }
}
