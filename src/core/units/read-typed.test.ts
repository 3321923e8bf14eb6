import { describe, expect, it } from 'vitest'
import { convert } from './quantity.ts'
import { readTyped, type TypedOptions } from './read-typed.ts'
import { inBothUnits, readTypedWeight } from './show-weight.ts'

const point: TypedOptions = { decimalMark: '.' }
const comma: TypedOptions = { decimalMark: ',' }

function reads(text: string, options: TypedOptions = point): string {
  const result = readTyped(text, options)
  return result.kind === 'answer' ? result.answer.toString() : result.refusal.because
}

describe('reading what people type', () => {
  it('reads a number with its unit, with or without a space', () => {
    expect(reads('12.5 kg')).toBe('12.5 kg')
    expect(reads('12.5kg')).toBe('12.5 kg')
    expect(reads('  4.1\u00a0kg ')).toBe('4.1 kg')
    expect(reads('12 kilos')).toBe('12 kg')
    expect(reads('0.3 mg/kg')).toBe('0.3 mg/kg')
    expect(reads('375 ug/m2')).toBe('375 ug/m2')
    expect(reads('20 [iU]/mL')).toBe('20 [iU]/mL')
  })

  it('reads pounds by every name they have in a clinic, and converts them exactly', () => {
    for (const text of ['27 lb', '27lbs', '27 pounds', '27 LB', '27 [lb_av]']) expect(reads(text)).toBe('27 [lb_av]')
    const read = readTyped('27 lb')
    expect(read.kind === 'answer' && convert(read.answer, 'kg')?.toString()).toBe('12.24699399 kg')
  })

  it('reads a decimal comma only where the place writes so', () => {
    expect(reads('12,5 kg', comma)).toBe('12.5 kg')
    expect(reads('3,5 kg', {})).toBe('comma-without-locale')
    expect(reads('3,5 kg', point)).toBe('other-decimal-mark')
    expect(reads('3.5 kg', comma)).toBe('other-decimal-mark')
    expect(reads('3.5 kg', {})).toBe('3.5 kg')
  })

  it('asks again where thousands and decimals look the same', () => {
    expect(reads('1,250 kg', point)).toBe('thousands-or-decimal')
    expect(reads('1,250 kg', comma)).toBe('thousands-or-decimal')
    expect(reads('1.250 kg', comma)).toBe('thousands-or-decimal')
    expect(reads('1.250 kg', {})).toBe('thousands-or-decimal')
    expect(reads('1.250 kg', point)).toBe('1.25 kg')
    expect(reads('1,250.5 g', point)).toBe('thousands-or-decimal')
    expect(reads('1.2.3 kg')).toBe('thousands-or-decimal')
  })

  it('asks for a unit that is missing or unknown', () => {
    expect(reads('12.5')).toBe('no-unit')
    expect(reads('12 oz')).toBe('unknown-unit')
    for (const text of ['3.6 mg/lb', '2 mg/lbs', '1 mg/lb/h']) expect(reads(text)).toBe('per-pound')
    expect(reads('12 M')).toBe('unknown-unit')
    expect(reads('12 toString')).toBe('unknown-unit')
    expect(reads('12 mL', { ...point, wanted: ['kg', '[lb_av]'] })).toBe('wrong-unit')
  })

  it('never chooses from a range, a limit or two numbers', () => {
    for (const text of ['10–12 kg', '10-12 kg', '10 - 12 kg', '10 kg–12 kg', '10 to 12 kg']) {
      expect(reads(text)).toBe('range')
    }
    for (const text of ['<0.5 kg', '> 12 kg', '≤5 mg', '~12 kg', 'about 12 kg']) expect(reads(text)).toBe('bound')
    for (const text of ['12 lb 4 oz', '1 250 kg', '4.1 kg 4.2 kg', '12 13 kg']) expect(reads(text)).toBe('two-numbers')
  })

  it('asks for the digit that was not typed and for zeros that may hide a mark', () => {
    expect(reads('.5 kg')).toBe('missing-first-digit')
    expect(reads('5. kg')).toBe('missing-last-digit')
    expect(reads('05 kg')).toBe('padded-with-zeros')
    expect(reads('00.5 kg')).toBe('padded-with-zeros')
  })

  it('takes a trailing zero of a scale display as the number it is', () => {
    expect(reads('4.10 kg')).toBe('4.1 kg')
    expect(reads('5.0 kg')).toBe('5 kg')
  })

  it('asks again for what is no plain text', () => {
    expect(reads('12 kg 🐶')).toBe('strange-character')
    expect(reads('１２ kg')).toBe('strange-character')
    expect(reads('½ kg')).toBe('strange-character')
    expect(reads('١٢ kg')).toBe('strange-character')
    expect(reads('12 кg')).toBe('strange-character')
    expect(reads('')).toBe('empty')
    expect(reads('   ')).toBe('empty')
    expect(reads('kg')).toBe('no-number')
    expect(reads('-5 kg')).toBe('negative')
    expect(reads('1e3 kg')).toBe('two-numbers')
    expect(reads('12.5 kg.')).toBe('unknown-unit')
    expect(reads(',')).toBe('missing-first-digit')
  })
})

describe('a weight in both units', () => {
  it('shows pounds as typed and kilograms to the hundredth', () => {
    expect(inBothUnits({ value: convertible('27 lb'), unit: '[lb_av]' })).toBe('12.25 kg (27 lb)')
  })

  it('shows kilograms as typed and pounds to the tenth', () => {
    const read = readTypedWeight('12.5 kg', point)
    expect(read.kind === 'answer' && read.answer.shown).toBe('12.5 kg (27.6 lb)')
  })

  it('keeps the exact kilograms for every calculation', () => {
    const read = readTypedWeight('27 lb', point)
    expect(read.kind === 'answer' && read.answer.kilograms.toString()).toBe('12.24699399 kg')
  })

  it('refuses a volume as a weight', () => {
    const read = readTypedWeight('12 mL', point)
    expect(read.kind === 'refusal' && read.refusal.because).toBe('wrong-unit')
  })
})

function convertible(text: string) {
  const read = readTyped(text)
  if (read.kind === 'refusal') throw new Error(read.refusal.because)
  return read.answer.value
}
