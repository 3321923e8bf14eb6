import { z } from 'zod'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { day } from '#core/journal/answers.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { owedOf } from '#core/owed/owed.ts'
import { owedCodeOf } from '#core/owed/owed-code-of.ts'
import { type TheatreCase, theatreListOf } from '#core/theatre/theatre-list.ts'
import { theatreRules } from '#documents/agreement/consent-today.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { caseFile } from '../journal/case-file.ts'
import { remakingSchema } from '../journal/read-lists.ts'
import type { OwedRow, Store } from '../store.ts'
import { listedOperation, theatreLineSchema } from './theatre-line.ts'

const output = z.object({
  asOf: z.string(),
  remaking: remakingSchema,
  days: z.array(z.object({ day: z.string(), lines: z.array(theatreLineSchema) })),
})
export type TheatreListAnswer = z.infer<typeof output>

/** The operations that are booked between two days, by date, worked out from the cases as they stand. */
export const readTheatreList = defineAction({
  name: 'read-theatre-list',
  summary: 'Agreed operations by date: who, LEFT or RIGHT, what is missing, last meal and admission at clock times.',
  input: z.strictObject({ from: day, until: day }),
  output,
  may: 'signed-in',
  run: async (days, world) => {
    const { clinic } = callerIn(world)
    const { store, clock } = world
    // Which cases have an operation booked is read from the lists; asked first, so that none is called new that is old.
    const remaking = await store.remaking(clinic)
    const cases: TheatreCase[] = []
    for (const stream of bookedStreams(await store.owed(clinic))) {
      const file = await fileOf(store, clinic, stream)
      cases.push({ file, owed: owedOf(file, procedures, { rules: owedRules }).owed })
    }
    const files = new Map<string, CaseFile>(cases.map(({ file }) => [file.stream, file]))
    const list = theatreListOf(cases, theatreRules, days)
    return {
      asOf: clock.now(),
      remaking,
      days: list.map(({ day: on, lines }) => ({
        day: on,
        lines: lines.flatMap((line) => {
          const file = files.get(line.stream)
          return file ? [listedOperation(line, file)] : []
        }),
      })),
    }
  },
})

/**
 * The cases with an operation that is booked and not done: its admission is owed until then. Those just operated are
 * known by their first call. So ten thousand cases are not read for a list of five.
 */
export function bookedStreams(owed: readonly Pick<OwedRow, 'stream' | 'id'>[]): string[] {
  const booked = owed.filter(({ id }) => ['admission', 'first-call'].includes(owedCodeOf(id) ?? ''))
  return [...new Set(booked.map(({ stream }) => stream))]
}

async function fileOf(store: Store, clinic: string, stream: string): Promise<CaseFile> {
  const entries = await store.after(clinic, await store.joined(clinic, stream), 0)
  const house = await store.stream(clinic, 'clinic')
  return caseFile(
    { clinic, rows: (await store.registers(clinic)) as readonly Row[], entries: [...house, ...entries] },
    stream,
  )
}
