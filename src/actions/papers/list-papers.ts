import { z } from 'zod'
import { operationsOf } from '#core/owed/operations.ts'
import { isPaper } from '#documents/case/paper-input.ts'
import { defineAction } from '../action.ts'
import { openCase } from './open-case.ts'
import { dataOf, papersOf } from './pack.ts'

const caseStream = z.string().regex(/^case:.{1,195}$/u, 'must be the stream of a case like case:tansy')

const listed = z.object({
  /** Of its files: `/api/papers/<stream>/<name>.pdf`, `.html` or `.txt`. */
  name: z.string(),
  title: z.string(),
  /** Of the operation it is about; null for a paper of the whole case. */
  side: z.enum(['LEFT', 'RIGHT']).nullable(),
  operation: z.string().nullable(),
  /** What has to happen before it can be made; null when it can be made now. */
  notYet: z.string().nullable(),
})

const answer = z.object({
  /** The moment the papers carry as their date. */
  on: z.string(),
  papers: z.array(listed),
  data: z.array(z.object({ file: z.string(), title: z.string() })),
})
export type PapersAnswer = z.infer<typeof answer>

/** The papers of one case as they would be printed now, and what the others wait for. */
export const listPapers = defineAction({
  name: 'list-papers',
  summary: 'The papers that a case has reached, and what the others wait for.',
  input: z.strictObject({ stream: caseStream }),
  output: answer,
  may: 'signed-in',
  run: async ({ stream }, world) => {
    const { file, on } = await openCase(stream, world)
    const operations = operationsOf(file)
    return {
      on: on.at,
      papers: papersOf(file, on).map(({ name, definition, operation, make }) => {
        const made = make()
        return {
          name,
          title: definition.title,
          side: operations.find(({ id }) => id === operation)?.side ?? null,
          operation,
          notYet: isPaper(made) ? null : made.because,
        }
      }),
      data: dataOf(file, on).map(({ file: name, title }) => ({ file: name, title })),
    }
  },
})
