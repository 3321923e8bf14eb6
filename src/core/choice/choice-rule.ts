import type { Sourced } from '#core/evidence/sourced.ts'
import type { EarFactId } from './ear-fact.ts'
import type { ToldId } from './option.ts'

export type Condition = { readonly fact: EarFactId; readonly is: 'yes' | 'no' }

/**
 * One published reason. It speaks when all conditions hold, is silent when one does not, and while one of them is not
 * known it says what is missing. `missing` rules speak only of what nobody can read from findings.
 */
export type ChoiceRule = {
  readonly id: string
  readonly options: readonly ToldId[]
  readonly when: readonly Condition[]
  readonly says: 'for' | 'against' | 'missing'
  readonly text: Sourced<string>
}

/** One step of a route: on record once its fact is there; a step without a fact is for a person to see to. */
export type RouteStep = {
  readonly id: string
  readonly settled: EarFactId | null
  /** Left out where it is known not to hold: what concerns cats is not told of a dog. */
  readonly when?: Condition
  readonly text: Sourced<string>
}

/** What takes its own way before any option is weighed: a mass, an abscess, an ear that was operated before. */
export type ChoiceRoute = {
  readonly id: string
  /** Any one of these groups opens the route. */
  readonly anyOf: readonly (readonly Condition[])[]
  readonly because: Sourced<string>
  readonly steps: readonly RouteStep[]
}

export type ChoiceContent = {
  readonly rules: readonly ChoiceRule[]
  readonly routes: readonly ChoiceRoute[]
  /** Ids of the medicines that count as a steroid. */
  readonly steroids: readonly string[]
  /** Breed names, in small letters, that the sources mean by Cocker Spaniel. */
  readonly cockers: readonly string[]
}
