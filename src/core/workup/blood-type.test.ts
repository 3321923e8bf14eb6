import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { bloodType } from '#core/journal/kinds/blood-type.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { bloodTypeOf } from './blood-type.ts'

const dog = bloodType.example
const cat: BodyOf<'blood-type'> = { system: 'ab', dea1: 'not-typed', ab: 'B', method: 'card', text: null }

function typeOf(species: 'dog' | 'cat', ...bodies: readonly BodyOf<'blood-type'>[]) {
  const make = entryMaker()
  const entries = bodies.map((body) => make({ kind: 'blood-type', body }))
  return bloodTypeOf(fold([make({ kind: 'identity', body: { ...identity.example, species } }), ...entries]))
}

describe('the blood group', () => {
  it('is the one that was typed in the system of the species', () => {
    expect(typeOf('dog', dog)).toMatchObject({ kind: 'known', type: 'negative' })
    expect(typeOf('cat', cat)).toMatchObject({ kind: 'known', type: 'B' })
  })

  it('of a cat that nobody typed stays unknown, and so does one that was said not to be typed', () => {
    expect(typeOf('cat')).toEqual({ kind: 'unknown', because: 'none' })
    expect(typeOf('cat', { ...cat, ab: 'unknown' })).toEqual({ kind: 'unknown', because: 'not-typed' })
    expect(typeOf('cat', { ...cat, ab: 'unknown' }, cat)).toMatchObject({ kind: 'known', type: 'B' })
  })

  it('of a cat is never read from a test for dogs', () => {
    expect(typeOf('cat', dog)).toEqual({ kind: 'unknown', because: 'other-species' })
    expect(bloodType.body.safeParse({ ...dog, ab: 'A' }).success).toBe(false)
    expect(bloodType.body.safeParse({ ...cat, dea1: 'negative' }).success).toBe(false)
  })

  it('is unknown while two answers differ', () => {
    expect(typeOf('dog', dog, { ...dog, dea1: 'weak-positive' })).toEqual({ kind: 'unknown', because: 'differ' })
    expect(typeOf('dog', dog, dog)).toMatchObject({ kind: 'known' })
  })
})
