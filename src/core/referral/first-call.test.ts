import { describe, expect, it } from 'vitest'
import type { Match } from '#core/identity/match.ts'
import { household } from '#core/journal/kinds/household.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { redFlags, referral } from '#core/journal/kinds/referral.ts'
import { contactRow } from '#core/journal/registers.ts'
import { daysOfSigns, describedBy, emptyCall, type FirstCall, faultsIn, missingIn } from './first-call.ts'
import { householdOf, identityOf, ownerRow, referralOf, vetRow } from './first-call-bodies.ts'

const zone = 'Europe/London'
const call: FirstCall = {
  ...emptyCall('en'),
  caller: 'owner',
  name: ' Fenn ',
  species: 'dog',
  born: '2019',
  chip: '985 112 001 234 567',
  ownerName: 'Maud Ferris',
  ownerPhone: '01632 960180',
  side: 'LEFT',
  complaint: 'Smelly ear for years.',
  signsFor: '3',
}
const ids = { owner: 'contact-1', household: 'household-1', vet: null }
const open = { urgency: null, reason: 'open', compared: 'nothing-suggested' } as const
const stands = { urgency: 'routine', reason: 'not-needed', compared: 'as-suggested' } as const

function likely(stream: string): Match {
  const row = { stream, animal: 'animal-2', name: 'Fenn', species: 'dog', chip: null, householdId: null }
  return { row: { ...row, ownerName: null, ownerPhone: null }, strength: 'likely', reasons: ['same-chip'], doubts: [] }
}

describe('what is missing of a first call', () => {
  it('is everything that must be said while nobody has said anything', () => {
    expect(missingIn(emptyCall('en'), [], open)).toEqual([
      'caller',
      'name',
      'species',
      'owner-name',
      'side',
      'complaint',
      'urgency',
    ])
  })

  it('is nothing once it was said, though red flags were not asked', () => {
    expect(missingIn(call, [], stands)).toEqual([])
  })

  it('is an answer for each file that is likely the same animal, and why it is another', () => {
    const matches = [likely('case:a'), likely('case:b')]
    expect(missingIn(call, matches, stands)).toEqual(['match-answer'])
    const another = { answer: 'another', because: '' } as const
    const both = { ...call, matches: { 'case:a': another, 'case:b': another } }
    expect(missingIn(both, matches, stands)).toEqual(['match-because'])
    const said = { answer: 'another', because: 'A litter mate.' } as const
    expect(missingIn({ ...both, matches: { 'case:a': said, 'case:b': said } }, matches, stands)).toEqual([])
  })

  it('is neither name nor owner when a person said which file it is', () => {
    const same = { ...emptyCall('en'), matches: { 'case:a': { answer: 'same', because: '' } } } as const
    expect(missingIn(same, [likely('case:a'), likely('case:b')], stands)).toEqual(['caller', 'side', 'complaint'])
  })

  it('is the reason of another urgency, and to what the animal is allergic', () => {
    const asked = { urgency: 'routine', reason: 'asked', compared: 'later' } as const
    expect(missingIn({ ...call, allergy: 'yes' }, [], asked)).toEqual(['allergy-to', 'urgency-because'])
  })
})

describe('what cannot be kept as it was written', () => {
  it.each([
    [{ chip: '98511200123456' }, ['chip-not-15-digits']],
    [{ born: '05/03/2019' }, ['born-day-or-month-first']],
    [{ born: 'some years ago' }, ['born-unreadable']],
    [{ signsFor: 'long' }, ['signs-for-no-number']],
    [{ language: 'English' }, ['no-language']],
    [{}, []],
  ] as const)('is said at its field: %j', (wrong, faults) => {
    expect(faultsIn({ ...call, ...wrong }, zone)).toEqual(faults)
  })
})

describe('a first call that is kept', () => {
  it('makes bodies that their kinds accept, with a year as the birth date', () => {
    const who = identity.body.parse(identityOf(call, ids, zone))
    expect(who).toMatchObject({ name: 'Fenn', chip: '985112001234567', sex: 'unknown', born: { precision: 'year' } })
    expect(household.body.parse(householdOf(call, ids)).contacts[0]?.contact).toBe('contact-1')
    expect(contactRow.parse(ownerRow(call))).toMatchObject({ kind: 'owner', phone: '01632 960180' })
    expect(contactRow.parse(vetRow({ ...call, vetName: 'Ada Quill' }))).toMatchObject({ kind: 'vet', phone: null })
  })

  it('keeps what nobody asked as not asked, and the side only as reported', () => {
    const body = referral.body.parse(referralOf(call, ids, { urgency: 'routine', because: 'No red flag.' }))
    expect(body.signs).toEqual(redFlags.map((sign) => ({ sign, answer: 'not-asked' })))
    expect(body).toMatchObject({ reportedSide: 'LEFT', contact: 'contact-1', daysOfSigns: 1095 })
    expect(body.drugAllergy).toEqual({ answer: 'not-asked', what: null })
  })

  it('names the vet as caller when the vet called, and adds the person’s own reason to the rule’s', () => {
    const byVet = { ...call, caller: 'referring-vet', because: 'The owner is travelling.' } as const
    const body = referralOf(byVet, { ...ids, vet: 'contact-vet' }, { urgency: 'today', because: 'Head tilt.' })
    expect(body).toMatchObject({ contact: 'contact-vet', because: 'Head tilt. The owner is travelling.' })
  })

  it('says how long as whole days, as coarse as it was said', () => {
    expect(daysOfSigns({ signsFor: '6', signsForUnit: 'weeks' })).toBe(42)
    expect(daysOfSigns({ signsFor: '', signsForUnit: 'years' })).toBeNull()
  })

  it('describes the animal by what is known so far', () => {
    expect(describedBy({ ...call, born: '05/03/2019' }, zone)).toMatchObject({
      name: 'Fenn',
      chip: '985112001234567',
      born: null,
      householdId: null,
    })
  })
})
