import type { Side } from '#core/animal/species.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { addDays, dayOf, startOfDay } from '#core/time/calendar-day.ts'
import type { LateSign } from './late-sign-names.ts'

export type LateEventWhat = BodyOf<'late-event'>['what']

/** What a person says of the ears that were offered; null while nobody has said anything. */
export type LateAnswer = {
  readonly belongs: 'operated-ear' | 'none' | 'unsure' | null
  /** The operation of the ear that was chosen. */
  readonly operation: string | null
  /** What is written down at that ear; null: what the plainest sign that was heard is called there. */
  readonly what: LateEventWhat | null
  readonly because: string
}

export const nothingSaidOfEars: LateAnswer = { belongs: null, operation: null, what: null, because: '' }

/** An ear as it was offered, with the words that were shown beside it. */
export type OfferedEar = {
  readonly stream: string
  readonly animal: string
  readonly operation: string
  readonly side: Side
  readonly on: string
  readonly words: string
}

const eventOf = {
  'draining-tract': 'draining-tract',
  abscess: 'abscess',
  swelling: 'swelling',
  'jaw-pain': 'jaw-pain',
  'ear-pain': 'other',
  complaint: 'other',
} as const satisfies Record<LateSign, LateEventWhat>

/** What a late event is called by what was heard: the plainest sign. Example: `whatOfSigns(['swelling']) // 'swelling'`. */
export function whatOfSigns(signs: readonly LateSign[]): LateEventWhat {
  const [first] = signs
  return first === undefined ? 'other' : eventOf[first]
}

/**
 * The answer as it counts for the ears that are offered now: an ear that is not among them any more was not chosen.
 *
 * @example standingAnswer(answer, ears)?.belongs // null while the person has not chosen
 */
export function standingAnswer(answer: LateAnswer, ears: readonly Pick<OfferedEar, 'operation'>[]): LateAnswer {
  const gone = answer.belongs === 'operated-ear' && !ears.some(({ operation }) => operation === answer.operation)
  return gone ? { ...answer, belongs: null, operation: null } : answer
}

type Telling = {
  /** When it was told, where the clinic is. */
  readonly at: string
  readonly zone: string
  /** For how long it had been there; null when nobody said. */
  readonly daysOfSigns: number | null
  readonly seenBy: BodyOf<'late-event'>['seenBy']
  readonly text: string
}

/**
 * The late event at the ear that was chosen. First seen so long before the telling as was said; where that would lie
 * before the operation, on the day it was told. What it needs nobody has decided yet.
 *
 * @example lateEventAt(ear, 'draining-tract', { at: now, zone, daysOfSigns: 21, seenBy: 'owner', text }).firstSeen
 */
export function lateEventAt(
  { operation, on }: Pick<OfferedEar, 'operation' | 'on'>,
  what: LateEventWhat,
  { at, zone, daysOfSigns, seenBy, text }: Telling,
): BodyOf<'late-event'> {
  const told = dayOf({ at, zone })
  const since = addDays(told, -(daysOfSigns ?? 0))
  const day = since > on ? since : told
  return {
    what,
    operation,
    firstSeen: { at: startOfDay(day, zone), zone, precision: 'day', by: 'person' },
    seenBy,
    needed: 'not-decided',
    text: text.slice(0, 10_000),
  }
}

/** What was said of a late sign: the answer with everything that was offered, or that nobody could look. */
export function lateSignSaid(
  told: string,
  signs: readonly LateSign[],
  said:
    | { readonly kind: 'not-looked' }
    | {
        readonly kind: 'answered'
        readonly answer: LateAnswer
        readonly ears: readonly OfferedEar[]
        readonly event: string | null
      },
): BodyOf<'late-sign'> {
  const base = { told, signs: [...signs] }
  if (said.kind === 'not-looked') return { ...base, belongs: 'not-looked', offered: [], chosen: null, because: null }
  const { answer, ears, event } = said
  if (answer.belongs === null) throw new Error('Nobody said to which ear the sign belongs.')
  const ear =
    answer.belongs === 'operated-ear' ? ears.find(({ operation }) => operation === answer.operation) : undefined
  const because = answer.because.trim()
  return {
    ...base,
    belongs: answer.belongs,
    offered: ears.map(({ stream, operation, side, on, words }) => ({
      file: stream,
      operation,
      side,
      operated: on,
      words,
    })),
    chosen: ear && event ? { file: ear.stream, operation: ear.operation, side: ear.side, event } : null,
    because: because === '' ? null : because.slice(0, 300),
  }
}
