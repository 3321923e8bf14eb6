import { expect, it } from 'vitest'
import { painScales } from '#content/scores/pain-scales.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { emptyRound } from './empty-round.ts'
import { newsForOwner } from './owner-news.ts'

const make = entryMaker()
const stay = { operations: [], since: '2026-02-10T12:00:00.000Z', ended: null }
const eye = { side: 'LEFT', operated: true, blink: { said: 'absent', at: stay.since }, block: null, risk: [] } as const
const round = (at: string, said: Partial<typeof emptyRound>) =>
  make({ kind: 'ward-score', at, body: { ...emptyRound, ...said } })

it('says nothing that no entry says: unknown is not fine', () => {
  const earlier = round('2026-02-10T08:00:00.000Z', { eats: 'yes', pain: { scale: 'glasgow-dog-short', score: 1 } })
  const news = newsForOwner(fold([make({ kind: 'identity' }), earlier]), stay, [], painScales)
  expect(news).toEqual({ awake: 'unknown', pain: null, eats: null, eyes: [] })
})

it('says the last score with its limit, the last meal, and the eye that does not blink', () => {
  const entries = [
    make({ kind: 'identity' }),
    round('2026-02-10T14:00:00.000Z', { pain: { scale: 'glasgow-dog-short', score: 8 }, eats: 'no' }),
    round('2026-02-10T15:00:00.000Z', { pain: { scale: 'glasgow-dog-short', score: 3 } }),
    round('2026-02-10T16:00:00.000Z', { eats: 'a-little' }),
  ]
  const news = newsForOwner(fold(entries), stay, [eye, { ...eye, side: 'RIGHT', operated: false }], painScales)
  expect(news.pain).toMatchObject({ score: 3, outOf: 24, read: { kind: 'below', actAt: 6 } })
  expect(news.eats?.said).toBe('a-little')
  expect(news.eyes.map(({ side }) => side)).toEqual(['LEFT'])
})
