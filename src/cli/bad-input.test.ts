import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

const animal = { species: 'dog', weight: { value: 8.2, unit: 'kg' } }
const block = {
  id: 'l1',
  drug: 'bupivacaine',
  use: 'local_block',
  route: 'perineural',
  dose: { value: 1, unit: 'mg/kg' },
  stock: { value: 5, unit: 'mg/mL' },
}

function dose(input: unknown) {
  return quietEar(['dose', '-', '--json'], JSON.stringify(input))
}

type Answer = {
  lines: {
    verdict: string
    findings: { code: string; level: string; text: string }[]
    amount?: unknown
    drawn?: unknown
    volume?: unknown
  }[]
  findings: { code: string; level: string }[]
}

describe('bad input on the command line', () => {
  it('works the example of the contract out: 8.2 kg at 1 mg/kg from 5 mg/mL', () => {
    const answer = dose({
      animal: { ...animal, weighedAt: '2026-03-02T08:00:00Z' },
      at: '2026-03-02T09:00:00Z',
      lines: [block],
    })
    expect(answer.status).toBe(0)
    expect((answer.json() as { lines: unknown[] }).lines[0]).toMatchObject({
      verdict: expect.stringMatching(/^(ok|caution)$/),
      amount: { value: 8.2, unit: 'mg' },
      volume: { value: 1.64, unit: 'mL' },
      drawn: { value: 1.6, unit: 'mL' },
    })
  })

  it('suggests [lb_av] for lb', () => {
    const ran = dose({ animal: { species: 'dog', weight: { value: 18, unit: 'lb' } }, lines: [block] })
    expect(ran.status).toBe(2)
    expect(problem(ran)).toMatchObject({
      code: 'unknown-unit',
      path: 'animal.weight',
      message: expect.stringContaining('[lb_av]'),
    })
  })

  it('refuses a bare number and says how to write it', () => {
    const ran = dose({ animal: { species: 'dog', weight: 8.2 }, lines: [block] })
    expect([ran.status, problem(ran).code]).toEqual([2, 'bare-number'])
    expect(problem(ran).message).toContain('{"value": 8.2, "unit": "kg"}')
  })

  it('refuses a dose where a weight is wanted', () => {
    const ran = dose({ animal: { species: 'dog', weight: { value: 8.2, unit: 'mg/kg' } }, lines: [block] })
    expect([ran.status, problem(ran).code]).toEqual([2, 'wrong-unit'])
  })

  it('refuses paracetamol in a cat as an answer, without an amount', () => {
    const line = {
      id: 'l1',
      drug: 'paracetamol',
      use: 'analgesia_oral',
      route: 'PO',
      dose: { value: 10, unit: 'mg/kg' },
    }
    const ran = dose({ animal: { species: 'cat', weight: { value: 4, unit: 'kg' } }, lines: [line] })
    expect(ran.status).toBe(0)
    const [answer] = (ran.json() as Answer).lines
    expect(answer).toMatchObject({
      verdict: 'refused',
      findings: expect.arrayContaining([expect.objectContaining({ code: 'forbidden-for-species', level: 'block' })]),
    })
    for (const field of ['amount', 'volume', 'drawn'] as const) expect(answer).not.toHaveProperty(field)
  })

  it('asks for a second person when the weight is ten times the last one, or differs by the pound', () => {
    const codes = (previous: number) => {
      const ran = dose({ animal: { ...animal, previousWeight: { value: previous, unit: 'kg' } }, lines: [block] })
      return (ran.json() as Answer).findings.filter(({ level }) => level !== 'note').map(({ code }) => code)
    }
    expect(codes(0.82)).toContain('weight-decimal-slip')
    expect(codes(3.72)).toContain('weight-pounds-suspected')
    expect(codes(8.0)).not.toContain('weight-pounds-suspected')
  })

  it('never picks a dose: without one the line is refused with the range and its sources', () => {
    const { dose: _, ...undosed } = block
    const [line] = (dose({ animal, lines: [undosed] }).json() as Answer).lines
    expect(line).toMatchObject({
      verdict: 'refused',
      findings: expect.arrayContaining([
        expect.objectContaining({
          code: 'dose-not-chosen',
          level: 'block',
          text: expect.stringMatching(/1.*2 mg\/kg/),
        }),
      ]),
    })
  })

  it('takes a dose from the house policy of the clinic, and says whose it is', () => {
    const folder = folderForTest()
    const file = join(folder, 'demo.jsonl')
    quietEar(['demo', '--case', 'spaniel', '--out', file])
    const line = { id: 'l1', drug: 'maropitant', use: 'antiemetic', route: 'SC', stock: { value: 10, unit: 'mg/mL' } }
    const ask = (...more: string[]) =>
      quietEar(['dose', '-', '--json', ...more], JSON.stringify({ animal, lines: [line] })).json() as Answer
    expect(ask().lines[0]).toMatchObject({ verdict: 'refused' })
    expect(ask('--case', file).lines[0]).toMatchObject({
      amount: { value: 8.2, unit: 'mg' },
      chosenBy: { kind: 'policy', person: 'person-adeyemi', date: '2025-01-06' },
    })
  })

  it('names the nearest formulas for an unknown one, the field that is missing, and one that does not belong', () => {
    const calc = (input: unknown) => quietEar(['calc', '-', '--json'], JSON.stringify(input))
    expect(problem(calc({ op: 'bolus_volum' }))).toMatchObject({
      code: 'unknown-op',
      message: expect.stringContaining('bolus_volume'),
    })
    expect(problem(calc({ op: 'volume_from_mass', mass_mg: 24 }))).toMatchObject({
      code: 'missing-field',
      path: 'stock_mg_mL',
    })
    expect(problem(calc({ op: 'volume_from_mass', mass_mg: 24, stock_mg_mL: 10, weight: 3 }))).toMatchObject({
      code: 'unknown-field',
      path: 'weight',
    })
    expect(calc({ op: 'volume_from_mass', mass_mg: 24, stock_mg_mL: 10 }).json()).toMatchObject({
      value: 2.4,
      unit: 'mL',
    })
  })

  it('asks again for a typed weight that can be read in two ways', () => {
    const emergency = (weight: string) => quietEar(['emergency', '--species', 'cat', '--weight', weight, '--json'])
    for (const weight of [
      '4.1',
      '4,1 kg',
      '1,250 kg',
      '4-5 kg',
      '<4 kg',
      '.5 kg',
      'four kg',
      '4.1 stone',
      '0 kg',
      '-4 kg',
    ]) {
      const ran = emergency(weight)
      expect([weight, ran.status, ran.out]).toEqual([weight, 2, ''])
      expect(problem(ran).message.length).toBeGreaterThan(20)
    }
    expect(emergency('4.1 kg').status).toBe(0)
    expect(
      quietEar(['emergency', '--species', 'cat', '--weight', '4,1 kg', '--decimal-mark', ',', '--json']).status,
    ).toBe(0)
  })

  it('refuses what is not JSON, an unknown command and an unknown field, each with one sentence', () => {
    expect(problem(quietEar(['dose', '-'], '{"animal":'))).toMatchObject({ code: 'not-json' })
    expect(problem(quietEar(['frobnicate']))).toMatchObject({ code: 'wrong-call' })
    const misspelt = dose({ animal: { ...animal, flgas: ['abcb1-mutant'] }, lines: [block] })
    expect([misspelt.status, problem(misspelt).path]).toEqual([2, 'animal.flgas'])
    const unknownWord = dose({ animal: { ...animal, conditions: ['renal-diseas'] }, lines: [block] })
    expect([unknownWord.status, problem(unknownWord).path]).toEqual([2, 'animal.conditions[0]'])
  })

  it('prints nothing but one JSON document on standard output with --json', () => {
    for (const args of [
      ['calc', '--list', '--json'],
      ['demo', '--list', '--json'],
      ['emergency', '--species', 'dog', '--weight', '27 lb', '--json'],
    ]) {
      const ran = quietEar(args)
      expect([args.join(' '), ran.status]).toEqual([args.join(' '), 0])
      expect(() => ran.json()).not.toThrow()
    }
  })
})
