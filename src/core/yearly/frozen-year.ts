import { z } from 'zod'
import { reasonGroups } from '../animal/main-reason.ts'
import { procedureIds } from '../animal/procedure.ts'
import { sides, speciesList } from '../animal/species.ts'
import { ownOutcomes } from '../evidence/own/own-outcome.ts'
import { countUnits } from '../evidence/study.ts'
import { canonical, hashText } from '../journal/canonical.ts'
import { answer, type Outcome, refuse } from '../outcome/outcome.ts'

const days = z.int().nullable()
const number = z.int().min(1)

/** One operated ear as it is frozen: numbers that lead back to nobody, days since the operation, what was known. */
const row = z.strictObject({
  ear: number,
  animal: number,
  anaesthetic: number,
  species: z.enum(speciesList),
  procedure: z.enum(procedureIds),
  side: z.enum(sides),
  /** As the signed summary says it; missing where it was frozen before rows kept it, and then it is not known. */
  reason: z.enum(reasonGroups).default('not-recorded'),
  /** The longest time after which something is asked that had passed on the day it was looked at; no day of operation. */
  dueDays: z.int().min(0),
  diedAfterDays: days,
  followedForDays: days,
  tractAfterDays: days,
  blinkLostAfterDays: days,
  blinkBackAfterDays: days,
  blinkLookedAfterDays: days,
  /** A letter for each of the outcomes, in their order: y it happened, n it did not, s to the animal and of neither ear by itself, - not known. */
  known: z.string().regex(/^[yns-]*$/),
})
export type FrozenRow = z.infer<typeof row>

/** Results of one outcome in the order of the operations, without a row to each: 1 had it, 0 did not. */
const series = z.strictObject({
  species: z.enum(speciesList),
  procedure: z.enum(procedureIds),
  unit: z.enum(countUnits),
  outcome: z.enum(ownOutcomes),
  /** What the studies let expect, as a decimal; null where no study gives a share. */
  expected: z.string().nullable(),
  results: z.string().regex(/^[01]*$/),
})

const ruleNames = [
  'nerveFromHours',
  'earlyUntilDay',
  'woundFromDay',
  'recoveredFromDay',
  'lastingFromDay',
  'deathUntilDay',
  'yearFromDay',
  'deathWithinDays',
  'followedEnough',
  'shownFrom',
] as const
/** Rules that came later: a year that was frozen before has none. */
const laterRuleNames = ['yearLookFromDay'] as const
const value = z.int().min(0)

/**
 * The data of one yearly report, whole: with the method of its version and nothing else the report is made from it again.
 * No name, owner, chip, text, date of operation or id of ours stands in it. Fractions are decimals as text.
 */
const frozenYear = z.strictObject({
  format: z.literal(1),
  year: z.int().min(2000).max(2099),
  /** The day on which it was looked at what is known. */
  lookedAt: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
  method: z.string().min(1),
  /** What was asked of each ear; a later program may ask more. */
  outcomes: z.array(z.enum(ownOutcomes)).min(1),
  rules: z.strictObject({
    ...(Object.fromEntries(ruleNames.map((name) => [name, value])) as Record<(typeof ruleNames)[number], typeof value>),
    ...(Object.fromEntries(laterRuleNames.map((name) => [name, value.exactOptional()])) as Record<
      (typeof laterRuleNames)[number],
      z.ZodExactOptional<typeof value>
    >),
  }),
  watch: z.strictObject({
    ratio: z.string(),
    limit: z.string(),
    least: value,
    ahead: value,
    series: z.array(series),
  }),
  rows: z.array(row),
})
export type FrozenYear = z.infer<typeof frozenYear>
export type FrozenYearRefusal = { readonly because: 'other-bytes' | 'not-frozen-data' }

/**
 * The canonical text of frozen data (RFC 8785), and the hash it is kept under.
 *
 * @example frozenText(frozen).hash // 'a61e…'
 */
export function frozenText(frozen: FrozenYear): { readonly text: string; readonly hash: string } {
  const text = canonical(frozen)
  return { text, hash: hashText(text) }
}

/**
 * Frozen data read back. Refused where the bytes are not those of the hash, and where a field is missing or wrong.
 *
 * @example readFrozen(text, hash).kind // 'answer'
 */
export function readFrozen(text: string, hash: string): Outcome<FrozenYear, FrozenYearRefusal> {
  if (hashText(text) !== hash) return refuse({ because: 'other-bytes' })
  const read = frozenYear.safeParse(parsed(text))
  const isWhole = read.success && read.data.rows.every((row) => row.known.length === read.data.outcomes.length)
  return isWhole ? answer(read.data) : refuse({ because: 'not-frozen-data' })
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
