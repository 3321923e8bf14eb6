import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import type { Ends } from './breakpoint.ts'
import { endsFault } from './ends-fault.ts'
import { readEnds } from './written-ends.ts'

function read(method: 'MIC' | 'DISK', convention: 'CLSI' | 'EUCAST', written: readonly [string, string, string]): Ends {
  const [susceptible, between, resistant] = written
  const ends = readEnds({ susceptible, between, resistant }, method, convention)
  if (ends.kind === 'refusal') throw new Error(ends.refusal.written)
  return ends.answer
}

describe('the ends of a row', () => {
  it.each([
    ['MIC', 'CLSI', ['<=2', '4', '>=8']],
    ['MIC', 'CLSI', ['<=2', '', '>=4']],
    ['MIC', 'CLSI', ['<=0.06', 'SDD 0.12 (10 mg/kg); 0.25 (20 mg/kg)', '>=0.5']],
    ['MIC', 'CLSI', ['<=8', '', '']],
    ['MIC', 'CLSI', ['', '<=2', '>=4']],
    ['MIC', 'EUCAST', ['<=4', '', '>4']],
    ['MIC', 'EUCAST', ['<=0.001', '0.002-1', '>1']],
    ['DISK', 'CLSI', ['>=20', '17-19', '<=16']],
    ['DISK', 'EUCAST', ['>=22', '', '<22']],
    ['DISK', 'EUCAST', ['>=50', '15-49', '<15']],
  ] as const)('%s by %s: %s part every value', (method, convention, written) => {
    expect(endsFault(read(method, convention, written), method, convention)).toBeNull()
  })

  it.each([
    ['MIC', 'CLSI', ['<=2', '', '>=8'], 'ends-gap'],
    ['MIC', 'CLSI', ['<=2', '4; 16', '>=32'], 'ends-gap'],
    ['MIC', 'EUCAST', ['<=2', '', '>4'], 'ends-gap'],
    ['MIC', 'CLSI', ['<=2', '8', ''], 'ends-gap'],
    ['MIC', 'CLSI', ['', '2', '>=8'], 'ends-gap'],
    ['MIC', 'CLSI', ['<=8', '4', '>=16'], 'ends-turned'],
    ['MIC', 'CLSI', ['<=8', '', '>=4'], 'ends-turned'],
    ['MIC', 'CLSI', ['<=8', '', '>=8'], 'ends-turned'],
    ['MIC', 'CLSI', ['<=3', '', '>=4'], 'off-the-ladder'],
    ['DISK', 'CLSI', ['>=20', '17-18', '<=16'], 'ends-gap'],
    ['DISK', 'CLSI', ['>=16', '', '<=20'], 'ends-turned'],
    ['DISK', 'CLSI', ['>=20.5', '', '<=20'], 'off-the-ladder'],
    ['DISK', 'CLSI', ['>=5', '', '<=4'], 'off-the-ladder'],
  ] as const)('%s by %s: %s do not', (method, convention, written, fault) => {
    expect(endsFault(read(method, convention, written), method, convention)).toBe(fault)
  })

  it('part every value in every row that this house holds', () => {
    const wrong = susceptibility.editions.flatMap(({ id, convention, rows }) =>
      rows.filter(({ ends, method }) => endsFault(ends.value, method, convention)).map((row) => `${id} ${row.id}`),
    )
    expect(wrong).toEqual([])
  })

  it('are refused in the signs of the other convention', () => {
    const written = { susceptible: '<=2', between: '', resistant: '>4' }
    expect(readEnds(written, 'MIC', 'CLSI')).toMatchObject({ refusal: { end: 'resistant', written: '>4' } })
    expect(readEnds({ ...written, susceptible: '<2' }, 'MIC', 'EUCAST')).toMatchObject({ kind: 'refusal' })
    expect(readEnds({ ...written, susceptible: '2' }, 'MIC', 'EUCAST')).toMatchObject({ kind: 'refusal' })
    expect(readEnds({ ...written, between: 'R 4' }, 'MIC', 'EUCAST')).toMatchObject({ refusal: { end: 'between' } })
  })
})
