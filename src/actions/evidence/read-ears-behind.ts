import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { countedGroups, standings } from '#core/evidence/own/count-own.ts'
import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { countUnits } from '#core/evidence/study.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { operatedHere } from './read-own-figures.ts'

const output = z.object({
  behind: z.array(
    z.object({
      standing: z.enum(standings),
      stream: z.string(),
      sides: z.array(z.enum(['LEFT', 'RIGHT'])),
      /** Day of the operation, of the last one where there were several. */
      on: z.string(),
    }),
  ),
})
export type EarsBehindAnswer = z.infer<typeof output>

/** The cases behind one of our own counts: who had it, who did not, of whom nobody knows, whose time has not come. */
export const readEarsBehind = defineAction({
  name: 'read-ears-behind',
  summary: 'The cases behind one of our own counts, and where each stands in it.',
  input: z.strictObject({
    species: z.enum(speciesList),
    procedure: z.enum(procedureIds),
    unit: z.enum(countUnits),
    outcome: z.enum(ownOutcomes),
  }),
  output,
  may: 'signed-in',
  run: async (question, world) => {
    const { ears, today, rules } = await operatedHere(callerIn(world).clinic, world)
    return {
      behind: countedGroups(question, ears, today, rules).map(({ standing, last, ears: [first, ...others] }) => ({
        standing,
        stream: first.stream,
        sides: [...new Set([first, ...others].map(({ side }) => side))].sort(),
        on: last,
      })),
    }
  },
})
