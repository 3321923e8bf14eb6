import { expect, test } from 'vitest'
import { choiceInEnglish } from '#content/wording/app-choice.ts'
import type { Weighed } from '#core/choice/weigh.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import { type ChoiceDraft, choiceOf, emptyChoice, takenOver } from './choice-draft.ts'

const weighed: Weighed = {
  option: 'teca-lbo',
  for: [{ rule: 'teca-narrow', text: 'The canal is narrowed for good.', known: [], from: [], words: [] }],
  against: [],
  asked: [],
  lacking: [{ fact: 'bulla-filled', known: [], hangs: [] }],
}
const answered: ChoiceDraft = {
  ...emptyChoice,
  answers: { 'teca-lbo': 'chosen', 'no-treatment': 'declined' },
  because: { 'teca-lbo': ' Closed and painful. ', 'no-treatment': 'It hurts.' },
  session: 'one-ear',
}

test('Nothing is answered beforehand, and an empty draft is no choice', () => {
  expect(emptyChoice.answers).toEqual({})
  expect(choiceOf(emptyChoice, optionIds)).toBeNull()
})

test('A choice needs a reason for each answer, and the session', () => {
  expect(choiceOf({ ...answered, session: null }, optionIds)).toBeNull()
  expect(choiceOf({ ...answered, because: { 'teca-lbo': 'Closed.' } }, optionIds)).toBeNull()
  expect(choiceOf(answered, optionIds)?.options).toEqual([
    { option: 'teca-lbo', answer: 'chosen', because: 'Closed and painful.' },
    { option: 'no-treatment', answer: 'declined', because: 'It hurts.' },
  ])
})

test('Lines are taken over once, under what was written, and can be taken out again', () => {
  const own = { ...answered, for: 'He scratches all night.' }
  const once = takenOver(own, weighed, choiceInEnglish.facts)
  expect(takenOver(once, weighed, choiceInEnglish.facts)).toEqual(once)
  expect(once.for).toBe('He scratches all night.\nThe canal is narrowed for good.')
  expect(once.missing).toBe(choiceInEnglish.facts['bulla-filled'])
  expect(choiceOf({ ...once, for: '\n  \n' }, optionIds)).toMatchObject({ for: [], against: [] })
})
