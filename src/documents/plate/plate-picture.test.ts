import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { platePicture } from './plate-picture.ts'

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
