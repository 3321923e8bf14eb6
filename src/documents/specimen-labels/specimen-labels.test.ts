import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderText } from '../render/text.ts'
import { specimenLabels } from './specimen-labels.ts'

const make = entryMaker({}, 9)

function sheetOf(entries: readonly Entry[]): string {
  const made = specimenLabels.of(inputFor(entries))
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made).replaceAll(/[ \n]+/g, ' ')
}

test('A label says the number, the side in full, animal, household, chip, place, time and tests', () => {
  const said = sheetOf(exampleEntries())
  for (const words of [
    'Bramble · Olive Owner',
    'B-1',
    'LEFT ear',
    'bulla, on entry',
    'aerobic culture, anaerobic culture',
    /born .*chip \d/,
    /taken 1 March 2026|taken \d+ \w+ 2026/,
    'antibiotics on board: none',
  ]) {
    expect(said).toMatch(words)
  }
})

test('The side on the label is the side of the pot, not that of the booking', () => {
  const other = make({
    kind: 'specimen',
    subject: { kind: 'ear', animal: 'animal-1', side: 'RIGHT' },
    body: {
      site: 'mass',
      tests: ['histology'],
      label: 'B-9',
      laboratory: null,
      antibioticsOnBoard: 'cefazolin 09:25',
      expectedBy: null,
      operation: 'operation-1',
    },
  })
  const said = sheetOf([...exampleEntries(), other])
  expect(said).toMatch(/B-9 RIGHT ear/)
  expect(said).toContain('antibiotics on board: cefazolin 09:25 · read in the house')
})

test('What nobody knows of the animal is said, and without a pot there is no sheet', () => {
  const entries = exampleEntries().map((entry) =>
    entry.kind === 'identity'
      ? { ...entry, body: { ...(entry.body as object), chip: null, born: null } as typeof entry.body }
      : entry,
  )
  expect(sheetOf(entries)).toContain('birth date not known, chip not known')
  expect(specimenLabels.of(inputFor(entries.filter(({ kind }) => kind !== 'specimen')))).toMatchObject({
    kind: 'not-yet',
  })
})
