import { z } from 'zod'
import { lateSignRules } from '#content/follow-up/late-signs.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { sides, speciesList } from '#core/animal/species.ts'
import { momentSchema, type StoredEntry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { type FileWithEars, indexDoubtCodes, indexEarsOf, indexReasonCodes } from '#core/late/index-ears.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { earsIn } from '../evidence/read-own-figures.ts'
import type { CaseInList } from '../store.ts'

const said = z.string().max(300).nullable()
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'must be a day like 2026-03-01')

const output = z.object({
  ears: z.array(
    z.object({
      stream: z.string(),
      animal: z.string(),
      name: z.string(),
      ownerName: z.string().nullable(),
      ownerPhone: z.string().nullable(),
      chip: z.string().nullable(),
      operation: z.string(),
      side: z.enum(sides),
      procedure: z.enum(procedureIds),
      /** Day of the operation. */
      on: z.string(),
      /** Day of the first late event that is on record. */
      tractOn: z.string().nullable(),
      strength: z.enum(['this-file', 'likely', 'possible']),
      reasons: z.array(z.enum(indexReasonCodes)),
      doubts: z.array(z.enum(indexDoubtCodes)),
    }),
  ),
  /** How many more fit less well and were left out. */
  leftOff: z.int().min(0),
})
export type IndexEarsAnswer = z.infer<typeof output>

/** More than anybody compares while somebody is on the telephone. */
const mostShown = 8

/** The operated ears of this clinic to which a late sign may belong, with the reasons; nothing is written and nothing joined. */
export const findIndexEars = defineAction({
  name: 'find-index-ears',
  summary: 'The operated ears to which a late swelling, tract or pain may belong, under whatever name it was told.',
  input: z.strictObject({
    name: said,
    species: z.enum(speciesList).nullable(),
    chip: said,
    householdId: said,
    ownerName: said,
    ownerPhone: said,
    born: momentSchema.nullable(),
    breed: said,
    side: z.enum([...sides, 'BOTH', 'unknown']),
    day,
    /** The file it was told in; null at a call that has none yet. */
    stream: z.string().max(200).nullable(),
  }),
  output,
  may: 'signed-in',
  run: async ({ stream, ...told }, world): Promise<IndexEarsAnswer> => {
    const { clinic } = callerIn(world)
    const { store } = world
    const streams = stream === null ? [] : await store.joined(clinic, stream)
    const files = filesWithEars(
      earsIn(await store.operated(clinic)),
      JSON.parse(`[${(await store.lists(clinic, null)).cases}]`) as CaseInList[],
      identities(await store.ofKinds(clinic, ['identity', 'withdrawal', 'refile'])),
    )
    const found = indexEarsOf({ ...told, streams }, files, lateSignRules.lateFrom.value)
    return {
      ears: found.slice(0, mostShown).map(({ file, ear, strength, reasons, doubts }) => ({
        stream: file.stream,
        animal: file.animal,
        name: file.name ?? '',
        ownerName: file.ownerName,
        ownerPhone: file.ownerPhone,
        chip: file.chip,
        operation: ear.operation,
        side: ear.side,
        procedure: ear.procedure,
        on: ear.on,
        tractOn: ear.tractOn,
        strength,
        reasons: [...reasons],
        doubts: [...doubts],
      })),
      leftOff: Math.max(0, found.length - mostShown),
    }
  },
})

/** Born and breed stand in no list; they are read of the cases with an operated ear alone. */
function filesWithEars(
  ears: ReturnType<typeof earsIn>,
  cases: readonly CaseInList[],
  identityOf: (stream: string) => BodyOf<'identity'> | undefined,
): FileWithEars[] {
  const byStream = new Map(cases.map((row) => [row.stream, row]))
  const streams = [...new Set(ears.map(({ stream }) => stream))]
  return streams.flatMap((stream) => {
    const row = byStream.get(stream)
    const identity = row && identityOf(stream)
    if (!row) return []
    const own = ears.filter((ear) => ear.stream === stream)
    return [{ ...row, born: identity?.born ?? null, breed: identity?.breed ?? null, ears: own }]
  })
}

function identities(entries: readonly StoredEntry[]): (stream: string) => BodyOf<'identity'> | undefined {
  const byStream = new Map<string, StoredEntry[]>()
  for (const entry of entries) {
    const before = byStream.get(entry.header.stream)
    if (before) before.push(entry)
    else byStream.set(entry.header.stream, [entry])
  }
  return (stream) => fold(byStream.get(stream) ?? []).latest('identity')?.body
}
