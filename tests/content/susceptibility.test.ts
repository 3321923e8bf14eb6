import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { agentFamilies } from '#core/culture/agent.ts'
import { recogniseAgent, recogniseOrganism } from '#core/culture/recognise.ts'
import { tierOf } from '#core/culture/stewardship.ts'

const { organisms, agents, tiers, preferences } = susceptibility
const twice = (texts: readonly string[]) => texts.filter((text, at) => texts.indexOf(text) !== at)

describe('organisms', () => {
  const ids = organisms.map(({ id }) => id)

  it('have ids unlike each other', () => expect(twice(ids)).toEqual([]))

  it('belong to groups that are there and are groups, with all the groups of those', () => {
    const wrong = organisms.flatMap(({ id, groups }) =>
      groups.filter((name) => {
        const group = organisms.find((one) => one.id === name)
        return group?.rank !== 'group' || !group.groups.every((outer) => groups.includes(outer))
          ? `${id} ${name}`
          : false
      }),
    )
    expect(wrong).toEqual([])
  })

  it('are each found by every name of theirs', () => {
    const lost = organisms.flatMap(({ id, name, aliases }) =>
      [name, ...aliases].filter((text) => recogniseOrganism(text, organisms).id !== id),
    )
    expect(lost).toEqual([])
  })

  it('are never found by a name that may be another', () => {
    for (const text of [
      'S. canis',
      'Staphylococcus intermedius',
      'Proteus non mirabilis',
      'no growth',
      'mixed flora',
    ]) {
      expect(recogniseOrganism(text, organisms).id).toBeNull()
    }
  })
})

describe('drugs that are tested', () => {
  it('have ids unlike each other', () => expect(twice(agents.map(({ id }) => id))).toEqual([]))

  it('are each found by every name of theirs, but for the codes that two share', () => {
    const lost = agents.flatMap(({ id, name, aliases }) =>
      [name, id, ...aliases].filter((text) => recogniseAgent(text, agents).id !== id),
    )
    expect([...new Set(lost)].sort()).toEqual(['CL', 'CN'])
  })

  it('have the id of the formulary, which finds them by no other', () => {
    const wrong = agents.filter(({ id, name, aliases, formulary: held }) => {
      const drug = formulary.find((one) => [one.id, one.name].some((text) => [id, name, ...aliases].includes(text)))
      return (drug?.id ?? null) !== held || (held !== null && held !== id)
    })
    expect(wrong.map(({ id }) => id)).toEqual([])
  })

  it('carry LOINC numbers whose check digit is right', () => {
    const numbers = agents.flatMap(({ loinc }) => loinc?.value ?? [])
    expect(numbers.length).toBeGreaterThan(30)
    expect(numbers.filter((number) => checkDigit(number.split('-')[0] ?? '') !== number.split('-')[1])).toEqual([])
    expect(twice(numbers)).toEqual([])
  })
})

describe('what is to be spared', () => {
  it('names only families and drugs that are there', () => {
    const named = [...tiers, ...preferences].flatMap(({ value }) => value.agents)
    expect(named.filter((id) => !agents.some((agent) => agent.id === id))).toEqual([])
    const families = [...tiers, ...preferences].flatMap(({ value }) => value.families)
    expect(families.filter((family) => !agentFamilies.includes(family))).toEqual([])
  })

  it('puts a family into one category', () => {
    expect(twice(tiers.flatMap(({ value }) => value.families))).toEqual([])
  })

  it('ranks every drug against bacteria but those that the list does not know', () => {
    const without = agents.filter((agent) => !tierOf(agent, tiers)).map(({ id, family }) => `${id} ${family}`)
    expect(without.filter((text) => !text.endsWith(' antifungal'))).toEqual([
      'temocillin temocillin',
      'silver-sulfadiazine silver',
    ])
  })
})

/** The last digit of a LOINC number, by Luhn's rule. */
function checkDigit(digits: string): string {
  const sum = [...digits].reverse().reduce((total, digit, at) => {
    const value = Number(digit) * (at % 2 === 0 ? 2 : 1)
    return total + (value > 9 ? value - 9 : value)
  }, 0)
  return String((10 - (sum % 10)) % 10)
}
