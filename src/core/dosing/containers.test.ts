import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { plain, quantity } from '#core/units/quantity.ts'
import type { Container } from './container.ts'
import { doseLines } from './dose-lines.ts'
import type { DosedAnimal, DrawnLine, PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const dog = (kg = '40'): DosedAnimal => ({ species: 'dog', weight: quantity(kg, 'kg'), conditions: [] })
const cat: DosedAnimal = { species: 'cat', weight: quantity('4', 'kg'), conditions: [] }

const syringe = (more: Partial<Container> = {}): Container => ({
  kind: 'syringe',
  name: 'MLK',
  volume: quantity('60', 'mL'),
  rate: quantity('0.5', 'mL/kg/h'),
  ...more,
})
const bag = (more: Partial<Container> = {}): Container => ({ ...syringe(), kind: 'bag', ...more })
const morphine = (container: Container, more: Partial<PlannedLine> = {}): PlannedLine => ({
  id: 'm',
  drug: 'morphine',
  use: 'cri',
  dose: quantity('0.2', 'mg/kg/h'),
  stock: quantity('10', 'mg/mL'),
  container,
  ...more,
})
const lidocaine = (container: Container, more: Partial<PlannedLine> = {}): PlannedLine => ({
  id: 'l',
  drug: 'lidocaine',
  use: 'cri',
  dose: quantity('50', 'ug/kg/min'),
  stock: quantity('20', 'mg/mL'),
  container,
  ...more,
})
const ketamine = (container: Container, more: Partial<PlannedLine> = {}): PlannedLine => ({
  id: 'k',
  drug: 'ketamine',
  use: 'cri',
  dose: quantity('10', 'ug/kg/min'),
  stock: quantity('100', 'mg/mL'),
  container,
  ...more,
})

function judged(lines: PlannedLine[], animal = dog()) {
  return doseLines({ animal, given: [], lines }, knowledge).lines
}
function one(line: PlannedLine, animal = dog()): DrawnLine {
  const [answer] = judged([line], animal)
  if (!answer || answer.verdict === 'refused') throw new Error(JSON.stringify(answer?.findings.map(({ code }) => code)))
  return answer
}
const codes = (line: { findings: readonly { code: string; level: string }[] } | undefined) =>
  line?.findings.map(({ code, level }) => `${level} ${code}`) ?? []
const said = (line: DrawnLine) => ({
  volume: line.volume?.toString(),
  drawn: line.drawn?.toString(),
  rate: line.rate?.toString(),
  fluid: line.poured?.fluid.toString(),
  final: line.poured?.final.toString(),
  written: line.poured?.mine.amount.toString(),
  delivered: line.delivered && `${plain(line.delivered.value.toDecimalPlaces(4))} ${line.delivered.unit}`,
  lasts: line.poured && plain(line.poured.lasts.value.toDecimalPlaces(3)),
  convention: line.poured?.convention,
})

describe('a syringe on a pump', () => {
  // Pablo, University of Florida: 40 kg, 60 mL at 0.5 mL/kg/h: 24 mg of morphine (2.4 mL), for 3 h at 20 mL/h.
  it('is made up to its volume: 24 mg of morphine are 2.4 mL, the rest is fluid', () => {
    expect(said(one(morphine(syringe())))).toEqual({
      volume: '2.4 mL',
      drawn: '2.4 mL',
      rate: '20 mL/h',
      fluid: '57.6 mL',
      final: '60 mL',
      written: '24 mg',
      delivered: '0.2 mg/kg/h',
      lasts: '3',
      convention: 'made-up',
    })
  })

  it('says the dose per hour and per minute, whichever was typed', () => {
    const { perHour, perMinute } = one(lidocaine(syringe()))
    expect(perHour?.toString()).toBe('3000 ug/kg/h')
    expect(perMinute?.toString()).toBe('50 ug/kg/min')
  })

  // 0.72 mL of ketamine, and a 1 mL syringe draws exactly that; the three together are 21.12 mL of 60.
  it('holds three drugs, each in its own amount, and the weight cancels', () => {
    const lines = judged([morphine(syringe()), lidocaine(syringe()), ketamine(syringe())])
    expect(lines.map((line) => line.verdict !== 'refused' && line.drawn?.toString())).toEqual([
      '2.4 mL',
      '18 mL',
      '0.72 mL',
    ])
    const light = judged([morphine(syringe()), lidocaine(syringe()), ketamine(syringe())], dog('10'))
    expect(light.map((line) => line.verdict !== 'refused' && line.drawn?.toString())).toEqual([
      '2.4 mL',
      '18 mL',
      '0.72 mL',
    ])
    const [first] = lines
    expect(first?.verdict !== 'refused' && first?.poured?.fluid.toString()).toBe('38.88 mL')
  })
})

describe('a bag', () => {
  // 0.2 mg/kg/h × 20 kg = 4 mg/h; 500 mL at 50 mL/h last 10 h: 40 mg, 4 mL of 10 mg/mL, 0.8 % of the bag.
  it('gets a small volume on top, and what it gives is worked back from the bag as it then is', () => {
    const line = one(morphine(bag({ volume: quantity('500', 'mL'), rate: quantity('50', 'mL/h') })), dog('20'))
    expect(said(line)).toMatchObject({
      convention: 'added',
      drawn: '4 mL',
      written: '40 mg',
      fluid: '500 mL',
      final: '504 mL',
    })
    expect(line.delivered?.value.toNumber()).toBeCloseTo(((40 / 504) * 50) / 20, 10)
    expect(codes(line)).not.toContain('confirm infusion-off')
  })

  // 3 mg/kg/h × 20 kg = 60 mg/h; at 20 mL/h 500 mL hold 1500 mg = 75 mL, 15 % of the bag.
  it('loses as much fluid first when the drug is more than a twentieth of it', () => {
    const line = one(lidocaine(bag({ volume: quantity('500', 'mL'), rate: quantity('20', 'mL/h') })), dog('20'))
    expect(said(line)).toMatchObject({
      convention: 'withdrawn',
      drawn: '75 mL',
      fluid: '75 mL',
      final: '500 mL',
      delivered: '50 ug/kg/min',
    })
  })

  it('keeps the convention a person chose, and says that a large volume on top makes it grow', () => {
    const added = one(
      lidocaine(bag({ volume: quantity('500', 'mL'), rate: quantity('20', 'mL/h'), ownVolume: 'added' })),
      dog('20'),
    )
    // 0.15 of the finished bag: 500 × 0.15 ÷ 0.85 = 88.2 mL, drawn as 88 mL.
    expect(said(added)).toMatchObject({ convention: 'added', drawn: '88 mL', final: '588 mL' })
    expect(codes(added)).toContain('note container-own-volume')
    expect(Math.abs(added.poured?.off.toNumber() ?? 1)).toBeLessThan(0.02)
  })

  it('is refused at a rate the drug alone cannot keep, with the least rate that it can', () => {
    const [line] = judged([morphine(bag({ volume: quantity('100', 'mL'), rate: quantity('0.7', 'mL/h') }))])
    expect(codes(line)).toContain('block container-too-slow')
    expect(line?.findings.find(({ code }) => code === 'container-too-slow')?.about.least).toBe('0.8 mL/h')
  })

  it('is refused when the pump cannot be set so low, and flagged below half a millilitre an hour', () => {
    const slow = (rate: string) => judged([morphine(syringe({ rate: quantity(rate, 'mL/h') }))], dog('2'))[0]
    expect(codes(slow('0.04'))).toContain('block pump-cannot')
    expect(codes(slow('0.4'))).toContain('note rate-too-slow')
  })

  it('says when it is empty before the infusion is over', () => {
    const line = one(morphine(syringe(), { over: quantity('240', 'min') }))
    expect(codes(line)).toContain('note container-empties')
    expect(line.total?.toString()).toBe('32 mg')
  })

  // 0.1 ug/kg/min of remifentanil in a 2 kg cat: 12 ug/h; 60 mL at 10 mL/h hold 72 ug = 0.036 mL of 2 mg/mL.
  it('takes a weaker dilution when the drug itself cannot be drawn', () => {
    const line = one(
      {
        id: 'd',
        drug: 'dexmedetomidine',
        use: 'cri',
        dose: quantity('0.5', 'ug/kg/h'),
        stock: quantity('0.5', 'mg/mL'),
        container: syringe({ volume: quantity('20', 'mL'), rate: quantity('4', 'mL/h') }),
      },
      cat,
    )
    // 2 ug/h × 5 h = 10 ug = 0.02 mL of 500 ug/mL; one in ten it is 0.2 mL.
    expect(line.poured?.mine).toMatchObject({ dilutedTo: 10 })
    expect(line.drawn?.toString()).toBe('0.2 mL')
    expect(line.poured?.mine.amount.toString()).toBe('10 ug')
  })

  it('asks a person when syringe and pump together miss the dose by more than 2 %', () => {
    // 0.1 mg/kg/h × 2 kg in 10 mL at 1.04 mL/h: 0.192 mL is drawn as 0.19, and the pump runs 1.0: 5 % too little.
    const line = one(
      morphine(syringe({ volume: quantity('10', 'mL'), rate: quantity('1.04', 'mL/h') }), {
        dose: quantity('0.1', 'mg/kg/h'),
      }),
      dog('2'),
    )
    expect(codes(line)).toContain('confirm infusion-off')
  })
})

describe('what shares a bag', () => {
  it('is worked out together or not at all: cats get no lidocaine, and so nothing of that bag', () => {
    const lines = judged([ketamine(bag(), { dose: quantity('5', 'ug/kg/min') }), lidocaine(bag())], cat)
    expect(codes(lines[1])).toContain('block forbidden-for-species')
    expect(codes(lines[0])).toContain('block container-incomplete')
    expect(lines[0]).not.toHaveProperty('drawn')
  })

  it('waits for a strength that nobody stated', () => {
    const { stock: _, ...noStock } = ketamine(bag())
    const lines = judged([morphine(bag()), noStock])
    expect(lines.map(({ verdict }) => verdict)).toEqual(['refused', 'caution'])
    expect(lines[1]).not.toHaveProperty('poured')
  })

  it('has one volume, one rate, one fluid', () => {
    const lines = judged([morphine(bag()), ketamine(bag({ rate: quantity('1', 'mL/kg/h') }))])
    expect(lines.map(codes)).toEqual([
      expect.arrayContaining(['block container-disagrees']),
      expect.arrayContaining(['block container-disagrees']),
    ])
  })

  it('never holds diazepam or propofol with another drug, nor dopamine in Ringer', () => {
    const propofol = {
      id: 'p',
      drug: 'propofol',
      use: 'cri',
      dose: quantity('0.2', 'mg/kg/min'),
      stock: quantity('10', 'mg/mL'),
    } as const
    const lines = judged([{ ...propofol, container: bag() }, ketamine(bag())])
    expect(codes(lines[0])).toContain('block mixture-alone')
    expect(codes(lines[1])).toContain('block mixture-alone')
    expect(lines[0]?.findings.find(({ code }) => code === 'mixture-alone')?.sources).toEqual(['anaesthesia-texts'])
    const dopamine = {
      id: 'd',
      drug: 'dopamine',
      use: 'vasopressor',
      dose: quantity('10', 'ug/kg/min'),
      stock: quantity('40', 'mg/mL'),
    } as const
    const inFluid = (fluid: 'lactated-ringer' | 'glucose-5') =>
      judged([{ ...dopamine, container: syringe({ fluid }) }])[0]
    expect(codes(inFluid('lactated-ringer'))).toContain('block carrier-forbidden')
    expect(codes(inFluid('glucose-5'))).not.toContain('block carrier-forbidden')
  })

  it('asks for a source when none says that two drugs mix', () => {
    const fentanyl = {
      id: 'f',
      drug: 'fentanyl',
      use: 'cri',
      dose: quantity('5', 'ug/kg/h'),
      stock: quantity('50', 'ug/mL'),
    } as const
    const lines = judged([{ ...fentanyl, container: bag() }, lidocaine(bag())])
    expect(codes(lines[0])).toContain('confirm mixture-unknown')
    expect(lines[0]).toHaveProperty('poured')
    const mixed = judged([{ ...fentanyl, container: bag() }, ketamine(bag())])
    expect(codes(mixed[0])).not.toContain('confirm mixture-unknown')
  })

  it('is tied to its rate: a fluid that shares it says so, and must run at the same rate', () => {
    const fluid = (rate: string): PlannedLine => ({
      id: 'f',
      drug: 'balanced-crystalloid',
      use: 'fluid',
      qualifier: 'under anaesthesia',
      dose: quantity(rate, 'mL/kg/h'),
      over: quantity('180', 'min'),
      container: bag({ volume: quantity('1000', 'mL'), rate: quantity('5', 'mL/kg/h') }),
    })
    const drug = morphine(bag({ volume: quantity('1000', 'mL'), rate: quantity('5', 'mL/kg/h') }))
    const lines = judged([fluid('5'), drug])
    expect(codes(lines[0])).toContain('confirm container-rate-tied')
    expect(codes(judged([fluid('4'), drug])[0])).toContain('block container-rate-other')
  })
})

describe('infusions as fluid', () => {
  it('are flagged when they bring more than anaesthesia starts with', () => {
    const line = one(morphine(bag({ volume: quantity('1000', 'mL'), rate: quantity('6', 'mL/kg/h') })))
    expect(codes(line)).toContain('note infusion-over-fluid-allowance')
    expect(codes(one(morphine(bag({ volume: quantity('1000', 'mL'), rate: quantity('5', 'mL/kg/h') }))))).not.toContain(
      'note infusion-over-fluid-allowance',
    )
  })
})

describe('potassium', () => {
  const line: PlannedLine = {
    id: 'k',
    drug: 'potassium-chloride',
    use: 'fluid',
    dose: quantity('0.1', 'mmol/kg/h'),
    stock: quantity('2', 'mmol/mL'),
  }
  it('never runs undiluted', () => {
    expect(codes(judged([line])[0])).toContain('block strength-undiluted')
    const mixed = judged([{ ...line, stock: quantity('0.04', 'mmol/mL') }])[0]
    expect(codes(mixed)).not.toContain('block strength-undiluted')
  })
  // 0.1 mmol/kg/h × 10 kg = 1 mmol/h; 1000 mL at 50 mL/h last 20 h: 20 mmol, 10 mL.
  it('runs from a bag, and never above its limit', () => {
    const container = bag({ volume: quantity('1000', 'mL'), rate: quantity('50', 'mL/h'), ownVolume: 'withdrawn' })
    expect(one({ ...line, container }, dog('10')).drawn?.toString()).toBe('10 mL')
    const fast = judged([{ ...line, dose: quantity('0.6', 'mmol/kg/h'), container }], dog('10'))[0]
    expect(codes(fast)).toContain('block over-single-maximum')
  })

  it('never fills a syringe by itself, and hardly diluted asks for a person', () => {
    // 0.5 mmol/kg/h × 8 kg = 4 mmol/h, that is 2 mL/h of 2 mmol/mL: a syringe at 2 mL/h holds nothing else.
    const strong = { ...line, dose: quantity('0.5', 'mmol/kg/h') }
    const at = (rate: string) => {
      const container = {
        kind: 'syringe',
        name: 's',
        volume: quantity('10', 'mL'),
        rate: quantity(rate, 'mL/h'),
      } as const
      return judged([{ ...strong, container }], dog('8'))[0]
    }
    expect(codes(at('2'))).toContain('block strength-undiluted')
    expect(codes(at('2.1'))).toContain('block strength-undiluted')
    expect(at('2.1')?.verdict).toBe('refused')
    expect(codes(at('5'))).toContain('confirm strength-hardly-diluted')
    expect(codes(at('40')).join()).not.toContain('diluted')
    expect(codes(judged([{ ...strong, stock: quantity('0.9', 'mmol/mL') }], dog('8'))[0])).toContain(
      'confirm strength-hardly-diluted',
    )
  })
})

describe('a loading dose', () => {
  const load = (mg: string) => ({ loading: { dose: quantity(mg, 'mg/kg') } })
  it('is drawn like a single dose', () => {
    const { loading } = one(morphine(syringe(), load('0.3')))
    expect(loading?.amount.toString()).toBe('12 mg')
    expect(loading?.drawn?.toString()).toBe('1.2 mL')
    expect(loading?.delivered?.toString()).toBe('0.3 mg/kg')
  })
  it('is asked about where one is known, unless the drug was given or is planned as a single dose', () => {
    expect(codes(one(morphine(syringe())))).toContain('note loading-not-chosen')
    const bolus: PlannedLine = {
      id: 'b',
      drug: 'morphine',
      use: 'analgesia_bolus',
      dose: quantity('0.3', 'mg/kg'),
      stock: quantity('10', 'mg/mL'),
    }
    expect(codes(judged([morphine(syringe()), bolus])[0])).not.toContain('note loading-not-chosen')
  })
  it('counts in full toward the one limit of local anaesthetic', () => {
    // 2 mg/kg of 5 is 0.4 of the limit, beside what blocks bring.
    const result = doseLines({ animal: dog(), given: [], lines: [lidocaine(syringe(), load('2'))] }, knowledge)
    expect(result.ceilings[0]?.granted.toString()).toBe('0.4')
    const block: PlannedLine = {
      id: 'b',
      drug: 'bupivacaine',
      use: 'local_block',
      dose: quantity('2', 'mg/kg'),
      stock: quantity('5', 'mg/mL'),
    }
    const both = judged([block, lidocaine(syringe(), load('2'))])
    expect(codes(both[1])).toContain('block local-anaesthetic-ceiling')
  })
  it('outside its known range asks a person, and five times above is refused', () => {
    expect(codes(one(morphine(syringe(), load('0.5'))))).toContain('confirm loading-outside-range')
    expect(codes(judged([morphine(syringe(), load('3'))])[0])).toContain('block loading-outside-range')
    expect(codes(one(ketamine(syringe(), load('0.5'))))).toContain('confirm loading-range-unknown')
  })
})
