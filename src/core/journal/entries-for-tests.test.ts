import { describe, expect, it } from 'vitest'
import { readEntry } from './accept.ts'
import { entryMaker, testId } from './entries-for-tests.ts'
import { kinds } from './kinds/index.ts'

describe('entries made for tests', () => {
  it('are read at the door for every kind, with its worked example as the body', () => {
    const makeEntry = entryMaker()
    for (const { name } of kinds) expect(readEntry(makeEntry({ kind: name })), name).toMatchObject({ kind: 'answer' })
  })

  it('have the same ids on every run and other ids for another writer', () => {
    expect([entryMaker()().id, entryMaker()().id]).toEqual([testId(1), testId(1)])
    expect(entryMaker({}, 2)().id).toBe(testId(1, 2))
  })

  it('take every field that a test sets', () => {
    const made = entryMaker({ clinic: 'clinic-2' })({
      kind: 'note',
      body: { text: 'Quiet.' },
      at: '2026-04-01T10:00:00.000Z',
    })
    expect(made).toMatchObject({ clinic: 'clinic-2', body: { text: 'Quiet.' }, writtenAt: '2026-04-01T10:00:00.000Z' })
  })
})
