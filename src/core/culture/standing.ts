import { never } from '#core/outcome/outcome.ts'
import type { Edition } from './breakpoint.ts'
import { printedCategory } from './printed-value.ts'
import type { Category, ChangedBy, DrugReading } from './reading.ts'

/** How a drug stands against one isolate. `doubt`: this report cannot say; nobody may guess from it. */
export type Standing = 'works' | 'works-at-dose' | 'doubt' | 'fails'

/** Why it stands so; content/wording holds the sentence of each. */
export const standingCodes = [
  'susceptible',
  'inferred-susceptible',
  'susceptible-at-dose',
  'dose-not-known',
  'increased-exposure',
  'susceptible-at-some-dose',
  'not-interpretable',
  'fallback-susceptible',
  'fallback-not-susceptible',
  'laboratory-says-resistant',
  'laboratory-susceptible',
  'laboratory-intermediate',
  'laboratory-resistant',
  'd-test-missing',
  'esbl-suspected',
  'same-drug-differs',
  'methicillin-possible',
  'susceptible-not-to-be-reported',
  'value-unread',
  'no-breakpoint',
  'not-tested',
  'organism-unknown',
  'intermediate',
  'not-susceptible',
  'non-susceptible',
  'resistant',
  'resistant-methicillin-resistance',
  'resistant-intrinsic',
  'resistant-inducible',
  'resistant-inferred',
  'resistant-beta-lactamase',
  'resistant-esbl',
] as const
export type StandingCode = (typeof standingCodes)[number]

export type Stood = { readonly standing: Standing; readonly because: StandingCode }

const works = (because: StandingCode): Stood => ({ standing: 'works', because })
const doubt = (because: StandingCode): Stood => ({ standing: 'doubt', because })
const fails = (because: StandingCode): Stood => ({ standing: 'fails', because })

/**
 * Whether one reading lets a drug be used against its isolate. A human or other-host row, a laboratory's word without a
 * number and a censored value stay doubts: they are said, and never become a yes.
 *
 * @example standingOf({ ...reading, category: 'NI', possible: ['I', 'R'] }, editions).because // 'not-susceptible'
 */
export function standingOf(
  reading: DrugReading | undefined,
  editions: readonly Pick<Edition, 'id' | 'convention'>[],
): Stood {
  if (!reading) return doubt('not-tested')
  if (reading.flags.includes('laboratory-category-only') && reading.changedBy === null) return ofLaboratory(reading)
  if (reading.flags.includes('not-to-be-reported-susceptible')) return fails('susceptible-not-to-be-reported')
  const kept = keptBack.find((flag) => reading.flags.includes(flag))
  if (kept && (reading.category === 'S' || reading.category === 'SDD')) return doubt(kept)
  switch (reading.category) {
    case 'S':
      if (printedCategory(reading.laboratory) === 'R') return doubt('laboratory-says-resistant')
      return works(reading.changedBy === 'inferred' ? 'inferred-susceptible' : 'susceptible')
    case 'SDD':
      if (printedCategory(reading.laboratory) === 'R') return doubt('laboratory-says-resistant')
      if (!reading.breakpoint?.dose) return doubt('dose-not-known')
      return { standing: 'works-at-dose', because: 'susceptible-at-dose' }
    case 'I':
      // EUCAST's I is susceptible at an exposure that is known for people only; CLSI's is a zone of doubt.
      return conventionOf(reading, editions) === 'EUCAST' ? doubt('increased-exposure') : fails('intermediate')
    case 'NS':
      return fails('non-susceptible')
    case 'R':
      return fails(becauseOfR(reading.changedBy))
    case 'NI':
      return reading.flags.includes('value-unreadable') ? doubt('value-unread') : ofPossible(reading.possible)
    case 'no_breakpoint':
      return withoutBreakpoint(reading)
    default:
      return never(reading.category)
  }
}

/** What an isolate says against a drug that its own number calls susceptible. */
const keptBack = [
  'd-test-missing',
  'esbl-suspected',
  'methicillin-possible',
  'same-drug-differs',
] as const satisfies readonly StandingCode[]

function conventionOf({ breakpoint }: DrugReading, editions: readonly Pick<Edition, 'id' | 'convention'>[]) {
  return editions.find(({ id }) => id === breakpoint?.edition)?.convention
}

function becauseOfR(changedBy: ChangedBy | null): StandingCode {
  return changedBy === null ? 'resistant' : `resistant-${changedBy}`
}

const notSusceptible: readonly Category[] = ['I', 'R', 'NS']
const atSomeDose: readonly Category[] = ['S', 'SDD']

function ofPossible(possible: readonly Category[]): Stood {
  if (possible.length > 0 && possible.every((one) => notSusceptible.includes(one))) return fails('not-susceptible')
  if (possible.length > 0 && possible.every((one) => atSomeDose.includes(one))) return doubt('susceptible-at-some-dose')
  return doubt('not-interpretable')
}

/** A human row, or one of another species, says something beside the answer and never is the answer. */
function withoutBreakpoint(reading: DrugReading): Stood {
  const { fallback } = reading
  if (printedCategory(reading.laboratory) === 'R') return fails('laboratory-resistant')
  if (fallback && fallback.category !== 'NI' && fallback.category !== 'no_breakpoint') {
    return doubt(fallback.category === 'S' ? 'fallback-susceptible' : 'fallback-not-susceptible')
  }
  return reading.laboratory === null || reading.laboratory.trim() === ''
    ? doubt('no-breakpoint')
    : ofLaboratory(reading)
}

/** The word of a laboratory without a number that anybody could compare. */
function ofLaboratory(reading: DrugReading): Stood {
  switch (printedCategory(reading.laboratory)) {
    case 'R':
    case 'NS':
      return fails('laboratory-resistant')
    case 'S':
      return doubt('laboratory-susceptible')
    case 'I':
    case 'SDD':
      return doubt('laboratory-intermediate')
    default:
      return doubt('no-breakpoint')
  }
}
