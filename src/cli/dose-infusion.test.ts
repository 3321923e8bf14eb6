import { expect, it } from 'vitest'
import { problem, quietEar } from './run-for-tests.ts'

const q = (value: number, unit: string) => ({ value, unit })
const asked = (syringe: object) =>
  JSON.stringify({
    animal: { species: 'dog', weight: q(40, 'kg') },
    lines: [{ id: 'm', drug: 'morphine', use: 'cri', dose: q(0.2, 'mg/kg/h'), stock: q(10, 'mg/mL'), syringe }],
  })

it('prints an infusion both ways it is said, and how its syringe is made', () => {
  const ran = quietEar(['dose', '-'], asked({ volume: q(60, 'mL'), rate: q(0.5, 'mL/kg/h') }))
  expect(ran.status).toBe(0)
  expect(ran.out).toContain('m: 0.2 mg/kg/h, which is 0.003333 mg/kg/min')
  expect(ran.out).toContain('m: Draw 2.4 mL of morphine 10 mg/mL: 24 mg.')
})

it('ends with 2 and names the field of a syringe that has no rate', () => {
  const ran = quietEar(['dose', '-', '--json'], asked({ volume: q(60, 'mL') }))
  expect(ran.status).toBe(2)
  expect(problem(ran)).toMatchObject({ path: 'lines[0].syringe.rate' })
})
