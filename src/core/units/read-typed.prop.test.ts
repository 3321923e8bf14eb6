import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal, plain } from './quantity.ts'
import { readTyped } from './read-typed.ts'

const hundredths = fc.integer({ min: 1, max: 99_999 }).map((n) => new Decimal(n).div(100))
const words = fc.constantFrom('kg', 'lb', 'g', 'mg', 'mL')

describe('typed text is never guessed', () => {
  it('gives back the very number that was written, in a place that writes points', () => {
    fc.assert(
      fc.property(hundredths, words, (value, word) => {
        const read = readTyped(`${plain(value)} ${word}`, { decimalMark: '.' })
        expect(read.kind).toBe('answer')
        if (read.kind === 'answer') expect(read.answer.value.eq(value)).toBe(true)
      }),
    )
  })

  it('gives the same for a comma where commas are written, and refuses it elsewhere', () => {
    fc.assert(
      fc.property(hundredths, words, (value, word) => {
        const text = `${plain(value).replace('.', ',')} ${word}`
        const here = readTyped(text, { decimalMark: ',' })
        expect(here.kind === 'answer' && here.answer.value.eq(value)).toBe(true)
        if (text.includes(',')) expect(readTyped(text).kind).toBe('refusal')
      }),
    )
  })

  it('answers any text with a refusal or with a quantity whose digits stand in the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,-–<> kglbmL½１') })),
        (text) => {
          const read = readTyped(text, { decimalMark: '.' })
          if (read.kind === 'refusal') return
          const number = /[\d.]+/.exec(text)?.[0] ?? ''
          expect(read.answer.value.eq(new Decimal(number))).toBe(true)
          // The 2 of a square metre belongs to the unit.
          expect((text.replaceAll('m2', '').match(/\d+(\.\d+)?/g) ?? []).length).toBe(1)
        },
      ),
      { numRuns: 2000 },
    )
  })
})
