import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DosedAnimal, Given, PlannedLine } from './request.ts'

const at = Temporal.Instant.from('2026-03-02T09:00:00Z')
const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const dog = { species: 'dog', weight: quantity('10', 'kg'), weighedAt: at, ageMonths: 60 } as const

const having = (...conditions: DosedAnimal['conditions']): DosedAnimal => ({ ...dog, conditions })
const intoEar = (drug: string, percent?: string): PlannedLine => ({
  id: 'e',
  drug,
  use: 'ear',
  ...(percent !== undefined && { stock: quantity(percent, 'mg/mL') }),
})
const judge = (line: PlannedLine, animal: DosedAnimal, given: readonly Given[] = []) =>
  doseLines({ animal, at, given, lines: [line] }, knowledge)
const of = (line: PlannedLine, animal: DosedAnimal) =>
  judge(line, animal).lines[0]?.findings.map(({ level, code }) => `${level} ${code}`)

// Dosing rules, section 15: block chlorhexidine from 0.2 % on, alcohol, iodine and peroxide in an open ear; a weak one
// is only warned of, as polymyxin, ceruminolytics, acids, propylene glycol and every aminoglycoside are.
describe('what is put into an ear', () => {
  const open = having('open-drum')
  const block = 'block ototoxic-with-open-ear'
  const confirm = 'confirm ototoxic-with-open-ear'

  it('is barred from an open one where it is known to take hearing', () => {
    for (const drug of ['povidone-iodine', 'alcohol', 'hydrogen-peroxide']) {
      expect(of(intoEar(drug), open)).toContain(block)
      expect(of(intoEar(drug), having('open-bulla'))).toContain(block)
    }
  })

  it('is barred from 0.2 % of chlorhexidine on, asked about below it, and barred where nobody says how strong', () => {
    expect(of(intoEar('chlorhexidine', '2'), open)).toContain(block)
    expect(of(intoEar('chlorhexidine', '1.5'), open)).toContain(confirm)
    expect(of(intoEar('chlorhexidine', '1.5'), open)).not.toContain(block)
    expect(of(intoEar('chlorhexidine'), open)).toContain(block)
  })

  it('is asked about where hearing may suffer', () => {
    for (const drug of [
      'polymyxin-b',
      'propylene-glycol',
      'docusate',
      'carbamide-peroxide',
      'salicylic-acid',
      'acetic-acid',
      'ticarcillin',
      'tobramycin',
      'neomycin',
      'gentamicin',
    ]) {
      expect(of(intoEar(drug), open)).toContain(confirm)
    }
  })

  it('is asked about, whatever it is but saline, while the drum is open or nobody says that it is whole', () => {
    const asked = 'confirm only-saline-in-open-ear'
    expect(of(intoEar('dexamethasone'), open)).toContain(asked)
    expect(of(intoEar('dexamethasone'), having())).toContain(asked)
    expect(of(intoEar('chlorhexidine', '40'), having())).toContain(asked)
    expect(of(intoEar('dexamethasone'), having('intact-drums'))).not.toContain(asked)
    expect(of(intoEar('balanced-crystalloid'), open)).not.toContain(asked)
  })

  it('is never silent about an ear that somebody calls both whole and open', () => {
    expect(of(intoEar('povidone-iodine'), having('intact-drums', 'open-bulla'))).toContain(block)
  })

  it('gets no amount worked out, and says so', () => {
    const [line] = judge(intoEar('povidone-iodine'), having('intact-drums')).lines
    expect(line?.verdict).toBe('refused')
    expect(line?.findings.map(({ code }) => code)).toEqual(['ear-product-not-measured'])
  })

  it('reaches stomach and gut as a steroid, but not the kidney as an aminoglycoside', () => {
    const both = (ear: string, drug: string, use: PlannedLine['use']) =>
      doseLines(
        { animal: having('intact-drums'), at, given: [], lines: [intoEar(ear), { id: 'o', drug, use }] },
        knowledge,
      ).lines[1]?.findings.map(({ code }) => code)
    expect(both('gentamicin', 'meloxicam', 'nsaid')).not.toContain('pair-forbidden')
    expect(both('dexamethasone', 'meloxicam', 'nsaid')).toContain('nsaid-with-steroid')
  })

  it('does not bar the same drug elsewhere', () => {
    const swallowed: PlannedLine = { ...intoEar('dexamethasone'), use: 'steroid' }
    expect(of(swallowed, open)).not.toContain('confirm only-saline-in-open-ear')
  })
})

describe('what is in an open ear already', () => {
  const line: PlannedLine = { id: 'm', drug: 'maropitant', use: 'antiemetic', dose: quantity('1', 'mg/kg') }
  const codes = (given: Given, animal: DosedAnimal) =>
    judge(line, animal, [given]).findings.map(({ level, code }) => `${level} ${code}`)
  const drops = (drug: string): Given => ({ drug, onSurface: true, route: 'topical-ear' })

  it('is said with the plan, so that somebody stops it', () => {
    const animal = having('open-drum')
    expect(codes(drops('chlorhexidine 4 % flush'), animal)).toContain('confirm ototoxic-in-open-ear')
    expect(codes(drops('polymyxin B drops'), animal)).toContain('confirm ototoxic-in-open-ear')
    expect(codes({ ...drops('neomycin'), at: at.subtract({ hours: 2 }) }, animal)).toContain(
      'confirm ototoxic-in-open-ear',
    )
  })

  it('is not said of a whole drum, of another route, or of drops stopped days ago', () => {
    const said = 'confirm ototoxic-in-open-ear'
    expect(codes(drops('neomycin'), having('intact-drums'))).not.toContain(said)
    expect(codes({ drug: 'neomycin' }, having('open-drum'))).not.toContain(said)
    expect(codes({ ...drops('neomycin'), at: at.subtract({ hours: 72 }) }, having('open-drum'))).not.toContain(said)
  })
})

describe('a drug that harms the inner ear from the blood', () => {
  it('is noted while nobody says whether the drums are whole', () => {
    const gentamicin: PlannedLine = {
      id: 'g',
      drug: 'gentamicin',
      use: 'antibiotic_course',
      dose: quantity('9', 'mg/kg'),
      stock: quantity('50', 'mg/mL'),
    }
    expect(of(gentamicin, having())).toEqual(['note drums-unknown'])
    expect(of(gentamicin, having('intact-drums'))).toEqual([])
    expect(of(gentamicin, having('open-bulla'))).toEqual(['confirm ototoxic-with-open-ear'])
  })
})
