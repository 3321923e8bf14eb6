import { readingLevel } from '#core/agreement/reading-level.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Block, paragraph, small } from '../render/model.ts'
import { textOfBlocks } from '../render/text-of-blocks.ts'
import type { Spoken } from './owner-words.ts'

/** Small print: how many words and sentences these blocks have, and how easy they are to read by the formulas of the language. */
export function readingNote(blocks: readonly Block[], { language, words: { reading } }: Spoken): Block {
  const { counts, measures, aim } = readingLevel(textOfBlocks(blocks), language)
  const said = fill(reading.said, {
    words: String(counts.words),
    sentences: String(counts.sentences),
    measures: measures.map(({ by, value }) => fill(reading.measures[by], { value: value.toFixed(1) })).join(', '),
    aim: fill(reading.aims[aim.by], { bound: String(aim.bound) }),
  })
  return paragraph([small(said)])
}
