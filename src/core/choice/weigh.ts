import type { ChoiceRule, Condition } from './choice-rule.ts'
import { askedTogether, type EarFactId, type EarFacts, onlyWhenWritten, presupposes } from './ear-fact.ts'
import type { KnownBy, ToldId } from './option.ts'

/** A published reason that holds for this ear, and the entries it was read from. */
export type Reason = {
  readonly rule: string
  readonly text: string
  readonly known: KnownBy
  readonly from: readonly string[]
  /** What an entry says in words where the rule rests on words: a person judges it. */
  readonly words: readonly string[]
}

/** Something not on record that a published reason waits for, and what hangs on it. */
export type Lacking = { readonly fact: EarFactId; readonly known: KnownBy; readonly hangs: readonly string[] }

/** One option for one ear. No sum, no rank: what speaks for it, what against, what nobody knows yet. */
export type Weighed = {
  readonly option: ToldId
  readonly for: readonly Reason[]
  readonly against: readonly Reason[]
  readonly lacking: readonly Lacking[]
  /** What no finding can say and a person has to ask. */
  readonly asked: readonly Reason[]
}

/**
 * What the published reasons say of an option, given what is known of the ear. What is not known is only ever missing.
 *
 * @example weigh('teca-lbo', facts, rules).lacking.map(({ fact }) => fact) // ['bulla-filled', …]
 */
export function weigh(option: ToldId, facts: EarFacts, rules: readonly ChoiceRule[]): Weighed {
  const own = rules.filter(({ options }) => options.includes(option))
  const speaking = own.filter(({ when }) => when.every((one) => stateOf(one, facts) === 'holds'))
  const waiting = own.filter(({ when }) => isWaiting(when, facts))
  const of = (says: ChoiceRule['says']) => speaking.filter((rule) => rule.says === says).map(reasonOf(facts))
  return { option, for: of('for'), against: of('against'), asked: of('missing'), lacking: lackingOf(waiting, facts) }
}

/** Whether a condition holds, fails, or nobody can say. */
export function stateOf({ fact, is }: Condition, facts: EarFacts): 'holds' | 'fails' | 'unknown' {
  const { value } = facts[fact]
  if (value === 'unknown') return 'unknown'
  return value === is ? 'holds' : 'fails'
}

function reasonOf(facts: EarFacts) {
  return ({ id, text, when }: ChoiceRule): Reason => ({
    rule: id,
    text: text.value,
    known: [text],
    from: [...new Set(when.flatMap(({ fact }) => facts[fact].from))],
    words: [...new Set(when.flatMap(({ fact }) => facts[fact].words ?? []))],
  })
}

/** Whether a rule waits for something: nothing speaks against it yet, and what is unknown is still a question. */
function isWaiting(when: readonly Condition[], facts: EarFacts): boolean {
  const open = when.filter((one) => stateOf(one, facts) === 'unknown')
  if (open.length === 0 || when.some((one) => stateOf(one, facts) === 'fails')) return false
  return facts['history-taken'].value === 'unknown' || !open.some(({ fact }) => onlyWhenWritten.has(fact))
}

/** Each missing fact once, with everything that waits for it; the place of a mass is asked once there is one. */
function lackingOf(waiting: readonly ChoiceRule[], facts: EarFacts): Lacking[] {
  const asks = waiting.flatMap((rule) =>
    rule.when
      .filter((one) => stateOf(one, facts) === 'unknown' && isDue(one.fact, facts))
      .map(({ fact }) => ({ fact: askedAs(fact, facts), rule })),
  )
  return [...new Set(asks.map(({ fact }) => fact))].map((fact) => {
    const own = [...new Set(asks.filter((ask) => ask.fact === fact).map(({ rule }) => rule))]
    return { fact, known: own.map(({ text }) => text), hangs: [...new Set(own.map(({ text }) => text.value))] }
  })
}

function isDue(fact: EarFactId, facts: EarFacts): boolean {
  const first = presupposes[fact]
  return first === undefined || facts[first].value === 'yes'
}

function askedAs(fact: EarFactId, facts: EarFacts): EarFactId {
  const together = askedTogether[fact]
  return together !== undefined && facts[together].value === 'unknown' ? together : fact
}
