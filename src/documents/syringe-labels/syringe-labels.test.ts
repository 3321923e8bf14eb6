import { expect, test } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import type { Label, Paper } from '../render/model.ts'
import { renderText } from '../render/text.ts'
import { syringeLabels } from './syringe-labels.ts'

const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const

/** The worked example before its operation: bupivacaine 1 mg/kg for a block, planned for 8.2 kg. */
function before(kilograms: string): Entry[] {
  return exampleEntries()
    .filter(({ kind }) => ['identity', 'booking', 'planned-line', 'weight'].includes(kind))
    .map((entry) =>
      entry.kind === 'weight'
        ? {
            ...entry,
            body: { ...(entry.body as object), weight: { value: kilograms, unit: 'kg' } } as typeof entry.body,
          }
        : entry,
    )
}

function sheetOf(entries: readonly Entry[]): Paper {
  const made = syringeLabels.of(inputFor(entries))
  if (!isPaper(made)) throw new Error(made.because)
  return made
}

function labelsOf(paper: Paper): readonly Label[] {
  return paper.blocks.flatMap((block) => (block.kind === 'labels' ? block.labels : []))
}

function changed(entries: readonly Entry[], body: object): Entry[] {
  return entries.map((entry) =>
    entry.kind === 'planned-line'
      ? { ...entry, body: { ...(entry.body as object), ...body } as typeof entry.body }
      : entry,
  )
}

const said = (paper: Paper) => renderText(paper).replaceAll(/[ \n]+/g, ' ')

test('A label says drug, volume, strength, dose, route, the animal and the side of a block', () => {
  const paper = sheetOf(before('8.2'))
  expect(labelsOf(paper)).toMatchObject([{ name: 'bupivacaine', big: '1.6 mL' }])
  for (const words of [
    'of 5 mg/mL',
    '8.2 mg (1 mg/kg)',
    'infiltration, local block',
    /Bramble, dog, (LEFT|RIGHT) ear/,
    'Prepared by: ___',
    'At: ___',
    'Second check by: ___',
  ]) {
    expect(said(paper)).toMatch(words)
  }
})

test('A line planned for another weight has no label, and why', () => {
  const paper = sheetOf(before('2.8'))
  expect(labelsOf(paper)).toEqual([])
  expect(said(paper)).toContain('bupivacaine, block: the plan is older than the animal: it was written as 1.6 mL.')
  expect(said(paper)).not.toContain('[ bupivacaine')
})

test('A refused line has no label, and the reason of the refusal', () => {
  const paper = sheetOf(changed(before('8.2'), { dose: { value: '20', unit: 'mg/kg' } }))
  expect(labelsOf(paper)).toEqual([])
  expect(said(paper)).toContain('bupivacaine, block: it is refused. 20 mg/kg of bupivacaine is 10 times the upper end')
})

test('What was given already, and what the second person disagrees with, has no label', () => {
  const entries = before('8.2')
  const planned = entries.find(({ kind }) => kind === 'planned-line')?.id ?? ''
  const make = entryMaker({ subject: operation, author: { kind: 'person', person: 'person-nurse' } }, 4)
  const check = (verdict: 'agrees' | 'disagrees' | 'nobody-available') =>
    make({ kind: 'second-check', body: { of: [planned], verdict, text: null, plan: null } })
  expect(said(sheetOf([...entries, check('disagrees')]))).toContain('block: Cleo Nurse does not agree with it.')
  expect(said(sheetOf([...entries, check('agrees')]))).toContain('Second check: Cleo Nurse')
  expect(said(sheetOf([...entries, check('nobody-available')]))).toContain('Second check: nobody available')
  const given = make({
    kind: 'drug-given',
    body: {
      drug: 'bupivacaine',
      written: null,
      amount: { value: '8', unit: 'mg' },
      volume: null,
      route: 'infiltration',
      site: null,
      use: 'local_block',
      line: 'block',
      batch: null,
      ampoule: null,
    },
  })
  expect(said(sheetOf([...entries, given]))).toContain('bupivacaine, block: it was given already.')
})

test('What is too little to draw is labelled as its dilution, with how it is made', () => {
  // 2 ug/kg × 8.2 kg = 16.4 ug; of 0.5 mg/mL that is 0.0328 mL, less than a syringe can measure.
  const entries = changed(before('8.2'), {
    drug: 'dexmedetomidine',
    use: 'premed',
    route: 'IM',
    dose: { value: '2', unit: 'ug/kg' },
    stock: { value: '0.5', unit: 'mg/mL' },
    amount: { value: '16.4', unit: 'ug' },
    volume: null,
    drawn: null,
  })
  expect(labelsOf(sheetOf(entries))[0]?.big).toBe('0.33 mL')
  expect(said(sheetOf(entries))).toContain('0.33 mL of 0.05 mg/mL ] 1 in 10: ')
})

test('After the operation there are no labels', () => {
  expect(syringeLabels.of(inputFor(exampleEntries()))).toMatchObject({ kind: 'not-yet' })
})
