import { expect, test } from 'vitest'
import { changedNumbers } from '#core/agreement/numbers-shown.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { toldToday } from './consent-today.ts'

const { file } = inputFor(exampleEntries())
const english = toldToday.numbersOf(file, 'teca-lbo', 'en')
const spanish = toldToday.numbersOf(file, 'teca-lbo', 'es-MX')

test('The numbers of an operation are in the language that is asked for, with the same figures', () => {
  expect(english.length).toBeGreaterThan(5)
  expect(spanish).toHaveLength(english.length)
  for (const [at, { said, ...figures }] of spanish.entries()) {
    const { said: inEnglish, ...same } = english[at] ?? {}
    expect(figures).toEqual(same)
    expect(said).not.toBe(inEnglish)
    expect(said.match(/\d+/g)).toEqual(inEnglish?.match(/\d+/g))
  }
  expect(english.map(({ said }) => said).join(' ')).toMatch(/\bOf 100 dogs\b/)
  expect(spanish.map(({ said }) => said).join(' ')).toMatch(/\bDe (?:cada )?100 perros\b/)
})

test('Another language of the same figures asks nobody again; another figure does', () => {
  expect(changedNumbers(english, spanish)).toEqual([])
  const [first, ...rest] = spanish
  if (!first) throw new Error('There are numbers for this operation.')
  expect(changedNumbers(english, [{ ...first, high: 99 }, ...rest])).toHaveLength(1)
})

test('A language for which there is no whole set of words is told in English', () => {
  expect(toldToday.numbersOf(file, 'teca-lbo', 'fr')).toEqual(english)
})
