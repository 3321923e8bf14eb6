import { describe, expect, it } from 'vitest'
import { lateSignRules } from '#content/follow-up/late-signs.ts'
import { lateInEnglish } from '#content/wording/app-late.ts'
import {
  type EarOnFile,
  type FileWithEars,
  indexDoubtCodes,
  indexEarsOf,
  indexReasonCodes,
  type ToldOf,
} from './index-ears.ts'
import { lateSignsIn } from './late-signs.ts'

const born = (day: string) => ({ at: `${day}T00:00:00.000Z`, zone: 'UTC', precision: 'day', by: 'person' }) as const
const left: EarOnFile = {
  operation: 'operation-1',
  side: 'LEFT',
  procedure: 'teca-lbo',
  on: '2025-09-12',
  died: null,
  tractOn: null,
}
const fern: FileWithEars = {
  stream: 'case:fern',
  animal: 'animal-fern',
  name: 'Fern',
  species: 'dog',
  chip: '985112001234567',
  householdId: 'household-1',
  ownerName: 'Odile Marrow',
  ownerPhone: '01632 960141',
  born: born('2018-06-02'),
  breed: 'Cocker Spaniel',
  ears: [left],
}
const told = (over: Partial<ToldOf>): ToldOf => ({
  name: null,
  species: 'dog',
  chip: null,
  householdId: null,
  ownerName: null,
  ownerPhone: null,
  born: null,
  breed: null,
  side: 'unknown',
  day: '2026-11-30',
  streams: [],
  ...over,
})
const lateFrom = lateSignRules.lateFrom.value
const offered = (over: Partial<ToldOf>, files: readonly FileWithEars[] = [fern]) =>
  indexEarsOf(told(over), files, lateFrom).map(({ ear, strength, reasons, doubts }) => ({
    ear: ear.operation,
    strength,
    reasons,
    doubts,
  }))

describe('an operated ear to which a late sign may belong', () => {
  it('is found under another surname with two digits of the chip swapped, with every reason and doubt', () => {
    const back = { chip: '985112001234576', name: 'Fern', ownerName: 'Odile Quenby', breed: 'cocker spaniel' }
    expect(offered({ ...back, born: born('2018-06-02'), side: 'RIGHT' })).toEqual([
      {
        ear: 'operation-1',
        strength: 'likely',
        reasons: ['chip-two-swapped', 'surname-changed', 'same-birth', 'same-breed'],
        doubts: ['other-owner', 'other-side'],
      },
    ])
  })

  it('is found by birth date and breed where chip, name, owner and phone all changed', () => {
    const back = { name: 'Lady', ownerName: 'Ira Vance', born: born('2018-06-02'), breed: 'Cocker spaniel' }
    expect(offered(back)).toMatchObject([{ strength: 'possible', reasons: ['same-birth', 'same-breed'] }])
    expect(offered({ ...back, breed: 'Beagle' })).toEqual([])
    expect(offered({ ...back, born: born('2018-06-03') })).toEqual([])
  })

  it('is never offered by a name alone', () => {
    expect(offered({ name: 'Fern' })).toEqual([])
    expect(offered({ name: 'Fern', breed: 'Cocker Spaniel' })).toEqual([])
    expect(offered({ name: 'Fern', ownerName: 'Odile Quenby' })).toMatchObject([
      { strength: 'possible', reasons: ['owner-first-name', 'same-name'], doubts: ['other-owner'] },
    ])
  })

  it('is that of the file itself before any other, and none before the time of late signs', () => {
    const twin = { ...fern, stream: 'case:twin', ears: [{ ...left, operation: 'operation-2' }] }
    const here = offered({ streams: ['case:twin'], chip: fern.chip }, [fern, twin])
    expect(here.map(({ ear, strength }) => [ear, strength])).toEqual([
      ['operation-2', 'this-file'],
      ['operation-1', 'likely'],
    ])
    expect(offered({ chip: fern.chip, day: '2025-10-11' })).toEqual([])
    expect(offered({ chip: fern.chip, day: '2025-10-12' })).toHaveLength(1)
  })

  it('is offered once where two joined files hold its operation, and said to be of a dead animal', () => {
    const dead = { ...fern, stream: 'case:other', ears: [{ ...left, died: '2026-01-01' }] }
    expect(offered({ chip: fern.chip }, [fern, dead])).toHaveLength(1)
    expect(offered({ chip: fern.chip }, [dead])).toMatchObject([{ doubts: ['died'] }])
  })

  it('has words for every reason and doubt', () => {
    expect(Object.keys(lateInEnglish.reasons).sort()).toEqual([...indexReasonCodes].sort())
    expect(Object.keys(lateInEnglish.doubts).sort()).toEqual([...indexDoubtCodes].sort())
  })
})

describe('a late sign', () => {
  const heard = (text: string, flags: Parameters<typeof lateSignsIn>[0]['flags'] = []) =>
    lateSignsIn({ text, flags }, lateSignRules)

  it('is heard in words as people say them, and in the red flags', () => {
    expect(heard('There is a hole below the ear, and it weeps.')).toEqual(['draining-tract'])
    expect(heard('A bump below the ear.')).toEqual(['swelling'])
    expect(heard('Discharge coming from the old scar, wet and smelly.')).toEqual(['draining-tract'])
    expect(heard('Un bulto que supura.')).toEqual(['draining-tract', 'swelling'])
    expect(heard('Sore, and SWOLLEN under the ear; cannot yawn.')).toEqual(['swelling', 'ear-pain'])
    expect(heard('Shakes her head.')).toEqual([])
    expect(heard('', ['mouth-will-not-open', 'swelling-under-ear'])).toEqual(['swelling', 'jaw-pain'])
  })

  it('is any complaint an animal is brought for, where none of them is heard: no list of words is whole', () => {
    const brought = (text: string) => lateSignsIn({ text, flags: [], isComplaint: true }, lateSignRules)
    expect(brought('Shakes her head, and something is not right at the old side.')).toEqual(['complaint'])
    expect(brought('A lump under the ear.')).toEqual(['swelling'])
    expect(brought(' ')).toEqual([])
  })

  it('is not heard in a part of a word, and is asked about also where it is denied', () => {
    expect(heard('The whole drainpipe extracts.')).toEqual([])
    expect(heard('No, swelling there is none.')).toEqual(['swelling'])
  })
})
