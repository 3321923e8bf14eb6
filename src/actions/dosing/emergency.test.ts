import { describe, expect, it } from 'vitest'
import { InputError } from '../input.ts'
import { emergency } from './emergency.ts'

type Answer = ReturnType<typeof emergency>

function row(answer: Answer, call: string, drug: string) {
  const found = answer.groups.find((group) => group.call === call)?.rows.find((one) => one.drug === drug)
  if (!found) throw new Error(`There is no ${drug} under ${call}.`)
  return found
}

function errorOf(input: unknown): InputError {
  try {
    emergency(input)
  } catch (error) {
    if (error instanceof InputError) return error
    throw error
  }
  throw new Error('It was answered.')
}

describe('the emergency sheet', () => {
  const cat = emergency({ species: 'cat', weight: '4.1 kg' })
  const dog = emergency({ species: 'dog', weight: '27 lb' })

  it('has the seven calls in order, each with a drug or a step', () => {
    expect(cat.groups.map(({ call }) => call)).toEqual([
      'no-pulse',
      'fast-wide-rhythm',
      'slow-rhythm',
      'undo',
      'bleeding',
      'local-anaesthetic-toxicity',
      'airway',
    ])
    for (const { rows, steps } of [...cat.groups, ...dog.groups]) expect(rows.length + steps.length).toBeGreaterThan(0)
  })

  it('prints a volume below 0.05 mL from a weaker dilution and says how to make it', () => {
    const epinephrine = row(cat, 'no-pulse', 'epinephrine')
    expect(epinephrine).toMatchObject({
      amount: { value: 0.041, unit: 'mg' },
      stock: { value: 0.1, unit: 'mg/mL' },
      volume: { value: 0.41, unit: 'mL' },
      drawn: { value: 0.41, unit: 'mL' },
      dilution: { parts: 10, from: { value: 1, unit: 'mg/mL' } },
    })
    expect(epinephrine.note).toContain('mix 1 mL with 9 mL of sodium chloride 0.9 %; this gives 0.1 mg/mL')
  })

  it('dilutes twice for an animal so small that once is not enough', () => {
    const kitten = row(emergency({ species: 'cat', weight: '0.4 kg' }), 'no-pulse', 'epinephrine')
    expect(kitten).toMatchObject({ stock: { value: 0.01 }, volume: { value: 0.4 }, dilution: { parts: 100 } })
    expect(kitten.note).toContain('2 times over')
  })

  it('never dilutes what must not be diluted, and says that the volume is too small', () => {
    const diazepam = row(emergency({ species: 'cat', weight: '0.4 kg' }), 'local-anaesthetic-toxicity', 'diazepam')
    expect(diazepam).toMatchObject({ stock: { value: 5 }, volume: { value: 0.04 } })
    expect(diazepam.dilution).toBeUndefined()
    expect(diazepam.note).toContain('must not be diluted')
  })

  it('holds no volume below 0.05 mL of anything that may be diluted, down to 100 g', () => {
    for (const weight of ['0.1 kg', '0.35 kg', '1 kg', '2.4 kg', '4.9 kg', '12 kg', '70 kg']) {
      for (const species of ['dog', 'cat']) {
        for (const { rows } of emergency({ species, weight }).groups) {
          for (const { volume, note } of rows) {
            if (!note.includes('must not be diluted')) expect(volume?.value).toBeGreaterThanOrEqual(0.05)
          }
        }
      }
    }
  })

  it('prints what the drawn volume really gives, within a tenth of the dose from 1 kg on', () => {
    for (const weight of ['1 kg', '1.7 kg', '2.9 kg', '4.1 kg', '8.2 kg', '33 kg']) {
      for (const { rows } of emergency({ species: 'dog', weight }).groups) {
        for (const { dose, delivered } of rows) {
          expect(Math.abs((delivered?.value ?? 0) / dose.value - 1)).toBeLessThan(0.1)
        }
      }
    }
  })

  it('gives lidocaine to dogs and amiodarone first to cats, never lidocaine to a cat', () => {
    expect(row(dog, 'fast-wide-rhythm', 'lidocaine').dose).toEqual({ value: 2, unit: 'mg/kg' })
    const forCats = cat.groups.flatMap(({ rows }) => rows.map(({ drug }) => drug))
    expect(forCats).not.toContain('lidocaine')
    expect(forCats).toContain('amiodarone')
  })

  it('bars intravenous lidocaine only when local-anaesthetic toxicity is suspected, and still prints the row', () => {
    const free = row(dog, 'fast-wide-rhythm', 'lidocaine')
    expect(free.barred).toBe(false)
    expect(free.note).toContain('Not when local-anaesthetic toxicity is suspected.')
    const suspected = emergency({ species: 'dog', weight: '27 lb', suspected: ['local-anaesthetic-toxicity'] })
    expect(row(suspected, 'fast-wide-rhythm', 'lidocaine')).toMatchObject({ barred: true, volume: null, drawn: null })
    expect(row(suspected, 'no-pulse', 'epinephrine').volume?.value).toBeGreaterThan(0)
  })

  it('gives 20 % lipid 1.5 mL/kg and then 6.25 mL/kg over 25 minutes (Caulfield 2022, abstract)', () => {
    const lipid = row(emergency({ species: 'cat', weight: '4 kg' }), 'local-anaesthetic-toxicity', 'lipid-emulsion')
    expect(lipid.volume).toEqual({ value: 6, unit: 'mL' })
    expect(lipid.infusion).toEqual({
      rate: { value: 60, unit: 'mL/h' },
      minutes: { value: 25, unit: 'min' },
      total: { value: 25, unit: 'mL' },
    })
  })

  it('runs esmolol after its bolus: 50 ug/kg/min of 10 mg/mL in 20 kg are 6 mL/h', () => {
    const esmolol = row(emergency({ species: 'dog', weight: '20 kg' }), 'fast-wide-rhythm', 'esmolol')
    expect(esmolol.infusion).toEqual({ rate: { value: 6, unit: 'mL/h' } })
  })

  it('states a strength, an edition, a reason and sources on every line', () => {
    for (const { rows } of [...cat.groups, ...dog.groups]) {
      for (const line of rows) {
        expect(line.stock === null ? line.dose.unit : 'mL/kg').toBe('mL/kg')
        expect(line.edition.length * line.reason.length * line.sources.length).toBeGreaterThan(0)
        expect(line.note).toContain(line.edition)
      }
    }
  })

  it('counts blood volume and the losses at 10, 15, 20 and 30 per cent', () => {
    expect(cat.bloodVolume).toMatchObject({ value: 246, unit: 'mL', low: { value: 205 }, high: { value: 270.6 } })
    expect(cat.lossAt.map(({ fraction, volume }) => [fraction, volume.value])).toEqual([
      [0.1, 24.6],
      [0.15, 36.9],
      [0.2, 49.2],
      [0.3, 73.8],
    ])
  })

  it('shows the weight in both units and computes with exact kilograms', () => {
    expect(dog.weightShown).toBe('12.25 kg (27 lb)')
    expect(dog.weight).toEqual({ value: 12.24699399, unit: 'kg' })
  })

  it('takes a quantity as well as typed text', () => {
    expect(emergency({ species: 'cat', weight: { value: 4.1, unit: 'kg' } })).toEqual(cat)
  })

  it('takes a decimal comma where it is written so', () => {
    expect(emergency({ species: 'cat', weight: '4,1 kg', decimalMark: ',' }).weight.value).toBe(4.1)
  })

  it('notes an odd weight and is never silenced by it', () => {
    const heavy = emergency({ species: 'cat', weight: '41 kg' })
    expect(heavy.findings).toMatchObject([{ code: 'weight-impossible', level: 'note' }])
    expect(heavy.findings[0]?.text).toContain('41 kg')
    expect(row(heavy, 'no-pulse', 'epinephrine').volume?.value).toBe(0.41)
    expect(emergency({ species: 'cat', weight: '9.5 kg' }).findings[0]?.code).toBe('weight-unusual')
    expect(cat.findings).toEqual([])
  })
})

describe('the emergency sheet of a fat animal', () => {
  it('counts blood on the lean weight and every dose on the whole (dog 90 mL/kg; 14 kg at 9 of 9 is 10 kg lean)', () => {
    const fat = emergency({ species: 'dog', weight: '14 kg', bodyCondition: 9 })
    const fit = emergency({ species: 'dog', weight: '14 kg', bodyCondition: 5 })
    expect(fat.bloodVolume.value).toBe(900)
    expect(fat.lossAt[0]?.volume.value).toBe(90)
    expect(fit.bloodVolume.value).toBe(1260)
    expect(fat.groups).toEqual(fit.groups)
    expect(fat.findings.map(({ code }) => code)).toEqual(['blood-on-lean-weight'])
    expect(errorOf({ species: 'dog', weight: '14 kg', bodyCondition: 10 }).path).toBe('bodyCondition')
  })
})

describe('wrong input of the emergency sheet', () => {
  it('names the field and says what would be right', () => {
    expect(errorOf({ species: 'ferret', weight: '1 kg' })).toMatchObject({ path: 'species' })
    expect(errorOf({ species: 'cat', weight: '4.1' })).toMatchObject({ code: 'no-unit', path: 'weight' })
    expect(errorOf({ species: 'cat', weight: '4.1' }).message).toContain('4.1 kg or 4.1 lb')
    expect(errorOf({ species: 'cat', weight: '4,1 kg' }).code).toBe('other-decimal-mark')
    expect(errorOf({ species: 'cat', weight: '1,250 kg' }).code).toBe('thousands-or-decimal')
    expect(errorOf({ species: 'cat', weight: 4.1 })).toMatchObject({ code: 'bare-number', path: 'weight' })
    expect(errorOf({ species: 'cat', weight: { value: 4.1, unit: 'lb' } })).toMatchObject({ code: 'unknown-unit' })
    expect(errorOf({ species: 'cat', weight: '0 kg' })).toMatchObject({ code: 'not-positive', path: 'weight' })
    expect(errorOf({ species: 'cat' })).toMatchObject({ path: 'weight' })
    expect(errorOf({ species: 'cat', weight: '4.1 kg', wieght: 1 }).code).toBeTruthy()
  })
})
