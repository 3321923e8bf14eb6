import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import { settledBy } from '#core/owed/owed-code-of.ts'
import { tansy } from '#demo/spaniel.ts'
import { animalIn, isSameSubject, subjectOfOwed, subjectsFor } from './subjects-for.ts'

const make = entryMaker()

describe('what an entry can be about', () => {
  const file = { ...fileOf(tansy().entries), stream: 'case:tansy' }

  it('offers both ears and chooses neither', () => {
    expect(subjectsFor('ear-findings', file, 'new').map((one) => one.kind === 'ear' && one.side)).toEqual([
      'LEFT',
      'RIGHT',
    ])
  })

  it('offers the operations on file, and a new one for a booking', () => {
    expect(subjectsFor('theatre-stamp', file, 'new')).toEqual([
      { kind: 'operation', animal: 'animal-tansy', operation: 'operation-tansy-left' },
    ])
    expect(subjectsFor('booking', file, 'new')).toEqual([
      { kind: 'operation', animal: 'animal-tansy', operation: 'new' },
    ])
  })

  it('offers a note everything there is', () => {
    const kinds = subjectsFor('note', file, 'new').map(({ kind }) => kind)
    expect(kinds).toEqual(['animal', 'household', 'ear', 'ear', 'operation'])
  })

  it('gives a household of its own to a file that names none, the same every time', () => {
    const bare = { ...fileOf([]), stream: 'case:new' }
    expect(subjectsFor('household', bare, '')).toEqual([{ kind: 'household', household: 'household-new' }])
    expect(subjectsFor('household', file, '')).toEqual([{ kind: 'household', household: 'household-okafor' }])
  })

  it('gives a file that says nothing of its animal an animal of its own', () => {
    expect(animalIn(fileOf([]))).toMatch(/^animal-/)
    expect(animalIn(file)).toBe('animal-tansy')
  })
})

describe('what an owed thing is about', () => {
  const until = (entries: readonly Entry[], at: string) => entries.filter(({ writtenAt }) => writtenAt < at)

  it('is the ear or the operation that it names, whatever is owed on the way', () => {
    const entries = tansy().entries
    const seen = new Set<string>()
    for (const { writtenAt } of entries) {
      const file = { ...fileOf(until(entries, writtenAt)), stream: 'case:tansy' }
      for (const item of owedOf(file, procedures, { rules: owedRules }).owed) {
        const kind = settledBy[item.what]
        if (kind === null || kind === 'house-policy') continue
        const subject = subjectOfOwed(item, kind, file)
        if (subject?.kind === 'ear' && item.what !== 'other-ear-plan') expect(subject.side).toBe(item.side)
        if (subject?.kind === 'operation') expect(subject.operation).toBe(item.operation)
        seen.add(item.what)
      }
    }
    expect(seen.size).toBeGreaterThan(8)
  })

  it('is never guessed for the other ear', () => {
    const file = fileOf(tansy().entries)
    const item = { what: 'other-ear-plan', side: 'LEFT', operation: null } as unknown as Parameters<
      typeof subjectOfOwed
    >[0]
    expect(subjectOfOwed(item, 'choice', file)).toBeNull()
    expect(subjectOfOwed(item, 'other-ear-plan', file)).toMatchObject({ kind: 'ear', side: 'RIGHT' })
  })
})

it('tells one ear from the other', () => {
  const ear = (side: 'LEFT' | 'RIGHT') => ({ kind: 'ear', animal: 'a', side }) as const
  expect(isSameSubject(ear('LEFT'), ear('LEFT'))).toBe(true)
  expect(isSameSubject(ear('LEFT'), ear('RIGHT'))).toBe(false)
  expect(isSameSubject(make().subject, ear('LEFT'))).toBe(false)
})
