import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import type { Unit } from '#core/units/unit.ts'
import { type JustTyped, lastValues, lookAgain } from './last-values.ts'
import type { Observable } from './ledger.ts'

const typed = (what: Observable, value: string, unit: Unit): JustTyped =>
  ({ what, value: { value, unit } }) as JustTyped

function lastOf(...values: readonly (JustTyped & { readonly artefact?: true })[]) {
  const make = entryMaker()
  const entries = values.map(({ artefact, ...one }) => {
    const value = { ...one, method: null, artefact: artefact === true }
    return make({ kind: 'observation', body: { ...observation.example, values: [value] } })
  })
  return lastValues(fold(entries).live('observation'))
}

describe('the last values', () => {
  it('are the last that were true: an artefact is none', () => {
    const last = lastOf(typed('heart-rate', '88', '/min'), typed('heart-rate', '92', '/min'), {
      ...typed('heart-rate', '240', '/min'),
      artefact: true,
    })
    expect(last.get('heart-rate')?.value.value.value).toBe('92')
  })
})

describe('a second look at what was typed', () => {
  const last = lastOf(typed('temperature', '37.8', 'Cel'), typed('heart-rate', '92', '/min'))
  const because = (...values: readonly JustTyped[]) => lookAgain(values, last).map((one) => [one.what, one.because])

  it('is asked for where the point slipped, against the last value only', () => {
    expect(because(typed('temperature', '378', 'Cel'))).toEqual([['temperature', 'ten-times']])
    expect(because(typed('heart-rate', '9', '/min'))).toEqual([['heart-rate', 'a-tenth']])
    expect(because(typed('heart-rate', '40', '/min'), typed('temperature', '34', 'Cel'))).toEqual([])
  })

  it('is asked for where arithmetic says that it cannot be', () => {
    expect(because(typed('oxygen-saturation', '101', '%'))).toEqual([['oxygen-saturation', 'above-hundred']])
    expect(because(typed('heart-rate', '0', '/min'))).toEqual([['heart-rate', 'nought']])
    expect(because(typed('respiratory-rate', '0', '/min'), typed('vapour', '0', '%{vol}'))).toEqual([])
    expect(because(typed('systolic', '70', 'mm[Hg]'), typed('mean', '110', 'mm[Hg]'))).toEqual([
      ['mean', 'pressures-out-of-order'],
    ])
    expect(because(typed('systolic', '70', 'mm[Hg]'), typed('diastolic', '75', 'mm[Hg]'))).toEqual([
      ['diastolic', 'pressures-out-of-order'],
    ])
    expect(because(typed('systolic', '110', 'mm[Hg]'), typed('mean', '70', 'mm[Hg]'))).toEqual([])
  })
})
