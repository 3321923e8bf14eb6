import { expect, test } from 'vitest'
import {
  countText,
  fernandezHuerta,
  fleschKincaidGrade,
  readingEase,
  smogGrade,
  smogQuick,
  szigrisztPazos,
} from '#core/agreement/readability.ts'

const platypus = { words: 13, sentences: 1, polysyllables: 0 }

test('The thirteen-word sentence of the encyclopaedia has the printed grade 11.3 with 24 syllables', () => {
  // Formula as printed on the US Department of Veterans Affairs readability page; worked figure 11.3.
  expect(fleschKincaidGrade({ ...platypus, syllables: 24 }).toFixed(2)).toBe('11.26')
  expect(fleschKincaidGrade({ ...platypus, syllables: 24 }).toFixed(1)).toBe('11.3')
  expect(readingEase({ ...platypus, syllables: 24 }).toFixed(2)).toBe('37.46')
})

test('Two syllables more in the same sentence move the grade by almost two: the counter is the risk', () => {
  // Other editions of the same article count 26 syllables: grade 13.08, ease 24.44.
  expect(fleschKincaidGrade({ ...platypus, syllables: 26 }).toFixed(2)).toBe('13.08')
  expect(readingEase({ ...platypus, syllables: 26 }).toFixed(2)).toBe('24.44')
})

test('The six-word sentence of the cat on the mat has ease 116 and a grade below nought', () => {
  const counts = countText('The cat sat on the mat.')
  expect(counts).toEqual({ words: 6, sentences: 1, syllables: 6, polysyllables: 0 })
  expect(readingEase(counts).toFixed(3)).toBe('116.145')
  expect(fleschKincaidGrade(counts).toFixed(2)).toBe('-1.45')
})

test('The bounds of the two formulas are those of one-syllable words standing alone', () => {
  // Published bounds: ease at most 121.22, grade at least -3.40.
  const shortest = { words: 1, sentences: 1, syllables: 1, polysyllables: 0 }
  expect(readingEase(shortest).toFixed(2)).toBe('121.22')
  expect(fleschKincaidGrade(shortest).toFixed(2)).toBe('-3.40')
})

test('SMOG gives grade 11 for 64 long words in 30 sentences, 11.47 in the exact form', () => {
  // McLaughlin, J Reading 1969;12:639-646; worked example of the quick form: 3 + the root of 64 = 11.
  expect(smogQuick({ sentences: 30, polysyllables: 64 }).toFixed(2)).toBe('11.00')
  expect(smogGrade({ sentences: 30, polysyllables: 64 }).toFixed(2)).toBe('11.47')
})

test('A text below thirty sentences is brought to thirty by its own average', () => {
  // 12 long words in 15 sentences are 24 in 30: 7.9 by the quick form, 8.24 by the exact one.
  expect(smogQuick({ sentences: 15, polysyllables: 12 }).toFixed(1)).toBe('7.9')
  expect(smogGrade({ sentences: 15, polysyllables: 12 }).toFixed(2)).toBe('8.24')
})

test('A full stop inside a number ends no sentence, a line break does', () => {
  const counts = countText('It was 2.5 of 100. It is known\nNext steps')
  expect(counts.sentences).toBe(3)
  expect(counts.words).toBe(10)
})

test('The Spanish formulas give what their coefficients give by hand, at the edge of the INFLESZ bands too', () => {
  // Fernández Huerta 1959: 206.84 − 60·2 − 1.02·10; Szigriszt Pazos 1993: 206.835 − 62.3·2 − 10. Coefficients remembered.
  const counts = { words: 100, sentences: 10, syllables: 200, polysyllables: 0 }
  expect(fernandezHuerta(counts).toFixed(2)).toBe('76.64')
  expect(szigrisztPazos(counts).toFixed(3)).toBe('72.235')
  // One syllable more in each sentence of ten words takes six points, as 60 and 62.3 in a hundred words say.
  expect(fernandezHuerta({ ...counts, syllables: 210 }).toFixed(2)).toBe('70.64')
  expect(szigrisztPazos({ ...counts, syllables: 210 }).toFixed(3)).toBe('66.005')
})
