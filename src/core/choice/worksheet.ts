import type { Side } from '#core/animal/species.ts'
import { sides } from '#core/animal/species.ts'
import { affectedEars } from '#core/chapters/ears.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { Case } from '#core/journal/fold.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import type { ChoiceContent, ChoiceRoute } from './choice-rule.ts'
import type { EarFactId, EarFacts } from './ear-fact.ts'
import { earFactsOf } from './ear-facts-of.ts'
import type { ChoiceOption, ToldId } from './option.ts'
import { optionNamed } from './told.ts'
import { sessionIds } from './told-ids.ts'
import { stateOf, type Weighed, weigh } from './weigh.ts'

/** A way that is open for this ear, with each step: on record, missing, or for a person to see to. */
export type OpenRoute = {
  readonly id: string
  readonly because: Sourced<string>
  readonly from: readonly string[]
  readonly words: readonly string[]
  readonly steps: readonly {
    readonly id: string
    readonly text: Sourced<string>
    readonly state: 'on-record' | 'missing' | 'for-a-person'
    readonly fact: EarFactId | null
    readonly from: readonly string[]
  }[]
}

export type EarSheet = {
  readonly side: Side
  readonly facts: EarFacts
  readonly routes: readonly OpenRoute[]
  /** In the order in which options are always told: no sum, no rank. */
  readonly options: readonly Weighed[]
}

/**
 * The worksheet of the ears a case is about; of both while nobody has said which. It weighs nothing against anything:
 * for each option what speaks for it, against it, and what is missing.
 *
 * @example worksheetOf(file.theCase, { content: choiceContent, options }).map(({ side }) => side) // ['LEFT']
 */
export function worksheetOf(
  theCase: Case,
  { content, options }: { readonly content: ChoiceContent; readonly options: readonly ChoiceOption[] },
): EarSheet[] {
  const affected = affectedEars(theCase)
  return (affected.length > 0 ? affected : sides).map((side) => {
    const facts = earFactsOf(theCase, side, content)
    const both = facts['both-ears-ill'].value === 'no' ? [] : sessionIds
    const told = [...optionIds, ...both].filter((id) => isFor(optionNamed(id, options), facts))
    return {
      side,
      facts,
      routes: content.routes.flatMap((route) => openRoute(route, facts)),
      options: told.map((id: ToldId) => weigh(id, facts, content.rules)),
    }
  })
}

/** While nobody knows the species, nothing is left out. */
function isFor({ species }: ChoiceOption, facts: EarFacts): boolean {
  const { value } = facts.cat
  return value === 'unknown' || species.includes(value === 'yes' ? 'cat' : 'dog')
}

function openRoute({ id, anyOf, because, steps }: ChoiceRoute, facts: EarFacts): OpenRoute[] {
  const opening = anyOf.filter((group) => group.every((one) => stateOf(one, facts) === 'holds')).flat()
  if (opening.length === 0) return []
  return [
    {
      id,
      because,
      from: [...new Set(opening.flatMap(({ fact }) => facts[fact].from))],
      words: [...new Set(opening.flatMap(({ fact }) => facts[fact].words ?? []))],
      steps: steps
        .filter(({ when }) => !when || stateOf(when, facts) !== 'fails')
        .map(({ id: step, text, settled }) => ({ id: step, text, fact: settled, ...stepState(settled, facts) })),
    },
  ]
}

function stepState(settled: EarFactId | null, facts: EarFacts) {
  if (settled === null) return { state: 'for-a-person', from: [] } as const
  const { value, from } = facts[settled]
  // That a sign was looked for and is absent settles a step as well as its presence; a paper that is not there does not.
  const isThere = value === 'yes' || (value === 'no' && !paperFacts.has(settled))
  return { state: isThere ? 'on-record' : 'missing', from } as const
}

const paperFacts: ReadonlySet<EarFactId> = new Set([
  'advanced-imaging',
  'tissue-result',
  'node-result',
  'culture-result',
  'cytology-read',
  'session-decided',
  'skin-treated',
])
