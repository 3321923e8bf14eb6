import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { sayEnds } from './say-breakpoint.ts'

function said(id: string, row: string): string {
  const edition = susceptibility.editions.find((one) => one.id === id)
  const found = edition?.rows.find((one) => one.id === row)
  if (!edition || !found) throw new Error(`${id} holds no ${row}.`)
  return sayEnds(found, edition.convention)
}

describe('a breakpoint in words', () => {
  it('has the signs of its convention and method', () => {
    expect(said('clsi-vet01s-7', 'dog-staphylococcus-pseudintermedius-cefalexin-mic-soft-tissue')).toBe('S ≤ 2; R ≥ 4')
    expect(said('clsi-vet01s-7', 'dog-enterobacterales-amikacin-disk-any')).toBe('S ≥ 20; I 17–19; R ≤ 16')
    expect(said('eucast-15', 'human-staphylococcus-aureus-cefoxitin-mic-any-screen')).toBe('S ≤ 4; R > 4')
    expect(said('eucast-15', 'human-staphylococcus-aureus-cefoxitin-disk-any-screen')).toBe('S ≥ 22; R < 22')
  })

  it('never names an SDD step without its dose', () => {
    expect(said('clsi-vet01s-7', 'dog-staphylococcus-enrofloxacin-mic-respiratory-soft-tissue-urinary')).toBe(
      'S ≤ 0.06; SDD 0.12 at 10 mg/kg, 0.25 at 20 mg/kg; R ≥ 0.5',
    )
  })

  it('calls the end of the wild type by that name, and nothing by its own', () => {
    expect(said('eucast-ecoff-2025', 'any-staphylococcus-pseudintermedius-florfenicol-mic-any')).toBe('wild type ≤ 8')
    expect(said('clsi-vet01s-7', 'any-any-polymyxin-b-mic-soft-tissue')).toBe('No value is stated.')
  })

  it('belongs to an edition named in the long form', () => {
    expect(susceptibility.editions.map(editionName)).toContain('CLSI VET01S ed7 (2024)')
    expect(susceptibility.editions.map(editionName)).toContain('EUCAST v15.0 (2025)')
  })
})
