import { describe, expect, it } from 'vitest'
import { quietEar } from './run-for-tests.ts'

const heading =
  'standard,edition,year,convention,audience,host,organism,drug,sites,method,disk,susceptible,between,resistant'
const row = 'Invented standard,ed1,2026,CLSI,animals,dog,Staphylococcus spp.,cefalexin,soft-tissue,MIC,,<=16,32,>=64'

describe('breakpoints check', () => {
  it('says what a whole file holds', () => {
    const ran = quietEar(['breakpoints', 'check', '-', '--json'], `${heading}\n${row}\n`)
    expect(ran.status).toBe(0)
    expect(ran.json()).toEqual({ ok: true, edition: 'Invented standard ed1 (2026)', rows: 1 })
  })

  it('ends with 3 and names line and column of every fault', () => {
    const ran = quietEar(
      ['breakpoints', 'check', '-', '--json'],
      `${heading}\n${row.replace('cefalexin', 'CN').replace('32', '')}\n`,
    )
    expect(ran.status).toBe(3)
    expect(ran.json()).toMatchObject({
      ok: false,
      faults: [
        { code: 'drug-unknown', line: 2, column: 'drug', found: 'CN', near: ['cefalexin', 'gentamicin'] },
        { code: 'ends-gap', line: 2, column: 'susceptible', text: expect.stringContaining('<=16 |  | >=64') },
      ],
    })
  })

  it('says it in sentences', () => {
    const ran = quietEar(['breakpoints', 'check', '-'], `${heading}\n${row.replace('dog', 'horse')}\n`)
    expect(ran.status).toBe(3)
    expect(ran.out).toBe(
      'line 2, host: “horse” is none of: dog, cat, human.\n1 fault; nothing of the file was taken.\n',
    )
  })
})
