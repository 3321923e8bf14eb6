import { expect, test } from 'vitest'
import { emptyReport, printedIsolate } from '#core/culture/empty-report.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { isPaper, type PaperInput } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderText } from '../render/text.ts'
import { referringLetter } from './referring-letter.ts'

const make = entryMaker({}, 6)

function letterOf(entries: readonly Entry[] = exampleEntries(), more: Partial<PaperInput> = {}): string {
  const made = referringLetter.of(inputFor(entries, more))
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made)
}

test('The letter goes to the vet on record and says what was reported as reported', () => {
  const letter = letterOf()
  expect(letter).toContain('Val Vet\nVillage Vets\n2 High Street')
  expect(letter).toContain('The call named this side: LEFT.')
})

test('Both ears stand side by side, and an ear nobody examined is not called normal', () => {
  const letter = letterOf()
  expect(letter).toMatch(/Canal feels +hard as bone +not examined/)
  expect(letter).toMatch(/OTIS-3 \(0–12\) +11 +not examined/)
})

test('A result that nobody read says so; one that was read says by whom', () => {
  const entries = exampleEntries()
  const specimen = entries.find(({ kind }) => kind === 'specimen')
  if (!specimen) throw new Error('The course has a specimen.')
  const result = make({
    kind: 'specimen-result',
    at: '2026-02-11T10:00:00.000Z',
    body: {
      ...emptyReport,
      specimen: specimen.id,
      status: 'final',
      growth: 'growth',
      isolates: [printedIsolate('1', 'Proteus mirabilis', [['marbofloxacin', '<=0.5 mg/L']])],
    },
  })
  expect(letterOf(entries)).toContain('no result yet')
  expect(letterOf([...entries, result])).toContain('Nobody has written down that this result was read.')
  expect(letterOf([...entries, result])).toContain('Proteus mirabilis: marbofloxacin <=0.5 mg/L')
  const read = make({
    kind: 'result-read',
    at: '2026-02-11T12:00:00.000Z',
    body: { result: result.id, decision: 'no-change', edition: null, text: 'Go on.' },
  })
  expect(letterOf([...entries, result, read])).toContain('Read by Ada Surgeon on 11 February 2026: Go on.')
})

test('A missing blink under the block is not written down as a palsy', () => {
  const check = exampleEntries().find(({ kind }) => kind === 'check')
  const under = make({
    kind: 'check',
    subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' },
    body: { ...(check?.body as object), blink: 'absent', possibleBlockEffect: true } as never,
  })
  expect(letterOf([...exampleEntries(), under]).replaceAll(/\s+/g, ' ')).toContain('possible block effect')
})

test('What is owed stands with a name and a last day', () => {
  const owed = [
    {
      id: 'one',
      what: 'Stitches, LEFT ear',
      who: 'nurse',
      dueFrom: '2026-02-20T00:00:00.000Z',
      dueBy: '2026-02-24T23:59:59.000Z',
      why: 'Day 10 to 14.',
    },
  ]
  expect(letterOf(exampleEntries(), { owed }).replaceAll(/ +/g, ' ')).toMatch(
    /Stitches, LEFT ear nurse 20 February 2026 24 February 2026 Day 10 to 14/,
  )
  expect(letterOf()).toContain('Nothing is owed.')
})

test('After a death the letter says so first and asks for nothing', () => {
  const letter = letterOf([...exampleEntries(), make({ kind: 'death', at: '2026-02-12T09:30:00.000Z' })])
  expect(letter).toContain('Was put to sleep on 12 February 2026: Kidney failure. Not related to the ear.')
  expect(letter).not.toContain('please tell us')
})

test('Without a referring vet on record there is no letter', () => {
  const entries = exampleEntries().map((entry) =>
    entry.kind === 'identity'
      ? { ...entry, body: { ...(entry.body as object), referringVet: null } as typeof entry.body }
      : entry,
  )
  expect(referringLetter.of(inputFor(entries))).toEqual({
    kind: 'not-yet',
    because: 'no referring vet is on record',
  })
})
