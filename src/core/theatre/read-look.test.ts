import { describe, expect, it } from 'vitest'
import { observation as form } from '#content/forms/observation.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import { methodsOf, readLook, type TypedLook } from './read-look.ts'

const { units } = form.fields['values.value'].unitBy
const read = (look: Partial<TypedLook>, decimalMark: '.' | ',' = '.') =>
  readLook({ values: {}, method: '', ...look }, units, { decimalMark })

describe('a look as it was typed', () => {
  it('is what was typed, in the unit of each variable; what stays empty was not measured', () => {
    expect(read({ values: { 'heart-rate': ' 92', temperature: '37.8', vapour: '', fluids: '90' } })).toEqual({
      values: [
        { what: 'heart-rate', value: { value: '92', unit: '/min' }, method: null, artefact: false },
        { what: 'temperature', value: { value: '37.8', unit: 'Cel' }, method: null, artefact: false },
        { what: 'fluids', value: { value: '90', unit: 'mL/h' }, method: null, artefact: false },
      ],
      faults: [],
    })
    expect(read({ values: { temperature: '37,8' } }, ',').values[0]?.value.value).toBe('37.8')
  })

  it('cannot be kept empty, unreadable, or with a pressure of which nobody said how it was measured', () => {
    expect(read({}).faults).toEqual([{ at: 'look', because: 'nothing-typed' }])
    expect(read({ values: { 'heart-rate': '9o' } }).faults[0]).toMatchObject({ at: 'heart-rate' })
    expect(read({ values: { mean: '74' } }).faults).toEqual([{ at: 'method', because: 'no-method' }])
    const whole = read({ values: { mean: '74', 'heart-rate': '92' }, method: 'Doppler, tail' })
    expect(whole.faults).toEqual([])
    expect(whole.values.map(({ method }) => method)).toEqual(['Doppler, tail', null])
  })

  it('is never refused for being unlikely', () => {
    expect(read({ values: { 'heart-rate': '0', temperature: '378', 'oxygen-saturation': '140' } }).faults).toEqual([])
  })
})

describe('the ways of measuring a pressure', () => {
  it('are those of this anaesthetic, the last one first, each once', () => {
    const make = entryMaker()
    const entries = ['Doppler, tail', 'oscillometric, left forelimb', 'Doppler, tail'].map((method) => {
      const mean = { what: 'mean', value: { value: '74', unit: 'mm[Hg]' }, method, artefact: false } as const
      return make({ kind: 'observation', body: { ...observation.example, values: [mean] } })
    })
    expect(methodsOf(fold(entries).live('observation'))).toEqual(['Doppler, tail', 'oscillometric, left forelimb'])
  })
})
