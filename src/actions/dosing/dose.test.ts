import { describe, expect, it } from 'vitest'
import type { UsualPlan } from '#core/dosing/plan.ts'
import { quantity } from '#core/units/quantity.ts'
import { InputError } from '../input.ts'
import { dose } from './dose.ts'

const nothing = { plans: [], policies: [] }
const q = (value: number, unit: string) => ({ value, unit })
const at = '2026-03-02T10:00:00+01:00'
const dog = { species: 'dog', weight: q(8.2, 'kg'), weighedAt: '2026-03-02T08:00:00+01:00' }
const cat = { species: 'cat', weight: q(4.1, 'kg'), weighedAt: '2026-03-02T08:00:00+01:00' }
const block = (id: string, mgPerKg: number, drug = 'bupivacaine', mgPerMl = 5) => ({
  id,
  drug,
  use: 'local_block',
  dose: q(mgPerKg, 'mg/kg'),
  stock: q(mgPerMl, 'mg/mL'),
})
const ask = (lines: unknown[], more: object = {}, animal: object = dog) => dose({ animal, at, lines, ...more }, nothing)
const codes = (findings: readonly { code: string }[] | undefined) => findings?.map(({ code }) => code)

function errorOf(work: () => unknown): InputError {
  try {
    work()
  } catch (error) {
    if (error instanceof InputError) return error
  }
  throw new Error('No input error was thrown.')
}

describe('a planned dose', () => {
  // Worked by hand: 8.2 kg × 1 mg/kg = 8.2 mg; ÷ 5 mg/mL = 1.64 mL; a 3 mL syringe is marked every 0.1 mL.
  it('gives amount, exact volume, the syringe mark and what it really delivers', () => {
    const [line] = ask([block('l1', 1)]).lines
    expect(line).toMatchObject({
      verdict: 'ok',
      amount: q(8.2, 'mg'),
      volume: q(1.64, 'mL'),
      drawn: q(1.6, 'mL'),
      delivered: q(0.9756, 'mg/kg'),
      findings: [],
    })
    expect(line?.sources.map(({ id }) => id)).toContain('vasg-local-2004')
  })

  // Layne & de Miguel Garcia 2019: at most 2 mg/kg bupivacaine in a dog; both ears share it.
  it('fills the whole limit with one ear and refuses the second', () => {
    const { lines, ceilings } = ask([block('LEFT', 2), block('RIGHT', 0.5)])
    expect(lines[0]).toMatchObject({ verdict: 'ok', amount: q(16.4, 'mg'), volume: q(3.28, 'mL'), drawn: q(3.2, 'mL') })
    expect(lines[1]?.verdict).toBe('refused')
    expect(codes(lines[1]?.findings)).toContain('local-anaesthetic-ceiling')
    expect(lines[1]).not.toHaveProperty('amount')
    expect(lines[1]).not.toHaveProperty('volume')
    expect(lines[1]).not.toHaveProperty('drawn')
    expect(ceilings[0]).toMatchObject({ used: 1.25, granted: 1, limit: 1 })
  })

  it('adds different local anaesthetics as shares: 0.5 of lidocaine and 0.6 of bupivacaine is too much', () => {
    const { lines } = ask([block('a', 2.5, 'lidocaine', 20), block('b', 1.2)])
    expect(lines.map(({ verdict }) => verdict)).toEqual(['ok', 'refused'])
  })

  // 4.79 kg: 5.5 mL of 2.5 mg/mL is 0.957 of 3 mg/kg ropivacaine; 0.21 mL of 2 mg/mL is 0.044 of 2 mg/kg bupivacaine.
  it('keeps both syringes under the limit when one of them is drawn from a dilution', () => {
    const small = { ...dog, weight: q(4.79, 'kg') }
    const { lines } = ask([block('a', 2.75, 'ropivacaine', 2.5), block('b', 0.09, 'bupivacaine', 20)], {}, small)
    const [ropivacaine, bupivacaine] = lines.map(({ delivered }) => delivered?.value ?? Number.NaN)
    expect(lines[0]?.drawn).toEqual(q(5, 'mL'))
    expect((ropivacaine ?? 0) / 3 + (bupivacaine ?? 0) / 2).toBeLessThanOrEqual(1)
  })

  it('counts what was given until it has worn off, and in full when nobody wrote down when', () => {
    const given = (time?: string) => ({ given: [{ drug: 'bupivacaine', amount: q(16.4, 'mg'), at: time }] })
    expect(ask([block('l1', 1)], given('2026-03-02T03:00:00+01:00')).lines[0]?.verdict).toBe('refused')
    expect(ask([block('l1', 1)], given(undefined)).lines[0]?.verdict).toBe('refused')
    expect(ask([block('l1', 1)], given('2026-03-02T02:00:00+01:00')).lines[0]?.verdict).toBe('ok')
  })

  it('sees through a clock offset: 02:00+01:00 and 01:00Z are one moment', () => {
    const given = [{ drug: 'bupivacaine', amount: q(16.4, 'mg'), at: '2026-03-02T01:00:01Z' }]
    expect(ask([block('l1', 1)], { given }).lines[0]?.verdict).toBe('refused')
  })

  it('refuses to count a local anaesthetic given in millilitres without a strength', () => {
    const given = [{ drug: 'lidocaine', amount: q(1, 'mL') }]
    const [line] = ask([block('l1', 1)], { given }).lines
    expect(codes(line?.findings)).toContain('local-anaesthetic-uncounted')
    const counted = [{ drug: 'lidocaine', amount: q(1, 'mL'), stock: q(20, 'mg/mL') }]
    expect(ask([block('l1', 1)], { given: counted }).lines[0]?.verdict).toBe('ok')
  })

  it('lets an infusion of lidocaine stand beside a block only after confirmation, with the method named', () => {
    const infusion = {
      id: 'i',
      drug: 'lidocaine',
      use: 'cri',
      dose: q(25, 'ug/kg/min'),
      stock: q(20, 'mg/mL'),
      over: q(120, 'min'),
    }
    const { lines, ceilings } = ask([block('l1', 1), infusion])
    expect(lines.map(({ verdict }) => verdict)).toEqual(['caution', 'caution'])
    expect(lines[1]?.findings[0]).toMatchObject({ code: 'local-anaesthetic-infusion', level: 'confirm' })
    expect(lines[1]?.findings[0]?.text).toContain('3 h for lidocaine')
    // 25 ug/kg/min × 8.2 kg × 60 = 12 300 ug/h; ÷ 20 000 ug/mL = 0.615 mL/h; two hours hold 24.6 mg of 41 mg.
    expect(lines[1]).toMatchObject({ amount: q(12300, 'ug/h'), rate: q(0.615, 'mL/h'), total: q(24600, 'ug') })
    expect(ceilings[0]).toMatchObject({ used: 0.5, infusion: 0.6 })
  })

  // dosing rules, section 9: an infusion counts its last 3 h. 25 ug/kg/min × 180 min = 4.5 mg/kg of 5.
  it('counts a long infusion over its washout only', () => {
    const line = { id: 'i', drug: 'lidocaine', use: 'cri', dose: q(25, 'ug/kg/min'), stock: q(20, 'mg/mL') }
    expect(ask([{ ...line, over: q(10, 'h') }]).ceilings[0]?.infusion).toBe(0.9)
    expect(ask([line]).ceilings[0]?.infusion).toBe(0.9)
  })

  it('never plans a lidocaine infusion for a cat', () => {
    const [line] = ask([{ id: 'i', drug: 'lidocaine', use: 'cri', dose: q(10, 'ug/kg/min') }], {}, cat).lines
    expect(line?.verdict).toBe('refused')
    expect(codes(line?.findings)).toEqual(['forbidden-for-species'])
  })

  it('is refused, not an input error, when the drug is never for cats; the other name finds it too', () => {
    const [line] = ask([{ id: 'p', drug: 'acetaminophen', use: 'analgesia_oral', dose: q(10, 'mg/kg') }], {}, cat).lines
    expect(line).toMatchObject({ drug: 'paracetamol', verdict: 'refused' })
    expect(codes(line?.findings)).toEqual(['forbidden-for-species'])
  })

  it('is refused with the range and its sources when nobody chose a dose', () => {
    const [line] = ask([{ id: 'm', drug: 'methadone', use: 'analgesia_bolus', stock: q(10, 'mg/mL') }]).lines
    expect(line?.verdict).toBe('refused')
    const finding = line?.findings.find(({ code }) => code === 'dose-not-chosen')
    expect(finding?.text).toContain('0.1 mg/kg to 0.5 mg/kg')
    expect(finding?.text).toContain('0.5 mg/kg to 1 mg/kg')
    expect(finding?.sources.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['merck-opioid-table', 'methadone-uk-spc']),
    )
  })

  it('offers near names for a drug that is not known', () => {
    const [line] = ask([{ id: 'x', drug: 'bupivacane', use: 'local_block', dose: q(1, 'mg/kg') }]).lines
    expect(codes(line?.findings)).toEqual(['drug-unknown'])
    expect(line?.findings[0]?.text).toContain('bupivacaine')
  })

  it('lists the rows when use, route or unit fit none, or more than one', () => {
    const find = (line: object) => ask([{ id: 'x', drug: 'dexmedetomidine', ...line }]).lines[0]
    expect(codes(find({ use: 'nsaid' })?.findings)).toEqual(['use-not-listed'])
    expect(codes(find({ use: 'premed', route: 'PO' })?.findings)).toEqual(['route-not-listed'])
    expect(codes(find({ use: 'premed', dose: q(1, 'mg/{animal}') })?.findings)).toEqual(['dose-unit-not-listed'])
    expect(codes(find({ use: 'premed' })?.findings)).toEqual(['row-ambiguous'])
    expect(find({ use: 'premed' })?.rows).toEqual(['premed, IM or IV, in ug/kg', 'premed, IM, in ug/m2'])
    expect(find({ use: 'premed', dose: q(5, 'ug/kg'), stock: q(0.5, 'mg/mL') })?.verdict).toBe('ok')
  })

  it('takes the bracket of a row key with the route', () => {
    const line = { id: 'm', drug: 'meloxicam', use: 'nsaid', dose: q(0.2, 'mg/kg'), stock: q(2, 'mg/mL') }
    expect(codes(ask([{ ...line, route: 'SC' }], {}, cat).lines[0]?.findings)).toEqual(['row-ambiguous'])
    expect(ask([{ ...line, route: 'SC (EU label)' }], {}, cat).lines[0]).toMatchObject({
      verdict: 'ok',
      amount: q(0.82, 'mg'),
    })
  })

  // 21 CFR 522.558: 125 to 375 ug/m2. 0.101 × 8.2^(2/3) = 0.41071 m2; × 250 = 102.7 ug.
  it('doses by body surface where the label does', () => {
    const [line] = ask([
      { id: 'd', drug: 'dexmedetomidine', use: 'premed', dose: q(250, 'ug/m2'), stock: q(0.5, 'mg/mL') },
    ]).lines
    expect(line?.bodySurface?.value).toBeCloseTo(0.4107, 4)
    expect(line?.amount?.value).toBeCloseTo(102.68, 1)
    expect(line?.drawn).toEqual(q(0.21, 'mL'))
  })

  it('doses per animal, per eye and as a vaporiser setting without a weight', () => {
    const noWeight = { species: 'cat' }
    const lines = [
      { id: 'g', drug: 'gabapentin', use: 'anxiolytic', dose: q(50, 'mg/{animal}'), stock: q(50, 'mg/mL') },
      { id: 'e', drug: 'carbomer', use: 'eye', dose: q(1, '[drp]/{eye}') },
      { id: 'v', drug: 'isoflurane', use: 'maintenance', dose: q(2, '%{vol}') },
      { id: 'k', drug: 'maropitant', use: 'antiemetic', dose: q(1, 'mg/kg'), stock: q(10, 'mg/mL') },
    ]
    const answer = ask(lines, {}, noWeight)
    expect(answer.lines.map(({ verdict }) => verdict)).toEqual(['ok', 'ok', 'ok', 'refused'])
    expect(answer.lines[0]).toMatchObject({ amount: q(50, 'mg'), drawn: q(1, 'mL'), delivered: q(50, 'mg/{animal}') })
    expect(codes(answer.lines[3]?.findings)).toEqual(['weight-unknown'])
    expect(codes(answer.findings)).toEqual(['weight-unknown'])
  })

  it('blocks what is over the most for one dose', () => {
    const vapour = ask([{ id: 'v', drug: 'isoflurane', use: 'maintenance', dose: q(5.5, '%{vol}') }]).lines[0]
    expect(codes(vapour?.findings)).toContain('over-single-maximum')
    const giant = { ...dog, weight: q(100, 'kg') }
    const cefazolin = {
      id: 'c',
      drug: 'cefazolin',
      use: 'antibiotic_periop',
      dose: q(22, 'mg/kg'),
      stock: q(100, 'mg/mL'),
    }
    expect(codes(ask([cefazolin], {}, giant).lines[0]?.findings)).toContain('over-single-maximum')
    expect(ask([cefazolin], {}, { ...dog, weight: q(75, 'kg') }).lines[0]?.amount).toEqual(q(1650, 'mg'))
  })

  // Gelatt 2001; Small Animal Internal Medicine 6th ed. table 92.1: 5 mg/kg a day in cats.
  it('never lets a cat pass 5 mg/kg of enrofloxacin in a day', () => {
    const line = (mgPerKg: number) => ({
      id: 'e',
      drug: 'enrofloxacin',
      use: 'antibiotic_course',
      route: 'PO',
      dose: q(mgPerKg, 'mg/kg'),
      stock: q(25, 'mg/mL'),
    })
    expect(ask([line(5)], {}, cat).lines[0]?.verdict).toBe('ok')
    expect(codes(ask([line(5.1)], {}, cat).lines[0]?.findings)).toContain('over-single-maximum')
    const given = [{ drug: 'enrofloxacin', amount: q(20, 'mg'), at: '2026-03-01T20:00:00+01:00' }]
    expect(codes(ask([line(5)], { given }, cat).lines[0]?.findings)).toContain('over-daily-maximum')
    expect(codes(ask([line(5)], {}, { ...cat, conditions: ['retinal-disease'] }).lines[0]?.findings)).toEqual([
      'excluded',
    ])
  })

  it('grades a dose outside its range: note, confirm at twice, block at five times, unit suspected at a hundred', () => {
    const at = (mgPerKg: number) =>
      ask([{ id: 'm', drug: 'methadone', use: 'analgesia_bolus', dose: q(mgPerKg, 'mg/kg'), stock: q(10, 'mg/mL') }])
        .lines[0]
    expect(at(0.3)?.findings).toEqual([])
    expect(at(0.085)?.findings.map(({ code, level }) => [code, level])).toEqual([['dose-below-range', 'note']])
    expect(at(0.6)?.findings.map(({ code, level }) => [code, level])).toEqual([['dose-above-range', 'note']])
    expect(at(1)?.findings.map(({ code, level }) => [code, level])).toEqual([['dose-twice-range', 'confirm']])
    expect(at(2.5)).toMatchObject({ verdict: 'refused', findings: [{ code: 'dose-five-times-range', level: 'block' }] })
    expect(at(50)).toMatchObject({ verdict: 'refused', findings: [{ code: 'dose-unit-suspected', level: 'block' }] })
  })

  it('holds a vaporiser setting against its most without a weight too', () => {
    const line = { id: 'v', drug: 'sevoflurane', use: 'maintenance', dose: q(8.04, '%{vol}') }
    expect(codes(ask([line], {}, { species: 'dog' }).lines[0]?.findings)).toContain('over-single-maximum')
  })

  // 2 mg/kg a day: two whole 5 mg tablets for 1.25 mg each pass it at 2.5 kg, though each by itself does not.
  it('holds the day against what tablets really give, not against what was wanted', () => {
    const line = (id: string) => ({
      id,
      drug: 'prednisolone',
      use: 'steroid',
      dose: q(0.5, 'mg/kg'),
      tablet: { strength: q(5, 'mg') },
    })
    const light = { ...dog, weight: q(2.55, 'kg') }
    expect(ask([line('a')], {}, light).lines[0]?.verdict).toBe('caution')
    const { lines } = ask([line('a'), line('b')], {}, light)
    expect(lines.map(({ verdict }) => verdict)).toEqual(['refused', 'refused'])
    expect(codes(lines[0]?.findings)).toContain('over-daily-maximum')
  })

  it('makes no room for a line by refusing one before it', () => {
    const { lines } = ask([block('LEFT', 1.8), block('RIGHT', 0.4), block('splash', 0.1)])
    expect(lines.map(({ verdict }) => verdict === 'refused')).toEqual([false, true, true])
    const given = [{ drug: 'bupivacaine', amount: q(2.5, 'mg'), at: '2026-03-02T09:00:00+01:00' }]
    const after = ask([block('LEFT', 1.8), block('RIGHT', 0.4)], { given }).lines
    expect(after.map(({ verdict }) => verdict)).toEqual(['refused', 'refused'])
  })

  it('rounds down at a ceiling: 7.9 kg at 2 mg/kg is 3.16 mL and draws 3.0, not 3.2', () => {
    const [line] = ask([block('l1', 2)], {}, { ...dog, weight: q(7.9, 'kg') }).lines
    expect(line).toMatchObject({ volume: q(3.16, 'mL'), drawn: q(3, 'mL') })
    const [below] = ask([block('l1', 1.9)], {}, { ...dog, weight: q(8.32, 'kg') }).lines
    expect(below).toMatchObject({ drawn: q(3.2, 'mL') })
  })

  // Gelatt 2001: 5 mg/kg. 4.13 kg: 20.65 mg of 25 mg/mL is 0.826 mL; 0.83 would be over, so 0.82 is drawn.
  it('rounds down at a single maximum, undiluted and diluted', () => {
    const small = { ...cat, weight: q(4.13, 'kg') }
    const eye = { id: 'e', drug: 'enrofloxacin', use: 'antibiotic_course', dose: q(5, 'mg/kg'), stock: q(25, 'mg/mL') }
    expect(ask([eye], {}, small).lines[0]?.drawn).toEqual(q(0.82, 'mL'))
    const pain = { id: 'm', drug: 'meloxicam', use: 'nsaid', route: 'SC (EU label)', dose: q(0.2, 'mg/kg') }
    // 0.826 mg of 50 mg/mL is 0.01652 mL; one in ten 0.1652 mL, and 0.17 would be over.
    expect(ask([{ ...pain, stock: q(50, 'mg/mL') }], {}, small).lines[0]?.dilution?.drawn).toEqual(q(0.16, 'mL'))
  })

  it('offers a dilution for a volume that cannot be drawn, and prints no undiluted volume', () => {
    const [line] = ask(
      [{ id: 'd', drug: 'dexmedetomidine', use: 'premed', dose: q(2, 'ug/kg'), stock: q(0.5, 'mg/mL') }],
      {},
      cat,
    ).lines
    expect(line).not.toHaveProperty('volume')
    expect(line).not.toHaveProperty('drawn')
    // 8.2 ug of 500 ug/mL is 0.0164 mL; one in ten it is 0.164 mL.
    expect(line?.dilution).toEqual({
      parts: 10,
      strength: q(0.05, 'mg/mL'),
      volume: q(0.164, 'mL'),
      drawn: q(0.16, 'mL'),
      recipe: { product: q(0.1, 'mL'), diluent: q(0.9, 'mL') },
    })
    expect(line?.findings[0]?.text).toContain('0.1 mL of the product and 0.9 mL of diluent')
    expect(line?.findings[0]?.text).toContain('1 in 10 gives 0.05 mg/mL: draw 0.16 mL')
  })

  it('gives no volume while the strength in hand is not stated', () => {
    const [line] = ask([{ id: 'm', drug: 'methadone', use: 'analgesia_bolus', dose: q(0.3, 'mg/kg') }]).lines
    expect(line).toMatchObject({ verdict: 'caution', amount: q(2.46, 'mg') })
    expect(line).not.toHaveProperty('volume')
    expect(codes(line?.findings)).toEqual(['strength-not-chosen'])
  })
})

describe('what a plan is told beside the dose', () => {
  it('is refused for a cat when the formulary holds the drug for dogs only, with the reason', () => {
    const [line] = ask([{ id: 'f', drug: 'firocoxib', use: 'nsaid', dose: q(5, 'mg/kg') }], {}, cat).lines
    expect(line?.verdict).toBe('refused')
    expect(codes(line?.findings)).toEqual(['no-dose-for-species'])
    expect(line?.findings[0]?.text).toContain('no row for cats')
  })

  // 21 CFR 522.230: 1.8 mg/mL at 0.24 mg/kg; NOAH data sheet: 0.3 mg/mL at 10 to 20 ug/kg. Never interchanged.
  it('never reaches the concentrated buprenorphine unless it is named', () => {
    const line = { id: 'b', drug: 'buprenorphine', use: 'analgesia_bolus', route: 'SC', dose: q(0.24, 'mg/kg') }
    expect(codes(ask([line], {}, cat).lines[0]?.findings)).toEqual(['route-not-listed'])
    const named = { ...line, formulation: 'high concentration, 1.8 mg/mL', stock: q(1.8, 'mg/mL') }
    expect(ask([named], {}, cat).lines[0]).toMatchObject({
      verdict: 'ok',
      amount: q(0.984, 'mg'),
      drawn: q(0.55, 'mL'),
    })
  })

  it('notes a strength that no usual product has', () => {
    const line = { id: 'd', drug: 'dexmedetomidine', use: 'premed', dose: q(5, 'ug/kg'), stock: q(0.2, 'mg/mL') }
    expect(codes(ask([line]).lines[0]?.findings)).toEqual(['strength-not-listed'])
  })

  it('names other sources that reach a dose above the range', () => {
    const line = { id: 'm', drug: 'methadone', use: 'analgesia_bolus', dose: q(0.8, 'mg/kg'), stock: q(10, 'mg/mL') }
    const [finding] = ask([line]).lines[0]?.findings ?? []
    expect(finding?.text).toContain('0.5 mg/kg to 1 mg/kg (UK licence)')
    expect(finding?.sources.map(({ id }) => id)).toContain('methadone-uk-spc')
  })

  it('says that a pump this slow is not exact', () => {
    const line = { id: 'k', drug: 'ketamine', use: 'cri', dose: q(10, 'ug/kg/min'), over: q(1, 'h') }
    const at = (mgPerMl: number) => codes(ask([{ ...line, stock: q(mgPerMl, 'mg/mL') }]).lines[0]?.findings)
    // 10 ug/kg/min × 8.2 kg × 60 = 4.92 mg/h: 0.0492 mL/h of 100 mg/mL, 2.46 mL/h of 2 mg/mL.
    expect(at(100)).toEqual(['rate-too-slow'])
    expect(at(2)).not.toContain('rate-too-slow')
  })

  it('refuses a misspelt field by name, so that it never passes as one that was left out', () => {
    const misspelt = { ...dog, conditons: ['renal-disease'] }
    expect(() => ask([block('l1', 1)], {}, misspelt)).toThrow('animal.conditons: "conditons" is not a field')
    expect(() => ask([{ ...block('l1', 1), dosage: 3 }])).toThrow('lines[0].dosage: "dosage" is not a field')
  })

  it('carries the caution, the range and the interval', () => {
    const answer = ask([block('l1', 1)])
    expect(answer.caution).toContain('licensed veterinary professionals')
    expect(answer.lines[0]).toMatchObject({
      range: { low: q(1, 'mg/kg'), high: q(2, 'mg/kg') },
      interval: 'once, not sooner than 6 to 8 h',
      secondPerson: true,
    })
  })
})

describe('a planned tablet', () => {
  const course = (tablet: object, more: object = {}, mgPerKg = 12.5) => ({
    id: 't',
    drug: 'amoxicillin-clavulanate',
    use: 'antibiotic_course',
    dose: q(mgPerKg, 'mg/kg'),
    tablet,
    ...more,
  })
  const small = { ...dog, weight: q(6, 'kg') }

  // UK SPC: 50 mg tablets in halves, never under 12.5 mg/kg. 6 kg × 12.5 = 75 mg = 1½ tablets; twice a day for 7 days.
  it('is cut only as the product allows, and counted for the course', () => {
    const [line] = ask([course({ strength: q(50, 'mg') }, { days: 7 })], {}, small).lines
    expect(line?.tablets).toEqual({ each: q(1.5, '{tablet}'), strength: q(50, 'mg'), total: q(21, '{tablet}') })
    expect(line).toMatchObject({ verdict: 'ok', delivered: q(12.5, 'mg/kg') })
  })

  it('may be sent as its strength alone', () => {
    expect(ask([course(q(50, 'mg'))], {}, small).lines[0]?.tablets?.each).toEqual(q(1.5, '{tablet}'))
  })

  it('is never rounded under the lowest dose of the range when a higher count fits', () => {
    const [line] = ask([course({ strength: q(50, 'mg') })], {}, { ...dog, weight: q(6.5, 'kg') }).lines
    expect(line?.tablets?.each).toEqual(q(2, '{tablet}'))
  })

  it('stays whole when nobody knows whether it may be cut', () => {
    const [line] = ask([course({ strength: q(250, 'mg') }, {}, 20)], {}, { ...dog, weight: q(12, 'kg') }).lines
    expect(line?.tablets?.each).toEqual(q(1, '{tablet}'))
    expect(codes(line?.findings)).toContain('tablet-not-cut')
  })

  // UK label of the 50 mg tablet of amoxicillin with clavulanate: never below the dose. Of cefalexin nobody read one.
  describe('whose label’s direction', () => {
    const cefalexin = (tablet: object, perKg = 28) =>
      ask(
        [{ id: 'c', drug: 'cefalexin', use: 'antibiotic_course', route: 'PO', dose: q(perKg, 'mg/kg'), tablet }],
        {},
        { ...dog, weight: q(10, 'kg') },
      ).lines[0]
    const half = { strength: q(250, 'mg'), divides: 'quarters' }

    it('is not known is counted down, and says so', () => {
      // 280 mg lie between 250 and 312.5 mg; the range is 22 to 30 mg/kg.
      const line = cefalexin(half)
      expect(line?.tablets?.each).toEqual(q(1, '{tablet}'))
      expect(line?.findings.map(({ code, level }) => `${level} ${code}`)).toContain('note tablet-direction-unknown')
    })

    it('is said with the tablet in hand is followed without a word', () => {
      const line = cefalexin({ ...half, rounds: 'up' })
      expect(line?.tablets?.each).toEqual(q(1.25, '{tablet}'))
      expect(codes(line?.findings)).not.toContain('tablet-direction-unknown')
      expect(cefalexin({ ...half, rounds: 'down' })?.tablets?.each).toEqual(q(1, '{tablet}'))
    })

    it('is not known asks for a person where only more tablets, or none, reach the range', () => {
      // 220 mg: 125 mg are under 22 mg/kg, 250 mg are inside the range.
      const line = cefalexin({ strength: q(125, 'mg'), divides: 'whole' }, 22)
      expect(line?.tablets?.each).toEqual(q(2, '{tablet}'))
      expect(line?.findings.map(({ code, level }) => `${level} ${code}`)).toContain('confirm tablet-direction-unknown')
    })

    it('does not matter where nothing is rounded', () => {
      const line = cefalexin({ strength: q(125, 'mg'), divides: 'whole' }, 25)
      expect(codes(line?.findings)).not.toContain('tablet-direction-unknown')
    })

    it('is known of the 50 mg tablet of amoxicillin with clavulanate: up, also inside the range', () => {
      // 20 mg/kg for 3.1 kg are 62 mg: 50 mg would still be 16 mg/kg.
      const [line] = ask([course(q(50, 'mg'), {}, 20)], {}, { ...dog, weight: q(3.1, 'kg') }).lines
      expect(line?.tablets?.each).toEqual(q(1.5, '{tablet}'))
      expect(codes(line?.findings)).not.toContain('tablet-direction-unknown')
    })
  })

  // 21 CFR 520.1367: 0.1 mg/kg from day 2 and no more. 0.09 mg/kg is no dose of the tablet's own table: 0.738 mg in
  // 8.2 kg, half a tablet; one would be 0.122 mg/kg.
  it('never lifts an NSAID over its maximum by rounding', () => {
    const line = {
      id: 'm',
      drug: 'meloxicam',
      use: 'nsaid',
      qualifier: 'from day 2',
      dose: q(0.09, 'mg/kg'),
      tablet: { strength: q(1, 'mg') },
    }
    const [half] = ask([line]).lines
    expect(half?.tablets?.each).toEqual(q(0.5, '{tablet}'))
    expect(half?.findings.map(({ code, level }) => [code, level])).toEqual([
      ['tablet-direction-unknown', 'confirm'],
      ['tablet-rounding', 'confirm'],
      ['dose-below-range', 'note'],
    ])
    const [none] = ask([{ ...line, tablet: { strength: q(2.5, 'mg'), divides: 'whole' } }]).lines
    expect(none?.verdict).toBe('refused')
    expect(codes(none?.findings)).toContain('tablet-does-not-fit')
  })

  // UK label of the chewable tablets: 7.1 to 10.0 kg take one of 1 mg. The US label stops at 0.1 mg/kg: both are said.
  it('follows the table of the tablet’s own label, and shows the other label’s lower maximum', () => {
    const line = {
      id: 'm',
      drug: 'meloxicam',
      use: 'nsaid',
      qualifier: 'from day 2',
      dose: q(0.1, 'mg/kg'),
      tablet: { strength: q(1, 'mg') },
    }
    const [whole] = ask([line]).lines
    expect(whole?.tablets).toMatchObject({ each: q(1, '{tablet}'), label: { fromKg: '7.1', toKg: '10.0' } })
    const over = whole?.findings.find(({ code }) => code === 'label-over-maximum')
    expect(over?.level).toBe('confirm')
    expect(over?.sources.map(({ id }) => id)).toEqual(['meloxicam-chewable-uk-spc', 'cfr-21-520-1367'])
    const [heavy] = ask([line], {}, { ...dog, weight: q(22, 'kg') }).lines
    expect(codes(heavy?.findings)).toContain('label-table-none')
  })
})

describe('drugs that must not meet', () => {
  const steroid = {
    id: 's',
    drug: 'prednisolone',
    use: 'steroid',
    dose: q(0.5, 'mg/kg'),
    tablet: { strength: q(5, 'mg') },
  }
  const nsaid = {
    id: 'n',
    drug: 'carprofen',
    use: 'nsaid',
    qualifier: 'once a day',
    dose: q(4.4, 'mg/kg'),
    stock: q(50, 'mg/mL'),
  }

  it('blocks NSAID and steroid in one plan, both lines', () => {
    const { lines } = ask([steroid, nsaid])
    expect(lines.map(({ verdict }) => verdict)).toEqual(['refused', 'refused'])
    expect(codes(lines[0]?.findings)).toContain('nsaid-with-steroid')
  })

  // AAHA/AAFP 2015: about 5 days after meloxicam, 7 after other NSAIDs or a short-acting steroid.
  it('names the days that are still to wait', () => {
    const given = (drug: string, at: string) => ({ given: [{ drug, amount: q(1, 'mg'), at }] })
    const met = (drug: string, at: string, line: object) => ask([line], given(drug, at)).lines[0]
    expect(met('meloxicam', '2026-02-27T10:00:00+01:00', steroid)?.findings[0]?.text).toContain('2 days to wait')
    expect(codes(met('meloxicam', '2026-02-25T10:00:00+01:00', steroid)?.findings)).not.toContain('nsaid-with-steroid')
    expect(met('prednisolone', '2026-02-25T10:00:00+01:00', nsaid)?.findings[0]?.text).toContain('2 days to wait')
    expect(codes(met('meloxicam', '2026-03-01T10:00:00+01:00', nsaid)?.findings)).toContain('two-nsaids')
  })

  // 21 CFR 522.304: 4.4 mg/kg a day; divided, 2.2 every 12 h. 2.3 every 12 h would be 4.6.
  it('counts a divided course for the whole day', () => {
    const half = { ...nsaid, qualifier: 'divided' }
    expect(codes(ask([{ ...half, dose: q(2.2, 'mg/kg') }]).lines[0]?.findings)).not.toContain('over-daily-maximum')
    expect(codes(ask([{ ...half, dose: q(2.3, 'mg/kg') }]).lines[0]?.findings)).toContain('over-daily-maximum')
  })

  it('lets a course of one NSAID go on', () => {
    const given = [{ drug: 'carprofen', amount: q(36, 'mg'), at: '2026-03-01T09:00:00+01:00' }]
    expect(ask([nsaid], { given }).lines[0]?.verdict).toBe('ok')
  })

  // Labels of meloxicam, robenacoxib, firocoxib: one dose a day. Two lines of one row are one dose written twice.
  it('refuses an NSAID written twice, and one that was given nobody knows when', () => {
    const line = (id: string) => ({
      id,
      drug: 'meloxicam',
      use: 'nsaid',
      qualifier: 'from day 2',
      dose: q(0.1, 'mg/kg'),
      stock: q(1.5, 'mg/mL'),
    })
    expect(ask([line('a')]).lines[0]?.verdict).not.toBe('refused')
    expect(codes(ask([line('a'), line('b')]).lines[1]?.findings)).toContain('over-daily-maximum')
    const given = [{ drug: 'meloxicam', amount: q(0.8, 'mg') }]
    expect(codes(ask([line('a')], { given }).lines[0]?.findings)).toContain('repeat-too-soon')
  })

  it('bars what may not follow the 0.3 mg/kg injection in the same plan already', () => {
    const injection = { id: 'i', drug: 'meloxicam', use: 'nsaid', route: 'SC (US label)', dose: q(0.3, 'mg/kg') }
    const oral = { id: 'o', drug: 'meloxicam', use: 'nsaid', route: 'PO', dose: q(0.05, 'mg/kg') }
    const stock = { stock: q(5, 'mg/mL') }
    const lines = [
      { ...injection, ...stock },
      { ...oral, stock: q(0.5, 'mg/mL') },
    ]
    expect(codes(ask(lines, {}, cat).lines[1]?.findings)).toContain('excluded-by-given')
  })

  it('gives a cat nothing more after the 0.3 mg/kg injection of meloxicam', () => {
    const given = [{ drug: 'meloxicam', amount: q(1.23, 'mg'), at: '2026-03-01T09:00:00+01:00' }]
    const line = {
      id: 'm',
      drug: 'meloxicam',
      use: 'nsaid',
      route: 'PO',
      dose: q(0.05, 'mg/kg'),
      stock: q(0.5, 'mg/mL'),
    }
    expect(codes(ask([line], { given }, cat).lines[0]?.findings)).toContain('excluded-by-given')
  })

  it('is as strict when nobody wrote down how much meloxicam the cat had', () => {
    const line = { id: 'm', drug: 'meloxicam', use: 'nsaid', route: 'PO', dose: q(0.05, 'mg/kg') }
    const given = [{ drug: 'meloxicam', at: '2026-03-01T09:00:00+01:00' }]
    expect(codes(ask([line], { given }, cat).lines[0]?.findings)).toContain('excluded-by-given')
    const little = [{ drug: 'meloxicam', amount: q(0.82, 'mg'), at: '2026-03-01T09:00:00+01:00' }]
    expect(codes(ask([line], { given: little }, cat).lines[0]?.findings)).not.toContain('excluded-by-given')
  })

  // UK label of methadone: severe liver and kidney disease together; either alone is no bar.
  it('wants all words of an exclusion that names several together', () => {
    const line = { id: 'm', drug: 'methadone', use: 'analgesia_bolus', dose: q(0.3, 'mg/kg'), stock: q(10, 'mg/mL') }
    const having = (...conditions: string[]) => ask([line], {}, { ...dog, conditions }).lines[0]?.verdict
    expect(having('renal-disease')).toBe('ok')
    expect(having('renal-disease', 'hepatic-disease')).toBe('refused')
  })

  it('keeps atipamezole away from ketamine for forty minutes', () => {
    const line = { id: 'a', drug: 'atipamezole', use: 'reversal', dose: q(50, 'ug/kg'), stock: q(5, 'mg/mL') }
    const given = (time: string) => ({ given: [{ drug: 'ketamine', amount: q(10, 'mg'), at: time }] })
    expect(codes(ask([line], given('2026-03-02T09:30:00+01:00'), cat).lines[0]?.findings)).toContain(
      'excluded-by-given',
    )
    expect(codes(ask([line], given('2026-03-02T09:10:00+01:00'), cat).lines[0]?.findings)).not.toContain(
      'excluded-by-given',
    )
  })

  it('waits ten days after aspirin, and asks to confirm beside a depot steroid', () => {
    const given = (drug: string) => ({ given: [{ drug, amount: q(100, 'mg'), at: '2026-02-22T10:00:00+01:00' }] })
    const [aspirin] = ask([nsaid], given('aspirin')).lines
    expect(aspirin?.findings[0]).toMatchObject({ code: 'two-nsaids', level: 'block' })
    expect(aspirin?.findings[0]?.text).toContain('2 days to wait')
    const [depot] = ask([nsaid], given('methylprednisolone-acetate')).lines
    expect(depot?.findings[0]).toMatchObject({ code: 'pair-to-think-about', level: 'confirm' })
    expect(depot?.findings[0]?.text).toContain('not known')
  })

  it('counts a medicine of the past without an amount or a time', () => {
    const [line] = ask([nsaid], { given: [{ drug: 'prednisolone' }] }).lines
    expect(line?.findings[0]?.text).toContain('7 days to wait (its time is not known)')
  })

  it('says that a given drug it does not know was counted in no check', () => {
    const given = [{ drug: 'firocoxxib', amount: q(40, 'mg') }]
    expect(codes(ask([nsaid], { given }).findings)).toContain('given-drug-unknown')
  })

  it('excludes by what the animal has, and says when an age would matter', () => {
    const renal = { ...dog, conditions: ['renal-disease'] }
    expect(codes(ask([nsaid], {}, renal).lines[0]?.findings)).toEqual(['excluded'])
    const marbofloxacin = {
      id: 'q',
      drug: 'marbofloxacin',
      use: 'antibiotic_course',
      dose: q(3, 'mg/kg'),
      tablet: { strength: q(25, 'mg'), divides: 'halves' },
    }
    expect(codes(ask([marbofloxacin]).lines[0]?.findings)).toContain('age-unknown')
    expect(codes(ask([marbofloxacin], {}, { ...dog, ageMonths: 8 }).lines[0]?.findings)).toContain('excluded')
    expect(codes(ask([marbofloxacin], {}, { ...dog, ageMonths: 30 }).lines[0]?.findings)).not.toContain('age-unknown')
    expect(codes(ask([marbofloxacin], {}, { ...dog, ageMonths: 12 }).lines[0]?.findings)).not.toContain('excluded')
  })
})

describe('the weight', () => {
  const check = (animal: object, more: object = {}) => ask([block('l1', 1)], more, { ...dog, ...animal })

  it('is confirmed when it looks like pounds or a slipped point, and only noted when it changed a little', () => {
    const since = (kg: number) => codes(check({ previousWeight: q(kg, 'kg') }).findings)
    expect(since(8.2)).toEqual([])
    expect(since(3.72)).toEqual(['weight-pounds-suspected'])
    expect(since(18.04)).toEqual(['weight-pounds-suspected'])
    expect(since(0.82)).toEqual(['weight-decimal-slip'])
    expect(since(82)).toEqual(['weight-decimal-slip'])
    expect(since(7)).toEqual(['weight-changed'])
    expect(since(5)).toEqual(['weight-changed-much'])
  })

  it('carries its doubt to the lines that use it', () => {
    const { lines } = check({ previousWeight: q(0.82, 'kg') })
    expect(lines[0]).toMatchObject({ verdict: 'caution', amount: q(8.2, 'mg') })
    expect(codes(lines[0]?.findings)).toEqual(['weight-unconfirmed'])
  })

  it('is confirmed when older than a day or estimated', () => {
    expect(codes(check({ weighedAt: '2026-02-28T10:00:00+01:00' }).findings)).toEqual(['weight-old'])
    expect(codes(check({ weightIs: 'estimated' }).findings)).toEqual(['weight-estimated'])
  })

  it('is refused when no such animal exists, unless a person stands for it', () => {
    const impossible = check({ species: 'cat', weight: q(41, 'kg') })
    expect(impossible.lines[0]?.verdict).toBe('refused')
    expect(codes(impossible.lines[0]?.findings)).toContain('weight-impossible')
    const stood = check({ weight: q(120, 'kg'), weightConfirmed: { by: 'A. Person', reason: 'weighed twice' } })
    expect(stood.lines[0]?.verdict).toBe('caution')
    expect(codes(stood.findings)).toContain('weight-confirmed-by-person')
  })

  it('is read in pounds exactly', () => {
    expect(check({ weight: q(27, '[lb_av]') }).lines[0]?.amount).toEqual(q(12.24699399, 'mg'))
  })

  // AAHA/AAFP 2015: NSAIDs on lean weight. 12 kg at body condition 7 counts as 10 kg.
  it('is the lean weight for a fat animal where ceilings and NSAIDs are counted', () => {
    const [line] = check({ weight: q(12, 'kg'), bodyCondition: 7 }).lines
    expect(line).toMatchObject({ amount: q(10, 'mg'), dosingWeight: q(10, 'kg') })
    expect(codes(line?.findings)).toEqual(['lean-weight-used'])
  })
})

describe('a dose that somebody chose before', () => {
  const plan: UsualPlan = {
    name: 'spaniel-ear',
    title: 'Ear canal ablation, dog',
    species: 'dog',
    lines: [
      {
        id: 'block',
        drug: 'bupivacaine',
        use: 'local_block',
        dose: quantity('1', 'mg/kg'),
        stock: quantity('5', 'mg/mL'),
        reason: 'leaves half the limit for the splash',
        person: 'A. Person',
        date: '2026-01-05',
      },
    ],
  }
  const clinic = {
    plans: [plan],
    policies: [
      {
        drug: 'maropitant',
        species: 'dog' as const,
        use: 'antiemetic' as const,
        route: 'SC' as const,
        dose: quantity('1', 'mg/kg'),
        reason: 'label dose',
        person: 'A. Person',
        date: '2026-01-05' as const,
      },
    ],
  }
  const line = { id: 'l1', drug: 'bupivacaine', use: 'local_block' }

  it('comes from the named plan, with who chose it, when and why', () => {
    const [found] = dose({ animal: dog, at, plan: 'spaniel-ear', lines: [line] }, clinic).lines
    expect(found).toMatchObject({
      verdict: 'ok',
      drawn: q(1.6, 'mL'),
      chosenBy: { kind: 'plan', person: 'A. Person', date: '2026-01-05' },
    })
  })

  it('can be the whole plan at once', () => {
    expect(dose({ animal: dog, at, plan: 'spaniel-ear' }, clinic).lines.map(({ id }) => id)).toEqual(['block'])
  })

  it('comes from a house policy', () => {
    const [found] = dose(
      { animal: dog, at, lines: [{ id: 'v', drug: 'maropitant', use: 'antiemetic', stock: q(10, 'mg/mL') }] },
      clinic,
    ).lines
    expect(found).toMatchObject({ verdict: 'ok', amount: q(8.2, 'mg'), chosenBy: { kind: 'policy' } })
  })

  it('comes from the house policy when the named plan is silent about the line', () => {
    const lines = [{ id: 'v', drug: 'maropitant', use: 'antiemetic', stock: q(10, 'mg/mL') }]
    const [found] = dose({ animal: dog, at, plan: 'spaniel-ear', lines }, clinic).lines
    expect(found?.chosenBy?.kind).toBe('policy')
  })

  it('is refused when the plan is unknown or for the other species', () => {
    const unknown = dose({ animal: dog, at, plan: 'no-such', lines: [line] }, clinic)
    expect(codes(unknown.lines[0]?.findings)).toContain('plan-unknown')
    expect(unknown.lines[0]?.verdict).toBe('refused')
    const other = dose({ animal: cat, at, plan: 'spaniel-ear', lines: [line] }, clinic)
    expect(codes(other.lines[0]?.findings)).toContain('plan-for-other-species')
  })
})

describe('the brackets of a key', () => {
  it.each([
    ['buprenorphine (high concentration)', cat, { use: 'analgesia_bolus', route: 'SC' }],
    ['bupivacaine (liposomal)', dog, { use: 'local_block', route: 'infiltration at closure' }],
    ['bupivacaine (liposomal)', cat, { use: 'local_block', route: 'perineural' }],
    ['dexmedetomidine', dog, { use: 'analgesia_bolus', route: 'IV slow' }],
    ['atipamezole', dog, { use: 'reversal', route: 'IM (agonist was IM)' }],
  ])('lead to one row for %s', (drug, animal, words) => {
    const [line] = ask([{ id: 'l1', drug, ...words }], {}, animal).lines
    expect(codes(line?.findings)).toContain('dose-not-chosen')
  })

  it('are not passed over: a formulation that the drug does not have leads to no row', () => {
    const [line] = ask([{ id: 'l1', drug: 'buprenorphine (depot)', use: 'analgesia_bolus', route: 'IM' }]).lines
    expect(codes(line?.findings)).toContain('route-not-listed')
  })
})

describe('wrong input', () => {
  it('names the field and what would be right', () => {
    const bare = errorOf(() => ask([{ ...block('l1', 1), dose: 1 }]))
    expect(bare).toMatchObject({ code: 'bare-number', path: 'lines[0].dose' })
    const pounds = errorOf(() => ask([block('l1', 1)], {}, { species: 'dog', weight: q(27, 'lb') }))
    expect(pounds).toMatchObject({ code: 'unknown-unit', path: 'animal.weight' })
    expect(pounds.message).toContain('[lb_av]')
    expect(errorOf(() => ask([block('l1', 1)], {}, { species: 'rabbit', weight: q(2, 'kg') })).message).toContain(
      'dog, cat',
    )
    expect(errorOf(() => ask([block('l1', 1)], {}, { ...dog, conditions: ['bad-kidneys'] })).message).toContain(
      'renal-disease',
    )
    expect(errorOf(() => ask([{ ...block('l1', 1), use: 'blocking' }])).message).toContain('local_block')
    expect(errorOf(() => ask([{ ...block('l1', 1), stock: q(0.5, '%') }])).path).toBe('lines[0].stock')
    expect(errorOf(() => ask([block('l1', 1)], { at: '2026-03-02 10:00' })).code).toBe('wrong-time')
    expect(errorOf(() => ask([block('l1', 1), block('l1', 1)])).code).toBe('id-twice')
    expect(errorOf(() => dose({ animal: dog }, nothing)).code).toBe('no-lines')
  })
})
