import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { antibioticsOnBoard } from './antibiotics-on-board.ts'
import { nextLabel, potsOf, stillToTake } from './specimens.ts'

const make = entryMaker()
const example = make({ kind: 'specimen' }).body as BodyOf<'specimen'>
const pot = (label: string, site: BodyOf<'specimen'>['site'] = 'mass') =>
  make({ kind: 'specimen', body: { ...example, label, site } })
const identity = make({ kind: 'identity' })

describe('the label of a new pot', () => {
  it('is the letter of the animal and a number that no pot of the case ever had', () => {
    expect(nextLabel(fold([identity]))).toBe('B-1')
    const old = pot('B-3')
    const corrected = make({
      kind: 'specimen',
      body: { ...example, label: 'B-2' },
      supersedes: [old.id],
      reason: 'Typed wrongly.',
    })
    expect(nextLabel(fold([identity, old, corrected, pot('lab 7')]))).toBe('B-4')
  })

  it('is an S while nobody wrote the name', () => {
    expect(nextLabel(fold([]))).toBe('S-1')
  })
})

it('What is still to be taken is what is wanted from places where no pot of this operation comes from', () => {
  const pots = potsOf(fold([pot('B-1', 'bulla-on-entry')]), 'operation-1')
  expect(stillToTake(pots, ['bulla-on-entry', 'bulla-after-lavage', 'canal-tissue'])).toEqual([
    'bulla-after-lavage',
    'canal-tissue',
  ])
})

describe('antibiotics on board', () => {
  const at = '2026-03-04T10:30:00.000Z'
  const given = (drug: string, use: string, when: string) =>
    make({
      kind: 'drug-given',
      at: when,
      body: { ...(make({ kind: 'drug-given' }).body as BodyOf<'drug-given'>), drug, use },
    })
  const names = (...entries: Parameters<typeof fold>[0]) =>
    antibioticsOnBoard(fold(entries), at, formulary).given.map(({ body }) => body.drug)

  it('are those given before the sample within a day, by their use or by their drug', () => {
    expect(names(given('cefazolin', 'antibiotic_periop', '2026-03-04T09:25:00.000Z'))).toEqual(['cefazolin'])
    expect(names(given('cefazolin', 'other', '2026-03-04T09:25:00.000Z'))).toEqual(['cefazolin'])
    expect(names(given('cefazolin', 'antibiotic_periop', '2026-03-04T10:31:00.000Z'))).toEqual([])
    expect(names(given('cefazolin', 'antibiotic_periop', '2026-03-02T10:31:00.000Z'))).toEqual([])
    expect(names(given('bupivacaine', 'local_block', '2026-03-04T09:25:00.000Z'))).toEqual([])
  })

  it('and those before us that go on', () => {
    const before = make({ kind: 'medicine-before' }).body as BodyOf<'medicine-before'>
    const medicine = (body: Partial<BodyOf<'medicine-before'>>) =>
      antibioticsOnBoard(
        fold([make({ kind: 'medicine-before', body: { ...before, substance: 'cefalexin', ...body } })]),
        at,
        formulary,
      ).goesOn.length
    expect(medicine({ ongoing: true, until: null })).toBe(1)
    expect(medicine({ ongoing: false })).toBe(0)
    expect(medicine({ ongoing: true, until: null, substance: 'prednisolone' })).toBe(0)
  })
})
