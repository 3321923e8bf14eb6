import { describe, expect, it } from 'vitest'
import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { lowPressure } from '#content/protocols/low-pressure.ts'
import { emergencySheet } from '#core/dosing/emergency.ts'
import { quantity } from '#core/units/quantity.ts'
import { sayAmount } from '#core/why/why.ts'
import { isRoomCall, linesOf, roomCalls, stepsOf } from './room-call.ts'

const cat = emergencySheet({ species: 'cat', weight: quantity('4', 'kg') }, emergencyFacts)

function drawn(call: (typeof roomCalls)[number], sheet = cat): (readonly [string, string])[] {
  return linesOf(call, sheet, lowPressure).map((line) => [
    line.row.drug,
    line.kind === 'drawn' ? sayAmount(line.drawn) : 'barred',
  ])
}

describe('what is drawn at a call, for a cat of 4 kg', () => {
  it('is in a bleed tranexamic acid 10 mg/kg of 100 mg/mL and crystalloid 5 mL/kg', () => {
    expect(drawn('bleeding')).toEqual([
      ['tranexamic-acid', '0.4 mL'],
      ['balanced-crystalloid', '20 mL'],
    ])
  })

  it('is in low pressure the same fluid bolus and no range', () => {
    expect(drawn('low-pressure')).toEqual([['balanced-crystalloid', '20 mL']])
  })

  it('is no lidocaine for a dog in which toxicity is suspected', () => {
    const animal = { species: 'dog', weight: quantity('10', 'kg') } as const
    const suspected = ['local-anaesthetic-toxicity'] as const
    expect(drawn('fast-wide-rhythm', emergencySheet(animal, emergencyFacts))).toContainEqual(['lidocaine', '1 mL'])
    expect(drawn('fast-wide-rhythm', emergencySheet({ ...animal, suspected }, emergencyFacts))).toContainEqual([
      'lidocaine',
      'barred',
    ])
  })
})

describe('what is done at a call', () => {
  it('is there for every call and species; of an unknown species only what holds for both', () => {
    for (const call of roomCalls) {
      const both = stepsOf(call, undefined, emergencyFacts, lowPressure)
      expect(both.length).toBeGreaterThan(0)
      for (const species of ['dog', 'cat'] as const) {
        expect(stepsOf(call, species, emergencyFacts, lowPressure)).toEqual(expect.arrayContaining([...both]))
      }
    }
    const said = stepsOf('low-pressure', 'cat', emergencyFacts, lowPressure).map(({ value }) => value)
    expect(said.some((one) => one.includes('dobutamine did not'))).toBe(true)
    expect(said.some((one) => one.includes('In dogs'))).toBe(false)
  })

  it('is known by its word in the address', () => {
    expect([isRoomCall('bleeding'), isRoomCall('low-pressure'), isRoomCall('coffee')]).toEqual([true, true, false])
  })
})
