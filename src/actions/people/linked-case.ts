import type { CaseFile } from '#core/journal/clinic.ts'
import type { Row } from '#core/journal/journal-file.ts'
import type { World } from '../action.ts'
import { caseFile } from '../journal/case-file.ts'
import { readJoined, rowsFor } from '../journal/read-case.ts'

/** The case behind a link with the cases merged with it, and their streams; null when nothing is written there. */
export async function linkedCase(
  { store }: Pick<World, 'store'>,
  clinic: string,
  stream: string,
): Promise<{ readonly file: CaseFile | null; readonly streams: readonly string[] }> {
  const { streams, entries } = await readJoined(store, clinic, stream)
  if (entries.length === 0) return { file: null, streams }
  const house = await store.stream(clinic, 'clinic')
  const rows = (await rowsFor(store, clinic, entries)) as readonly Row[]
  return { file: caseFile({ clinic, rows, entries: [...house, ...entries] }, stream), streams }
}
