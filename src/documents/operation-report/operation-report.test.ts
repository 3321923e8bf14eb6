import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderText } from '../render/text.ts'
import { operationReport } from './operation-report.ts'

const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const make = entryMaker({ subject: operation }, 9)

function reportOf(entries: readonly Entry[]): string {
  const made = operationReport.of(inputFor(entries))
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made)
}

function without(...kinds: string[]): Entry[] {
  return exampleEntries().filter(({ kind }) => !kinds.includes(kind))
}

test('Every heading carries the side in words', () => {
  const made = operationReport.of(inputFor(exampleEntries()))
  if (!isPaper(made)) throw new Error(made.because)
  const headings = made.blocks.flatMap((block) => (block.kind === 'heading' ? [block.text] : []))
  expect(headings.length).toBeGreaterThan(5)
  for (const text of [made.title, ...headings]) expect(text).toContain('LEFT')
})

test('A stamp becomes sentences; a checkpoint without a stamp says so and is never filled in', () => {
  const report = reportOf(exampleEntries())
  expect(report).toContain('The facial nerve was seen. It lay free.')
  expect(report).toMatch(/Bulla opened +not recorded/)
  expect(report).not.toContain('The bulla was opened')
})

test('A step that was not done stands with its reason', () => {
  const stamp = make({
    kind: 'theatre-stamp',
    at: '2026-02-10T10:30:00.000Z',
    body: { checkpoint: 'k7-sample', answer: 'not-done', detail: {}, text: 'the pot was broken' },
  })
  expect(reportOf([...exampleEntries(), stamp])).toContain('No sample was taken: the pot was broken.')
})

test('Two stamps of one checkpoint stand side by side until a person settles it', () => {
  const second = make({
    kind: 'theatre-stamp',
    at: '2026-02-10T10:05:00.000Z',
    body: { checkpoint: 'k3-facial-nerve', answer: 'done', detail: { nerve: 'not-found' }, text: null },
  })
  const report = reportOf([...exampleEntries(), second]).replaceAll(/\s+/g, ' ')
  expect(report).toContain('Two entries stand side by side here; a person must settle it.')
})

test('An emergency that was tapped and called over stands in the course by its name, with its sentence', () => {
  const stamp = (at: string, checkpoint: string, text: string | null) =>
    make({ kind: 'theatre-stamp', at, body: { checkpoint, answer: 'done', detail: {}, text } })
  const report = reportOf([
    ...exampleEntries(),
    stamp('2026-02-10T10:31:00.000Z', 'emergency-on-bleeding-1', null),
    stamp('2026-02-10T10:35:00.000Z', 'emergency-off-bleeding-1', 'Retroglenoid vein; wax held it.'),
  ]).replaceAll(/\s+/g, ' ')
  expect(report).toContain('10:31 Emergency: bleeding, 1 Stamped.')
  expect(report).toContain('10:35 Emergency over: bleeding, 1 Retroglenoid vein; wax held it.')
})

test('Lavage that was not measured leaves the loss a span', () => {
  const loss = make({
    kind: 'blood-loss',
    at: '2026-02-10T10:55:00.000Z',
    body: {
      jar: { value: '350', unit: 'mL' },
      lavageIn: { value: '300', unit: 'mL' },
      lavageInJar: null,
      swabs: [],
    },
  })
  const report = reportOf([...without('blood-loss'), loss])
  expect(report).toContain('Estimated loss: at least 50 mL, at most 350 mL')
  expect(report).toContain('cannot be subtracted')
})

test('A measure that cannot be right is not counted, and the report says which', () => {
  const loss = make({
    kind: 'blood-loss',
    at: '2026-02-10T10:55:00.000Z',
    body: {
      jar: { value: '10', unit: 'mL' },
      lavageIn: { value: '20', unit: 'mL' },
      lavageInJar: { value: '30', unit: 'mL' },
      swabs: [],
    },
  })
  expect(reportOf([...without('blood-loss'), loss])).toContain('more lavage found again than was given')
})

test('A count that does not agree is said aloud', () => {
  const count = make({
    kind: 'count',
    body: { when: 'final', items: [{ what: 'swabs', expected: 20, found: 19 }], throatPack: 'in' },
  })
  const report = reportOf([...without('count'), count])
  expect(report).toContain('!! Count does not agree')
  expect(report).toContain('Final: swabs, 19 found of 20.')
})

test('Without a signed summary it is a draft; without a stamp there is no report', () => {
  expect(reportOf(without('operation-summary'))).toContain('!! Draft')
  expect(operationReport.of(inputFor(without('operation-summary', 'theatre-stamp')))).toMatchObject({ kind: 'not-yet' })
})

test('A booking for the other ear is never passed over', () => {
  const booking = make({
    kind: 'booking',
    body: {
      side: 'RIGHT',
      procedure: 'teca-lbo',
      agreement: null,
      plannedFor: { at: '2026-02-10T09:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
      surgeon: 'person-surgeon',
      anaesthetist: null,
    },
  })
  expect(reportOf([...without('booking'), booking])).toContain('The booking says RIGHT, the signed summary says LEFT.')
})

test('A drug that nobody knows is printed as it was written', () => {
  const given = make({
    kind: 'drug-given',
    body: {
      drug: 'something-else',
      written: 'Brand on the vial',
      amount: { value: '20', unit: 'mg' },
      volume: null,
      route: 'IV',
      site: null,
      use: 'other',
      line: null,
      batch: null,
      ampoule: null,
    },
  })
  const report = reportOf([...exampleEntries(), given])
  expect(report).toContain('something-else')
  expect(report.replaceAll(/\s+/g, ' ')).toContain('Brand on the vial')
})

test('A dose that a check would have stopped is printed as given, and flagged with its reason', () => {
  const given = make({
    kind: 'drug-given',
    at: '2026-02-10T10:40:00.000Z',
    body: {
      drug: 'bupivacaine',
      written: null,
      amount: { value: '60', unit: 'mg' },
      volume: { value: '12', unit: 'mL' },
      route: 'splash',
      site: 'wound',
      use: 'local_block',
      line: null,
      batch: null,
      ampoule: null,
    },
  })
  const report = reportOf([...exampleEntries(), given]).replaceAll(/\s+/g, ' ')
  expect(report).toContain('60 mg')
  expect(report).toContain('Flagged among the drugs given')
  // 12.4 kg at 2 mg/kg in dogs (Layne 2019) is 24.8 mg in all.
  expect(report).toContain('full limit 24.8 mg')
  expect(reportOf(exampleEntries())).not.toContain('Flagged among the drugs given')
})

test('The loss of a fat animal stands against the blood of its lean weight (AAHA 2013: 90 mL/kg; lean weight remembered)', () => {
  const weighed = (bodyCondition: number) =>
    make({
      kind: 'weight',
      subject: { kind: 'animal', animal: 'animal-1' },
      at: '2026-02-10T07:40:00.000Z',
      body: { weight: { value: '14', unit: 'kg' }, typed: null, how: 'scale', bodyCondition },
    })
  expect(reportOf([...without('weight'), weighed(9)])).toContain('about 900 mL (weight 10 kg)')
  expect(reportOf([...without('weight'), weighed(5)])).toContain('about 1260 mL (weight 14 kg)')
})

test('An emergency stands in the report as its entries tell it: from when to when, drugs, stamps, loss, words', () => {
  const stamp = (at: string, checkpoint: string, text: string | null = null) =>
    make({ kind: 'theatre-stamp', at, body: { checkpoint, answer: 'done', detail: {}, text } })
  const given = make({
    kind: 'drug-given',
    at: '2026-02-10T10:22:00.000Z',
    body: {
      drug: 'tranexamic-acid',
      written: null,
      amount: { value: '82', unit: 'mg' },
      volume: null,
      route: 'IV',
      site: null,
      use: 'antifibrinolytic',
      line: null,
      batch: null,
      ampoule: null,
    },
  })
  const report = reportOf([
    ...exampleEntries(),
    stamp('2026-02-10T10:20:00.000Z', 'emergency-on-bleeding-1'),
    given,
    stamp('2026-02-10T10:25:00.000Z', 'k10-haemostasis'),
    stamp('2026-02-10T10:29:30.000Z', 'emergency-off-bleeding-1', 'Wax held it.'),
  ])
  expect(report).toContain('Bleeding: 10:20 to 10:29 (9:30 min)')
  expect(report).toMatch(/Given then: 10:22 tranexamic acid 82 mg/i)
  expect(report).toContain('Stamped then: 10:25 Bleeding')
  expect(report).toContain('In words: Wax held it.')
  expect(reportOf(exampleEntries())).toContain('No emergency was called')
})

test('What keeps the operation from being signed out is said, and a note that explains it', () => {
  const report = reportOf(exampleEntries())
  expect(report).toContain('NOT signed out')
  expect(report).toContain('Nobody said that the label is on pot B-1.')
  const note = make({
    kind: 'incident-note',
    body: {
      what: 'specimen',
      during: null,
      reached: null,
      helped: [],
      change: [],
      text: 'The pot broke.',
      emergency: null,
      point: 'specimen-unlabelled',
      pointOf: 'B-1',
    },
  })
  const explained = reportOf([...exampleEntries(), note])
  expect(explained).toContain('Nobody said that the label is on pot B-1. Because: The pot broke.')
  expect(explained).toContain('NOT signed out')
})
