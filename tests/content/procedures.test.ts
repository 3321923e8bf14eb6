import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { outcomeDefinitions } from '#content/outcomes/outcome-definitions.ts'
import { procedures } from '#content/procedures/index.ts'
import { sources } from '#content/sources/index.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { theatreStamp } from '#core/journal/kinds/theatre-stamp.ts'
import type { Checkpoint, Procedure } from '#core/procedures/procedure.ts'
import { stampSentences } from '#core/procedures/stamp-sentences.ts'

const all: readonly Procedure[] = procedures
const known = new Set<string>(sources.map(({ id }) => id))

/** Every fact with sources anywhere inside a piece of content. */
function factsIn(value: unknown): { readonly sources: readonly string[] }[] {
  if (Array.isArray(value)) return value.flatMap(factsIn)
  if (typeof value !== 'object' || value === null) return []
  const own = 'sources' in value && Array.isArray(value.sources) ? [value as { sources: string[] }] : []
  return [...own, ...Object.values(value).flatMap(factsIn)]
}

describe('procedures', () => {
  it('are all there, once', () => {
    expect(all.map(({ id }) => id).sort()).toEqual([...procedureIds].sort())
  })

  it.each(all.map((one) => [one.id, one] as const))('%s: every fact names sources that exist', (_, one) => {
    const facts = factsIn(one)
    expect(facts.length).toBeGreaterThan(5)
    for (const fact of facts) {
      expect(fact.sources.length).toBeGreaterThan(0)
      for (const id of fact.sources) expect(known).toContain(id)
    }
  })

  it.each(all.map((one) => [one.id, one] as const))('%s: every risk is an outcome that is counted', (_, one) => {
    expect(one.risks.length).toBeGreaterThan(0)
    for (const { outcome } of one.risks) expect(Object.keys(outcomeDefinitions)).toContain(outcome)
  })

  it('of TECA-LBO have the fifteen checkpoints K1 to K15 in order (job notes, S16)', () => {
    const numbers = (all.find(({ id }) => id === 'teca-lbo')?.checkpoints ?? []).map(({ id }) => id.split('-')[0])
    expect(numbers).toEqual(Array.from({ length: 15 }, (_, index) => `k${index + 1}`))
  })
})

describe('checkpoints', () => {
  const checkpoints: readonly Checkpoint[] = all.flatMap((one) => one.checkpoints)

  it('have ids that a stamp can carry, once in their procedure', () => {
    for (const one of all) {
      const ids = one.checkpoints.map(({ id }) => id)
      expect(new Set(ids).size).toBe(ids.length)
    }
    for (const { id, details } of checkpoints) {
      const detail = Object.fromEntries(details.map((one) => [one.id, 'x']))
      expect(theatreStamp.body.safeParse({ checkpoint: id, answer: 'done', detail, text: null }).success).toBe(true)
    }
  })

  it('draft whole sentences from every coded answer', () => {
    for (const checkpoint of checkpoints) {
      for (const detail of checkpoint.details) {
        const answers = detail.kind === 'coded' ? Object.keys(detail.answers) : ['5']
        for (const answer of answers) {
          const said = stampSentences(checkpoint, { answer: 'done', detail: { [detail.id]: answer }, text: null })
          expect(said).toHaveLength(1)
          expect(said[0]).toMatch(/^\p{Lu}.*\.$/u)
          expect(said[0]).not.toMatch(/[{}“]/)
        }
      }
      expect(checkpoint.done).toMatch(/^\p{Lu}.*\.$/u)
    }
  })

  it('give the reason when something was not done, and never invent one', () => {
    for (const checkpoint of checkpoints) {
      const stamp = { answer: 'not-done', detail: {} } as const
      expect(stampSentences(checkpoint, { ...stamp, text: 'the vein bled' })[0]).toContain('the vein bled')
      expect(stampSentences(checkpoint, { ...stamp, text: null })[0]).toContain('no reason was written down')
    }
  })

  it('quote an answer outside the list instead of dropping it', () => {
    const k1 = checkpoints.find(({ id }) => id === 'k1-skin') as Checkpoint
    const said = stampSentences(k1, { answer: 'done', detail: { cut: 'zigzag', laser: 'yes' }, text: 'Quick.' })
    expect(said).toEqual(['Skin cut “zigzag”.', 'laser: “yes”.', 'Quick.'])
  })
})

describe('the rules of what is owed', () => {
  it('name sources that exist', () => {
    const facts = factsIn(owedRules)
    expect(facts.length).toBeGreaterThan(15)
    for (const fact of facts) for (const id of fact.sources) expect(known).toContain(id)
  })

  it('never leave an eye at risk unseen for longer than two weeks (design.md, a block is not a palsy)', () => {
    expect(owedRules.face.atRiskLimit.value).toEqual({ count: 14, unit: 'days' })
    expect(owedRules.face.atRiskAgain.value.count).toBeLessThanOrEqual(14)
  })
})
