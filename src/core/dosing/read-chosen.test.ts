import { describe, expect, it } from 'vitest'
import { bupivacaine } from '#content/formulary/bupivacaine.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { rowKey } from '#core/formulary/drug.ts'
import { type ChosenDraft, readChosen, rowsFor } from './read-chosen.ts'

const [block] = rowsFor(bupivacaine, 'dog')
if (!block) throw new Error('Bupivacaine has no row for dogs.')
const typed: ChosenDraft = {
  drug: 'bupivacaine',
  row: rowKey(block),
  route: 'infiltration',
  dose: '1 mg/kg',
  because: 'Half of the ceiling, so that a splash stays possible.',
}
const facts = { drugs: [bupivacaine], species: 'dog', rules: dosingRules, decimalMark: '.' } as const

function refused(part: Partial<ChosenDraft>): string[] {
  const read = readChosen({ ...typed, ...part }, facts)
  if (read.kind === 'answer') throw new Error(`Read as ${JSON.stringify(read.answer)}.`)
  return read.refusal.map((one) => `${one.at} ${one.because === 'blocked' ? one.finding.code : one.because}`)
}

describe('a dose that the house chooses', () => {
  it('is the one number that was typed, with its row, route and reason', () => {
    const read = readChosen(typed, facts)
    expect(read).toEqual({
      kind: 'answer',
      answer: {
        drug: 'bupivacaine',
        use: 'local_block',
        route: 'infiltration',
        qualifier: null,
        dose: { value: '1', unit: 'mg/kg' },
        because: typed.because,
      },
    })
  })

  it('is never filled in: without a dose, or without its unit, it is asked for', () => {
    expect(refused({ dose: '' })).toEqual(['dose quantity-empty'])
    expect(refused({ dose: '1' })).toEqual(['dose quantity-no-unit'])
    expect(refused({ dose: '1 to 2 mg/kg' })).toEqual(['dose quantity-range'])
    expect(refused({ dose: '1 mg/mL' })).toEqual(['dose quantity-wrong-unit'])
  })

  it('names every part that nobody chose', () => {
    expect(refused({ drug: '', because: ' ' })).toEqual(['drug not-chosen', 'because not-written'])
    expect(refused({ row: '' })).toEqual(['row not-chosen'])
    expect(refused({ route: 'PO', dose: '' })).toEqual(['route not-chosen', 'dose quantity-empty'])
  })

  it('may lie outside of the range, but not where only a slip of the unit would put it', () => {
    expect(readChosen({ ...typed, dose: '2.5 mg/kg' }, facts).kind).toBe('answer')
    expect(readChosen({ ...typed, dose: '1000 ug/kg' }, facts).kind).toBe('answer')
    expect(refused({ dose: '1000 mg/kg' })).toEqual(['dose dose-unit-suspected'])
    expect(refused({ dose: '12 mg/kg' })).toEqual(['dose dose-five-times-range'])
    expect(refused({ dose: '1 ug/kg' })).toEqual(['dose dose-unit-suspected-low'])
  })

  it('has no row for an animal that the formulary gives none', () => {
    expect(new Set(rowsFor(bupivacaine, 'cat').map(({ use }) => use))).toEqual(new Set(['local_block']))
    expect(rowsFor(undefined, 'dog')).toEqual([])
  })
})
