import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { emptyReport } from './empty-report.ts'
import { specimenStanding } from './specimen-standing.ts'

const rules = {
  oldAfter: {
    value: { count: 30, unit: 'days' },
    sources: ['house-judgement'],
    known: 'house',
    strength: 'practice',
    confidence: 'low',
    checked: '2026-11-30',
  },
} as const

const cut = '2026-03-02T09:00:00.000Z'
const make = entryMaker()
const booking = make({
  kind: 'booking',
  at: '2026-02-20T10:00:00.000Z',
  body: {
    side: 'LEFT',
    procedure: 'teca-lbo',
    agreement: null,
    plannedFor: { at: cut, zone: 'Europe/London', precision: 'minute', by: 'person' },
    surgeon: 'person-surgeon',
    anaesthetist: null,
  },
})
const incision = make({
  kind: 'theatre-stamp',
  at: cut,
  body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
})

function specimen(site: BodyOf<'specimen'>['site'], at: string, operation: string | null): Entry {
  const tests: BodyOf<'specimen'>['tests'] = ['aerobic-culture']
  const label = `${site} ${at}`
  return make({
    kind: 'specimen',
    at,
    body: { site, tests, label, laboratory: null, antibioticsOnBoard: null, expectedBy: null, operation },
  })
}

function standing(
  of: Entry,
  {
    at = '2026-03-09T10:00:00.000Z',
    more = [] as readonly Entry[],
    growth = 'growth' as BodyOf<'specimen-result'>['growth'],
  } = {},
) {
  const report = make({
    kind: 'specimen-result',
    at: '2026-03-06T10:00:00.000Z',
    body: { ...emptyReport, specimen: of.id, status: 'final', growth },
  })
  const file = fileOf([booking, incision, of, report, ...more])
  const line = file.theCase.live('specimen-result')[0]
  if (!line) throw new Error('The report was not kept.')
  return specimenStanding(file, line, { at, drugs: formulary, rules })
}

describe('a specimen on the day somebody chooses by it', () => {
  const entry = specimen('bulla-on-entry', '2026-03-02T10:00:00.000Z', 'operation-1')

  it('of the bulla, taken at the operation a week ago, may lead', () => {
    const said = standing(entry)
    expect(said?.doubts).toEqual([])
    expect(said?.days).toBe(7)
    expect(said?.side).toBe('LEFT')
  })

  it('is old after the span of the house, and not on its last day', () => {
    expect(standing(entry, { at: '2026-04-01T10:00:00.000Z' })?.doubts).toEqual([])
    expect(standing(entry, { at: '2026-04-02T10:00:00.000Z' })?.doubts).toEqual(['old'])
  })

  it('of the canal before the operation may not', () => {
    expect(standing(specimen('canal', '2026-02-25T10:00:00.000Z', null))?.doubts).toEqual(['canal', 'before-operation'])
  })

  it('of canal tissue under the microscope is no weaker for being of the canal', () => {
    const tissue = specimen('canal-tissue', '2026-03-02T10:00:00.000Z', 'operation-1')
    expect(standing(tissue)?.doubts).toEqual(['canal'])
    expect(standing(tissue, { growth: 'not-a-culture' })?.doubts).toEqual([])
  })

  it('says which antibiotics came after it, once each, and not those before it', () => {
    const given = (drug: string, at: string) =>
      make({
        kind: 'drug-given',
        at,
        body: {
          drug,
          written: null,
          amount: { value: '200', unit: 'mg' },
          volume: null,
          route: 'IV',
          site: null,
          use: 'antibiotic_periop',
          line: null,
          batch: null,
          ampoule: null,
        },
      })
    const more = [
      given('cefazolin', '2026-03-02T08:30:00.000Z'),
      given('cefazolin', '2026-03-02T10:30:00.000Z'),
      given('cefazolin', '2026-03-02T12:30:00.000Z'),
      given('enrofloxacin', '2026-03-12T12:30:00.000Z'),
    ]
    const said = standing(entry, { more })
    expect(said?.since.map(({ drug, day, how }) => `${drug} ${day} ${how}`)).toEqual(['cefazolin 2026-03-02 given'])
    expect(said?.onBoard.given.map(({ body }) => body.drug)).toEqual(['cefazolin'])
  })

  it('shows what else was taken from the same ear at the same operation', () => {
    const after = specimen('bulla-after-lavage', '2026-03-02T10:20:00.000Z', 'operation-1')
    expect(standing(entry, { more: [after] })?.beside.map(({ body }) => body.site)).toEqual(['bulla-after-lavage'])
  })
})
