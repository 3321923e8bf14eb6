import { Decimal } from '#core/units/quantity.ts'
import { syllablesIn } from './syllables.ts'

/** What a reading formula needs to know of a text. A polysyllable is a word of three syllables or more. */
export type TextCounts = {
  readonly words: number
  readonly sentences: number
  readonly syllables: number
  readonly polysyllables: number
}

/**
 * Flesch reading ease, about 0 (hard) to 100 (easy): 206.835 − 1.015·W/S − 84.6·Y/W (Flesch, J Appl Psychol 1948).
 * English only.
 *
 * @example readingEase({ words: 6, sentences: 1, syllables: 6, polysyllables: 0 }) // 116.145
 */
export function readingEase({ words, sentences, syllables }: TextCounts): Decimal {
  return new Decimal('206.835')
    .minus(new Decimal('1.015').times(words).div(sentences))
    .minus(new Decimal('84.6').times(syllables).div(words))
}

/**
 * Flesch–Kincaid grade, in school years of the United States: 0.39·W/S + 11.8·Y/W − 15.59 (Kincaid et al. 1975).
 *
 * @example fleschKincaidGrade({ words: 13, sentences: 1, syllables: 24, polysyllables: 5 }) // 11.26
 */
export function fleschKincaidGrade({ words, sentences, syllables }: TextCounts): Decimal {
  return new Decimal('0.39')
    .times(words)
    .div(sentences)
    .plus(new Decimal('11.8').times(syllables).div(words))
    .minus('15.59')
}

/**
 * SMOG grade: 1.0430·√(P·30/S) + 3.1291 (McLaughlin, J Reading 1969;12:639). Meant for 30 sentences and more; a shorter
 * text is scaled by its sentences, as the usual instruction for short texts does.
 *
 * @example smogGrade({ words: 400, sentences: 30, syllables: 600, polysyllables: 64 }) // 11.47
 */
export function smogGrade({ sentences, polysyllables }: Pick<TextCounts, 'sentences' | 'polysyllables'>): Decimal {
  return new Decimal(polysyllables).times(30).div(sentences).sqrt().times('1.0430').plus('3.1291')
}

/** The quick form for the back of an envelope: 3 + √(polysyllables in 30 sentences). */
export function smogQuick({ sentences, polysyllables }: Pick<TextCounts, 'sentences' | 'polysyllables'>): Decimal {
  return new Decimal(polysyllables).times(30).div(sentences).sqrt().plus(3)
}

/**
 * Ease of a Spanish text, about 0 (hard) to 100 (easy): 206.84 − 60·Y/W − 1.02·W/S (Fernández Huerta, Consigna 1959, which
 * prints 0.60 for syllables in a hundred words). The last term is printed there as "sentences"; that it must be the words of
 * one sentence is the reading of Law (2011) and of every program since. Both remembered, not read again.
 *
 * @example fernandezHuerta({ words: 10, sentences: 1, syllables: 20, polysyllables: 0 }) // 76.64
 */
export function fernandezHuerta({ words, sentences, syllables }: TextCounts): Decimal {
  return new Decimal('206.84')
    .minus(new Decimal(60).times(syllables).div(words))
    .minus(new Decimal('1.02').times(words).div(sentences))
}

/**
 * Ease of a Spanish text: 206.835 − 62.3·Y/W − W/S (Szigriszt Pazos 1993). On the INFLESZ scale (Barrio-Cantalejo 2008)
 * below 40 is very hard, 40 to 55 rather hard, 55 to 65 normal, 65 to 80 fairly easy, above 80 very easy. Remembered.
 *
 * @example szigrisztPazos({ words: 10, sentences: 1, syllables: 20, polysyllables: 0 }) // 72.235
 */
export function szigrisztPazos({ words, sentences, syllables }: TextCounts): Decimal {
  return new Decimal('206.835')
    .minus(new Decimal('62.3').times(syllables).div(words))
    .minus(new Decimal(words).div(sentences))
}

/**
 * Counts an English text, or another with the counter of its syllables. A line break ends a sentence, so that headings and list items do not run into each other;
 * a full stop inside a number does not.
 *
 * @example countText('The cat sat on the mat.') // words 6, sentences 1, syllables 6, polysyllables 0
 */
export function countText(text: string, syllablesOf: (word: string) => number = syllablesIn): TextCounts {
  const sentences = text
    .split(/\n+|(?<=[.!?…])["”’)]*\s+/)
    .map(wordsIn)
    .filter((words) => words.length > 0)
  const syllables = sentences.flat().map(syllablesOf)
  return {
    words: syllables.length,
    sentences: sentences.length,
    syllables: syllables.reduce((sum, count) => sum + count, 0),
    polysyllables: syllables.filter((count) => count >= 3).length,
  }
}

function wordsIn(sentence: string): string[] {
  return sentence.match(/\d+(?:[.,]\d+)*|[\p{L}’']*\p{L}[\p{L}’']*/gu) ?? []
}
