import type { Known, Provenance } from '#core/evidence/sourced.ts'
import { type Finding, fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { type Decimal, plain } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { unitBeside } from '#core/units/unit-words.ts'
import type { WhyInputName, WhySentence } from './why-codes.ts'

/** One sentence of a why, as code and values; content says it. */
export type WhySaid = { readonly code: WhySentence; readonly about: Readonly<Record<string, string>> }

/** Something that went into the number: what it is, its value, the entry or the source it came from. */
export type WhyInput = {
  readonly name: WhyInputName
  /** A finer name where one is not enough: a drug, a study, a sign. */
  readonly of: string | null
  readonly value: string
  readonly line: string | null
  readonly fact: Provenance | null
}

/** A choice of this house that stands behind the number. */
export type WhyPolicy = {
  readonly name: string
  readonly value: string
  /** Id in the people register, or a name already. */
  readonly by: string
  /** `2026-03-01`. */
  readonly on: string
  readonly because: string
}

/** Why a clinical number is what it is: the same shape for every number, made from what the engines answer. */
export type Why = {
  readonly title: WhySaid
  readonly inputs: readonly WhyInput[]
  /** The formula, step by step, with the numbers in it. */
  readonly formula: readonly WhySaid[]
  readonly result: WhySaid
  /** What else belongs beside the number. */
  readonly notes: readonly WhySaid[]
  readonly findings: readonly Finding[]
  readonly facts: readonly Provenance[]
  /** The least sure way in which any of the facts is known; null where the number rests on no fact. */
  readonly known: Known | null
  readonly policy: WhyPolicy | null
}

type Parts = Pick<Why, 'title' | 'result'> & Partial<Omit<Why, 'known'>>

/** Fills in what a number does not have. Facts of the inputs count too, each once. */
export function why(parts: Parts): Why {
  const { inputs = [], formula = [], notes = [], findings = [], facts = [], policy = null, ...rest } = parts
  const all = [...new Map([...facts, ...inputs.flatMap(({ fact }) => fact ?? [])].map(factOnce)).values()]
  return { ...rest, inputs, formula, notes, findings, policy, facts: all, known: leastSure(all) }
}

/** The provenance alone, keyed by its content. */
function factOnce(fact: Provenance): readonly [string, Provenance] {
  const { sources, where, known, strength, confidence, checked } = fact
  const own: Provenance = { sources, known, strength, confidence, checked, ...(where === undefined ? {} : { where }) }
  return [JSON.stringify([sources, where ?? null, known, strength, confidence]), own]
}

const surest: readonly Known[] = ['read', 'remembered', 'common-practice', 'house']

function leastSure(facts: readonly Provenance[]): Known | null {
  return facts.reduce<Known | null>(
    (least, { known }) => (least === null || surest.indexOf(known) > surest.indexOf(least) ? known : least),
    null,
  )
}

export function said(code: WhySentence, about: Readonly<Record<string, string>> = {}): WhySaid {
  return { code, about }
}

export function input(
  name: WhyInputName,
  value: string,
  from: Partial<Omit<WhyInput, 'name' | 'value'>> = {},
): WhyInput {
  return { name, value, of: null, line: null, fact: null, ...from }
}

/** A quantity in words, exact up to eight digits. Example: `sayAmount(quantity('55.2', 'mg')) // '55.2 mg'`. */
export function sayAmount({ value, unit }: { readonly value: Decimal; readonly unit: Unit }): string {
  return `${plain(value.toSignificantDigits(8))} ${unitBeside(value, unit)}`
}

export type WhyWording = {
  readonly inputs: Readonly<Record<WhyInputName, string>>
  readonly sentences: Readonly<Record<WhySentence, string>>
  readonly policy: string
  /** Words for codes that stand as values. */
  readonly codes: Readonly<Record<string, string>>
}

export type SaidWhy = {
  readonly title: string
  readonly inputs: readonly { readonly name: string; readonly value: string; readonly input: WhyInput }[]
  readonly formula: readonly string[]
  readonly result: string
  readonly notes: readonly string[]
  readonly policy: string | null
}

/**
 * A why in the sentences of one language. Codes are said in words; the person behind a policy by the name given.
 *
 * @example sayWhy(whyOtis3(findings, 'dog', otis3CutOffs), whyInEnglish).result // '11 of 12'
 */
export function sayWhy(
  one: Why,
  wording: WhyWording,
  nameOf: (person: string) => string = (person) => person,
): SaidWhy {
  const word = (value: string) => wording.codes[value] ?? value
  const say = ({ code, about }: WhySaid) =>
    fill(wording.sentences[code], Object.fromEntries(Object.entries(about).map(([key, value]) => [key, word(value)])))
  const { policy } = one
  return {
    title: say(one.title),
    inputs: one.inputs.map((each) => ({
      name: each.of === null ? wording.inputs[each.name] : `${wording.inputs[each.name]}: ${word(each.of)}`,
      value: word(each.value),
      input: each,
    })),
    formula: one.formula.map(say),
    result: say(one.result),
    notes: one.notes.map(say),
    policy: policy && fill(wording.policy, { ...policy, by: nameOf(policy.by), on: sayCalendarDay(policy.on) }),
  }
}
