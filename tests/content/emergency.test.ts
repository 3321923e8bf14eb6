import { describe, expect, it } from 'vitest'
import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { sources } from '#content/sources/index.ts'
import { speciesList } from '#core/animal/species.ts'
import { emergencyLine } from '#core/dosing/emergency-line.ts'
import { emergencyCalls } from '#core/dosing/emergency-row.ts'
import { quantity } from '#core/units/quantity.ts'

const rows = emergencyFacts.groups.flatMap(({ call, rows }) => rows.map((row) => ({ call, row })))
const steps = emergencyFacts.groups.flatMap(({ steps }) => steps)

describe('rows of the emergency sheet', () => {
  it('answer every call once, in the order of the sheet', () => {
    expect(emergencyFacts.groups.map(({ call }) => call)).toEqual([...emergencyCalls])
  })

  it('give each drug one number for each species and call', () => {
    const keys = rows.flatMap(({ call, row }) => row.species.map((species) => `${call} ${row.drug} ${species}`))
    expect(keys).toEqual([...new Set(keys)])
  })

  it('can be drawn for every species, from the strength they state', () => {
    for (const { row } of rows) expect(emergencyLine(row, quantity('10', 'kg'), []).kind).toBe('drawn')
  })

  it('name only sources that exist', () => {
    const known = new Set<string>(sources.map(({ id }) => id))
    const facts = [...rows.flatMap(({ row }) => [row.dose, ...row.otherEditions, ...(row.follow ? [row.follow] : [])])]
    for (const { sources: named } of [...facts, ...steps, ...emergencyFacts.marks, ...emergencyFacts.energyNotes]) {
      for (const id of named) expect(known).toContain(id)
    }
  })

  it('say an edition and a reason for the number that was chosen', () => {
    for (const { row } of rows)
      expect(Math.min(row.edition.length, row.reason.length, row.give.length)).toBeGreaterThan(0)
  })

  it('hold no lidocaine for cats, and bar it for dogs in local-anaesthetic toxicity', () => {
    const lidocaine = rows.filter(({ row }) => row.drug === 'lidocaine')
    expect(lidocaine.map(({ row }) => [row.species, row.barredBy])).toEqual([[['dog'], 'local-anaesthetic-toxicity']])
  })

  it('leave neither species without marks, blood volume and a plausible weight', () => {
    for (const species of speciesList) {
      expect(emergencyFacts.bloodPerKg[species].value.counted.value.gt(0)).toBe(true)
      expect(emergencyFacts.plausible[species].value.usual.low.value.gt(0)).toBe(true)
    }
  })
})
