import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { sayEditionFault } from '#documents/sources/say-edition-fault.ts'
import { editionColumns } from './edition-column.ts'
import { readEditionFile } from './edition-file.ts'

const rows = susceptibility.editions
  .find(({ id }) => id === 'clsi-vet01s-7')
  ?.rows.filter(({ kind, host, ends }) => kind === 'clinical' && host !== 'any' && ends.value.between === null)
/** Our seventh edition as a clinic could have typed it in, where it needs no step between. */
const lines = (rows ?? []).map(({ host, organisms, agent, sites, method, disk, ends: { value } }) => {
  const [s, r] = method === 'MIC' ? ['<=', '>='] : ['>=', '<=']
  const end = (sign: string, text: string | null) => (text === null ? '' : `${sign}${text}`)
  const cells = ['CLSI VET01S', 'ed7', '2024', 'CLSI', 'animals', host, organisms, agent, sites.join(';'), '', method]
  return [...cells, disk ?? '', end(s, value.susceptible), '', end(r, value.resistant), '', '', ''].join(',')
})
const whole = [editionColumns.join(','), ...lines].join('\n')

const change = fc.record({
  at: fc.nat(whole.length),
  length: fc.nat(6),
  put: fc.constantFrom('', ',', ';', '"', '\n', '>', '<=', '0', '0.5', 'dog', 'any', '\u0000', 'µ', '-', '\t|'),
})

describe('the file of an edition', () => {
  it('is read whole when it is ours, written out', () => {
    const read = readEditionFile(whole, susceptibility)
    expect(read).toMatchObject({ kind: 'answer' })
    expect(read.kind === 'answer' && read.answer.rows.map(({ organisms, agent }) => `${organisms} ${agent}`)).toEqual(
      rows?.map(({ organisms, agent }) => `${organisms} ${agent}`),
    )
  })

  it('never throws, and is whole or refused with a place and a sentence, whatever was done to it', () => {
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        const text = changes.reduce(
          (now, { at, length, put }) => now.slice(0, at) + put + now.slice(at + length),
          whole,
        )
        const read = readEditionFile(text, susceptibility)
        if (read.kind === 'answer') return read.answer.rows.length > 0
        return read.refusal.length > 0 && read.refusal.every((fault) => /^line \d+/.test(sayEditionFault(fault)))
      }),
      { numRuns: 200 },
    )
  })
})
