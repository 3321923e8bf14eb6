import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderHtml } from '../render/html.ts'
import { renderText } from '../render/text.ts'
import { anaestheticRecord } from './anaesthetic-record.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const make = entryMaker({ subject }, 9)
const full = (time: string) => `2026-02-10T${time}:00.000Z`

const stamp = (time: string, checkpoint: string) =>
  make({ kind: 'theatre-stamp', at: full(time), body: { checkpoint, answer: 'done', detail: {}, text: null } })
const see = (time: string, body: Partial<BodyOf<'observation'>> = {}) =>
  make({ kind: 'observation', at: full(time), body: { ...observation.example, ...body } })

function made(...more: readonly Entry[]) {
  const paper = anaestheticRecord.of(inputFor([...exampleEntries(), ...more]))
  if (!isPaper(paper)) throw new Error(paper.because)
  return paper
}
const said = (...more: readonly Entry[]) => renderText(made(...more)).replaceAll(/\s+/g, ' ')

test('A pressure stands with how it was measured, and says so where nobody wrote it', () => {
  const mean = { what: 'mean', value: { value: '74', unit: 'mm[Hg]' }, artefact: false } as const
  const record = said(
    see('09:35', { values: [{ ...mean, method: 'oscillometric, left forelimb' }] }),
    see('09:40', { values: [{ ...mean, method: null }] }),
  )
  expect(record).toContain('Mean pressure 74 mmHg (oscillometric, left forelimb)')
  expect(record).toContain('Mean pressure 74 mmHg (how it was measured is not written)')
})

test('An artefact stays readable and is named; a gap is a row with its minutes', () => {
  const heart = { what: 'heart-rate', value: { value: '240', unit: '/min' }, method: 'ECG', artefact: true } as const
  const record = said(
    stamp('09:30', 'anaesthesia-start'),
    see('09:34'),
    see('09:40', { values: [heart] }),
    see('09:45', { values: [], unmeasured: 'The cuff came off.' }),
    see('09:50'),
    stamp('09:54', 'tube-out'),
  )
  expect(record).toContain('Heart rate 240 a minute ARTEFACT')
  expect(record).toContain('NOTHING MEASURED from 09:34 to 09:50: 16 min')
  expect(record).toContain('Nothing could be measured: The cuff came off.')
  expect(record).toContain('Gaps: one, of 16 min in 24 min')
})

test('Strips are drawn where something was measured, and their words point to the table', () => {
  const paper = made(stamp('09:30', 'anaesthesia-start'), see('09:34'), see('09:38'))
  const html = renderHtml(paper)
  expect(html).toContain('<svg')
  expect(html).toContain('Anaesthesia began')
  expect(renderText(paper)).toContain('The table of observations and events says the same in words.')
  expect(said()).toContain('Nothing was measured, so nothing is drawn.')
  expect(said()).toContain('Gaps: nothing was measured at all')
})

test('What was given stands with who gave it; an emergency with how long it lasted', () => {
  const record = said(
    make({ kind: 'drug-given', at: full('10:05'), body: { ...drugGiven.example, drug: 'cefazolin', volume: null } }),
    stamp('10:31', 'emergency-on-bleeding-1'),
    stamp('10:35', 'emergency-off-bleeding-1'),
  )
  expect(record).toMatch(/10:05 cefazolin 8 mg .* Ada Surgeon/)
  expect(record).toContain('Bleeding: from 10:31 to 10:35, 4:00 min.')
  expect(record).toContain('10:31 Emergency: bleeding, 1')
})

test('Recovery says minutes after tube out, and what a missing blink may be', () => {
  const record = said(
    stamp('11:20', 'tube-out'),
    see('11:38', { where: 'recovery', values: [], first: 'blink', side: 'LEFT' }),
  )
  expect(record).toContain('First blink, LEFT eye: 11:38, 18 min after tube out')
  expect(record).toContain('Temperature normal: not recorded')
  // Bupivacaine at 09:30, eight hours by the house.
  expect(record).toContain('may act until 17:30')
  expect(record).toContain('LEFT eye: a missing blink until 17:30 is a possible block effect')
})

test('It is a draft until the operation is signed, and none before anything was done', () => {
  const without = (...kinds: string[]) => exampleEntries().filter(({ kind }) => !kinds.includes(kind))
  const draft = anaestheticRecord.of(inputFor(without('operation-summary')))
  expect(isPaper(draft) && renderText(draft)).toContain('!! Draft')
  expect(said()).toContain('Summary signed by Ada Surgeon')
  expect(anaestheticRecord.of(inputFor(without('operation-summary', 'theatre-stamp')))).toMatchObject({
    kind: 'not-yet',
  })
})
