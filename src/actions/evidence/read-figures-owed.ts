import { z } from 'zod'
import { figuresRules } from '#content/follow-up/figures-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { countUnitNames, ownOutcomeNames } from '#content/wording/own-figures.ts'
import { dueDays, type OwnCount } from '#core/evidence/own/count-own.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { type OwnCountingRules, ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { publishedFor } from '#core/evidence/published.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { type ChangedFigure, type FiguresOwed, owedFigures } from '#core/owed/figures.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { addDays } from '#core/time/calendar-day.ts'
import { publishedEvidence } from '#documents/case/evidence-of.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { countsOf, operatedHere } from './read-own-figures.ts'

const words = resultsInEnglish.owed

const output = z.object({
  asOf: z.string(),
  owed: z.array(
    z.object({
      stream: z.literal('clinic'),
      id: z.string(),
      what: z.string(),
      who: z.literal('surgeon'),
      dueFrom: z.string(),
      dueBy: z.string(),
      why: z.string(),
      sources: z.array(z.string()),
      name: z.literal(''),
      species: z.literal(''),
    }),
  ),
})
export type FiguresOwedAnswer = z.infer<typeof output>

/**
 * Where our own counts are others than those a person looked at last. Worked out for the reader and kept in no list: an
 * ear comes to be counted by the passing of a day, with no entry that says so.
 */
export const readFiguresOwed = defineAction({
  name: 'read-figures-owed',
  summary: 'For which operations somebody is owed to look at what owners read, because our own counts changed.',
  input: z.strictObject({}),
  output,
  may: 'signed-in',
  run: async (_, world): Promise<FiguresOwedAnswer> => {
    const { clinic } = callerIn(world)
    const { store, clock } = world
    const { ears, today, zone, house, rules } = await operatedHere(clinic, world)
    const late = await store.ofKinds(clinic, ['late-event'])
    const counts = countsOf(ears, today, rules)
    const owed = groupsIn(counts).flatMap(({ species, procedure }) => {
      const some = ears.filter((ear) => ear.species === species && ear.procedure === procedure)
      const found = owedFigures({
        species,
        procedure,
        counts: counts.filter(({ question }) => question.species === species && question.procedure === procedure),
        isTold,
        lateEvents: receivedFor(some, late),
        dueDays: dueDaysOf(some, rules),
        today,
        zone,
        house,
        rules: figuresRules,
      })
      return found ? [rowOf(found)] : []
    })
    return { asOf: clock.now(), owed }
  },
})

function groupsIn(counts: readonly OwnCount[]) {
  const keys = new Map(counts.map(({ question }) => [`${question.species} ${question.procedure}`, question]))
  return [...keys.values()]
}

/** Owners hear of the named risks: by ears always, by animals and operations where a study counted those. */
function isTold(question: OwnCount['question']): boolean {
  const { risks } = procedureNamed(question.procedure, procedures)
  if (!risks.some(({ outcome }) => outcome === question.outcome)) return false
  return question.unit === 'ear' || publishedFor(question, publishedEvidence.studies).kind !== 'unknown'
}

function receivedFor(ears: readonly OperatedEar[], late: readonly StoredEntry[]): string[] {
  const operations = new Set(ears.map(({ operation }) => operation))
  return late
    .filter(({ body }) => operations.has(String((body as { readonly operation?: unknown } | null)?.operation)))
    .map(({ envelope }) => envelope.receivedAt)
}

function dueDaysOf(ears: readonly OperatedEar[], rules: OwnCountingRules): string[] {
  return ears.flatMap(({ on }) => ownOutcomes.map((outcome) => addDays(on, dueDays(outcome, rules))))
}

/** A few changes are enough in a list: the page of our results holds the sentences. */
const saidAtOnce = 2

function rowOf(found: FiguresOwed): FiguresOwedAnswer['owed'][number] {
  const { species, procedure, dueFrom, dueBy, because, changed, fact } = found
  const about = {
    animals: resultsInEnglish.animals[species].toLowerCase(),
    procedure: namesInEnglish.procedures[procedure],
  }
  // By ears first, and what a late event changed before all else.
  const order = [...changed].sort((a, b) => rankOf(a) - rankOf(b))
  const more = order.length - saidAtOnce
  return {
    stream: 'clinic',
    id: `figures-to-approve:${species}:${procedure}`,
    what: fill(words.what, about),
    who: 'surgeon',
    dueFrom,
    dueBy,
    why: [
      words.because[because],
      ...order.slice(0, saidAtOnce).map(sayChange),
      ...(more > 0 ? [sayCount(words.more, more)] : []),
    ].join(' '),
    sources: [...fact.sources],
    name: '',
    species: '',
  }
}

function rankOf({ outcome, unit }: ChangedFigure): number {
  return (outcome === 'deep_recurrence' ? 0 : 10) + (unit === 'ear' ? 0 : 1)
}

function sayChange({ outcome, unit, before, after }: ChangedFigure): string {
  const say = (count: ChangedFigure['before']) =>
    count === null ? words.nothing : fill(words.count, { events: String(count.events), total: String(count.total) })
  const about = { outcome: ownOutcomeNames[outcome], unit: countUnitNames[unit] }
  return fill(words.change, { ...about, before: say(before), after: say(after) })
}
