import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { sayCalendarDay, sayDayOfYear } from '#core/time/calendar-day.ts'
import { animalLine, operationsOf, paperOf } from './case-words.ts'
import { exampleEntries, fileAround, inputFor } from './sample-case-for-tests.ts'

const make = entryMaker({}, 3)

test('The animal is named by name, species, breed, sex, birth and chip', () => {
  expect(animalLine(fileAround(exampleEntries()))).toBe(
    'Bramble, dog, English Springer Spaniel, female, neutered, born May 2018, chip 000000000000001',
  )
  expect(animalLine(fileAround([]))).toBe('not recorded')
})

test('A paper says from how many entries it was made', () => {
  const paper = paperOf(inputFor(exampleEntries()), { id: 'one', title: 'One', blocks: [] })
  expect(paper.provenance).toBe('case:0001 · made from 19 entries, the last of 12 February 2026, 09:00')
})

test('Entries that contradict each other are said on the foot of every page', () => {
  const twice = make({ kind: 'count', at: '2026-02-10T11:01:00.000Z' })
  const paper = paperOf(inputFor([...exampleEntries(), twice]), { id: 'one', title: 'One', blocks: [] })
  expect(paper.provenance).toContain('CONFLICTS TO SETTLE: 1')
})

test('An entry that corrects one which has not arrived is said too', () => {
  const early = make({ kind: 'note', supersedes: ['0190a7c2-00ff-7000-8000-0000000000ff'], reason: 'Corrected.' })
  const paper = paperOf(inputFor([...exampleEntries(), early]), { id: 'one', title: 'One', blocks: [] })
  expect(paper.provenance).toContain('ENTRIES STILL MISSING: 1')
})

test('An operation is joined with its signed summary', () => {
  const [operation] = operationsOf(fileAround(exampleEntries()))
  expect(operation).toMatchObject({ id: 'operation-1', side: 'LEFT' })
  expect(operation?.summary?.body.signedBy).toBe('person-surgeon')
})

test('A month is a word, so that day and month cannot change places', () => {
  expect(sayCalendarDay('2026-02-03')).toBe('3 February 2026')
  expect(sayDayOfYear('2026-02-03')).toBe('3 February')
})
