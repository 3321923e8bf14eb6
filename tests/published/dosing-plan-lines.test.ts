import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { dose } from '#actions/dosing/dose.ts'
import type { LineAnswer } from '#actions/dosing/dose-answer.ts'

/**
 * The worked answers of the reference table once more, this time as lines of a plan: what `calc` gives with bare numbers
 * must also be what a nurse reads in a plan. The citation of each row stands in the table and in the name of its test.
 * Answers printed "per kilogram" are asked for ten kilograms and divided, because a plan never prints a volume that
 * cannot be drawn.
 */
type Row = Record<'id' | 'description' | 'inputs' | 'expected' | 'tolerance' | 'provenance', string>
type Answer = ReturnType<typeof dose>
type Asked = { readonly animal: object; readonly lines?: readonly object[]; readonly haematocrit?: object }
type Check = {
  readonly ask: Asked
  readonly read: (line: LineAnswer | undefined, answer: Answer) => number | undefined
}

const rows: Row[] = parse(readFileSync(new URL('./data/dosing-examples.csv', import.meta.url)), { columns: true })
const q = (value: number, unit: string) => ({ value, unit })
const animal = (species: 'dog' | 'cat', kg: number) => ({ species, weight: q(kg, 'kg') })
const dog = (kg: number) => animal('dog', kg)
const cat = (kg: number) => animal('cat', kg)

const check = (who: object, line: object, read: Check['read']): Check => ({
  ask: { animal: who, lines: [{ id: 'line', ...line }] },
  read,
})
const volume: Check['read'] = (line) => line?.volume?.value
const perKg =
  (read: Check['read'], kg: number): Check['read'] =>
  (line, answer) => {
    const value = read(line, answer)
    return value === undefined ? undefined : value / kg
  }
const amountIn =
  (unit: string): Check['read'] =>
  (line) =>
    line?.amount?.unit === unit ? line.amount.value : undefined

/** Pablo's 60 mL syringe for a 40 kg dog, three hours at 0.5 mL/kg/h. */
const sixty = { volume: q(60, 'mL'), rate: q(0.5, 'mL/kg/h') }
const morphine = { drug: 'morphine', use: 'cri', dose: q(0.2, 'mg/kg/h'), stock: q(10, 'mg/mL') }
const lidocaine = { drug: 'lidocaine', use: 'cri', dose: q(3, 'mg/kg/h'), stock: q(20, 'mg/mL') }
const ketamine = { drug: 'ketamine', use: 'cri', dose: q(0.6, 'mg/kg/h'), stock: q(100, 'mg/mL') }
const written: Check['read'] = (line) => (line?.syringe ?? line?.bag)?.amount.value
const inSyringe = (line: object) => ({ ...line, syringe: sixty })
/** The litre bag at 1 mL/kg/h of the teaching blog; the drug's own volume is not counted there. */
const litre = { volume: q(1000, 'mL'), rate: q(1, 'mL/kg/h'), ownVolume: 'withdrawn' }
const inLitre = (line: object) => ({ ...line, bag: litre })
const delivered =
  (unit: string): Check['read'] =>
  (line) =>
    line?.delivered?.unit === unit ? line.delivered.value : undefined

/** A vasopressor in a bag that holds the printed strength: 10 kg at the rate which that strength asks for. */
const pressor = (drug: string, ug: number, stock: number, strength: number, container: 'bag' | 'syringe', mL: number) =>
  check(
    dog(10),
    {
      drug,
      use: 'vasopressor',
      dose: q(ug, 'ug/kg/min'),
      stock: q(stock, 'mg/mL'),
      [container]: {
        volume: q(mL, 'mL'),
        rate: q((ug * 10 * 60) / 1000 / strength, 'mL/h'),
        ...(container === 'bag' && { ownVolume: 'withdrawn' }),
      },
    },
    volume,
  )

const bolus = (drug: string, use: string, amount: [number, string], stock: number, more: object = {}) => ({
  drug,
  use,
  dose: q(...amount),
  stock: q(stock, 'mg/mL'),
  ...more,
})
const methadone = bolus('methadone', 'analgesia_bolus', [0.5, 'mg/kg'], 10)
const buprenorphine = bolus('buprenorphine', 'analgesia_bolus', [10, 'ug/kg'], 0.3)
const cefovecin = bolus('cefovecin', 'antibiotic_course', [3.6 / 0.45359237, 'mg/kg'], 80)
const pounds = (lb: number) => ({ species: 'dog', weight: q(lb, '[lb_av]') })
const sedation = bolus('dexmedetomidine', 'sedation', [40, 'ug/kg'], 0.5, { route: 'IM' })
const toTenth: Check['read'] = (line) => (line?.volume ? Math.round(line.volume.value * 10) / 10 : undefined)
const tablets = (drug: string, use: string, mgPerKg: number, mg: number, more: object = {}) => ({
  drug,
  use,
  dose: q(mgPerKg, 'mg/kg'),
  tablet: { strength: q(mg, 'mg') },
  ...more,
})
const each: Check['read'] = (line) => line?.tablets?.each.value
const meloxicam = (mg: number) => tablets('meloxicam', 'nsaid', 0.1, mg, { route: 'PO (from day 2)' })
const clavulanate = tablets('amoxicillin-clavulanate', 'antibiotic_course', 12.5, 50, { route: 'PO' })
const robenacoxib = (mg: number) => tablets('robenacoxib', 'nsaid', 1, mg, { route: 'PO (long use)' })
const milligrams: Check['read'] = (line) => line?.tablets && line.tablets.each.value * line.tablets.strength.value
const fluid = (mL: number, more: object = {}) => ({
  drug: 'balanced-crystalloid',
  use: 'fluid',
  route: 'IV (under anaesthesia)',
  dose: q(mL, 'mL/kg/h'),
  ...more,
})
const rate: Check['read'] = (line) => line?.rate?.value
const deficit = (percent: number, hours = 24) => ({ deficit: { percent: q(percent, '%'), over: q(hours, 'h') } })
const blood =
  (read: (answer: NonNullable<Answer['blood']>) => number | undefined, start = 40, lowest = 25) =>
  (kg: number, species: 'dog' | 'cat' = 'dog'): Check => ({
    ask: { animal: animal(species, kg), lines: [], haematocrit: { start: q(start, '%'), lowest: q(lowest, '%') } },
    read: (_, answer) => answer.blood && read(answer.blood),
  })
/** 50 mL/kg a day of the nursing journal, as the rate of a plan. */
const daily = fluid(50 / 24, { route: 'IV (maintenance)' })
const surface: Check['read'] = (line) => line?.bodySurface?.value
const bySurface = { drug: 'dexmedetomidine', use: 'premed', dose: q(375, 'ug/m2'), stock: q(0.5, 'mg/mL') }
const reversal = (drug: string, mgPerKg: number, stock: number) => bolus(drug, 'reversal', [mgPerKg, 'mg/kg'], stock)

const asLines: Readonly<Record<string, Check>> = {
  DX001: check(dog(40), inSyringe(morphine), (line) =>
    line?.syringe ? 60 / line.syringe.hoursToEmpty.value / 40 : undefined,
  ),
  DX002: check(dog(40), inSyringe(morphine), rate),
  DX003: check(dog(40), inSyringe(morphine), written),
  DX004: check(dog(40), inSyringe(morphine), volume),
  DX005: check(dog(40), inSyringe(lidocaine), written),
  DX006: check(dog(40), inSyringe(lidocaine), volume),
  DX007: check(dog(40), inSyringe(ketamine), written),
  DX008: check(dog(40), inSyringe(ketamine), volume),
  DX009: check(dog(25), { drug: 'fentanyl', use: 'cri', dose: q(5, 'ug/kg/h'), stock: q(50, 'ug/mL') }, rate),
  DX010: check(
    dog(20),
    { drug: 'lidocaine', use: 'cri', dose: q(50, 'ug/kg/min'), stock: q(20, 'mg/mL'), over: q(60, 'min') },
    (line) => (line?.total?.unit === 'ug' ? line.total.value / 1000 : undefined),
  ),
  DX011: check(
    dog(20),
    { drug: 'lidocaine', use: 'cri', dose: q(50, 'ug/kg/min'), stock: q(20, 'mg/mL'), over: q(60, 'min') },
    rate,
  ),
  DX013: check(
    dog(20),
    { drug: 'dobutamine', use: 'vasopressor', dose: q(5, 'ug/kg/min'), stock: q(12.5, 'mg/mL'), over: q(6, 'h') },
    (line) => (line?.total?.unit === 'ug' ? line.total.value / 1000 : undefined),
  ),
  DX014: check(
    dog(20),
    inLitre({ ...morphine, dose: q(0.12, 'mg/kg/h'), stock: q(15, 'mg/mL') }),
    delivered('mg/kg/h'),
  ),
  DX015: check(dog(20), inLitre({ ...lidocaine, dose: q(1, 'mg/kg/h') }), delivered('mg/kg/h')),
  DX016: check(
    dog(20),
    inLitre({ ...lidocaine, dose: q(1, 'mg/kg/h') }),
    (line) => (line?.perMinute?.value ?? 0) * 1000,
  ),
  DX017: check(dog(20), inLitre({ ...ketamine, dose: q(0.12, 'mg/kg/h') }), delivered('mg/kg/h')),
  DX018: check(
    dog(20),
    inLitre({ ...ketamine, dose: q(0.12, 'mg/kg/h') }),
    (line) => (line?.perMinute?.value ?? 0) * 1000,
  ),
  DX020: pressor('dopamine', 10, 40, 0.2, 'bag', 250),
  DX021: pressor('dopamine', 10, 40, 0.2, 'syringe', 60),
  DX022: pressor('dobutamine', 5, 12.5, 0.3125, 'bag', 500),
  DX023: pressor('phenylephrine', 1, 10, 0.06, 'bag', 250),
  DX025: check(dog(27.3), bolus('hydromorphone', 'analgesia_bolus', [0.05, 'mg/kg'], 2), amountIn('mg')),
  DX026: check(dog(27.3), bolus('hydromorphone', 'analgesia_bolus', [0.05, 'mg/kg'], 2), volume),
  DX027: check({ species: 'cat', weight: q(8, '[lb_av]') }, methadone, (line) => line?.dosingWeight?.value),
  DX031: check(dog(9), bolus('ketamine', 'induction', [5.5, 'mg/kg'], 100), volume),
  DX035: check(dog(10), buprenorphine, volume),
  DX036: check(dog(10), { ...buprenorphine, dose: q(20, 'ug/kg') }, volume),
  DX037: check(dog(10), methadone, perKg(volume, 10)),
  DX038: check(cat(10), { ...methadone, dose: q(0.6, 'mg/kg') }, perKg(volume, 10)),
  DX039: check(dog(10), bolus('amoxicillin-clavulanate', 'antibiotic_course', [12.5, 'mg/kg'], 50), perKg(volume, 10)),
  DX040: check(dog(10), bolus('amoxicillin-clavulanate', 'antibiotic_course', [25, 'mg/kg'], 50), perKg(volume, 10)),
  DX041: check(cat(5), bolus('enrofloxacin', 'antibiotic_course', [5, 'mg/kg'], 25), perKg(volume, 5)),
  DX043: check(cat(5), sedation, perKg(volume, 5)),
  DX044: check(dog(10), bolus('cefovecin', 'antibiotic_course', [8, 'mg/kg'], 80), volume),
  DX045: check(pounds(5), cefovecin, volume),
  DX046: check(pounds(10), cefovecin, volume),
  DX047: check(pounds(15), cefovecin, volume),
  DX048: check(pounds(20), cefovecin, volume),
  DX049: check(pounds(80), cefovecin, volume),
  DX050: check(cat(1.5), sedation, toTenth),
  DX051: check(cat(2.5), sedation, toTenth),
  DX052: check(cat(3.5), sedation, toTenth),
  DX053: check(cat(5), sedation, toTenth),
  DX054: check(cat(7.5), sedation, toTenth),
  DX055: check(cat(9), sedation, toTenth),
  DX066: check(dog(10), bolus('lidocaine', 'emergency', [2, 'mg/kg'], 20), perKg(volume, 10)),
  DX069: check(dog(10), bolus('atropine', 'emergency', [0.05, 'mg/kg'], 0.54), perKg(volume, 10)),
  DX073: check(dog(20), bolus('atropine', 'emergency', [0.04, 'mg/kg'], 0.54), volume),
  DX075: check(dog(5), reversal('naloxone', 0.04, 0.4), volume),
  DX076: check(dog(15), reversal('flumazenil', 0.01, 0.1), volume),
  DX079: check(dog(12), daily, (line) => (line?.rate ? line.rate.value * 24 : undefined)),
  DX080: check(dog(12), daily, rate),
  DX081: check(dog(12), { ...daily, ...deficit(6) }, (line) => line?.fluid?.deficit?.volume.value),
  DX082: check(dog(12), { ...daily, ...deficit(6) }, (line) =>
    line?.fluid?.deficit ? line.fluid.deficit.together.value * 24 : undefined,
  ),
  DX083: check(dog(12), { ...daily, ...deficit(6) }, (line) => line?.fluid?.deficit?.together.value),
  DX085: check(dog(5), fluid(5, deficit(6)), (line) => line?.fluid?.deficit?.volume.value),
  DX086: check(dog(20), fluid(5), rate),
  DX087: check(dog(20), fluid(5, { over: q(120, 'min') }), (line) => line?.fluid?.hours[1]?.rate.value),
  DX088: check(cat(4), fluid(3), rate),
  DX089: check(dog(10), fluid(5), (line) => line?.fluid?.maintenance.perDay.value),
  DX090: check(cat(4), fluid(3), (line) => line?.fluid?.maintenance.perDay.value),
  DX091: blood(({ volume: all }) => all.value)(32),
  DX093: check(
    dog(13),
    {
      drug: 'whole-blood',
      use: 'blood_product',
      goal: { now: q(15, '%'), aim: q(35, '%'), donorPcv: q(42, '%') },
    },
    amountIn('mL'),
  ),
  DX096: blood(({ allowableLoss }) => allowableLoss.find(({ dividedBy }) => dividedBy === 'start')?.volume.value)(20),
  DX099: check(dog(10), bySurface, surface),
  DX100: check(dog(1), bySurface, surface),
  DX101: check(dog(5), bySurface, surface),
  DX102: check(dog(20), bySurface, surface),
  DX103: check(dog(30), bySurface, surface),
  DX104: check(dog(40), bySurface, surface),
  DX105: check(dog(50), bySurface, surface),
  DX109: check(dog(2), bySurface, perKg(amountIn('ug'), 2)),
  DX110: check(dog(80), bySurface, perKg(amountIn('ug'), 80)),
  DX111: check(dog(4.5), meloxicam(1), each),
  DX112: check(dog(9), meloxicam(1), each),
  DX113: check(dog(18), meloxicam(1), each),
  DX114: check(dog(23), meloxicam(2.5), each),
  DX115: check(dog(45), meloxicam(2.5), each),
  DX116: check(dog(6.5), meloxicam(1), each),
  DX117: check(dog(1.5), clavulanate, each),
  DX118: check(dog(3), clavulanate, each),
  DX119: check(dog(7.5), clavulanate, each),
  DX120: check(dog(3), robenacoxib(5), milligrams),
  DX121: check(dog(7), robenacoxib(10), milligrams),
  DX122: check(dog(25), robenacoxib(40), milligrams),
  DX123: check(dog(60), robenacoxib(40), milligrams),
  DX124: check(dog(5), tablets('marbofloxacin', 'antibiotic_course', 2, 5, { route: 'PO' }), each),
}

/** Rows that are no line of a plan, and what they are instead. */
const notLines: Readonly<Record<string, readonly string[]>> = {
  'a unit case of 1 kg, the same formula as DX013': ['DX012'],
  'a rate that is forbidden in the animal it is quoted for': ['DX019'],
  'not in the formulary as a planned drug; on the emergency sheet': [
    'DX024',
    'DX064',
    'DX065',
    'DX067',
    'DX068',
    'DX070',
    'DX071',
    'DX072',
    'DX074',
    'DX077',
    'DX078',
    'DX132',
  ],
  'no drug is named': ['DX028', 'DX029', 'DX030', 'DX125'],
  'diluted with another drug in one syringe, or too small to be drawn undiluted': ['DX032', 'DX033', 'DX034'],
  'a formulation that the formulary of today does not hold': ['DX042'],
  'a conversion of units': ['DX056', 'DX057', 'DX058', 'DX059', 'DX060', 'DX061', 'DX062', 'DX063'],
  'drops, swabs, pressures and parts: read off in theatre, not planned': ['DX084', 'DX092', 'DX097', 'DX098', 'DX131'],
  'a human example; the animal one is DX091 and DX096': ['DX094', 'DX095'],
  'the cat’s factor; no drug of the formulary is dosed by surface in a cat': ['DX106', 'DX107', 'DX108'],
  'a patch is chosen by its size; the plan holds the chosen one against the table': [
    'DX126',
    'DX127',
    'DX128',
    'DX129',
    'DX130',
  ],
}

describe('worked answers of the reference table, as lines of a plan', () => {
  it('are all either a line here, or said why not', () => {
    const known = [...Object.keys(asLines), ...Object.values(notLines).flat()].sort()
    expect(known).toEqual(rows.map(({ id }) => id).sort())
  })

  for (const row of rows) {
    const one = asLines[row.id]
    if (!one) continue
    it(`${row.id} ${row.description} [${row.provenance}]`, () => {
      const answer = dose(one.ask, { plans: [], policies: [] })
      const [line] = answer.lines
      const value = one.read(line, answer)
      const why = line?.findings.map(({ code, level }) => `${level} ${code}`).join(', ')
      expect(value, `verdict ${line?.verdict}: ${why}`).toBeDefined()
      expect(Math.abs((value ?? Number.NaN) - Number(row.expected))).toBeLessThanOrEqual(Number(row.tolerance) + 1e-9)
    })
  }
})
