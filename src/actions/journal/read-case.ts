import { z } from 'zod'
import type { Json } from '#core/journal/canonical.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { type RegisterRow, registers, type Store } from '../store.ts'
import { storedEntrySchema } from './stored-entry.ts'

const row = z.object({
  register: z.enum(registers),
  id: z.string(),
  revision: z.int(),
  body: z.record(z.string(), z.unknown()).nullable(),
  by: z.string(),
  at: z.string(),
}) as unknown as z.ZodType<RegisterRow>

/**
 * One case with all that is needed to fold it: the entries of its stream and of the streams that merges join to it,
 * the clinic's own entries, and the registers as they stand. With `after`, of the case only the entries behind that
 * position. Who read it is written down, for every stream that was read. The stream `clinic` gives the house alone.
 */
export const readCase = defineAction({
  name: 'read-case',
  summary: 'The entries of a case and of the cases merged with it, with the clinic around it.',
  input: z.strictObject({
    stream: z.string().regex(/^(clinic|case:.{1,195})$/u, 'must be clinic, or the stream of a case like case:tansy'),
    after: z.int().min(0).nullable(),
  }),
  output: z.object({
    clinic: z.string(),
    stream: z.string(),
    entries: z.array(storedEntrySchema),
    house: z.array(storedEntrySchema),
    rows: z.array(row),
    keptAside: z.array(z.object({ id: z.string(), receivedAt: z.string(), text: z.string() })),
  }),
  may: 'signed-in',
  run: async ({ stream, after }, world) => {
    const { caller, clinic } = callerIn(world)
    const { store, accounts } = world
    const { streams, entries } = await readJoined(store, clinic, stream)
    const at = `${world.clock.now().slice(0, 16)}Z`
    for (const one of new Set(entries.map(({ header }) => header.stream))) {
      await accounts.logRead(clinic, { stream: one, person: caller.person, device: caller.device, at })
    }
    return {
      clinic,
      stream,
      entries: entries.filter(({ envelope }) => envelope.position > (after ?? 0)),
      house: await store.stream(clinic, 'clinic'),
      rows: await rowsFor(store, clinic, entries),
      keptAside: await store.keptAsideOf(clinic, streams),
    }
  },
})

/** Read until nothing was merged or unmerged meanwhile, so that no joined case comes by half. */
export async function readJoined(store: Store, clinic: string, stream: string) {
  for (let streams = await store.joined(clinic, stream); ; ) {
    const entries = await store.after(clinic, streams, 0)
    const again = await store.joined(clinic, stream)
    if (again.join(' ') === streams.join(' ')) return { streams, entries }
    streams = again
  }
}

/**
 * The registers as they stand. Of the owners only those whom this case names: a nurse who opens one animal is not
 * handed the addresses of all the others. Vets, laboratories and other contacts are everybody's address book.
 */
export async function rowsFor(store: Store, clinic: string, entries: readonly StoredEntry[]): Promise<RegisterRow[]> {
  const named = new Set(entries.flatMap(({ body }) => textsIn(body)))
  const rows = await Promise.all(registers.map((register) => store.current(clinic, register)))
  return rows
    .flat()
    .filter(({ register, id, body }) => register !== 'contact' || body?.kind !== 'owner' || named.has(id))
}

function textsIn(value: Json): string[] {
  if (typeof value === 'string') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(textsIn)
}
