import { z } from 'zod'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { countOwn, type OwnCount } from '#core/evidence/own/count-own.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { ownRulesOf } from '#core/evidence/own/own-rules.ts'
import { countUnits } from '#core/evidence/study.ts'
import { currentRows } from '#core/journal/case-file.ts'
import { fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { remakingSchema } from '../journal/read-lists.ts'

const count = z.int().min(0)
const output = z.object({
  /** The day the figures are counted on, where the clinic is. */
  today: z.string(),
  remaking: remakingSchema,
  /** Ears operated on record, of either species. */
  ears: count,
  counts: z.array(
    z.object({
      question: z.object({
        species: z.enum(speciesList),
        procedure: z.enum(procedureIds),
        unit: z.enum(countUnits),
        outcome: z.enum(ownOutcomes),
      }),
      events: count,
      total: count,
      lost: count,
      died: count,
      notYetDue: count,
      notYetDueWithEvent: count,
      period: z.object({ from: z.string(), until: z.string() }).nullable(),
    }),
  ),
})
export type OwnFiguresAnswer = z.infer<typeof output>

/** Our own counts of every outcome that the record can answer, for every operation that was done here. */
export const readOwnFigures = defineAction({
  name: 'read-own-figures',
  summary: 'Our own counted results: per species, operation, outcome and unit, with those not known and not yet due.',
  input: z.strictObject({}),
  output,
  may: 'signed-in',
  run: async (_, world) => {
    const { clinic } = callerIn(world)
    const { store, clock } = world
    // Asked first, so that no figure is called new that is old.
    const remaking = await store.remaking(clinic)
    const register = currentRows((await store.registers(clinic)) as readonly Row[])
      .clinic.values()
      .next().value
    const rules = ownRulesOf(fold(await store.stream(clinic, 'clinic')), ownCounting)
    const ears = earsIn(await store.operated(clinic))
    const today = dayOf({ at: clock.now(), zone: register?.zone ?? 'UTC' })
    return { today, remaking, ears: ears.length, counts: countsOf(ears, today, rules) }
  },
})

/** Cases that are merged hold the same operation twice; it is counted once. */
export function earsIn(texts: readonly string[]): OperatedEar[] {
  const all = texts.flatMap((text) => JSON.parse(text) as OperatedEar[])
  return [...new Map(all.map((ear) => [ear.operation, ear])).values()]
}

/** Every count for every operation in a species that was done here. */
export function countsOf(
  ears: readonly OperatedEar[],
  today: string,
  rules: Parameters<typeof countOwn>[3],
): OwnCount[] {
  const done = speciesList.flatMap((species) =>
    procedureIds
      .filter((procedure) => ears.some((ear) => ear.species === species && ear.procedure === procedure))
      .map((procedure) => ({ species, procedure })),
  )
  return done.flatMap((of) =>
    ownOutcomes.flatMap((outcome) => countUnits.map((unit) => countOwn({ ...of, outcome, unit }, ears, today, rules))),
  )
}
