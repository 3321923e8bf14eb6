import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chipLikeness } from './chips.ts'
import { type Described, type KnownAnimal, matchesOf } from './match.ts'

const nothing: Described = {
  name: null,
  species: null,
  chip: null,
  householdId: null,
  ownerName: null,
  ownerPhone: null,
  born: null,
}
const chip = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 15, maxLength: 15 }).map((digits) => digits.join(''))

const known = (over: Partial<KnownAnimal>): KnownAnimal => ({
  ...nothing,
  stream: 'case:1',
  animal: 'animal-1',
  ...over,
})

describe('likely matches', () => {
  it('are found for every swap of two neighbouring digits of a chip', () => {
    fc.assert(
      fc.property(chip, fc.integer({ min: 0, max: 13 }), (number, at) => {
        const swapped = number.slice(0, at) + number[at + 1] + number[at] + number.slice(at + 2)
        const [match, ...others] = matchesOf({ ...nothing, chip: swapped }, [known({ chip: number })])
        expect(match?.reasons).toEqual([swapped === number ? 'same-chip' : 'chip-two-swapped'])
        expect(match?.strength).toBe('likely')
        expect(others).toEqual([])
      }),
    )
  })

  it('are found for every single wrong digit, typed with spaces', () => {
    fc.assert(
      fc.property(chip, fc.integer({ min: 0, max: 14 }), fc.integer({ min: 1, max: 9 }), (number, at, by) => {
        const wrong = number.slice(0, at) + String((Number(number[at]) + by) % 10) + number.slice(at + 1)
        const typed = `${wrong.slice(0, 3)} ${wrong.slice(3, 9)} ${wrong.slice(9)}`
        expect(matchesOf({ ...nothing, chip: typed }, [known({ chip: number })])[0]?.reasons).toEqual([
          'chip-one-digit',
        ])
      }),
    )
  })

  it('are not offered for chips that differ in three places or more', () => {
    fc.assert(
      fc.property(chip, chip, (one, other) => {
        const differ = [...one].filter((digit, at) => digit !== other[at]).length
        fc.pre(differ >= 3)
        expect(chipLikeness(one, other)).toBeNull()
        expect(matchesOf({ ...nothing, chip: one }, [known({ chip: other })])).toEqual([])
      }),
    )
  })

  it('are not offered to somebody who shares nothing, or only the name of the animal', () => {
    const word = fc.string({ minLength: 1, maxLength: 12 })
    const row = fc.record({
      name: word,
      ownerName: word.map((name) => `their ${name}`),
      ownerPhone: fc.integer({ min: 0, max: 999_999 }).map((number) => `01632 2${String(number).padStart(6, '0')}`),
      householdId: word.map((id) => `theirs-${id}`),
    })
    fc.assert(
      fc.property(row, word, (theirs, ours) => {
        const described = {
          ...nothing,
          name: theirs.name,
          ownerName: `ours ${ours}`,
          ownerPhone: '01632 3999999',
          householdId: `ours-${ours}`,
        }
        expect(matchesOf(described, [known(theirs)])).toEqual([])
      }),
    )
  })

  it('do not depend on the order of the rows', () => {
    const rows = fc.array(fc.record({ stream: fc.uuid(), chip, name: fc.constantFrom('Tansy', 'Tansey', 'Moss') }), {
      maxLength: 8,
    })
    fc.assert(
      fc.property(rows, chip, (made, number) => {
        const all = made.map((row) => known({ ...row, ownerPhone: '01632 960111' }))
        const described = { ...nothing, chip: number, name: 'Tansy', ownerPhone: '+44 1632 960111' }
        expect(matchesOf(described, [...all].reverse())).toEqual(matchesOf(described, all))
      }),
    )
  })
})
