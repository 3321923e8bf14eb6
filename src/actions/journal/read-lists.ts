import { z } from 'zod'
import { defineAction, type World } from '../action.ts'
import { callerIn } from '../caller.ts'

const owed = z.object({
  stream: z.string(),
  id: z.string(),
  what: z.string(),
  who: z.string(),
  dueFrom: z.string(),
  dueBy: z.string(),
  why: z.string(),
  sources: z.array(z.string()),
  name: z.string(),
  species: z.string(),
})
const listed = z.object({
  stream: z.string(),
  animal: z.string(),
  name: z.string(),
  species: z.string(),
  chip: z.string().nullable(),
  contact: z.string().nullable(),
  chapter: z.string(),
  conflicts: z.int(),
  ownerName: z.string().nullable(),
  ownerPhone: z.string().nullable(),
  householdId: z.string().nullable(),
})

/** How far the lists are while they are made again; null when all are as the house now stands. */
export const remakingSchema = z.object({ made: z.int(), of: z.int() }).nullable()

const output = z.object({
  asOf: z.string(),
  version: z.int(),
  remaking: remakingSchema,
  changed: z.array(z.string()).nullable(),
  owed: z.array(owed),
  cases: z.array(listed),
})
export type ReadLists = z.infer<typeof output>

/**
 * Everything owed and every case of the clinic, in no order. With `since`, the version of an earlier answer, only the
 * rows of the streams named in `changed`: they take the place of all rows those streams had.
 */
export const readLists = defineAction({
  name: 'read-lists',
  summary: 'Everything that is owed and every case, whole or what changed since a version.',
  input: z.strictObject({ since: z.int().min(0).nullable().optional() }),
  output,
  may: 'signed-in',
  run: async (asked, world) => JSON.parse(await listsText(asked, world)) as ReadLists,
  text: listsText,
})

async function listsText({ since }: { since?: number | null | undefined }, world: World): Promise<string> {
  const { clinic } = callerIn(world)
  const asOf = world.clock.now()
  const { version, remaking, changed, owed, cases } = await world.store.lists(clinic, since ?? null)
  const head = JSON.stringify({ asOf, version, remaking, changed }).slice(0, -1)
  return `${head},"owed":[${owed}],"cases":[${cases}]}`
}
