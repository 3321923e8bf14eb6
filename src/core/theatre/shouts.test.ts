import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { clockFace, lastShout, nextNumber, shoutCheckpoint, shoutsOf, suspectedIn } from './shouts.ts'

const operation = 'operation-1'
const subject = { kind: 'operation', animal: 'animal-1', operation } as const

function shouts(...checkpoints: readonly string[]) {
  const make = entryMaker()
  const stamps = checkpoints.map((checkpoint) =>
    make({ kind: 'theatre-stamp', subject, body: { checkpoint, answer: 'done', detail: {}, text: null } }),
  )
  return shoutsOf(fold([make({ kind: 'identity' }), ...stamps]), operation)
}

describe('emergencies of an operation', () => {
  it('begin and end with a stamp each, and a second one is counted anew', () => {
    expect(shouts()).toEqual([])
    const [first, second] = shouts('emergency-on-bleeding-1', 'emergency-off-bleeding-1', 'emergency-on-bleeding-2')
    expect(first?.ended).not.toBeNull()
    expect(second).toMatchObject({ call: 'bleeding', number: 2, ended: null })
    const both = shouts('emergency-on-bleeding-1', 'emergency-off-bleeding-1')
    expect([lastShout(both, 'bleeding')?.number, nextNumber(both, 'bleeding'), nextNumber(both, 'airway')]).toEqual([
      1, 2, 1,
    ])
  })

  it('run from the first stamp when two people shouted the same', () => {
    const [only, ...others] = shouts('emergency-on-no-pulse-1', 'emergency-on-no-pulse-1')
    expect(others).toEqual([])
    expect(only?.begun.at).toBe('2026-03-01T08:01:00.000Z')
  })

  it('are told from checkpoints, other words and other numbers', () => {
    expect(shouts('k1-skin', 'emergency-on-coffee-1', 'emergency-off-bleeding-1', 'incision')).toEqual([])
    expect(shouts(shoutCheckpoint('on', 'low-pressure', 3))).toMatchObject([{ call: 'low-pressure', number: 3 }])
  })

  it('bar lidocaine once local-anaesthetic toxicity was shouted, also after it was called over', () => {
    const name = 'local-anaesthetic-toxicity'
    expect(suspectedIn(shouts('emergency-on-bleeding-1'))).toEqual([])
    expect(suspectedIn(shouts(`emergency-on-${name}-1`, `emergency-off-${name}-1`))).toEqual([name])
  })
})

describe('the clock of an emergency', () => {
  it('shows minutes and seconds, beyond the hour too, and never less than nothing', () => {
    const from = '2026-03-01T08:00:00.000Z'
    expect(clockFace(from, '2026-03-01T08:04:07.900Z')).toBe('4:07')
    expect(clockFace(from, '2026-03-01T09:04:07.000Z')).toBe('64:07')
    expect(clockFace(from, '2026-03-01T07:59:00.000Z')).toBe('0:00')
  })
})
