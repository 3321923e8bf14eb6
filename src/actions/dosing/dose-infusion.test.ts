import { describe, expect, it } from 'vitest'
import { InputError } from '../input.ts'
import { dose } from './dose.ts'

const nothing = { plans: [], policies: [] }
const q = (value: number, unit: string) => ({ value, unit })
const dog = { species: 'dog', weight: q(40, 'kg') }
const ask = (lines: unknown[], more: object = {}, animal: object = dog) => dose({ animal, lines, ...more }, nothing)
const morphine = {
  id: 'm',
  drug: 'morphine',
  use: 'cri',
  dose: q(0.2, 'mg/kg/h'),
  stock: q(10, 'mg/mL'),
  syringe: { volume: q(60, 'mL'), rate: q(0.5, 'mL/kg/h') },
}

function errorOf(line: object, more: object = {}): InputError {
  try {
    ask([line], more)
  } catch (error) {
    if (error instanceof InputError) return error
  }
  throw new Error('No input error was thrown.')
}

describe('an infusion in the answer', () => {
  // Pablo, University of Florida: 24 mg of morphine in 60 mL at 20 mL/h.
  it('says what goes into the syringe, what it gives, how long it lasts, and each step in words', () => {
    const [line] = ask([morphine]).lines
    expect(line).toMatchObject({
      volume: q(2.4, 'mL'),
      drawn: q(2.4, 'mL'),
      rate: q(20, 'mL/h'),
      delivered: q(0.2, 'mg/kg/h'),
      perHour: q(0.2, 'mg/kg/h'),
      syringe: { amount: q(24, 'mg'), fluid: q(57.6, 'mL'), hoursToEmpty: q(3, 'h'), off: 0, convention: 'made-up' },
    })
    expect(line?.perMinute?.value).toBeCloseTo(0.2 / 60, 12)
    expect(line?.syringe?.steps).toEqual([
      'Draw 2.4 mL of morphine 10 mg/mL: 24 mg.',
      'Draw 57.6 mL of fluid beside it: 60 mL in all.',
      'Label: morphine 24 mg in 60 mL, 20 mL/h, for 3 h.',
      'The syringe is tied to 20 mL/h: another rate is another dose. Never give a bolus from it.',
    ])
  })

  it('names the convention of a bag and everything in it', () => {
    const shared = { name: 'MK', volume: q(1000, 'mL'), rate: q(40, 'mL/h'), ownVolume: 'withdrawn' }
    const { syringe: _, ...inBag } = morphine
    const ketamine = { id: 'k', drug: 'ketamine', use: 'cri', dose: q(10, 'ug/kg/min'), stock: q(100, 'mg/mL') }
    const [line] = ask([
      { ...inBag, bag: shared },
      { ...ketamine, bag: shared },
    ]).lines
    // 8 mg/h for 25 h: 200 mg, 20 mL; 24 mg/h: 600 mg, 6 mL.
    expect(line?.bag).toMatchObject({
      lines: ['m', 'k'],
      convention: 'withdrawn',
      fluid: q(26, 'mL'),
      final: q(1000, 'mL'),
    })
    expect(line?.bag?.steps).toContain('Take 26 mL out of the 1000 mL bag, then add the drugs: 1000 mL in all.')
    expect(line?.bag?.steps).toContain('Label: morphine 200 mg, ketamine 600 mg in 1000 mL, 40 mL/h, for 25 h.')
  })

  it('gives fluids hour by hour, with maintenance and the deficit', () => {
    const fluid = {
      id: 'f',
      drug: 'balanced-crystalloid',
      use: 'fluid',
      route: 'IV (under anaesthesia)',
      dose: q(5, 'mL/kg/h'),
      over: q(180, 'min'),
      deficit: { percent: q(6, '%'), over: q(24, 'h') },
    }
    const [line] = ask([fluid], {}, { species: 'dog', weight: q(20, 'kg') }).lines
    // 132 × 20^0.75 ÷ 24 = 52.0 mL/h: the third hour of 56.25 is still above it.
    expect(line?.fluid?.hours.map(({ rate }) => rate.value)).toEqual([100, 75, 56.25])
    expect(line?.fluid?.hoursTotal).toEqual(q(231.25, 'mL'))
    expect(line?.fluid?.maintenance.perHour.value).toBeCloseTo(52.0, 1)
    expect(line?.fluid?.deficit).toMatchObject({
      volume: q(1200, 'mL'),
      perHour: q(50, 'mL/h'),
      together: q(150, 'mL/h'),
    })
    expect(line).toMatchObject({ amount: q(100, 'mL/h'), rate: q(100, 'mL/h'), total: q(300, 'mL') })
  })

  describe('by a gravity set', () => {
    const fluid = {
      id: 'f',
      drug: 'balanced-crystalloid',
      use: 'fluid',
      route: 'IV (under anaesthesia)',
      dose: q(10, 'mL/kg/h'),
      set: q(20, '[drp]/mL'),
    }
    const labrador = { species: 'dog', weight: q(25, 'kg') }
    const codes = (line: object, animal: object = labrador) =>
      ask([line], {}, animal).lines[0]?.findings.map(({ level, code }) => `${level} ${code}`)

    // Veterinary drip-rate page (dosing example DX084): 20 drops/mL, 10 mL/kg/h, 25 kg: 83 drops a minute.
    it('says how many drops fall in a minute, and what whole drops really give', () => {
      expect(ask([fluid], {}, labrador).lines[0]?.drip).toEqual({
        set: q(20, '[drp]/mL'),
        perMinute: q(83.3333, '/min'),
        count: q(83, '/min'),
        gives: q(249, 'mL/h'),
        hours: [],
      })
    })

    it('says nothing of drops while nobody told the set', () => {
      const { set: _, ...without } = fluid
      expect(ask([without], {}, labrador).lines[0]?.drip).toBeUndefined()
    })

    it('counts the drops of every hour, and of rate and deficit together', () => {
      const long = {
        ...fluid,
        dose: q(5, 'mL/kg/h'),
        over: q(180, 'min'),
        deficit: { percent: q(6, '%'), over: q(24, 'h') },
      }
      const drip = ask([long], {}, { species: 'dog', weight: q(20, 'kg') }).lines[0]?.drip
      // 100, 75 and 56.25 mL/h; 50 mL/h more for the deficit.
      expect(drip?.hours.map(({ count }) => count.value)).toEqual([33, 25, 19])
      expect(drip?.together?.count).toEqual(q(50, '/min'))
    })

    it('rounds down where a drop more would pass the most of the row (10 mL/kg/h)', () => {
      const drip = ask([fluid], {}, { species: 'dog', weight: q(10.2, 'kg') }).lines[0]?.drip
      expect(drip?.perMinute).toEqual(q(34, '/min'))
      const above = ask([fluid], {}, { species: 'dog', weight: q(10.1, 'kg') }).lines[0]?.drip
      expect(above).toMatchObject({ perMinute: q(33.6667, '/min'), count: q(33, '/min') })
    })

    it('asks where the drops are too few to be right, where the set is none of the usual, and where a drug runs', () => {
      const slow = { ...fluid, dose: q(3, 'mL/kg/h') }
      const kitten = { species: 'cat', weight: q(1.5, 'kg') }
      // 4.5 mL/h are 1.5 drops: two of them give a third more.
      expect(codes({ ...slow, route: 'IV (under anaesthesia)' }, kitten)).toContain('confirm drip-uneven')
      expect(codes({ ...fluid, set: q(2, '[drp]/mL') })).toContain('confirm drip-set-unusual')
      expect(codes({ ...morphine, set: q(60, '[drp]/mL') })).toContain('confirm drip-for-drug')
      const bolus = { id: 'b', drug: 'balanced-crystalloid', use: 'fluid_bolus', dose: q(10, 'mL/kg'), set: fluid.set }
      expect(codes(bolus)).toContain('note drip-without-time')
      const timed = ask([{ ...bolus, over: q(20, 'min') }], {}, labrador).lines[0]
      expect(timed?.drip).toMatchObject({ count: q(250, '/min'), gives: q(750, 'mL/h') })
    })

    it('refuses a set without a unit', () => {
      expect(errorOf({ ...fluid, set: 20 }).path).toBe('lines[0].set')
    })
  })

  it('counts out a course: whole tablets, millilitres by mouth, and nothing while the gap is open', () => {
    const tablets = {
      id: 't',
      drug: 'amoxicillin-clavulanate',
      use: 'antibiotic_course',
      route: 'PO',
      dose: q(12.5, 'mg/kg'),
      tablet: { strength: q(50, 'mg') },
      days: 7,
    }
    const small = { species: 'dog', weight: q(1.5, 'kg') }
    const [half] = ask([tablets], {}, small).lines
    expect(half).toMatchObject({
      tablets: { each: q(0.5, '{tablet}') },
      dispense: { doses: 14, amount: q(7, '{tablet}') },
    })
    const liquid = {
      id: 'm',
      drug: 'meloxicam',
      use: 'nsaid',
      qualifier: 'from day 2',
      dose: q(0.1, 'mg/kg'),
      stock: q(1.5, 'mg/mL'),
      days: 5,
    }
    const [drops] = ask([liquid], {}, { species: 'dog', weight: q(20, 'kg') }).lines
    // 2 mg of 1.5 mg/mL are 1.333 mL: 1.3 mL a day, 6.5 mL for five days.
    expect(drops).toMatchObject({ drawn: q(1.3, 'mL'), dispense: { doses: 5, amount: q(6.5, 'mL') } })
    const [marked] = ask([{ ...liquid, mark: q(0.05, 'mL') }], {}, { species: 'dog', weight: q(20, 'kg') }).lines
    expect(marked).toMatchObject({ drawn: q(1.3, 'mL') })
  })

  it('asks for the gap when the formulary leaves a choice, and counts it once it is chosen', () => {
    const line = {
      id: 'g',
      drug: 'gabapentin',
      use: 'analgesia_oral',
      dose: q(10, 'mg/kg'),
      stock: q(50, 'mg/mL'),
      days: 5,
    }
    const [open] = ask([line]).lines
    expect(open?.findings.map(({ code }) => code)).toContain('interval-not-chosen')
    expect(open).not.toHaveProperty('dispense')
    const [chosen] = ask([{ ...line, every: q(12, 'h') }]).lines
    expect(chosen?.dispense).toMatchObject({ doses: 10 })
    const [odd] = ask([{ ...line, every: q(48, 'h') }]).lines
    expect(odd?.findings.map(({ code }) => code)).toContain('interval-other')
  })

  it('works whole blood out from a goal: 13 kg from 15 to 35 % with a donor of 42 % are 557 mL', () => {
    const line = {
      id: 'b',
      drug: 'whole-blood',
      use: 'blood_product',
      goal: { now: q(15, '%'), aim: q(35, '%'), donorPcv: q(42, '%') },
      donor: 'dea-1-negative',
    }
    const animal = { species: 'dog', weight: q(13, 'kg'), bloodGroup: 'dea-1-negative', transfusedBefore: 'no' }
    const [answer] = ask([line], {}, animal).lines
    expect(answer?.amount?.value).toBeCloseTo(557.14, 2)
    expect(answer?.findings.map(({ code }) => code)).toContain('dose-twice-range')
    const no = (more: object) => ask([{ ...line, ...more }], {}, animal).lines[0]?.findings.map(({ code }) => code)
    // Fat holds little blood: at body condition 9 the 13 kg count as 9.28 kg (dosing weight, as for the blood volume).
    const fat = ask([line], {}, { ...animal, bodyCondition: 9 }).lines[0]
    expect(fat?.amount?.value).toBeCloseTo((9.28 * 90 * 20) / 42, 2)
    expect(fat?.findings.map(({ code }) => code)).toContain('lean-weight-used')
    expect(no({ dose: q(12, 'mL/kg') })).toContain('goal-and-dose')
    expect(no({ drug: 'packed-red-cells' })).toContain('goal-not-blood')
    expect(no({ goal: { now: q(35, '%'), aim: q(30, '%'), donorPcv: q(42, '%') } })).toContain('goal-order')
  })

  // Reference sentence "mean: smaller answer" does not hold: the mean of start and lowest is below the start, so
  // dividing by it gives more. 1800 × 15 ÷ 40 = 675; 1800 × 15 ÷ 32.5 = 830.8.
  it('prints the allowable loss by both formulas, each by its name', () => {
    const more = { haematocrit: { start: q(40, '%'), lowest: q(25, '%') } }
    const { blood } = ask([], more, { species: 'dog', weight: q(20, 'kg') })
    expect(blood?.volume).toEqual(q(1800, 'mL'))
    expect(blood?.allowableLoss.map(({ dividedBy, volume }) => [dividedBy, volume.value])).toEqual([
      ['start', 675],
      ['mean', 830.7692],
    ])
    for (const { formula, dividedBy } of blood?.allowableLoss ?? []) expect(formula).toContain(dividedBy)
  })
})

describe('a wrong field is named with what would be right', () => {
  it.each([
    [{ syringe: { volume: q(60, 'mL') } }, 'lines[0].syringe.rate'],
    [{ syringe: { volume: 60, rate: q(20, 'mL/h') } }, 'lines[0].syringe.volume'],
    [{ syringe: { volume: q(60, 'mg'), rate: q(20, 'mL/h') } }, 'lines[0].syringe.volume'],
    [{ syringe: { volume: q(60, 'mL'), rate: q(0, 'mL/h') } }, 'lines[0].syringe.rate'],
    [{ bag: { volume: q(60, 'mL'), rate: q(20, 'mL/h') } }, 'lines[0].syringe'],
    [{ syringe: { volume: q(60, 'mL'), rate: q(20, 'mL/h'), fluid: 'milk' } }, 'lines[0].syringe.fluid'],
    [{ syringe: { volume: q(60, 'mL'), rate: q(20, 'mL/h'), ownvolume: 'added' } }, 'lines[0].syringe.ownvolume'],
    [{ loading: { dose: q(1, 'mL') } }, 'lines[0].loading.dose'],
    [{ goal: { now: q(15, '%'), aim: q(135, '%'), donorPcv: q(42, '%') } }, 'lines[0].goal.aim'],
    [{ deficit: { percent: 6, over: q(24, 'h') } }, 'lines[0].deficit.percent'],
    [{ donor: 'A' }, 'lines[0].donor'],
    [{ every: q(12, 'mL') }, 'lines[0].every'],
  ])('%j', (wrong, path) => {
    const error = errorOf({ ...morphine, ...wrong })
    expect(error.path).toBe(path)
    expect(error.message.length).toBeGreaterThan(path.length + 5)
  })

  it('and a lowest haematocrit above the start', () => {
    const wrong = { haematocrit: { start: q(25, '%'), lowest: q(40, '%') } }
    expect(errorOf(morphine, wrong)).toMatchObject({ code: 'wrong-order', path: 'haematocrit.lowest' })
  })
})

describe('a dose per pound', () => {
  it('is never answered with "write mg/kg": the number would be less than half of what was meant', () => {
    const { code, message } = errorOf({ ...morphine, dose: q(0.2, 'mg/lb/h') })
    expect(code).toBe('per-pound')
    expect(message).toContain('0.45359237')
  })
})
