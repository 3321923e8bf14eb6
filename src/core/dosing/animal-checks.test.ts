import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DoseFinding } from './findings.ts'
import type { DosedAnimal, DoseRequest, PlannedLine } from './request.ts'

const at = Temporal.Instant.from('2026-03-02T09:00:00Z')
const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const dog = { species: 'dog', weight: quantity('10', 'kg'), weighedAt: at, ageMonths: 60, conditions: [] } as const
const cat = { ...dog, species: 'cat', weight: quantity('4', 'kg') } as const

const judge = (lines: readonly PlannedLine[], animal: DosedAnimal = dog, more: Partial<DoseRequest> = {}) =>
  doseLines({ animal, at, given: [], lines, ...more }, knowledge)
const found = (findings: readonly DoseFinding[] | undefined) => findings?.map(({ level, code }) => `${level} ${code}`)
const of = (line: PlannedLine, animal: DosedAnimal = dog, more: Partial<DoseRequest> = {}) =>
  found(judge([line], animal, more).lines[0]?.findings)

const carprofen: PlannedLine = {
  id: 'n',
  drug: 'carprofen',
  use: 'nsaid',
  qualifier: 'once a day',
  dose: quantity('4.4', 'mg/kg'),
  stock: quantity('50', 'mg/mL'),
}
const gentamicin: PlannedLine = {
  id: 'g',
  drug: 'gentamicin',
  use: 'antibiotic_course',
  dose: quantity('9', 'mg/kg'),
  stock: quantity('50', 'mg/mL'),
}
const atropine: PlannedLine = {
  id: 'a',
  drug: 'atropine',
  use: 'anticholinergic',
  dose: quantity('0.02', 'mg/kg'),
  stock: quantity('0.6', 'mg/mL'),
}
const having = (...conditions: DosedAnimal['conditions']): DosedAnimal => ({ ...dog, conditions })

describe('what an animal is or has', () => {
  it('holds an NSAID back after a raised creatinine, a loss of blood, and in pregnancy', () => {
    expect(of(carprofen)).toEqual([])
    expect(of(carprofen, having('raised-creatinine'))).toContain('block kidney-drug-with-raised-creatinine')
    expect(of(carprofen, having('blood-loss'))).toContain('block nsaid-after-blood-loss')
    expect(of(carprofen, having('pregnant'))).toContain('block unsafe-in-pregnancy')
    expect(of(carprofen, having('hypotension'))).toContain('block excluded')
  })

  it('asks before an aminoglycoside or furosemide reaches an inner ear that lies open', () => {
    expect(of(gentamicin, having('intact-drums'))).toEqual([])
    expect(of(gentamicin, having('open-drum'))).toContain('confirm ototoxic-with-open-ear')
    const furosemide = { id: 'f', drug: 'furosemide', use: 'emergency', dose: quantity('2', 'mg/kg') } as const
    expect(of(furosemide, having('open-drum'))?.some((one) => one.endsWith('ototoxic-with-open-ear'))).toBe(true)
  })

  it('keeps drugs that dry away from an eye that is dry or does not blink', () => {
    const sulfonamide = { id: 's', drug: 'trimethoprim-sulfonamide', use: 'antibiotic_course' } as const
    for (const word of ['dry-eye', 'no-blink'] as const) {
      expect(of(sulfonamide, having(word))).toContain('block drying-drug-with-dry-eye')
      expect(of(atropine, having(word))).toContain('confirm drying-drug-with-dry-eye')
    }
    // The emergency sheet is never silenced.
    const arrest = { ...atropine, use: 'emergency', dose: quantity('0.05', 'mg/kg') } as const
    expect(of(arrest, having('no-blink'))).toContain('note drying-drug-with-dry-eye')
  })

  it('gives no more local anaesthetic of any kind while its toxicity is suspected', () => {
    const block = { id: 'b', drug: 'bupivacaine', use: 'local_block', dose: quantity('1', 'mg/kg') } as const
    expect(of(block, having('local-anaesthetic-toxicity'))).toContain('block local-anaesthetic-toxicity-suspected')
  })

  // WSU list of problem drugs: 25 % less with one changed copy of ABCB1, 30 to 50 % less with two.
  it('lowers the upper end for a changed ABCB1', () => {
    const acepromazine = (mgPerKg: string): PlannedLine => ({
      id: 'a',
      drug: 'acepromazine',
      use: 'premed',
      dose: quantity(mgPerKg, 'mg/kg'),
    })
    expect(of(acepromazine('0.05'))).not.toContain('confirm dose-above-reduced-range')
    expect(of(acepromazine('0.04'), having('abcb1-carrier'))).toContain('confirm dose-above-reduced-range')
    expect(of(acepromazine('0.0375'), having('abcb1-carrier'))).not.toContain('confirm dose-above-reduced-range')
  })

  it('says once where nothing is known of a condition, instead of saying nothing', () => {
    const { findings } = judge([{ ...atropine }], having('pregnant'))
    const silence = findings.find(({ code }) => code === 'condition-unjudged')
    expect(silence?.about.unjudged).toBe('pregnant: atropine')
    expect(found(judge([carprofen], having('pregnant')).findings)).not.toContain('note condition-unjudged')
  })
})

describe('the weight against breed and body score', () => {
  const weighing = (kg: string, more: Partial<DosedAnimal> = {}) =>
    found(judge([carprofen], { ...dog, breed: 'English Cocker Spaniel', weight: quantity(kg, 'kg'), ...more }).findings)

  it('asks when pounds would explain it, notes what is only large, and lets a fat dog be fat', () => {
    expect(weighing('13')).toEqual([])
    expect(weighing('28.7')).toEqual(['confirm weight-unlike-breed'])
    expect(weighing('20')).toEqual(['note weight-unlike-breed'])
    expect(weighing('20', { bodyCondition: 8 })).toEqual([])
    expect(weighing('3', { ageMonths: 4 })).toEqual([])
    expect(weighing('30', { breed: 'Spaniel cross' })).toEqual([])
  })

  // dosing rules, section 19: aminoglycosides between lean and actual weight; where between is not said.
  it('asks which weight counts for an aminoglycoside in a fat animal', () => {
    const fat = { ...dog, bodyCondition: 8 }
    expect(of(gentamicin, fat)).toContain('confirm weight-between')
    expect(of(gentamicin, { ...having('intact-drums'), bodyCondition: 5 })).toEqual([])
  })
})

describe('the bottle in hand', () => {
  const gabapentin: PlannedLine = {
    id: 'x',
    drug: 'gabapentin',
    use: 'analgesia_oral',
    route: 'PO',
    dose: quantity('10', 'mg/kg'),
    stock: quantity('50', 'mg/mL'),
  }

  it('asks for xylitol in a liquid for a dog until somebody has read the label', () => {
    expect(of(gabapentin)).toContain('confirm xylitol-in-liquid')
    expect(of({ ...gabapentin, xylitolFree: true })).not.toContain('confirm xylitol-in-liquid')
    expect(of({ ...gabapentin, xylitolFree: false })).toContain('block xylitol-in-liquid')
    expect(of(gabapentin, cat)).not.toContain('confirm xylitol-in-liquid')
  })

  it('names the strengths it is taken for', () => {
    const ketamine = { id: 'k', drug: 'ketamine', use: 'analgesia_bolus', dose: quantity('0.5', 'mg/kg') } as const
    const { findings } = judge([{ ...ketamine, stock: quantity('100', 'mg/mL') }])
    expect(findings.find(({ code }) => code === 'strength-easily-confused')?.about.others).toBe('50 mg/mL')
    expect(found(judge([carprofen]).findings)).toEqual([])
  })

  it('refuses the bottle for the mouth in a needle', () => {
    const meloxicam = {
      id: 'm',
      drug: 'meloxicam',
      use: 'nsaid',
      qualifier: 'day 1',
      dose: quantity('0.2', 'mg/kg'),
    } as const
    const inHand = (mgPerMl: string) => of({ ...meloxicam, route: 'SC', stock: quantity(mgPerMl, 'mg/mL') })
    expect(inHand('1.5')).toContain('block strength-for-other-route')
    expect(inHand('5')).toEqual([])
  })
})

describe('a declared emergency', () => {
  const emergency = { by: 'A. Person', reason: 'The artery is open.' }
  const given = [{ drug: 'prednisolone', at }]

  it('lifts a block, says it still, and owes a second name within a day', () => {
    expect(judge([carprofen], dog, { given }).lines[0]?.verdict).toBe('refused')
    const result = judge([carprofen], dog, { given, emergency })
    expect(result.lines[0]).toMatchObject({ verdict: 'caution', findings: [{ level: 'confirm', lifted: true }] })
    expect(found(result.findings)).toContain('confirm emergency-declared')
    expect(result.confirmation?.secondName).toBe('later')
  })

  describe('that says what it is to lift', () => {
    const given = [{ drug: 'prednisolone', at }]
    const meloxicam = { ...carprofen, id: 'm', drug: 'meloxicam', qualifier: 'day 1', dose: quantity('0.2', 'mg/kg') }
    const verdicts = (lifts: string, lines: readonly PlannedLine[] = [carprofen]) => {
      const result = judge(lines, dog, { given, emergency: { ...emergency, lifts } })
      return [...result.lines.map(({ verdict }) => verdict), ...(found(result.findings) ?? [])]
    }

    it('lifts the blocks of that drug, or of that class, and of no other', () => {
      expect(verdicts('carprofen')[0]).toBe('caution')
      expect(verdicts('Carprofen, because nothing else is here')[0]).toBe('caution')
      expect(verdicts('the NSAID')[0]).toBe('caution')
      expect(verdicts('tranexamic acid')[0]).toBe('refused')
      // Two NSAIDs bar each other; only what stands before carprofen was named.
      expect(verdicts('carprofen', [carprofen, meloxicam]).slice(0, 2)).toEqual(['caution', 'refused'])
    })

    it('lifts that check, of any drug or of the one named beside it', () => {
      expect(verdicts('nsaid-with-steroid')[0]).toBe('caution')
      expect(verdicts('nsaid with steroid for carprofen')[0]).toBe('caution')
      expect(verdicts('over-daily-maximum')[0]).toBe('refused')
      expect(verdicts('over-daily-maximum of carprofen')[0]).toBe('refused')
    })

    it('lifts nothing where its words name nothing that is known here, and says so', () => {
      const said = verdicts('a second dose within the hour')
      expect(said[0]).toBe('refused')
      expect(said).toContain('confirm emergency-lifts-nothing')
      expect(verdicts('carprofen')).not.toContain('confirm emergency-lifts-nothing')
    })

    it('counts local anaesthetic above the limit only where it lifts that', () => {
      const block = (drug: string) =>
        ({ id: drug, drug, use: 'local_block', dose: quantity('4', 'mg/kg'), stock: quantity('20', 'mg/mL') }) as const
      const lines = [block('lidocaine'), { ...block('lidocaine'), id: 'again' }]
      const verdict = (lifts: string) =>
        judge(lines, dog, { emergency: { ...emergency, lifts } }).lines.map((line) => line.verdict)
      expect(verdict('lidocaine')[1]).toBe('caution')
      expect(verdict('carprofen')[1]).toBe('refused')
    })
  })

  it('lifts no doubt about unit, number, weight or bottle', () => {
    const inHurry = (line: PlannedLine, animal: DosedAnimal = dog) =>
      judge([line], animal, { emergency }).lines[0]?.verdict
    const { dose: _, ...unchosen } = carprofen
    expect(inHurry({ ...carprofen, dose: quantity('440', 'mg/kg') })).toBe('refused')
    expect(inHurry({ ...carprofen, stock: quantity('5000', 'mg/mL') })).toBe('refused')
    expect(inHurry({ ...carprofen, drug: 'carprofin' })).toBe('refused')
    expect(inHurry(unchosen)).toBe('refused')
    expect(inHurry(carprofen, { ...dog, weight: quantity('300', 'kg') })).toBe('refused')
    const block = { id: 'b', drug: 'bupivacaine', use: 'local_block', dose: quantity('1', 'mg/kg') } as const
    expect(inHurry(block, having('local-anaesthetic-toxicity'))).toBe('refused')
  })
})

describe('what asks for a second person', () => {
  it('is one question for the whole plan, the weight in it once', () => {
    const doubtful = { ...dog, previousWeight: quantity('1', 'kg') }
    const { confirmation } = judge([carprofen, gentamicin, atropine], doubtful)
    const unconfirmed = confirmation?.asks.filter(({ finding }) => finding.code === 'weight-unconfirmed')
    expect(unconfirmed).toHaveLength(1)
    expect(unconfirmed?.[0]?.lines).toEqual(['a'])
    expect(judge([atropine]).confirmation).toBeUndefined()
  })
})

describe('what was given before', () => {
  it('asks which active a trade name holds, with the days that would be left', () => {
    const drops = { drug: 'Some drops', unsettled: { route: 'ear' }, at: at.subtract({ hours: 72 }) }
    const given = [{ ...drops, onSurface: true }]
    const { lines } = judge([carprofen], dog, { given })
    const asked = lines[0]?.findings.find(({ code }) => code === 'given-active-unknown')
    // Seven days for any steroid; what was swallowed may have been mavacoxib, which lasts for a month.
    expect(asked).toMatchObject({ level: 'confirm', about: { left: '4 days to wait' } })
    const swallowed = judge([carprofen], dog, { given: [drops] }).lines[0]?.findings
    expect(swallowed?.find(({ code }) => code === 'given-active-unknown')?.about.left).toBe('27 days to wait')
  })

  // AAHA/AAFP 2015: 7 days after a short-acting steroid, longer after a depot.
  it('treats a depot steroid at least like a short one', () => {
    const depot = (hours: number) => [{ drug: 'methylprednisolone-acetate', at: at.subtract({ hours }) }]
    expect(of(carprofen, dog, { given: depot(72) })).toContain('block nsaid-with-steroid')
    expect(of(carprofen, dog, { given: depot(400) })).toEqual(['confirm pair-to-think-about'])
  })
})
