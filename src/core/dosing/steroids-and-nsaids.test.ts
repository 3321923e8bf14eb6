import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import type { Drug } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DosedAnimal, Given, PlannedLine } from './request.ts'

const at = Temporal.Instant.from('2026-03-02T09:00:00Z')
const dog: DosedAnimal = { species: 'dog', weight: quantity('10', 'kg'), weighedAt: at, ageMonths: 60, conditions: [] }
const judge = (line: PlannedLine, animal: DosedAnimal = dog, given: readonly Given[] = []) =>
  doseLines({ animal, at, given, lines: [line] }, { drugs: formulary, rules: dosingRules, plans: [], policies: [] })
const of = (...asked: Parameters<typeof judge>) =>
  judge(...asked).lines[0]?.findings.map(({ level, code }) => `${level} ${code}`)
const carprofen: PlannedLine = {
  id: 'n',
  drug: 'carprofen',
  use: 'nsaid',
  qualifier: 'once a day',
  dose: quantity('4.4', 'mg/kg'),
  stock: quantity('50', 'mg/mL'),
}
const earlier = (drug: string, days: number, more: Partial<Given> = {}): Given => ({
  drug,
  at: at.subtract({ hours: days * 24 }),
  ...more,
})

describe('an NSAID after an active that animals with bad ears get', () => {
  it('is refused after a steroid of drops and sprays, without asking which active it is', () => {
    const names = ['betamethasone valerate', 'hydrocortisone aceponate', 'mometasone furoate', 'fluocinolone acetonide']
    for (const name of names) {
      expect(of(carprofen, dog, [earlier(name, 1, { onSurface: true })])).toContain('block nsaid-with-steroid')
      expect(of(carprofen, dog, [earlier(name, 8, { onSurface: true })])).toEqual([])
    }
  })

  it('is asked about for weeks after a depot of triamcinolone', () => {
    expect(of(carprofen, dog, [earlier('triamcinolone', 2)])).toContain('block nsaid-with-steroid')
    expect(of(carprofen, dog, [earlier('triamcinolone acetonide', 20)])).toEqual(['confirm pair-to-think-about'])
  })

  it('is refused after another NSAID that this formulary has no dose of', () => {
    for (const name of ['ketoprofen', 'cimicoxib', 'deracoxib', 'tolfenamic acid', 'flunixin'])
      expect(of(carprofen, dog, [earlier(name, 1)])).toContain('block two-nsaids')
  })

  // EU label of mavacoxib, remembered: no other NSAID within a month of the last dose.
  it('is refused for a month after mavacoxib', () => {
    expect(of(carprofen, dog, [earlier('mavacoxib', 25)])).toContain('block two-nsaids')
    expect(of(carprofen, dog, [earlier('mavacoxib', 31)])).toEqual([])
  })
})

describe('every NSAID', () => {
  it('is barred while pressure or volume is low, or blood runs', () => {
    const drugs: readonly Drug[] = formulary
    const silent = drugs
      .filter(({ groups }) => groups.includes('nsaid'))
      .flatMap(({ id, doses }) => doses.map((row) => ({ id, row })))
      .filter(({ row }) =>
        (['hypotension', 'hypovolaemia', 'active-bleeding'] as const).some(
          (word) => !row.exclusions.value.some(({ when }) => when.kind === 'any-of' && when.words.includes(word)),
        ),
      )
    expect(silent.map(({ id }) => id)).toEqual([])
  })
})

describe('a flat face', () => {
  it('is said of an alpha-2 agonist, as it is of acepromazine and the opioids', () => {
    for (const [drug, dose] of [
      ['dexmedetomidine', '5'],
      ['medetomidine', '10'],
    ] as const) {
      const line: PlannedLine = { id: 'd', drug, use: 'premed', route: 'IM', dose: quantity(dose, 'ug/kg') }
      expect(of(line, { ...dog, conditions: ['brachycephalic'] })).toContain('note sedation-with-flat-face')
      expect(of(line)).not.toContain('note sedation-with-flat-face')
    }
  })
})

describe('body score and breed', () => {
  const said = (more: Partial<DosedAnimal>) => judge(carprofen, { ...dog, ...more }).findings.map(({ code }) => code)

  it('say that a thin animal starts low', () => {
    expect(said({ bodyCondition: 2 })).toContain('thin-start-low')
    expect(said({ bodyCondition: 3 })).toContain('thin-start-low')
    expect(said({ bodyCondition: 4 })).not.toContain('thin-start-low')
  })

  it('say when the weight could not be held against the breed that was written', () => {
    expect(said({ breed: 'Kromfohrländer' })).toContain('breed-not-known')
    expect(said({ breed: 'English Cocker Spaniel' })).not.toContain('breed-not-known')
    expect(said({ breed: 'Crossbreed' })).not.toContain('breed-not-known')
    expect(said({})).not.toContain('breed-not-known')
  })
})
