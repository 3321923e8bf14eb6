import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Json } from '#core/journal/canonical.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { changesBetween, historyOfField, openConflict, valueAt } from './history-of-field.ts'

const weighed = (value: string, bodyCondition: number | null = 5) =>
  ({ weight: { value, unit: 'kg' }, typed: null, how: 'scale', bodyCondition }) as const

function corrected() {
  const make = entryMaker()
  const nurse = { kind: 'person', person: 'person-nurse' } as const
  const first = make({ kind: 'weight', body: weighed('81.2') })
  const second = make({
    kind: 'weight',
    body: weighed('18.2'),
    supersedes: [first.id],
    reason: 'Digits swapped.',
    author: nurse,
  })
  const third = make({ kind: 'weight', body: weighed('18.2', 4), supersedes: [second.id], reason: 'Ribs felt again.' })
  return { make, first, second, third, nurse }
}

describe('the history of one field', () => {
  it('tells every value with who, when and why, and which step left it alone', () => {
    const { first, second, third, nurse } = corrected()
    const theCase = fold([third, first, second])
    const steps = historyOfField(theCase, second.id, 'weight.value')
    expect(steps.map(({ value, changed, reason }) => [value, changed, reason])).toEqual([
      ['81.2', true, null],
      ['18.2', true, 'Digits swapped.'],
      ['18.2', false, 'Ribs felt again.'],
    ])
    expect(steps[1]?.author).toEqual(nurse)
    expect(historyOfField(theCase, first.id, 'bodyCondition').map(({ value }) => value)).toEqual([5, 5, 4])
  })

  it('ends with nothing when the entry was taken back', () => {
    const { make, first } = corrected()
    const back = make({ kind: 'withdrawal', withdraws: first.id, reason: 'Other dog.' })
    const steps = historyOfField(fold([first, back]), first.id, 'weight.value')
    expect(steps.map(({ is, value }) => [is, value])).toEqual([
      ['first', '81.2'],
      ['withdrawal', undefined],
    ])
  })
})

describe('old and new side by side', () => {
  it('name every changed place with both values, and only those', () => {
    expect(changesBetween(weighed('81.2'), weighed('18.2', null))).toEqual([
      { path: 'bodyCondition', before: 5, after: null },
      { path: 'weight.value', before: '81.2', after: '18.2' },
    ])
    expect(changesBetween({ list: [1, 2] }, { list: [1, 3, 4] })).toEqual([
      { path: 'list.1', before: 2, after: 3 },
      { path: 'list.2', before: undefined, after: 4 },
    ])
  })

  it('differ in nothing exactly when they are the same, and the changes explain the whole difference', () => {
    const leaf = fc.oneof(fc.integer(), fc.string({ maxLength: 4 }), fc.boolean(), fc.constant(null))
    const body = fc.dictionary(
      fc.constantFrom('a', 'b', 'c'),
      fc.oneof(leaf, fc.dictionary(fc.constantFrom('x', 'y'), leaf)),
    )
    fc.assert(
      fc.property(body, body, (one, other) => {
        const changes = changesBetween(one as Json, other as Json)
        expect(changesBetween(one as Json, one as Json)).toEqual([])
        for (const { path, before, after } of changes) {
          if (path === '') continue
          expect(valueAt(one as Json, path)).toEqual(before)
          expect(valueAt(other as Json, path)).toEqual(after)
        }
        const mirrored = changesBetween(other as Json, one as Json)
        expect(mirrored.map(({ path }) => path)).toEqual(changes.map(({ path }) => path))
      }),
    )
  })
})

describe('a conflict, opened', () => {
  it('shows the entries side by side, where they differ, and what stood before them', () => {
    const { make, first, second } = corrected()
    const other = make({
      kind: 'weight',
      body: weighed('18.6', null),
      supersedes: [first.id],
      reason: 'Scale read again.',
    })
    const theCase = fold([first, second, other])
    const [conflict] = theCase.conflicts
    const opened = conflict && openConflict(theCase, conflict)
    expect(opened?.sides.map(({ header }) => header.id)).toEqual([second.id, other.id])
    expect(opened?.differ).toEqual([
      { path: 'bodyCondition', says: [5, null] },
      { path: 'weight.value', says: ['18.2', '18.6'] },
    ])
    expect(opened?.before?.header.id).toBe(first.id)
  })

  it('of two entries with the same key has nothing before it', () => {
    const make = entryMaker()
    const theCase = fold([make({ kind: 'death' }), make({ kind: 'death' })])
    const [conflict] = theCase.conflicts
    expect(conflict && openConflict(theCase, conflict)).toMatchObject({ differ: [], before: null })
  })
})
