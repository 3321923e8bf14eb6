import { z } from 'zod'
import { sides, speciesList } from '../animal/species.ts'
import {
  bullaContents,
  bullaWalls,
  carriages,
  drumStates,
  incisions,
  layers,
  massPlaces,
  massSizes,
  narrowings,
  openings,
  type PlateParameters,
  removals,
  views,
  yesNoUnknown,
} from './parameters.ts'

/** The parameters of a plate as an entry keeps them, whole: nothing is looked up again when it is drawn later. */
export const parametersSchema = z.strictObject({
  species: z.enum(speciesList),
  side: z.enum(sides),
  view: z.enum(views),
  carriage: z.enum(carriages),
  narrowing: z.strictObject({
    vertical: z.enum(narrowings),
    horizontal: z.enum(narrowings),
    recorded: z.enum(['whole', 'by-part']),
  }),
  mineral: z.enum(yesNoUnknown),
  drum: z.enum(drumStates),
  bullaContent: z.enum(bullaContents),
  bullaWall: z.enum(bullaWalls),
  mass: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.enum(['none', 'not-assessed', 'place-not-recorded']) }),
    z.strictObject({ kind: z.literal('placed'), place: z.enum(massPlaces), size: z.enum(massSizes) }),
  ]),
  surgery: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.enum(['none', 'not-drawn']) }),
    z.strictObject({
      kind: z.enum(['planned', 'done']),
      incision: z.enum(incisions),
      canal: z.enum(removals),
      bulla: z.enum(openings),
    }),
  ]),
  layers: z.array(z.enum(layers)),
}) satisfies z.ZodType<PlateParameters>
