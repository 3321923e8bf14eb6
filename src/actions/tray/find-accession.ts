import { z } from 'zod'
import { fold } from '#core/journal/fold.ts'
import { resultsUnder } from '#core/laboratory/match-specimen.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'

const answer = z.object({
  found: z.array(z.object({ accession: z.string(), stream: z.string(), result: z.string() })),
})
export type FindAccessionAnswer = z.infer<typeof answer>

/** Where results already stand under the numbers of laboratories, so that a report is never filed to a second animal. */
export const findAccession = defineAction({
  name: 'find-accession',
  summary: 'In which case results stand under the numbers that laboratories gave.',
  input: z.strictObject({ accessions: z.array(z.string().min(1).max(300)).max(500) }),
  output: answer,
  may: 'signed-in',
  run: async ({ accessions }, { store, ...world }) => {
    const { clinic } = callerIn(world)
    if (accessions.length === 0) return { found: [] }
    const results = await store.ofKinds(clinic, ['specimen-result'])
    const streams = [...new Set(results.map(({ header }) => header.stream))]
    const wanted = new Set(accessions)
    const found = []
    for (const stream of streams) {
      const mine = results.filter(({ header }) => header.stream === stream)
      if (!mine.some(({ body }) => wanted.has(String((body as { accession?: unknown } | null)?.accession)))) continue
      // Only what stands now: a result that was taken back is not there any more.
      const theCase = fold(await store.stream(clinic, stream))
      for (const accession of wanted) {
        for (const { header } of resultsUnder(accession, theCase)) found.push({ accession, stream, result: header.id })
      }
    }
    return { found }
  },
})
