import { expect, test } from 'vitest'
import { syllablesIn } from './syllables.ts'

// Counted by ear, not by the program.
const counted: Readonly<Record<string, number>> = {
  a: 1,
  ablation: 3,
  after: 2,
  allergy: 3,
  antibiotic: 5,
  area: 3,
  balance: 2,
  blink: 1,
  bone: 1,
  breathing: 2,
  canal: 2,
  cared: 1,
  collar: 2,
  cough: 1,
  decision: 3,
  discharge: 2,
  doses: 2,
  drain: 1,
  ear: 1,
  ears: 1,
  eye: 1,
  eyelid: 2,
  fluid: 2,
  hearing: 2,
  hour: 1,
  infection: 3,
  itch: 1,
  little: 2,
  made: 1,
  medicine: 3,
  needed: 2,
  nerve: 1,
  nerves: 1,
  nurse: 1,
  nurses: 2,
  opened: 2,
  operation: 4,
  owner: 2,
  people: 2,
  phone: 1,
  plastic: 2,
  quiet: 2,
  removal: 3,
  removed: 2,
  skin: 1,
  something: 2,
  study: 2,
  studies: 2,
  surgeon: 2,
  surgery: 3,
  swelling: 2,
  table: 2,
  tables: 2,
  tablet: 2,
  the: 1,
  tumour: 2,
  used: 1,
  walked: 1,
  weakness: 2,
  wound: 1,
  years: 1,
}

test('Words of our papers are counted as they are heard', () => {
  const wrong = Object.entries(counted).filter(([word, syllables]) => syllablesIn(word) !== syllables)
  expect(wrong.map(([word]) => `${word} ${syllablesIn(word)}`)).toEqual([])
})

test('A number counts as it is read aloud', () => {
  expect(syllablesIn('7')).toBe(2) // seven
  expect(syllablesIn('26')).toBe(3) // twenty-six
  expect(syllablesIn('309')).toBe(4) // three hundred nine
  expect(syllablesIn('2.5')).toBe(3) // two point five
})

test('Every word has at least one syllable', () => {
  for (const word of ['hmm', 'x', 'ø', 'the', 'shh']) expect(syllablesIn(word)).toBeGreaterThanOrEqual(1)
})
