import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { answered } from './files-for-tests.ts'
import { ownerAccountOf } from './owner-account.ts'

const free = { 'swelling.LEFT': 'no', 'discharge.LEFT': 'no', 'treated-elsewhere.LEFT': 'no' }
const account = (marked: Readonly<Record<string, string>>) => {
  const { body } = answered(entryMaker(), '2027-03-01T10:00:00.000Z', marked)
  return ownerAccountOf(body as unknown as BodyOf<'owner-answer'>, 'LEFT')
}

describe('the status after a year by the owner’s account', () => {
  it('is what the owner said of this ear, when nothing was reported that has to be seen', () => {
    expect(account({ ...free, 'ear-now.LEFT': 'no-trouble', 'choose-again': 'yes' })).toEqual({
      kind: 'status',
      status: 'solved',
      wouldChooseAgain: 'yes',
    })
    expect(account({ ...free, 'ear-now.LEFT': 'better' })).toMatchObject({ status: 'improved' })
    expect(account({ ...free, 'ear-now.LEFT': 'same' })).toMatchObject({ status: 'failed' })
    expect(account({ ...free, 'ear-now.RIGHT': 'better' })).toMatchObject({ status: 'unknown' })
  })

  it('stays unknown where the owner cannot tell or left out what would make the ear count as free', () => {
    expect(account({ ...free, 'ear-now.LEFT': 'cannot-tell' })).toMatchObject({ status: 'unknown' })
    expect(account({ ...free, 'swelling.LEFT': 'cannot-tell', 'ear-now.LEFT': 'better' })).toMatchObject({
      status: 'unknown',
    })
    expect(account({ 'ear-now.LEFT': 'better' })).toMatchObject({ status: 'unknown', wouldChooseAgain: 'unknown' })
  })

  it('is not said at all before a look when a swelling, a discharge or another clinic was reported', () => {
    for (const [field, answer] of [
      ['swelling.LEFT', 'yes'],
      ['swelling.LEFT', 'yes-gone'],
      ['discharge.LEFT', 'yes'],
      ['treated-elsewhere.LEFT', 'yes'],
    ] as const) {
      expect(account({ ...free, 'ear-now.LEFT': 'better', [field]: answer })).toEqual({ kind: 'look-first' })
    }
  })
})
