import { describe, expect, it } from 'vitest'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { pauseItem } from '#core/journal/kinds/pause-item.ts'
import { statedItem } from '#core/theatre/spoken-pause.ts'
import { tansy } from '#demo/spaniel.ts'

describe('the spoken pauses', () => {
  it('hold each that can be written, once and in the order of the day', () => {
    expect(spokenPauses.map(({ pause }) => pause)).toEqual([
      'before-anaesthesia',
      'before-second-ear',
      'before-incision',
      'before-leaving',
    ])
    const written = spokenPauses.flatMap(({ pause, items }) => items.map(({ id }) => ({ pause, item: id })))
    for (const one of written) {
      const body = { ...one, answer: 'no', because: 'Not there.', spokenBy: 'p', ledBy: null }
      expect(pauseItem.body.safeParse(body).success).toBe(true)
    }
  })

  it('name every item once, with a statement of its own', () => {
    const items = spokenPauses.flatMap(({ items: own }) => own)
    expect(new Set(items.map(({ id }) => id)).size).toBe(items.length)
    expect(new Set(items.map(({ states }) => states)).size).toBe(items.length)
  })

  it('speak the side in each pause, under a name that the sides of a case are read from', () => {
    for (const { items } of spokenPauses) {
      expect(items.filter(({ id }) => /(^|-)side(-|$)/.test(id)).map(({ id }) => id)).toHaveLength(1)
    }
  })

  it('have words for every item of the invented case and of the example of the kind', () => {
    const spoken = tansy()
      .entries.filter(({ kind }) => kind === 'pause-item')
      .map(({ body }) => body as unknown as typeof pauseItem.example)
    expect(spoken.length).toBeGreaterThan(5)
    for (const { pause, item } of [pauseItem.example, ...spoken]) {
      expect(statedItem(spokenPauses, pause, item), item).toBeDefined()
    }
  })

  it('have no words for what a house worded itself', () => {
    expect(statedItem(spokenPauses, 'before-incision', 'music-off')).toBeUndefined()
  })
})
