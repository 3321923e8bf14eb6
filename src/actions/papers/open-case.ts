import type { CaseFile } from '#core/journal/clinic.ts'
import type { Row } from '#core/journal/journal-file.ts'
import type { Moment } from '#core/time/moment.ts'
import type { World } from '../action.ts'
import { caseFile } from '../journal/case-file.ts'
import { readCase } from '../journal/read-case.ts'
import { Refused } from '../refused.ts'

/** The case that papers are made from, as the server has it now, and the date they carry. Who read it is written down. */
export async function openCase(stream: string, world: World): Promise<{ file: CaseFile; on: Moment }> {
  const { clinic, entries, house, rows } = await readCase.run({ stream, after: null }, world)
  if (entries.length === 0) throw new Refused(404, 'no-such-case', 'Nothing is written under this address yet.')
  const file = caseFile({ clinic, rows: rows as readonly Row[], entries: [...house, ...entries] }, stream)
  return { file, on: { at: world.clock.now(), zone: file.clinic.zone, precision: 'minute', by: 'clock' } }
}
