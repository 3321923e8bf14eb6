import { describe, expect, it } from 'vitest'
import type { UsedBreakpoint } from '#core/culture/reading.ts'
import { antibiogramOf } from './antibiogram.ts'
import type { GrownIsolate } from './isolate.ts'
import type { AntibiogramMethod } from './method.ts'
import { asGiven, isolateOf, plainMethod, readDrug } from './readings-for-tests.ts'

const points = { susceptibleToResistant: 1, byOneStep: 0.5 }
type Isolate = ReturnType<typeof isolateOf>
const table = (isolates: readonly Isolate[], method: Partial<AntibiogramMethod> = {}) =>
  antibiogramOf(isolates, asGiven, { method: { ...plainMethod, ...method }, points })
const many = (count: number, make: (animal: string, place: number) => Isolate) =>
  Array.from({ length: count }, (_, place) => make(`animal-${place}`, place))

describe('an antibiogram', () => {
  it('keeps dogs and cats apart, and places only together when asked', () => {
    const isolates = [
      isolateOf('A', '2026-01-05', { cefalexin: 'S' }, { site: 'canal' }),
      isolateOf('B', '2026-01-05', { cefalexin: 'R' }, { site: 'bulla-on-entry' }),
      isolateOf('C', '2026-01-05', { cefalexin: 'R' }, { site: 'canal', host: 'cat' }),
    ]
    expect(table(isolates).map(({ host, site, n }) => [host, site, n])).toEqual([
      ['dog', null, 2],
      ['cat', null, 1],
    ])
    expect(table(isolates, { sites: 'apart' }).map(({ host, site, n }) => [host, site, n])).toEqual([
      ['dog', 'bulla-on-entry', 1],
      ['dog', 'canal', 1],
      ['cat', 'canal', 1],
    ])
  })

  it('chooses the first isolate before places are told apart, or in each place when asked', () => {
    const isolates = [
      isolateOf('A', '2026-01-05', { cefalexin: 'S' }, { site: 'bulla-on-entry' }),
      isolateOf('A', '2026-01-05', { cefalexin: 'R' }, { site: 'bulla-after-lavage' }),
    ]
    expect(table(isolates, { sites: 'apart' }).map(({ site }) => site)).toEqual(['bulla-on-entry'])
    expect(table(isolates, { sites: 'each' }).map(({ site }) => site)).toEqual(['bulla-after-lavage', 'bulla-on-entry'])
  })

  it('sets what cannot be read, what has no breakpoint and what was not tested beside the denominator', () => {
    const [row] = table([
      isolateOf('A', '2026-01-05', { cefalexin: 'S' }),
      isolateOf('B', '2026-01-05', { cefalexin: 'NI' }),
      isolateOf('C', '2026-01-05', { cefalexin: 'no_breakpoint' }),
      isolateOf('D', '2026-01-05', {}),
    ])
    expect(row?.n).toBe(4)
    expect(row?.drugs[0]).toMatchObject({
      n: 1,
      s: 1,
      notInterpretable: 1,
      noBreakpoint: 1,
      notTested: 1,
      percent: 100,
    })
  })

  it('tells no share of a drug to which the organism is resistant by nature', () => {
    const tested = [readDrug('ampicillin', 'R', { changedBy: 'intrinsic' }), readDrug('marbofloxacin', 'S')]
    const [row] = table([isolateOf('A', '2026-01-05', {}, { organism: 'pseudomonas-aeruginosa', tested })])
    expect(row?.drugs[0]).toMatchObject({ drug: 'ampicillin', untold: 'intrinsic', percent: null, interval: null })
    expect(row?.drugs[1]).toMatchObject({ drug: 'marbofloxacin', untold: null, percent: 100 })
  })

  it('keeps what a human or other-host breakpoint says in a list of its own', () => {
    const breakpoint = {} as UsedBreakpoint
    const tested = [readDrug('amikacin', 'no_breakpoint', { fallback: { category: 'S', breakpoint } })]
    const [row] = table([isolateOf('A', '2026-01-05', {}, { host: 'cat', tested })])
    expect(row?.drugs[0]).toMatchObject({ n: 0, noBreakpoint: 1, percent: null, untold: 'no-category' })
    expect(row?.fallback).toMatchObject([{ drug: 'amikacin', n: 1, s: 1, percent: 100 }])
  })

  it('names the dose that a susceptible-dose-dependent share needs', () => {
    const breakpoint = { dose: '15 mg/kg once a day' } as UsedBreakpoint
    const tested = [readDrug('enrofloxacin', 'SDD', { breakpoint })]
    const [row] = table([isolateOf('A', '2026-01-05', {}, { tested })])
    expect(row?.drugs[0]).toMatchObject({ s: 0, sdd: 1, percent: 0, percentSdd: 100, doses: ['15 mg/kg once a day'] })
  })

  it('tells no share of a drug that was tested only where others had failed', () => {
    const isolates = [
      ...many(3, (animal) => isolateOf(animal, '2026-02-01', { cefalexin: 'R', amikacin: 'S' })),
      isolateOf('spared', '2026-02-01', { cefalexin: 'S' }),
    ]
    const drug = (of: readonly Isolate[]) => table(of)[0]?.drugs.find(({ drug }) => drug === 'amikacin')
    expect(drug(isolates)).toMatchObject({ n: 3, s: 3, untold: 'tested-only-on-resistant', percent: null })
    const too = isolateOf('tested too', '2026-02-01', { cefalexin: 'S', amikacin: 'S' })
    expect(drug([...isolates, too])).toMatchObject({ untold: null, percent: 100 })
  })

  it('takes a drug that was read twice and differently as not to be told', () => {
    const tested = [readDrug('cefalexin', 'S'), readDrug('cefalexin', 'R', { method: 'DISK', raw: '10' })]
    const again = [readDrug('cefalexin', 'R'), readDrug('cefalexin', 'NI', { method: 'DISK' })]
    const [row] = table([
      isolateOf('A', '2026-01-05', {}, { tested }),
      isolateOf('B', '2026-01-05', {}, { tested: again }),
    ])
    expect(row?.drugs[0]).toMatchObject({ n: 1, r: 1, notInterpretable: 1 })
  })

  it('counts how many rest on a category that was printed without its value', () => {
    const alone = { method: null, raw: 'S', laboratory: 'S', flags: ['laboratory-category-only'] } as const
    const kept: GrownIsolate<ReturnType<typeof readDrug>> = isolateOf(
      'A',
      '2026-01-05',
      {},
      {
        tested: [readDrug('cefalexin', 'S', alone), readDrug('amoxicillin', 'S', { flags: ['not-printed'] })],
      },
    )
    const [row] = table([kept, isolateOf('B', '2026-01-05', { cefalexin: 'S' })])
    expect(row?.drugs[0]).toMatchObject({ n: 2, s: 2, categoryOnly: 1 })
    // Concluded, not tested.
    expect(row?.drugs).toHaveLength(1)
  })

  it('tells no share below the minimum, and flags one below thirty', () => {
    const isolates = many(16, (animal, place) => isolateOf(animal, '2026-01-05', { cefalexin: place < 11 ? 'S' : 'R' }))
    expect(table(isolates, { minimum: 15 })[0]?.drugs[0]).toMatchObject({ percent: 68.8, flag: 'n_below_30' })
    expect(table(isolates, { minimum: 17 })[0]?.drugs[0]).toMatchObject({
      n: 16,
      percent: null,
      untold: 'below-minimum',
    })
  })
})
