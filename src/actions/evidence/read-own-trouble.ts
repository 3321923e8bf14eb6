import { z } from 'zod'
import { cookWindows } from '#content/outcomes/schemes/cook-2010.ts'
import { complicationSchemes } from '#content/outcomes/schemes/index.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { troubleEvents } from '#core/complications/trouble-codes.ts'
import { countTrouble } from '#core/results/count-trouble.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { operatedHere } from './read-own-figures.ts'

const count = z.int().min(0)
const denominators = { operated: count, followed: count, notYetDue: count }
const counted = z.object({
  ...denominators,
  unit: z.enum(['ear', 'animal']),
  events: z.array(
    z.object({
      ...denominators,
      event: z.enum(troubleEvents),
      events: count,
      classes: z.object({
        complication: count,
        sequela: count,
        'failure-to-cure': count,
        'not-decided': count,
      }),
      before: count,
      early: count,
      acrossAnimals: z.object({ low: z.number(), high: z.number() }).nullable(),
    }),
  ),
  schemes: z.array(
    z.object({
      scheme: z.enum(['cook-2010', 'clavien-dindo-dogs', 'vcog-ctcae-2']),
      grades: z.array(z.object({ grade: z.string(), count })).readonly(),
      between: count,
      unknown: count,
    }),
  ),
  windows: z.array(z.object({ window: z.enum(['peri-operative', 'short', 'mid', 'long']), count })).readonly(),
})

const output = z.object({ ear: counted, animal: counted })
export type OwnTroubleAnswer = z.infer<typeof output>

/** What went wrong in and after one operation in one species: by kind, by what it is held for, by every scheme, by when. */
export const readOwnTrouble = defineAction({
  name: 'read-own-trouble',
  summary: 'Our own counted trouble after one operation in one species: by ears and, apart from that, by animals.',
  input: z.strictObject({ species: z.enum(speciesList), procedure: z.enum(procedureIds) }),
  output,
  may: 'signed-in',
  run: async (of, world) => {
    const { ears, today } = await operatedHere(callerIn(world).clinic, world)
    const how = { today, rules: troubleRules, schemes: complicationSchemes, windows: cookWindows.value }
    const by = (unit: 'ear' | 'animal') => {
      const found = countTrouble({ ...of, unit }, ears, how)
      return { ...found, events: [...found.events], schemes: [...found.schemes] }
    }
    return { ear: by('ear'), animal: by('animal') }
  },
})
