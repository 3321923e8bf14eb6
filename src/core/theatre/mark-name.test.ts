import { expect, test } from 'vitest'
import { reportInEnglish as words } from '#content/wording/report.ts'
import { markName } from './mark-name.ts'

test('A mark has its words, a counted one its number, and an unknown one none', () => {
  expect(markName('incision', words)).toBe('Incision')
  expect(markName('retraction-on-2', words)).toBe('Nerve held aside, 2')
  expect(markName('something-3', words)).toBeUndefined()
  expect(markName('k1-skin', words)).toBeUndefined()
})

test('A stamp of something else is named as such, whichever it is', () => {
  expect(markName('free-0190a7c2-0000-7000-8000-000000000002', words)).toBe('Also')
})

test('The tap for a label is named, whichever pot it is on', () => {
  expect(markName('labelled-0190a7c2-0000-7000-8000-000000000002', words)).toBe('Label is on the pot')
})
