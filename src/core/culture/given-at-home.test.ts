import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { givenAtHome } from './given-at-home.ts'

describe('what an animal swallows at home', () => {
  const make = entryMaker()
  // Meloxicam at 08:00 from 12 February 2026 for 7 days.
  const theCase = fold([make({ kind: 'discharge', at: '2026-02-11T16:00:00.000Z', body: discharge.example })])
  const at = (now: string) =>
    givenAtHome(theCase, now, 'Europe/London').map(({ drug, at: when }) => `${drug} ${when?.toString()}`)

  it('is the last dose that was due, and nothing before the first', () => {
    expect(at('2026-02-12T07:59:00.000Z')).toEqual([])
    expect(at('2026-02-14T12:00:00.000Z')).toEqual(['meloxicam 2026-02-14T08:00:00Z'])
  })

  it('stays the last one after the course, which the rules let wash out', () => {
    expect(at('2026-03-14T12:00:00.000Z')).toEqual(['meloxicam 2026-02-18T08:00:00Z'])
  })
})
