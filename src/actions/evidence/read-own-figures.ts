import { z } from 'zod'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { mainReasons, reasonGroups } from '#core/animal/main-reason.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { countsByReason } from '#core/evidence/own/by-reason.ts'
import { countEvery, type OwnCount } from '#core/evidence/own/count-own.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { type OwnCountingRules, ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { ownRulesOf } from '#core/evidence/own/own-rules.ts'
import { countUnits } from '#core/evidence/study.ts'
import { currentRows } from '#core/journal/case-file.ts'
import { fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { blinkRecovery } from '#core/results/blink-recovery.ts'
import { tractsByReason } from '#core/results/tract-by-reason.ts'
import { tractTimes } from '#core/results/tract-times.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { defineAction, type World } from '../action.ts'
import { callerIn } from '../caller.ts'
import { remakingSchema } from '../journal/read-lists.ts'
import { watchedOf } from './watched.ts'

const count = z.int().min(0)
const share = z.number().min(0).max(1)
const ends = z.tuple([share, share]).readonly().nullable()
const shareAt = { months: count, day: count, followed: count }
const tract = z.object({
  ears: count,
  animals: count,
  events: count,
  died: count,
  from: z.string(),
  until: z.string(),
  at: z
    .array(
      z.discriminatedUnion('kind', [
        z.object({ ...shareAt, kind: z.literal('too-few') }),
        z.object({
          ...shareAt,
          kind: z.literal('said'),
          share,
          interval: ends,
          upTo: share.nullable(),
          withoutDeaths: share,
        }),
      ]),
    )
    .readonly(),
  mean: z.object({ months: count, days: z.number(), error: z.number() }).nullable(),
  steps: z
    .array(
      z.object({
        day: z.number(),
        followed: count,
        events: count,
        died: count,
        share: share.nullable(),
        interval: ends,
      }),
    )
    .readonly(),
})
const day = z.number().nullable()
const blink = z.object({ ears: count, back: count, half: z.object({ value: day, low: day, high: day }) })

const question = z.object({
  species: z.enum(speciesList),
  procedure: z.enum(procedureIds),
  unit: z.enum(countUnits),
  outcome: z.enum(ownOutcomes),
})
const watched = { question, known: count }
const watch = z.discriminatedUnion('kind', [
  z.object({ ...watched, kind: z.literal('too-few') }),
  z.object({ ...watched, kind: z.literal('nothing-expected') }),
  z.object({
    ...watched,
    kind: z.literal('watched'),
    risk: share,
    together: z.object({
      expected: z.number(),
      ratio: z.number(),
      interval: z.tuple([z.number(), z.number()]).readonly(),
      byChance: z.tuple([z.number(), z.number()]).readonly(),
    }),
    falseAlarm: share,
    rightAlarm: share,
    points: z
      .array(z.object({ on: z.string(), event: z.boolean(), value: z.number(), signal: z.boolean() }))
      .readonly(),
  }),
])

const counted = z.object({
  question,
  events: count,
  total: count,
  lost: count,
  died: count,
  ofNoSide: count,
  notYetDue: count,
  notYetDueWithEvent: count,
  period: z.object({ from: z.string(), until: z.string() }).nullable(),
  acrossAnimals: z.object({ low: z.number(), high: z.number() }).nullable(),
})

const comparedReasons = z.array(z.object({ reason: z.enum(mainReasons), ears: count, events: count })).readonly()
const reasonsSaid = { compared: comparedReasons, tooFew: comparedReasons }
const tractReasons = z.discriminatedUnion('kind', [
  z.object({ ...reasonsSaid, kind: z.literal('fewer-than-two') }),
  z.object({ ...reasonsSaid, kind: z.literal('no-event') }),
  z.object({
    ...reasonsSaid,
    kind: z.literal('compared-over-time'),
    chiSquare: z.number(),
    degrees: count,
    p: share,
  }),
])

const output = z.object({
  /** The day the figures are counted on, where the clinic is. */
  today: z.string(),
  remaking: remakingSchema,
  /** Ears operated on record, of either species. */
  ears: count,
  counts: z.array(counted),
  /** The same by the main reason of the operation, ears only. */
  byReason: z.array(
    z.object({
      species: z.enum(speciesList),
      procedure: z.enum(procedureIds),
      reason: z.enum(reasonGroups),
      ears: count,
      counts: z.array(counted).readonly(),
    }),
  ),
  /** Over time, for every operation in a species that was done here. */
  times: z.array(
    z.object({
      species: z.enum(speciesList),
      procedure: z.enum(procedureIds),
      tract,
      blink: blink.nullable(),
      watched: z.array(watch),
      reasons: tractReasons,
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
    // Asked first, so that no figure is called new that is old.
    const remaking = await world.store.remaking(clinic)
    const { ears, today, rules } = await operatedHere(clinic, world)
    return {
      today,
      remaking,
      ears: ears.length,
      counts: countsOf(ears, today, rules),
      byReason: doneHere(ears).flatMap((of) => countsByReason(of, ears, today, rules)),
      times: timesOf(ears, today, rules),
    }
  },
})

/** Every operated ear of the clinic, the day and the zone where it is, its own stream, and how this house counts. */
export async function operatedHere(clinic: string, { store, clock }: Pick<World, 'store' | 'clock'>) {
  const register = currentRows((await store.registers(clinic)) as readonly Row[])
    .clinic.values()
    .next().value
  const zone = register?.zone ?? 'UTC'
  const ears = earsIn(await store.operated(clinic))
  const house = fold(await store.stream(clinic, 'clinic'))
  return { ears, today: dayOf({ at: clock.now(), zone }), zone, house, rules: ownRulesOf(house, ownCounting) }
}

const noneApart = { ofNoSide: [] } as const

/** Cases that are merged hold the same operation twice; it is counted once. */
export function earsIn(texts: readonly string[]): OperatedEar[] {
  // Lists that are not made again yet hold ears of before, of which nothing was kept apart.
  const all = texts.flatMap((text) => JSON.parse(text) as OperatedEar[]).map((ear) => ({ ...noneApart, ...ear }))
  return [...new Map(all.map((ear) => [ear.operation, ear])).values()]
}

/** Every count for every operation in a species that was done here. */
export function countsOf(ears: readonly OperatedEar[], today: string, rules: OwnCountingRules): OwnCount[] {
  return doneHere(ears).flatMap((of) => countEvery(of, ownOutcomes, ears, today, rules))
}

function timesOf(ears: readonly OperatedEar[], today: string, rules: OwnCountingRules): OwnFiguresAnswer['times'] {
  return doneHere(ears).flatMap(({ species, procedure }) => {
    const some = ears.filter((ear) => ear.species === species && ear.procedure === procedure)
    const found = tractTimes(some, {
      enough: rules.followedEnough.value,
      deathWithinDays: rules.deathWithinDays.value,
    })
    return found.kind === 'answer'
      ? [
          {
            species,
            procedure,
            tract: found.answer,
            blink: blinkRecovery(some),
            watched: watchedOf({ species, procedure }, ears, today, rules),
            reasons: tractsByReason(some, rules.shownFrom.value, rules.deathWithinDays.value),
          },
        ]
      : []
  })
}

function doneHere(ears: readonly OperatedEar[]) {
  return speciesList.flatMap((species) =>
    procedureIds
      .filter((procedure) => ears.some((ear) => ear.species === species && ear.procedure === procedure))
      .map((procedure) => ({ species, procedure })),
  )
}
