import { expect, test } from 'vitest'
import { readingLevel } from './reading-level.ts'

test('A short English sentence meets the aim, one of long words does not', () => {
  expect(readingLevel('The cat sat on the mat.', 'en')).toMatchObject({
    meetsAim: true,
    counts: { words: 6, syllables: 6 },
  })
  const hard = 'Perioperative complications necessitate multidisciplinary consideration.'
  expect(readingLevel(hard, 'en').meetsAim).toBe(false)
})

test('A Spanish text is counted and measured by its own rules', () => {
  // El pe-rro co-me y duer-me: 5 words, 8 syllables.
  const easy = readingLevel('El perro come y duerme.', 'es')
  expect(easy.counts).toMatchObject({ words: 5, sentences: 1, syllables: 8 })
  expect(easy.measures.map(({ by }) => by)).toEqual(['fernandez-huerta', 'szigriszt-pazos'])
  expect(easy.meetsAim).toBe(true)
  const hard = 'Complicaciones perioperatorias requieren consideraciones multidisciplinarias extraordinarias.'
  expect(readingLevel(hard, 'es').meetsAim).toBe(false)
})
