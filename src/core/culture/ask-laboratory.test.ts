import { describe, expect, it } from 'vitest'
import { askLaboratory } from './ask-laboratory.ts'
import type { CultureOption } from './option.ts'
import { nothingKnown } from './read-isolates.ts'
import type { IsolateReading, Phenotype } from './reading.ts'
import type { StandingCode } from './standing.ts'

function option(name: string, because: StandingCode): CultureOption {
  return {
    agent: name,
    name,
    drug: name,
    verdict: 'doubt',
    against: [{ isolate: '1', printed: 'an organism', reading: null, standing: 'doubt', because }],
    needs: [],
    findings: [],
    inAnimal: [],
    dosing: { kind: 'rows' },
    ways: [],
    harms: [],
    tier: null,
  }
}

function isolate(organism: string | null, methicillinResistant: Phenotype['methicillinResistant']): IsolateReading {
  const phenotype: Phenotype = { ...nothingKnown, methicillinResistant }
  return { key: '1', printed: 'Staph. sp.', organism, results: [], phenotype, findings: [] }
}

describe('what the laboratory can be asked', () => {
  it('is each doubt by the drugs that have it, and advice last', () => {
    const options = [
      option('enrofloxacin', 'not-interpretable'),
      option('marbofloxacin', 'susceptible-at-some-dose'),
      option('doxycycline', 'laboratory-susceptible'),
      option('cefalexin', 'laboratory-says-resistant'),
    ]
    expect(askLaboratory(options, [], ['clindamycin'])).toEqual([
      { code: 'extend-the-dilution', about: { drugs: 'enrofloxacin, marbofloxacin' } },
      { code: 'give-the-number', about: { drugs: 'doxycycline' } },
      { code: 'repeat-or-identify-again', about: { drugs: 'cefalexin' } },
      { code: 'test-these', about: { drugs: 'clindamycin' } },
      { code: 'advice', about: {} },
    ])
  })

  it('asks for a name before anything else, and for the test of methicillin where it is open', () => {
    expect(askLaboratory([], [isolate(null, 'not-tested')], []).map(({ code }) => code)).toEqual([
      'name-the-organism',
      'advice',
    ])
    expect(askLaboratory([], [isolate('staphylococcus', 'possible')], []).map(({ code }) => code)).toEqual([
      'test-methicillin',
      'advice',
    ])
  })
})
