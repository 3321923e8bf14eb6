import { z } from 'zod'
import { cookWindows } from '#content/outcomes/schemes/cook-2010.ts'
import { complicationSchemes } from '#content/outcomes/schemes/index.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { reasonGroups } from '#core/animal/main-reason.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { sides, speciesList } from '#core/animal/species.ts'
import { troubleEvents } from '#core/complications/trouble-codes.ts'
import { countedGroups } from '#core/evidence/own/count-own.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { type OwnCountingRules, ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { countUnits } from '#core/evidence/study.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { never } from '#core/outcome/outcome.ts'
import { blinkStandingsOf, tractStandingsOn } from '#core/results/course-standings.ts'
import { gradeStandings, windowStandings } from '#core/results/trouble-behind.ts'
import { standingIn, troubleGroups } from '#core/results/trouble-groups.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { operatedHere } from './read-own-figures.ts'

const of = { species: z.enum(speciesList), procedure: z.enum(procedureIds) }
const unit = z.enum(['ear', 'animal'])
const input = z.discriminatedUnion('about', [
  z.strictObject({
    about: z.literal('rate'),
    ...of,
    unit: z.enum(countUnits),
    outcome: z.enum(ownOutcomes),
    /** Only ears that were operated for this. */
    reason: z.enum(reasonGroups).optional(),
  }),
  /** A line of the curve of late tracts; without a day the whole course. */
  z.strictObject({ about: z.literal('tract'), ...of, day: z.int().min(0).nullable() }),
  z.strictObject({ about: z.literal('blink'), ...of }),
  z.strictObject({ about: z.literal('trouble'), ...of, unit, event: z.enum(troubleEvents) }),
  z.strictObject({
    about: z.literal('grade'),
    ...of,
    unit,
    scheme: z.enum(['cook-2010', 'clavien-dindo-dogs', 'vcog-ctcae-2']),
  }),
  z.strictObject({ about: z.literal('window'), ...of, unit }),
])
export type EarsBehindAsked = z.infer<typeof input>

const output = z.object({
  /** By the day of the operation. */
  behind: z.array(
    z.object({
      /** Where it stands in the count: the groups are those of the count that was asked for. */
      standing: z.string(),
      stream: z.string(),
      sides: z.array(z.enum(sides)),
      /** Day of the operation, of the last one where there were several. */
      on: z.string(),
      /** Days from the operation to what ended the following; null where the count is not one over time. */
      after: z.int().nullable(),
    }),
  ),
})
export type EarsBehindAnswer = z.infer<typeof output>
type Behind = EarsBehindAnswer['behind'][number]

/** The cases behind one of our own counts: where each of them stands in it. */
export const readEarsBehind = defineAction({
  name: 'read-ears-behind',
  summary: 'The cases behind one of our own counts, and where each stands in it.',
  input,
  output,
  may: 'signed-in',
  run: async (asked, world) => {
    const { ears, today, rules } = await operatedHere(callerIn(world).clinic, world)
    const behind = behindOf(asked, ears, today, rules)
    return { behind: behind.sort((a, b) => compareText(a.on, b.on) || compareText(a.stream, b.stream)) }
  },
})

function behindOf(
  asked: EarsBehindAsked,
  all: readonly OperatedEar[],
  today: string,
  rules: OwnCountingRules,
): Behind[] {
  const ears = all.filter(({ species, procedure }) => species === asked.species && procedure === asked.procedure)
  switch (asked.about) {
    case 'rate': {
      const some = asked.reason === undefined ? ears : ears.filter(({ reason }) => reason === asked.reason)
      return countedGroups(asked, some, today, rules).map((group) => line(group.standing, group.ears))
    }
    case 'tract':
      return tractStandingsOn(ears, asked.day, rules.deathWithinDays.value).map(({ ear, standing, after }) =>
        line(standing, [ear], after),
      )
    case 'blink':
      return blinkStandingsOf(ears).map(({ ear, standing, after }) => line(standing, [ear], after))
    case 'trouble':
      return troubleGroups(asked, ears).map((group) =>
        line(standingIn(asked.event, group, { rules: troubleRules, today }).standing, group.ears),
      )
    case 'grade': {
      const scheme = complicationSchemes.find(({ id }) => id === asked.scheme)
      if (!scheme) throw new Error(`No scheme is called ${asked.scheme}.`)
      const early = troubleRules.early.value
      return gradeStandings(scheme, troubleGroups(asked, ears), { early, today }).map((one) =>
        line(one.standing, one.group.ears),
      )
    }
    case 'window':
      return windowStandings(cookWindows.value, troubleGroups(asked, ears), {
        early: troubleRules.early.value,
        today,
      }).map((one) => line(one.standing, one.group.ears))
    default:
      return never(asked)
  }
}

function line(standing: string, ears: readonly [OperatedEar, ...OperatedEar[]], after: number | null = null): Behind {
  return {
    standing,
    stream: ears[0].stream,
    sides: [...new Set(ears.map(({ side }) => side))].sort(),
    on:
      ears
        .map(({ on }) => on)
        .sort(compareText)
        .at(-1) ?? ears[0].on,
    after,
  }
}
