import { expect, test } from 'vitest'
import { syllablesInSpanish } from './syllables-in-spanish.ts'

// Parted by hand after the rules of Spanish spelling, not by the program.
const parted = [
  'a-cor-da-mos',
  'a-ho-ra',
  'a-é-re-o',
  'ahu-mar',
  'a-ler-gia',
  'a-ños',
  'a-ve-ri-guáis',
  'bú-ho',
  'bul-to',
  'ca-be-za',
  'ca-í-a',
  'ci-ru-gí-a',
  'ciu-dad',
  'cui-da-do',
  'dí-as',
  'due-ño',
  'es-tre-cho',
  'fue-ra',
  'guí-a',
  'hay',
  'he-ri-da',
  'hin-cha-zón',
  'hue-so',
  'in-fec-ción',
  'le-er',
  'lim-piáis',
  'me-di-ci-na',
  'mu-cho',
  'muy',
  'ner-vio',
  'no',
  'o-í-do',
  'o-pe-ra-ción',
  'o-re-ja',
  'pár-pa-do',
  'pe-que-ño',
  'pin-güi-no',
  'pue-de',
  'que',
  'qui-tar',
  'ra-íz',
  're-ír',
  'si-guien-te',
  'tím-pa-no',
  'to-da-ví-a',
  'U-ru-guay',
  've-te-ri-na-rio',
  'vuel-ve',
  'y',
  'ya',
  'ma-yo',
]

test('Words are parted where Spanish spelling parts them: hiatus, diphthong, triphthong, mute u', () => {
  const wrong = parted.filter((word) => syllablesInSpanish(word.replaceAll('-', '')) !== word.split('-').length)
  expect(wrong).toEqual([])
})

test('A number counts as it is read aloud', () => {
  const read: Readonly<Record<string, string>> = {
    '1': 'u-no',
    '16': 'die-ci-séis',
    '22': 'vein-ti-dós',
    '26': 'vein-ti-séis',
    '31': 'trein-ta-y-u-no',
    '100': 'cien',
    '102': 'cien-to-dos',
    '309': 'tres-cien-tos-nue-ve',
    '500': 'qui-nien-tos',
    '1993': 'mil-no-ve-cien-tos-no-ven-ta-y-tres',
    '2000': 'dos-mil',
    '2.5': 'dos-pun-to-cin-co',
  }
  const wrong = Object.entries(read).filter(([digits, said]) => syllablesInSpanish(digits) !== said.split('-').length)
  expect(wrong).toEqual([])
})

test('Every word has at least one syllable', () => {
  for (const word of ['x', 'mL', 'cm', 'ñ']) expect(syllablesInSpanish(word)).toBeGreaterThanOrEqual(1)
})
