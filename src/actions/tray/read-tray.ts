import { z } from 'zod'
import type { StoredEntry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { trayOf, trayStream } from '#core/tray/tray.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { storedEntrySchema } from '../journal/stored-entry.ts'

/** So many filed papers are still shown, so that a wrong filing is found and taken back; all stand in their cases. */
const filedShown = 50

/** The holding tray: the entries of everything that waits, and of what was filed last. */
export const readTray = defineAction({
  name: 'read-tray',
  summary: 'What waits in the holding tray, and what was filed from it last.',
  input: z.strictObject({}),
  output: z.object({ asOf: z.string(), entries: z.array(storedEntrySchema) }),
  may: 'signed-in',
  run: async (_, world) => {
    const { clinic } = callerIn(world)
    return { asOf: world.clock.now(), entries: trayEntries(await world.store.stream(clinic, trayStream)) }
  },
})

/** Of the whole stream only what the screen shows: a tray of ten years is read as fast as one of a day. */
export function trayEntries(entries: readonly StoredEntry[]): StoredEntry[] {
  const { waiting, filed } = trayOf(fold(entries))
  const shown = new Set([
    ...waiting.map(({ header }) => header.id),
    ...filed.slice(0, filedShown).flatMap(({ arrived, refile }) => [arrived.header.id, refile.header.id]),
  ])
  return entries.filter(({ header }) => shown.has(header.id))
}
