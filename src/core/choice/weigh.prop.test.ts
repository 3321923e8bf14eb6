import fc from 'fast-check'
import { expect, test } from 'vitest'
import { choiceContent } from '#content/choice/index.ts'
import { type EarFact, type EarFacts, earFactIds } from './ear-fact.ts'
import { toldIds } from './told-ids.ts'
import { weigh } from './weigh.ts'

const value = fc.constantFrom('yes', 'no', 'unknown')
const facts = fc.tuple(...earFactIds.map(() => value)).map((values) => asFacts(values))

function asFacts(values: readonly EarFact['value'][]): EarFacts {
  return Object.fromEntries(
    earFactIds.map((id, at) => [id, { value: values[at] ?? 'unknown', from: [], words: null }]),
  ) as unknown as EarFacts
}

const option = fc.constantFrom(...toldIds)

function spoken(id: (typeof toldIds)[number], of: EarFacts): string[] {
  const weighed = weigh(id, of, choiceContent.rules)
  return [...weighed.for, ...weighed.against].map(({ rule }) => rule)
}

test('Nothing known speaks neither for nor against any option', () => {
  const nothing = asFacts([])
  for (const id of toldIds) expect(spoken(id, nothing)).toEqual([])
})

test('To forget a fact never adds a reason: not assessed is missing, never for or against', () => {
  fc.assert(
    fc.property(option, facts, fc.constantFrom(...earFactIds), (id, all, forgotten) => {
      const less: EarFacts = { ...all, [forgotten]: { value: 'unknown', from: [], words: null } }
      const before = new Set(spoken(id, all))
      expect(spoken(id, less).filter((rule) => !before.has(rule))).toEqual([])
    }),
  )
})

test('What is said to be missing is unknown, and nothing stands twice', () => {
  fc.assert(
    fc.property(option, facts, (id, all) => {
      const weighed = weigh(id, all, choiceContent.rules)
      for (const { fact, known, hangs } of weighed.lacking) {
        expect(all[fact].value).toBe('unknown')
        expect(Math.min(known.length, hangs.length)).toBeGreaterThan(0)
      }
      const rules = [...weighed.for, ...weighed.against, ...weighed.asked].map(({ rule }) => rule)
      expect(new Set(rules).size).toBe(rules.length)
      expect(new Set(weighed.lacking.map(({ fact }) => fact)).size).toBe(weighed.lacking.length)
    }),
  )
})
