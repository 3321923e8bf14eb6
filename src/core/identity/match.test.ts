import { describe, expect, it } from 'vitest'
import { matchInEnglish } from '#content/wording/app-match.ts'
import { type Described, type KnownAnimal, matchDoubtCodes, matchesOf, matchReasonCodes } from './match.ts'

const day = (at: string) => ({ at: `${at}T00:00:00.000Z`, zone: 'UTC', precision: 'day', by: 'person' }) as const
const tansy: KnownAnimal = {
  stream: 'case:tansy',
  animal: 'animal-tansy',
  name: 'Tansy',
  species: 'dog',
  chip: '985112001234567',
  householdId: 'household-okafor',
  ownerName: 'Rosalind Okafor',
  ownerPhone: '01632 960111',
  born: day('2017-05-04'),
}
const moss: KnownAnimal = {
  ...tansy,
  stream: 'case:moss',
  name: 'Moss',
  species: 'cat',
  chip: null,
  householdId: 'household-fennimore',
  ownerName: 'Mateus Fennimore',
  ownerPhone: '01632 960121',
  born: day('2011-01-01'),
}
const rows = [moss, tansy]
const someone = (over: Partial<Described>): Described => ({
  name: null,
  species: null,
  chip: null,
  householdId: null,
  ownerName: null,
  ownerPhone: null,
  born: null,
  ...over,
})
const offered = (over: Partial<Described>) =>
  matchesOf(someone(over), rows).map(({ row, strength, reasons, doubts }) => [row.name, strength, reasons, doubts])

describe('the animal of a first call', () => {
  it('is offered by its chip, whatever else was said, with what stands against it', () => {
    expect(offered({ chip: '985112001234567', species: 'cat', name: 'Bella' })).toEqual([
      ['Tansy', 'likely', ['same-chip'], ['other-species', 'other-name']],
    ])
  })

  it('is offered by a chip with two digits swapped', () => {
    expect(offered({ chip: '985 112 001 234 576' })).toEqual([['Tansy', 'likely', ['chip-two-swapped'], []]])
  })

  it('is offered by its name in its household, spelled nearly right', () => {
    expect(offered({ name: 'tansey', householdId: 'household-okafor' })).toEqual([
      ['Tansy', 'likely', ['same-name-in-household'], []],
    ])
  })

  it('is offered by the phone, in any way of writing it; another animal of that household is only possible', () => {
    expect(offered({ name: 'Tansy', ownerPhone: '+44 (0)1632 960111' })).toEqual([
      ['Tansy', 'likely', ['same-name-and-phone', 'same-phone'], []],
    ])
    expect(offered({ name: 'Fern', ownerPhone: '01632960111' })).toEqual([
      ['Tansy', 'possible', ['same-phone'], ['other-name']],
    ])
  })

  it('is offered when the owner married: same first name, other surname, same phone and same animal', () => {
    const call = { name: 'Tansy', ownerName: 'Rosalind Bell', ownerPhone: '01632 960111' }
    expect(offered(call)[0]?.[2]).toEqual(['surname-changed', 'same-name-and-phone', 'same-phone'])
    expect(offered({ name: 'Tansy', ownerName: 'Rosalind Bell', born: day('2017-05-04') })[0]?.[2]).toEqual([
      'surname-changed',
      'same-birth',
    ])
  })

  it('is not offered by its name alone, nor by its birth alone', () => {
    expect(offered({ name: 'Tansy', species: 'dog' })).toEqual([])
    expect(offered({ born: day('2017-05-04') })).toEqual([])
    expect(offered({ ownerName: 'Rosalind Bell', name: 'Tansy' })).toEqual([])
  })

  it('is only possible when another chip stands against the name', () => {
    expect(offered({ chip: '900000000000001', name: 'Tansy', ownerName: 'Rosalind Okafor' })).toEqual([
      ['Tansy', 'possible', ['same-name-and-owner'], ['other-chip']],
    ])
  })

  it('has a sentence for every reason and doubt', () => {
    expect(Object.keys(matchInEnglish.reasons).sort()).toEqual([...matchReasonCodes].sort())
    expect(Object.keys(matchInEnglish.doubts).sort()).toEqual([...matchDoubtCodes].sort())
  })
})
