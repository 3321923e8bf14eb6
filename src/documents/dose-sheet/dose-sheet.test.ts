import { expect, test } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import { dosedAnimalOf, linesOfOperation } from '#core/dosing/from-journal.ts'
import { boundPlanOf } from '#core/dosing/second-check.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { quantity } from '#core/units/quantity.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { type Paper, runsOf, type Words } from '../render/model.ts'
import { renderText } from '../render/text.ts'
import { doseSheet } from './dose-sheet.ts'

const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const

/** The worked example was planned for 8.2 kg, the example weight is 12.4 kg. */
function weighing(kilograms: string): Entry[] {
  return exampleEntries().map((entry) =>
    entry.kind === 'weight'
      ? { ...entry, body: { ...(entry.body as object), weight: { value: kilograms, unit: 'kg' } } as typeof entry.body }
      : entry,
  )
}

function sheetOf(entries: readonly Entry[], judge = true): string {
  const theCase = fold(entries)
  const { at, lines } = linesOfOperation(theCase, 'operation-1')
  const animal = dosedAnimalOf(theCase, at ?? '')
  const doses =
    judge && animal
      ? doseLines({ animal, given: [], lines }, { drugs: formulary, rules: dosingRules, plans: [], policies: [] })
      : null
  const made = doseSheet.of(inputFor(entries, { doses }))
  if (!isPaper(made)) throw new Error(made.because)
  return said(made)
}

/** The paper as one run of words: each table cell whole. */
function said(paper: Paper): string {
  const cells = paper.blocks.flatMap((block) =>
    block.kind === 'table' ? block.rows.map((row) => row.map(plain).join(' | ')) : [],
  )
  return `${renderText(paper)}\n${cells.join('\n')}`.replaceAll(/[ \n]+/g, ' ')
}

function plain(words: Words): string {
  return runsOf(words)
    .map((run) => run.text)
    .join('')
}

test('A line shows purpose, drug, dose, amount, what to draw and what that really gives', () => {
  const sheet = sheetOf(weighing('8.2'))
  expect(sheet).toContain(
    'local block | bupivacaine infiltration | 1.6 mL | 5 mg/mL | 1 mg/kg: 8.2 mg exact 1.64 mL, gives 0.976 mg/kg',
  )
  expect(sheet).toContain('Half of the ceiling, so that a splash stays possible. (our usual plan, dog)')
})

test('No number carries a nought behind its point, and no unit is left as "ug" in a finding', () => {
  const entries = weighing('8.2').map((entry) =>
    entry.kind === 'planned-line'
      ? {
          ...entry,
          body: {
            ...(entry.body as object),
            drug: 'dexmedetomidine',
            use: 'premed',
            route: 'IM',
            dose: { value: '20.0', unit: 'ug/kg' },
            stock: { value: '0.50', unit: 'mg/mL' },
            amount: { value: '164.0', unit: 'ug' },
            volume: { value: '0.328', unit: 'mL' },
            drawn: { value: '0.330', unit: 'mL' },
          } as typeof entry.body,
        }
      : entry,
  )
  const sheet = sheetOf(entries)
  expect(sheet).toContain('0.33 mL | 0.5 mg/mL | 20 microgram/kg: 164 microgram')
  expect(sheet).toContain('20 microgram/kg of dexmedetomidine is 2 times')
  expect(sheet).not.toMatch(/\d ug\b/)
})

test('Lines worked out for another weight than the last one are called old', () => {
  const open = exampleEntries().filter(({ kind }) => kind !== 'operation-summary')
  expect(sheetOf(open)).toContain('worked out for 8.2 kg; the last weight on record is 12.4 kg')
  expect(sheetOf(open)).toContain('the volume to draw is 2.5 mL, not 1.6 mL')
})

test('Before the operation a line of another weight shows no volume in the table', () => {
  const cutYet = ['operation-summary', 'theatre-stamp']
  const open = exampleEntries().filter(({ kind }) => !cutYet.includes(kind))
  expect(sheetOf(open)).toContain('local block | bupivacaine infiltration | PLAN AGAIN | | 1 mg/kg')
})

test('A second check stands with the animal it was given for and its fingerprint', () => {
  const entries = weighing('8.2')
  const planned = fold(entries).live('planned-line')
  const make = entryMaker({ subject: operation, author: { kind: 'person', person: 'person-nurse' } }, 4)
  const plan = boundPlanOf(fold(entries), planned)
  const of = planned.map(({ header }) => header.id)
  const check = make({ kind: 'second-check', body: { of, verdict: 'agrees', text: null, plan } })
  expect(sheetOf([...entries, check])).toContain(
    `Bound to dog, 8.2 kg (18.1 lb), fingerprint ${plan?.fingerprint.slice(0, 8)}.`,
  )
})

test('What is too little to draw stands with its dilution', () => {
  // 2 ug/kg × 8.2 kg = 16.4 ug; of 0.5 mg/mL that is 0.0328 mL, less than a syringe can measure.
  const body = {
    drug: 'dexmedetomidine',
    use: 'premed',
    route: 'IM',
    dose: { value: '2', unit: 'ug/kg' },
    stock: { value: '0.5', unit: 'mg/mL' },
    amount: { value: '16.4', unit: 'ug' },
    volume: null,
    drawn: null,
  }
  const entries = weighing('8.2').map((entry) =>
    entry.kind === 'planned-line'
      ? { ...entry, body: { ...(entry.body as object), ...body } as typeof entry.body }
      : entry,
  )
  expect(sheetOf(entries)).toContain('| 0.33 mL | 0.05 mg/mL 1 in 10: take')
})

test('Without a second check the sheet says that it is missing; "nobody available" is printed as such', () => {
  const entries = weighing('8.2')
  expect(sheetOf(entries)).toContain('Not checked by a second person yet: bupivacaine.')
  const planned = entries.find(({ kind }) => kind === 'planned-line')
  if (!planned) throw new Error('The course has a planned line.')
  const make = entryMaker({ subject: operation, author: { kind: 'person', person: 'person-nurse' } }, 4)
  const check = (verdict: 'agrees' | 'nobody-available' | 'disagrees') =>
    make({ kind: 'second-check', body: { of: [planned.id], verdict, text: null, plan: null } })
  expect(sheetOf([...entries, check('nobody-available')])).toContain('Nobody available to check')
  expect(sheetOf([...entries, check('agrees')])).toContain('Cleo Nurse worked it out again and agrees')
  expect(sheetOf([...entries, check('disagrees')])).toContain('Cleo Nurse does NOT agree')
})

test('A check for another weight is said not to count, with the two weights', () => {
  const entries = weighing('2.8')
  const planned = entries.find(({ kind }) => kind === 'planned-line')
  const make = entryMaker({ subject: operation, author: { kind: 'person', person: 'person-nurse' } }, 4)
  const of = [planned?.id ?? '']
  const check = make({ kind: 'second-check', body: { of, verdict: 'agrees', text: null, plan: null } })
  expect(sheetOf([...entries, check])).toContain(
    'it no longer counts: bupivacaine. The weight was 8.2 kg and is 2.8 kg now.',
  )
})

test('A line that today’s check refuses shows no volume to draw', () => {
  const entries = exampleEntries().map((entry) =>
    entry.kind === 'planned-line'
      ? { ...entry, body: { ...(entry.body as object), dose: { value: '20', unit: 'mg/kg' } } as typeof entry.body }
      : entry,
  )
  const sheet = sheetOf(entries)
  expect(sheet).toContain('REFUSED NOW')
  expect(sheet).not.toContain('1.6 mL')
  expect(sheet).toContain('STOP:')
})

test('Lines that nobody judged again are not to be drawn up', () => {
  expect(sheetOf(exampleEntries(), false)).toContain('Do not draw up from it.')
})

test('Without a planned line there is no sheet', () => {
  const made = doseSheet.of(inputFor(exampleEntries().filter(({ kind }) => kind !== 'planned-line')))
  expect(made).toMatchObject({ kind: 'not-yet' })
})

test('A declared emergency is said above the plan, once, and behind each finding that it lifted', () => {
  const entries = weighing('8.2')
  const theCase = fold(entries)
  const { at, lines } = linesOfOperation(theCase, 'operation-1')
  const animal = dosedAnimalOf(theCase, at ?? '')
  if (!animal) throw new Error('The worked example is a dog of 8.2 kg.')
  const emergency = { by: 'A. Person', reason: 'She bleeds.', at: '12 February 2026, 10:00' }
  const twice = lines.map((line) => ({ ...line, dose: quantity('3', 'mg/kg') }))
  const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
  const doses = doseLines({ animal, given: [], lines: twice, emergency }, knowledge)
  const made = doseSheet.of(inputFor(entries, { doses }))
  if (!isPaper(made)) throw new Error(made.because)
  const callout = made.blocks.find((block) => block.kind === 'callout' && block.word === 'Declared emergency')
  expect(callout).toMatchObject({
    tone: 'stop',
    lines: [expect.stringMatching(/^A\. Person declared an emergency: She bleeds\./)],
  })
  expect(said(made).match(/declared an emergency/g)).toHaveLength(1)
  expect(said(made)).toContain('Lifted by the emergency declared by A. Person')
})
