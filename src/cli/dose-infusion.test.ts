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

it('prints no figure that nobody can draw, the loading dose, and a rate that is said by the hour only', () => {
  const ran = quietEar(
    ['dose', '-'],
    JSON.stringify({
      animal: { species: 'dog', weight: q(8, 'kg') },
      lines: [
        { id: 'b', drug: 'bupivacaine', use: 'local_block', dose: q(1, 'mg/kg'), stock: q(7.5, 'mg/mL') },
        {
          id: 'l',
          drug: 'lidocaine',
          use: 'cri',
          dose: q(25, 'ug/kg/min'),
          stock: q(20, 'mg/mL'),
          loading: { dose: q(1, 'mg/kg') },
        },
        { id: 'k', drug: 'potassium-chloride', use: 'fluid', dose: q(0.2, 'mmol/kg/h'), stock: q(0.04, 'mmol/mL') },
      ],
    }),
  )
  expect(ran.status).toBe(0)
  expect(ran.out).toContain('1.067 mL')
  expect(ran.out).not.toMatch(/\d\.\d{7}/)
  expect(ran.out).toContain('l: before it 1 mg/kg, 8 mg: draw 0.4 mL')
  expect(ran.out).toContain('k: 0.2 mmol/kg/h, at 40 mL/h')
})

it('ends with 2 and names the field of a syringe that has no rate', () => {
  const ran = quietEar(['dose', '-', '--json'], asked({ volume: q(60, 'mL') }))
  expect(ran.status).toBe(2)
  expect(problem(ran)).toMatchObject({ path: 'lines[0].syringe.rate' })
})
