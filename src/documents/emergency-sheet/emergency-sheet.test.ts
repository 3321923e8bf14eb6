import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import type { Paper, Table } from '../render/model.ts'
import { renderText } from '../render/text.ts'
import { emergencySheetPaper } from './emergency-sheet.ts'

const make = entryMaker({}, 5)

function catOf(weight: string): Paper {
  const identity = exampleEntries().find(({ kind }) => kind === 'identity')
  const cat = make({ kind: 'identity', body: { ...(identity?.body as unknown as BodyOf<'identity'>), species: 'cat' } })
  const weighed = make({
    kind: 'weight',
    body: { weight: { value: weight, unit: 'kg' }, typed: null, how: 'estimated', bodyCondition: null },
  })
  const made = emergencySheetPaper.of(inputFor([cat, weighed]))
  if (!isPaper(made)) throw new Error(made.because)
  return made
}

function wall(paper: Paper): Table {
  const table = paper.blocks.find((block) => block.kind === 'table')
  if (!table) throw new Error('The sheet has a table.')
  return table
}

test('A cat of 4.1 kg: epinephrine from the tenfold dilution, blood 246 mL, marks at 10 to 30 per cent', () => {
  const sheet = renderText(catOf('4.1'))
  expect(wall(catOf('4.1')).rows[0]?.slice(0, 3)).toEqual(['No pulse', 'Epinephrine', '0.41 mL'])
  expect(wall(catOf('4.1')).rows[0]?.[3]).toContain('of 0.1 mg/mL: mix 1 mL + 9 mL sodium chloride 0.9 %')
  expect(sheet).toContain('Blood: about 246 mL')
  for (const [part, volume] of [
    ['10 %', '25 mL'],
    ['15 %', '37 mL'],
    ['20 %', '49 mL'],
    ['30 %', '74 mL'],
  ]) {
    expect(sheet).toMatch(new RegExp(`${part} +${volume}`))
  }
})

test('An estimated weight is called so, in capitals', () => {
  expect(renderText(catOf('4.1'))).toContain('ESTIMATED')
})

test('An odd weight never silences the sheet: every volume stands beside the warning', () => {
  const paper = catOf('41')
  expect(paper.blocks.some((block) => block.kind === 'callout')).toBe(true)
  expect(wall(paper).rows).toHaveLength(wall(catOf('4.1')).rows.length)
})

test('Each row names its edition and the sources are listed', () => {
  const sheet = renderText(catOf('4.1'))
  expect(sheet.replaceAll(/\s+/g, ' ')).toContain('Edition: Merck table, current edition.')
  expect(sheet).toContain('Fletcher DJ')
})

test('Without a weight there is no sheet, because every volume would be a guess', () => {
  const identity = exampleEntries().filter(({ kind }) => kind === 'identity')
  expect(emergencySheetPaper.of(inputFor(identity))).toEqual({ kind: 'not-yet', because: 'no weight is on record' })
})
