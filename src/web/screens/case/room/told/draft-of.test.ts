import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { emergencyAccounts } from '#core/theatre/emergency-account.ts'
import { draftOfCall } from './draft-of.ts'

test('What the owner is told is drafted from what was called, and how the animal is now stays open', () => {
  const make = entryMaker()
  const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
  const stamp = (at: string, checkpoint: string) =>
    make({ kind: 'theatre-stamp', at, subject, body: { checkpoint, answer: 'done', detail: {}, text: null } })
  const theCase = fold([
    stamp('2026-03-04T10:20:00.000Z', 'emergency-on-bleeding-1'),
    stamp('2026-03-04T10:29:00.000Z', 'emergency-off-bleeding-1'),
    stamp('2026-03-04T11:02:00.000Z', 'emergency-on-airway-1'),
  ])
  expect(draftOfCall(emergencyAccounts(theCase, 'operation-1'), 'Bramble', 'LEFT').split('\n')).toEqual([
    'During the operation of Bramble (LEFT ear) something happened that you should hear from us.',
    'At 10:20 a vessel bled more than usual and we worked to stop it. It was over after 9 minutes.',
    'At 11:02 the breathing was in danger and we secured the airway. It is not over yet.',
    'How Bramble is now: ',
    'What would you like to ask?',
  ])
})
