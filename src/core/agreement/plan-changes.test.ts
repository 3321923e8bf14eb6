import { describe, expect, it } from 'vitest'
import { consentInEnglish } from '#content/wording/consent.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { household } from '#core/journal/kinds/household.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { fingerprintOf } from './fingerprint.ts'
import type { ShownNumber } from './numbers-shown.ts'
import { sayPlanChange, type ToldToday } from './plan-changes.ts'
import { consentOf } from './state.ts'

type Plan = BodyOf<'agreement'>['plan']
const horner: ShownNumber = {
  procedure: 'teca-lbo',
  outcome: 'horner_any',
  unit: 'animal',
  low: 2,
  middle: 4,
  high: 8,
  said: 'Of 100 dogs about 4.',
}
const plan: Plan = { ...agreement.example.plan, numbers: [horner] }
const told: ToldToday = { leafletOf: () => plan.leaflet, numbersOf: () => [horner] }

/** An agreement, the booking under it, and whatever came after. */
function changesOf(
  after: (make: ReturnType<typeof entryMaker>) => Entry[] = () => [],
  change: Partial<ToldToday> = {},
) {
  const make = entryMaker()
  const agreed = make({ kind: 'agreement', body: { ...agreement.example, plan, fingerprint: fingerprintOf(plan) } })
  const booked = make({ kind: 'booking', body: { ...booking.example, agreement: agreed.id } })
  const file = fileOf([make({ kind: 'identity' }), agreed, booked, ...after(make)])
  const [operation] = operationsOf(file)
  if (!operation) throw new Error('Nothing is booked.')
  const state = consentOf(operation, file, { ...told, ...change })
  if (state.kind === 'none') throw new Error('Nothing is agreed.')
  return state.changes.map((one) => sayPlanChange(one, file, consentInEnglish))
}

const edition = (amount: string, change: Partial<BodyOf<'estimate'>> = {}) => ({
  ...estimate.example,
  edition: 2,
  ceiling: { amount, currency: 'GBP' },
  ...change,
})

describe('what was agreed', () => {
  it('holds as long as nothing changed', () => {
    expect(changesOf()).toEqual([])
    expect(changesOf((make) => [make({ kind: 'estimate', body: edition('3400.0') })])).toEqual([])
  })

  it('is asked again when a newer estimate has a ceiling that differs by one', () => {
    expect(changesOf((make) => [make({ kind: 'estimate', body: edition('3401.00') })])).toEqual([
      'the ceiling was 3400.00 GBP, now 3401.00 GBP',
    ])
    expect(
      changesOf((make) => [
        make({ kind: 'estimate', body: edition('3400.00', { ceiling: { amount: '3400.00', currency: 'EUR' } }) }),
      ]),
    ).toEqual(['the ceiling was 3400.00 GBP, now 3400.00 EUR'])
  })

  it('stays when the owner declined the dearer edition', () => {
    const answer = { said: 'declined', by: 'contact-1', on: booking.example.plannedFor } as const
    expect(changesOf((make) => [make({ kind: 'estimate', body: edition('3401.00', { answer }) })])).toEqual([])
  })

  it('is asked again when the booking names another surgeon or another operation', () => {
    const other = (change: object) =>
      changesOf((make) => [
        make({
          kind: 'booking',
          at: '2026-03-02T09:00:00.000Z',
          body: { ...booking.example, agreement: null, ...change },
        }),
      ])
    expect(other({ surgeon: 'person-nurse' })).toEqual([expect.stringMatching(/^the surgeon was .+, now .+/)])
    expect(other({ procedure: 'ventral-bulla-osteotomy' })).toEqual([
      expect.stringMatching(/^the operation was TECA-LBO, now ventral/),
    ])
  })

  it('is asked again when the household speaks another language, not when only its region is named', () => {
    const speaks = (language: string) =>
      changesOf((make) => [make({ kind: 'household', body: { ...household.example, language } })])
    expect(speaks('es')).toEqual(['the language was en, now es'])
    expect(speaks('en-GB')).toEqual([])
  })

  it('is asked again when the leaflet or a number is another, not when a number is only said in better words', () => {
    expect(changesOf(undefined, { leafletOf: () => 'owner-leaflet 9' })).toEqual([
      'the leaflet was owner-leaflet 1, now owner-leaflet 9',
    ])
    expect(changesOf(undefined, { numbersOf: () => [{ ...horner, high: 9 }] })).toEqual([
      expect.stringContaining('was 4 of 100 (2 to 8), now 4 of 100 (2 to 9)'),
    ])
    expect(changesOf(undefined, { numbersOf: () => [] })).toEqual([expect.stringContaining('now no number')])
    expect(changesOf(undefined, { numbersOf: () => [{ ...horner, said: 'De cada 100, unos 4.' }] })).toEqual([])
  })

  it('is asked again when somebody changed the plan under its mark', () => {
    const make = entryMaker()
    const agreed = make({ kind: 'agreement', body: { ...agreement.example, plan, fingerprint: 'a'.repeat(64) } })
    const file = fileOf([agreed, make({ kind: 'booking', body: { ...booking.example, agreement: agreed.id } })])
    const [operation] = operationsOf(file)
    expect(operation && consentOf(operation, file, null)).toMatchObject({ changes: [{ code: 'mark' }] })
  })
})
