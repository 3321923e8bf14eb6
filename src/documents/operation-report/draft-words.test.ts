import { expect, test } from 'vitest'
import { eyeAfterNerve } from '#content/follow-up/eye-after-nerve.ts'
import { procedures } from '#content/procedures/index.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { draftSummary } from '#core/theatre/draft-summary.ts'
import { exampleEntries, fileAround } from '../case/sample-case-for-tests.ts'
import { draftedAnswers } from './draft-words.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const make = entryMaker({ subject }, 9)

function answersOf(entries: readonly Entry[]) {
  const file = fileAround(entries)
  const [operation] = operationsOf(file)
  if (!operation) throw new Error('No operation.')
  const procedure = procedureNamed(operation.procedure, procedures)
  const draft = draftSummary(file, operation, procedure, { swabs: bloodInSwabs, marks: reportInEnglish, eyeAfterNerve })
  return draftedAnswers(draft, { procedure, side: operation.side, zone: 'Europe/London' })
}

const unsigned = exampleEntries().filter(({ kind }) => kind !== 'operation-summary')

test('The entries of an operation become the answers of its summary, and what nobody wrote is no answer', () => {
  const answers = answersOf(unsigned)
  expect(answers).toMatchObject({ side: 'LEFT', procedure: 'teca-lbo', surgeon: 'person-surgeon' })
  expect(answers.findings?.split('\n')).toEqual([
    'The facial nerve was seen. It lay free. Minutes of retraction: 0.',
    expect.stringMatching(/^Estimated blood loss: .*\d+ mL/),
    'Final count: swabs: 20 of 20; throat pack: out.',
  ])
  expect(answers.plan).toBe('Result of B-1 (bulla, on entry: aerobic culture, anaerobic culture) is awaited.')
  for (const field of ['incisionAt', 'closedAt', 'drain', 'complications', 'signedBy', 'assistant', 'remark']) {
    expect(answers).not.toHaveProperty(field)
  }
})

test('A booking alone leaves findings and plan without an answer', () => {
  const answers = answersOf(unsigned.filter(({ kind }) => ['identity', 'booking'].includes(kind)))
  expect(Object.keys(answers).sort()).toEqual(['anaesthetist', 'procedure', 'side', 'surgeon'])
})

test('An emergency, a step left out and the eye are said in words', () => {
  const stamp = (at: string, checkpoint: string, more: object = {}) =>
    make({
      kind: 'theatre-stamp',
      at: `2026-02-10T${at}.000Z`,
      body: { checkpoint, answer: 'done', detail: {}, text: null, ...more },
    })
  const { findings, plan } = answersOf([
    ...unsigned.filter(({ kind }) => kind !== 'theatre-stamp'),
    stamp('10:00:00', 'k3-facial-nerve', { detail: { nerve: 'not-found' } }),
    stamp('10:05:00', 'k7-sample', { answer: 'not-done', text: 'the pot broke' }),
    stamp('10:20:00', 'emergency-on-bleeding-1'),
    stamp('10:29:30', 'emergency-off-bleeding-1', { text: 'Wax held it.' }),
    stamp('10:30:00', 'retraction-on-1'),
    stamp('10:33:00', 'retraction-off-1'),
  ])
  expect(findings).toContain('No sample was taken: the pot broke.')
  expect(findings).toContain('Emergency called. Bleeding: 10:20 to 10:29 (9:30 min). Wax held it.')
  expect(findings).toContain('By the stamps the nerve was held aside once, 3 min.')
  expect(plan).toContain(
    'The LEFT eye is kept wet until it blinks, because of what was stamped at the nerve: ' +
      'The facial nerve was looked for and not found.',
  )
})
