import { describe, expect, it } from 'vitest'
import { choiceContent } from '#content/choice/index.ts'
import { formulary } from '#content/formulary/index.ts'
import type { ChoiceContent } from '#core/choice/choice-rule.ts'
import { toldIds } from '#core/choice/told-ids.ts'

const { rules, routes, steroids }: ChoiceContent = choiceContent

describe('the published reasons of a choice', () => {
  it('are named once each, and every option has some', () => {
    const ids = rules.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const option of toldIds) expect(rules.some(({ options }) => options.includes(option))).toBe(true)
  })

  it('are whole sentences that never say what to do', () => {
    const texts = [
      ...rules.map(({ text }) => text.value),
      ...routes.flatMap(({ because, steps }) => [because.value, ...steps.map(({ text }) => text.value)]),
    ]
    for (const text of texts) {
      expect(text).toMatch(/^\p{Lu}.*\.$/u)
      expect(text).not.toMatch(/operate: yes|should be operated|best option|recommended|score|rank/i)
    }
  })

  it('rest on a condition, save what a person has to ask', () => {
    for (const { id, when, says } of rules) {
      if (when.length === 0) expect([id, says]).toEqual([id, 'missing'])
    }
  })

  it('count every corticosteroid of the formulary as a steroid', () => {
    const known = formulary.filter((drug) => drug.class.startsWith('corticosteroid')).map(({ id }) => id)
    expect([...known].sort()).toEqual([...steroids].sort())
  })

  it('have a route for each thing that takes its own way', () => {
    expect(routes.map(({ id }) => id)).toEqual([
      'mass',
      'cholesteatoma',
      'abscess',
      're-operation',
      'injury',
      'nerve-signs',
      'both-ears',
      'skin',
    ])
  })
})
