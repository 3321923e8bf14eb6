import { z } from 'zod'
import type { StoredEntry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { filingOf, trayStream } from '#core/tray/tray.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import type { Store } from '../store.ts'

const answer = z.object({
  /** The entry of the tray that filed it, still standing; null for what did not come through the tray. */
  refile: z.string().nullable(),
})
export type FilingAnswer = z.infer<typeof answer>

/** Which entry of the holding tray filed a paper or picture that stands in a case. */
export const readFiling = defineAction({
  name: 'read-filing',
  summary: 'Which entry of the holding tray filed a paper or picture of a case.',
  input: z.strictObject({ entry: z.string().min(1).max(200) }),
  output: answer,
  may: 'signed-in',
  run: async ({ entry }, { store, ...world }) => {
    const { clinic } = callerIn(world)
    const arrived = await arrivedAs(entry, clinic, store)
    if (!arrived) return { refile: null }
    const filing = filingOf(fold(await store.stream(clinic, trayStream)), arrived.header.id)
    return { refile: filing?.refile.header.id ?? null }
  },
})

/** Back through corrections and through every file it was put in, to what came in. A ring ends the search. */
async function arrivedAs(entry: string, clinic: string, store: Store): Promise<StoredEntry | undefined> {
  const seen = new Set<string>()
  for (let id: string | undefined = entry; id !== undefined && !seen.has(id); ) {
    seen.add(id)
    const found: StoredEntry | undefined = await store.entry(clinic, id)
    if (found?.header.stream === trayStream) return found
    id = found?.header.refiledFrom ?? found?.header.supersedes[0]
  }
  return undefined
}
