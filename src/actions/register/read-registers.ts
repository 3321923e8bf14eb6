import { z } from 'zod'
import type { StoredEntry } from '#core/journal/entry.ts'
import { type BodyOf, type Case, fold } from '#core/journal/fold.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { storedEntrySchema } from '../journal/stored-entry.ts'

export const registerKinds = ['register-line', 'drug-given', 'drug-wasted', 'withdrawal', 'refile'] as const

/**
 * Everything the controlled-drug registers are made from: their own lines, and from all cases what was given and wasted
 * of those drugs, with whatever corrects or takes it back. That it was read is written down under `register`.
 */
export const readRegisters = defineAction({
  name: 'read-registers',
  summary: 'The lines of the controlled-drug registers, with what the cases gave and wasted of those drugs.',
  input: z.strictObject({}),
  output: z.object({ asOf: z.string(), entries: z.array(storedEntrySchema) }),
  may: 'signed-in',
  run: async (_, world) => {
    const { caller, clinic } = callerIn(world)
    const { store, accounts, clock } = world
    const asOf = clock.now()
    const house = fold(await store.stream(clinic, 'clinic'))
    const entries = registerEntries(await store.ofKinds(clinic, registerKinds), markedDrugs(house))
    const { person, device } = caller
    await accounts.logRead(clinic, { stream: 'register', person, device, at: `${asOf.slice(0, 16)}Z` })
    return { asOf, entries }
  },
})

/** The drugs of which a product on the shelf is marked to be kept in a register. */
export function markedDrugs(house: Case): string[] {
  const marked = house.live('shelf-item').filter(({ body }) => body.controlled === 'yes')
  return marked.map(({ body }) => body.drug)
}

type Named = Partial<Pick<BodyOf<'drug-given'>, 'drug'>> | null

/** The register lines, the entries about their drugs, and all that is tied to those by correction or withdrawal. */
export function registerEntries(entries: readonly StoredEntry[], marked: readonly string[]): StoredEntry[] {
  const drugOf = ({ body }: StoredEntry) => (body as Named)?.drug
  const isLine = ({ header }: StoredEntry) => header.kind === 'register-line'
  const drugs = new Set([...marked, ...entries.filter(isLine).map(drugOf)])
  const tied = new Map<string, string[]>()
  const tie = (from: string, to: string) => tied.set(from, [...(tied.get(from) ?? []), to])
  for (const { header } of entries) {
    for (const aim of [...header.supersedes, ...(header.withdraws === null ? [] : [header.withdraws])]) {
      tie(header.id, aim)
      tie(aim, header.id)
    }
  }
  const about = entries.filter((entry) => isLine(entry) || (drugOf(entry) !== undefined && drugs.has(drugOf(entry))))
  const wanted = new Set(about.map(({ header }) => header.id))
  for (const id of wanted) for (const other of tied.get(id) ?? []) wanted.add(other)
  return entries.filter(({ header }) => wanted.has(header.id))
}
