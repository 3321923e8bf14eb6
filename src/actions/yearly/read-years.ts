import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { sides, speciesList } from '#core/animal/species.ts'
import { countOwn } from '#core/evidence/own/count-own.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import type { OwnCountingRules } from '#core/evidence/own/own-outcome.ts'
import { changedNumbers, reportErratum } from '#core/journal/kinds/report-erratum.ts'
import { reportFrozen } from '#core/journal/kinds/report-frozen.ts'
import { earsOfYear, operationsIn } from '#core/yearly/freeze-year.ts'
import { completenessOf } from '#core/yearly/report-of.ts'
import { whomToCall } from '#core/yearly/whom-to-call.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { operatedHere } from '../evidence/read-own-figures.ts'
import { remakingSchema } from '../journal/read-lists.ts'
import { frozenReports } from './frozen-reports.ts'
import { owingOf } from './owing-of-year.ts'
import { remakeReport } from './remake-report.ts'
import { reportFiles, rowFiles, sayBroken } from './report-files.ts'

const count = z.int().min(0)
const operation = z.object({
  species: z.enum(speciesList),
  procedure: z.enum(procedureIds),
  ears: count,
  animals: count,
  anaesthetics: count,
  heardOf: count,
  died: count,
  knownAfterYear: count,
  lostAfterYear: count,
  notYetDue: count,
})
const change = z.object({
  operation: z.string(),
  side: z.enum(sides),
  what: z.string(),
  before: z.string(),
  after: z.string(),
})
const owing = z.object({
  cases: z.array(z.object({ stream: z.string(), changes: z.array(change), entries: z.array(z.string()) })),
  numbers: changedNumbers,
})
const frozen = z.object({
  entry: z.string(),
  at: z.string(),
  body: reportFrozen.body,
  /** Another report on the same year stands beside it. */
  inConflict: z.boolean(),
  /** Why it cannot be made again, in a sentence; null when it can. */
  broken: z.string().nullable(),
  files: z.array(z.object({ file: z.string(), mediaType: z.string() })),
  rows: z.object({
    /** How many rows are given. */
    given: count,
    files: z.array(z.string()),
    leftOut: z.array(z.object({ species: z.enum(speciesList), procedure: z.enum(procedureIds) })),
  }),
  errata: z.array(z.object({ entry: z.string(), at: z.string(), body: reportErratum.body })),
  owing: owing.nullable(),
})
const output = z.object({
  today: z.string(),
  remaking: remakingSchema,
  /** The position up to which the journal was read, for an erratum. */
  readUntil: count,
  years: z.array(
    z.object({
      year: z.int(),
      /** It can be frozen from the day after its last one. */
      over: z.boolean(),
      operations: z.array(operation),
      toCall: z.array(
        z.object({ stream: z.string(), side: z.enum(sides), on: z.string(), heard: z.string().nullable() }),
      ),
      frozen: frozen.nullable(),
    }),
  ),
})
export type YearsAnswer = z.infer<typeof output>

/** Every year in which an ear was operated: how complete the knowledge of it is, whether it is frozen, what is owed of it. */
export const readYears = defineAction({
  name: 'read-years',
  summary:
    'The years of our results: how complete each is, whom to call, what is frozen, and where an erratum is owed.',
  input: z.strictObject({}),
  output,
  may: 'signed-in',
  run: async (_, world) => {
    const { clinic } = callerIn(world)
    const { store } = world
    // Asked first: what comes in while it is read is owed again rather than passed over.
    const readUntil = await store.position(clinic)
    const remaking = await store.remaking(clinic)
    const { ears, today, house, rules } = await operatedHere(clinic, world)
    const rows = await store.registers(clinic)
    const reports = frozenReports(house)
    const frozenOf = async (report: (typeof reports)[number]) => {
      const made = await remakeReport(store, clinic, report)
      const found = await owingOf(report, made.kind === 'remade' ? made.frozen : null, { store, clinic, rows, ears })
      const { line, errata, inConflict } = report
      const given = made.kind === 'remade' ? rowFiles(report, made) : null
      return {
        entry: line.header.id,
        at: line.at,
        body: line.body,
        inConflict,
        broken: made.kind === 'remade' ? null : sayBroken(report, made),
        files:
          made.kind === 'remade' ? reportFiles(report, made).map(({ file, mediaType }) => ({ file, mediaType })) : [],
        rows: {
          given: given ? given.given.ears.length : 0,
          files: given ? given.files.map(({ file }) => file) : [],
          leftOut: given ? given.given.leftOut.map(({ species, procedure }) => ({ species, procedure })) : [],
        },
        errata: errata.map((one) => ({ entry: one.header.id, at: one.at, body: one.body })),
        owing: found && {
          cases: found.cases.map(({ stream, changes, causes }) => ({
            stream,
            changes: [...changes],
            entries: causes.map(({ header }) => header.id),
          })),
          numbers: [...found.numbers],
        },
      }
    }
    const known = [...ears.map(({ on }) => Number(on.slice(0, 4))), ...reports.map(({ line }) => line.body.year)]
    const years = [...new Set(known)].sort((a, b) => b - a)
    return {
      today,
      remaking,
      readUntil,
      years: await Promise.all(
        years.map(async (year) => {
          const report = reports.find(({ line }) => line.body.year === year)
          const some = earsOfYear(ears, year)
          return {
            year,
            over: today > `${year}-12-31`,
            operations: operationsOfYear(some, today, rules),
            toCall: whomToCall(some, today, rules),
            frozen: report ? await frozenOf(report) : null,
          }
        }),
      ),
    }
  },
})

function operationsOfYear(some: readonly OperatedEar[], today: string, rules: OwnCountingRules) {
  return operationsIn(some).map((of) => {
    const ears = some.filter(({ species, procedure }) => species === of.species && procedure === of.procedure)
    const year = countOwn({ ...of, outcome: 'resolution_or_improved', unit: 'ear' }, ears, today, rules)
    return { ...of, ...completenessOf(ears, [year]) }
  })
}
