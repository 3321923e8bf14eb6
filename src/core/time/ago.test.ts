import { expect, it } from 'vitest'
import { agoOf } from './ago.ts'

const ago = (at: string, now: string) => agoOf({ at, zone: 'Europe/London' }, now)

it('says how long ago in the largest fair unit', () => {
  expect(ago('2026-03-10T09:00:00.000Z', '2026-03-10T21:00:00.000Z')).toEqual({ count: 0, unit: 'days' })
  expect(ago('2026-03-09T23:30:00.000Z', '2026-03-10T00:30:00.000Z')).toEqual({ count: 1, unit: 'days' })
  expect(ago('2026-01-05T09:00:00.000Z', '2026-03-10T09:00:00.000Z')).toEqual({ count: 9, unit: 'weeks' })
  expect(ago('2025-03-10T09:00:00.000Z', '2026-03-10T09:00:00.000Z')).toEqual({ count: 12, unit: 'months' })
  expect(ago('2017-05-01T00:00:00.000Z', '2026-03-10T09:00:00.000Z')).toEqual({ count: 8, unit: 'years' })
})

it('calls nothing that lies ahead "ago"', () => {
  expect(ago('2026-03-12T09:00:00.000Z', '2026-03-10T09:00:00.000Z')).toEqual({ count: 0, unit: 'days' })
})
