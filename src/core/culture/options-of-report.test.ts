import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { cautions } from '#content/susceptibility/cautions.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { optionWords } from '#content/wording/culture-options.ts'
import type { AnimalWord } from '#core/animal/conditions.ts'
import type { Species } from '#core/animal/species.ts'
import { quantity } from '#core/units/quantity.ts'
import { printedIsolate } from './empty-report.ts'
import { cultureOptions } from './options.ts'
import { readIsolates } from './read-isolates.ts'
import { recogniseAgent, recogniseOrganism } from './recognise.ts'
import { sayWhyOf } from './say-option.ts'

const { agents, organisms, usual } = susceptibility
const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

/** A printed report all the way to its options, with everything that is known here. */
function optionsOf(
  species: Species,
  organism: string,
  rows: readonly (readonly [drug: string, raw: string])[],
  conditions: readonly AnimalWord[] = [],
) {
  const printed = printedIsolate('1', organism, rows)
  const stored = {
    ...printed,
    species: recogniseOrganism(organism, organisms).id,
    results: printed.results.map((row) => ({ ...row, agent: recogniseAgent(row.drug, agents).id })),
  }
  const isolates = readIsolates(
    { host: species, site: 'soft-tissue', edition: usual, isolates: [stored] },
    susceptibility,
  )
  const animal = { species, weight: quantity(species === 'cat' ? '4' : '20', 'kg'), ageMonths: 72, conditions }
  const options = cultureOptions({ isolates, animal, given: [] }, { ...susceptibility, cautions, knowledge })
  return (drug: string) => {
    const option = options.find(({ agent }) => agent === drug)
    return { verdict: option?.verdict, ...(option && sayWhyOf(option, optionWords)), option }
  }
}

describe('a methicillin-resistant isolate of a dog', () => {
  // Oxacillin at or above 0.5 mg/L: every beta-lactam is R whatever its own number says (Cain 2013).
  const of = optionsOf('dog', 'Staphylococcus pseudintermedius', [
    ['oxacillin', '>=4 mg/L'],
    ['cephalexin', '<=2 mg/L'],
    ['amoxicillin/clavulanate', '<=0.25 mg/L'],
    ['doxycycline', '<=0.12 mg/L'],
    ['chloramphenicol', '<=2 mg/L'],
  ])

  it('takes no beta-lactam, and says why although the tube says otherwise', () => {
    for (const drug of ['cefalexin', 'amoxicillin-clavulanate']) {
      expect(of(drug).verdict).toBe('cannot')
      expect(of(drug).whyNot?.[0]).toMatch(/is methicillin-resistant: no penicillin and no cephalosporin works/)
    }
  })

  it('takes what is read by its own breakpoint', () => {
    expect(of('doxycycline').verdict).toBe('could')
    expect(of('chloramphenicol').verdict).toBe('could')
    expect(of('chloramphenicol').option?.harms.map(({ value }) => value)).toContain(
      'gloves: it can stop the marrow of people',
    )
  })
})

describe('a dog whose isolate is susceptible only at a dose', () => {
  // CLSI VET01S ed7, dog, enrofloxacin: S to 0.06, SDD 0.12 at 10 mg/kg and 0.25 at 20 mg/kg (Papich 2023).
  it('is told which, and nothing lower passes in silence', () => {
    const at = (raw: string) => optionsOf('dog', 'E. coli', [['enrofloxacin', raw]])('enrofloxacin')
    expect(at('0.06 mg/L').verdict).toBe('could')
    expect(at('0.12 mg/L').option?.needs).toEqual(['10 mg/kg'])
    expect(at('0.25 mg/L').option?.needs).toEqual(['20 mg/kg'])
    expect(at('0.25 mg/L').verdict).toBe('could')
    expect(at('0.5 mg/L').verdict).toBe('cannot')
  })

  it('is told that a floor of the panel above the breakpoint says nothing', () => {
    const said = optionsOf('dog', 'E. coli', [['enrofloxacin', '<=0.5 mg/L']])('enrofloxacin')
    expect(said.verdict).toBe('doubt')
    expect(said.whyNot?.[0]).toMatch(/can mean S or SDD or R\. The panel does not reach the breakpoint/)
  })
})

describe('a cat with E. coli', () => {
  // CLSI VET01S ed7, cat, enrofloxacin: S to 0.5 mg/L; the dose is 5 mg/kg a day and never more (label; Gelatt 2001).
  it('may have enrofloxacin at 5 mg/kg, never the 20 that are for dogs', () => {
    const of = optionsOf('cat', 'Escherichia coli', [['enrofloxacin', '0.25 mg/L']])
    expect(of('enrofloxacin').verdict).toBe('could')
    expect(of('enrofloxacin').option?.needs).toEqual([])
    const ranges = of('enrofloxacin').option?.ways.map(({ line }) => line.range?.high.toString())
    expect(new Set(ranges)).toEqual(new Set(['5 mg/kg']))
  })

  it('may not with a diseased kidney', () => {
    expect(
      optionsOf('cat', 'E. coli', [['enrofloxacin', '0.25 mg/L']], ['renal-disease'])('enrofloxacin').verdict,
    ).toBe('cannot')
  })
})

describe('Pseudomonas', () => {
  const of = optionsOf('dog', 'Pseudomonas aeruginosa', [
    ['doxycycline', '<=0.12 mg/L'],
    ['gentamicin', '<=1 mg/L'],
    ['marbofloxacin', '0.12 mg/L'],
  ])

  it('is never treated with what it is always resistant to, whatever is printed', () => {
    expect(of('doxycycline').verdict).toBe('cannot')
    expect(of('doxycycline').whyNot?.[0]).toMatch(/always resistant, by its nature/)
  })

  it('points an aminoglycoside out where the drum was not seen whole', () => {
    const codes = of('gentamicin').option?.inAnimal.map(({ code }) => code)
    expect(codes).toContain('drums-unknown')
  })
})
