import { afterEach, expect, it } from 'vitest'
import { emptyReport } from '#core/culture/empty-report.ts'
import { breakpointEdition } from '#core/journal/kinds/breakpoint-edition.ts'
import { House } from './house-for-tests.ts'

let house: House | null = null
afterEach(async () => house?.close())

it('counts what grows by the edition that the house chose, its own copy among them', async () => {
  house = await House.open()
  const { browser, make } = await house.join('sela', 'surgeon')
  const specimen = make({ kind: 'specimen' })
  const row = {
    drug: 'cefalexin',
    agent: 'cefalexin',
    method: 'MIC',
    raw: '8 mg/L',
    disk: null,
    category: null,
  } as const
  const species = 'staphylococcus-pseudintermedius'
  const isolates = [{ key: '1', organism: species, species, amount: null, results: [row], tests: [] }]
  const result = make({
    kind: 'specimen-result',
    body: { ...emptyReport, specimen: specimen.id, status: 'final', growth: 'growth', isolates },
  })
  const kept = await browser.send([make({ kind: 'identity' }), specimen, result], house.clinic)
  expect(kept.status).toBe(200)
  const susceptible = async () => {
    const { body } = await browser.act('read-what-grows', {})
    return [body.method.standard, body.organisms[0].drugs[0].s]
  }
  // CLSI VET01S ed7: S <=2, R >=4.
  expect(await susceptible()).toEqual(['CLSI VET01S ed7 (2024)', 0])

  // The copy of this test: S <=16.
  const copy = make({ kind: 'breakpoint-edition', body: { ...breakpointEdition.example, from: 'Our copy.' } })
  const policy = make({
    kind: 'house-policy',
    body: { policy: 'culture.edition', value: `own:${copy.id}`, because: 'We own it.' },
  })
  expect((await browser.send([copy, policy], house.clinic)).status).toBe(200)
  expect(await susceptible()).toEqual(['Example standard ed1 (2026)', 1])
})
