import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { earFindings } from '#core/journal/kinds/ear-findings.ts'
import { plateDrawing } from '#core/journal/kinds/plate-drawing.ts'
import { fileAround } from '../case/sample-case-for-tests.ts'
import { drawingPictures, platePicture } from './plate-picture.ts'

const wish = { view: 'transverse', show: 'as-found', operation: null } as const

test('A plate in a paper carries its own description, with the side as a word in both', () => {
  const make = entryMaker()
  const theCase = fold([
    make({ kind: 'identity' }),
    make({ kind: 'ear-findings', subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' } }),
  ])
  const [block] = platePicture(theCase, 'LEFT', wish, 'As found')
  if (block?.kind !== 'picture') throw new Error('There is no picture.')
  expect(block.alt).toMatch(/^Line drawing of the LEFT ear of a dog/)
  expect(block.alt).toContain('Vertical canal: closed')
  expect(block.alt).toContain('Drum: could not be seen')
  expect(block.svg).toContain('>LEFT EAR</text>')
  expect(block.svg).toContain(`<desc id=`)
})

test('There is no picture of an animal whose species is not recorded', () => {
  expect(platePicture(fold([]), 'LEFT', wish, 'As found')).toEqual([])
})

test('A kept drawing is printed exactly as it was drawn, whatever was found afterwards, and says who drew it', () => {
  const make = entryMaker()
  const ear = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
  const entries = [make({ kind: 'identity' }), make({ kind: 'plate-drawing', subject: ear })]
  const later = make({
    kind: 'ear-findings',
    subject: ear,
    body: { ...earFindings.example, stenosis: 'none', drum: 'intact', flapCarriage: 'erect' } as BodyOf<'ear-findings'>,
  })
  const [before, after] = [entries, [...entries, later]].map((all) => drawingPictures(fileAround(all), 'LEFT'))
  expect(after).toEqual(before)
  const [block] = before ?? []
  if (block?.kind !== 'picture') throw new Error('There is no picture.')
  expect(block.svg).toMatch(/stroke="#4b1d7a" stroke-width="[\d.]+"/)
  expect(block.alt).toContain('One line was drawn on it by hand. Marked by hand: Bulla.')
  expect(block.caption).toBe(
    'What is full and what will be opened. Drawn on the LEFT ear by Ada Surgeon, 1 March 2026, 08:02, for the owner. Watched by Olive Owner.',
  )
})

test('A drawing filed to the other ear is printed with the doubt in words, never silently', () => {
  const make = entryMaker()
  const right = { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } as const
  const file = fileAround([
    make({ kind: 'plate-drawing', subject: right, body: plateDrawing.example as BodyOf<'plate-drawing'> }),
  ])
  expect(drawingPictures(file, 'LEFT')).toEqual([])
  const blocks = drawingPictures(file, 'RIGHT')
  expect(JSON.stringify(blocks)).toContain('Drawn on the LEFT ear and filed to the RIGHT ear')
  expect(drawingPictures(file, 'RIGHT', ({ drawnFor }) => drawnFor === 'team')).toEqual([])
})
