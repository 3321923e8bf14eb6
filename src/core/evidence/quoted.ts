import type { ProcedureId } from '../animal/procedure.ts'
import type { Species } from '../animal/species.ts'
import { fill } from '../outcome/finding.ts'
import type { OutcomeCode } from './outcome-code.ts'
import type { Sourced } from './sourced.ts'

/** What reviews and textbooks quote of one outcome, out of 100, without saying who was counted. Never pooled, never a middle. */
export type Quoted = Sourced<{ readonly low: number; readonly high: number }> & {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly outcome: OutcomeCode
}

export type QuotedWording = {
  /** The name of an outcome that no study counted, with what is quoted of it. */
  readonly beside: string
  /** The same as a sentence of its own. */
  readonly sentence: string
  readonly span: string
  readonly alone: string
  readonly or: string
}

/** What is quoted of one outcome; asked for only where no study answers. */
export function quotedFor(
  question: { readonly species: Species; readonly procedure: string; readonly outcome: OutcomeCode },
  all: readonly Quoted[],
): readonly Quoted[] {
  return all.filter(
    ({ species, procedure, outcome }) =>
      species === question.species && procedure === question.procedure && outcome === question.outcome,
  )
}

/**
 * The name of an outcome that no study counted, and beside it what reviews quote, marked as that.
 *
 * @example sayUncounted('a weak face that stayed', quoted, words)
 */
export function sayUncounted(name: string, quoted: readonly Quoted[], words: QuotedWording): string {
  return quoted.length === 0 ? name : fill(words.beside, { name, spans: spansOf(quoted, words) })
}

/** What reviews quote, as a sentence; none where nothing is quoted. */
export function sayQuoted(quoted: readonly Quoted[], words: QuotedWording): string[] {
  return quoted.length === 0 ? [] : [fill(words.sentence, { spans: spansOf(quoted, words) })]
}

function spansOf(quoted: readonly Quoted[], words: QuotedWording): string {
  const spans = quoted.map(({ value: { low, high } }) =>
    fill(low === high ? words.alone : words.span, { low: String(low), high: String(high) }),
  )
  return [...new Set(spans)].join(words.or)
}
