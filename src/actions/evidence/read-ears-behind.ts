import { z } from 'zod'
import { reasonGroups } from '#core/animal/main-reason.ts'
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
    /** Only ears that were operated for this. */
    reason: z.enum(reasonGroups).optional(),
  }),
  output,
  may: 'signed-in',
  run: async ({ reason, ...question }, world) => {
    const { ears: all, today, rules } = await operatedHere(callerIn(world).clinic, world)
    const ears = reason === undefined ? all : all.filter((ear) => ear.reason === reason)
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
