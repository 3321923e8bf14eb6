import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { outcomeCodes } from '#core/evidence/outcome-code.ts'
import { countUnits } from '#core/evidence/study.ts'
import { listed } from '../input.ts'

const most = 1_000_000
const cases = z.int().min(0).max(most)
const count = z
  .strictObject({ id: z.string().min(1).optional(), events: cases, total: cases })
  .refine(({ events, total }) => events <= total, {
    path: ['events'],
    message: 'events must not be more than total.',
  })
const own = z
  .strictObject({ events: cases, total: cases, lost: cases.optional() })
  .refine(({ events, total }) => events <= total, { path: ['events'], message: 'events must not be more than total.' })

/** One outcome from counts that the caller brings. */
export const rawOdds = z.strictObject({
  studies: z.array(count).max(1_000),
  own: own.optional(),
  muPrior: z.strictObject({ mean: z.number().min(-20).max(20), sd: z.number().positive().max(100) }).optional(),
  tauPrior: z
    .strictObject({ family: listed(['half-normal'], 'prior of tau'), scale: z.number().positive().max(10) })
    .optional(),
  /** Weight of the weak part; 0 leaves it out. */
  robust: z.number().min(0).max(1).optional(),
  weak: listed(['about-the-mean', 'flat'], 'shape of the weak part').optional(),
})

/** Every outcome of one operation from the published studies held here. */
export const publishedOdds = z.strictObject({
  species: listed(speciesList, 'species'),
  procedure: listed(procedureIds, 'procedure'),
  unit: listed(countUnits, 'unit'),
  own: z.partialRecord(listed(outcomeCodes, 'outcome'), own).optional(),
  modifiers: z.array(z.string().min(1)).max(20).optional(),
})

export type RawOdds = z.infer<typeof rawOdds>
export type PublishedOdds = z.infer<typeof publishedOdds>
