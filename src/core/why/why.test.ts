import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { evidenceRules } from '#content/evidence/prior.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { triageRules } from '#content/follow-up/triage-rules.ts'
import { formulary } from '#content/formulary/index.ts'
import { procedures } from '#content/procedures/index.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { bloodMarks } from '#content/protocols/blood-marks.ts'
import { bloodPerKg } from '#content/protocols/blood-per-kg.ts'
import { calcFormulas } from '#content/protocols/calc-formulas.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { otis3CutOffs } from '#content/scores/otis-3.ts'
import { whyInEnglish } from '#content/wording/app-why.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import { operations } from '#core/dosing/calc/registry.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import { dosedAnimalOf, givenOf, linesOfOperation, plansOf, policiesOf } from '#core/dosing/from-journal.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import { toldOf } from '#core/evidence/told.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { bloodLoss as bloodLossKind } from '#core/journal/kinds/blood-loss.ts'
import { earFindings } from '#core/journal/kinds/ear-findings.ts'
import { refuse } from '#core/outcome/outcome.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import { triage } from '#core/referral/triage.ts'
import { bloodLoss } from '#core/theatre/blood-loss.ts'
import { Decimal, quantity } from '#core/units/quantity.ts'
import { practiceChart } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { publishedEvidence } from '#documents/case/evidence-of.ts'
import { sayWhy, type Why } from './why.ts'
import { whyBloodVolume, whyLoss, whyLossMarks } from './why-blood.ts'
import { whyCalculated } from './why-calc.ts'
import { whyCeiling, whyDose } from './why-dose.ts'
import { whyOdds } from './why-odds.ts'
import { whyOtis3 } from './why-otis3.ts'
import { whyOwed } from './why-owed.ts'
import { whyUrgency } from './why-urgency.ts'

const say = (one: Why) => sayWhy(one, whyInEnglish)
const odds = { odds: oddsInEnglish, told: toldInEnglish }

/** Tansy's plan worked out again, as at the table. */
function tansysDoses(): { lines: readonly PlannedLine[]; result: ReturnType<typeof doseLines> } {
  const file = fileOf([...practiceChart().entries, ...tansy().entries])
  const { at = '', lines } = linesOfOperation(file.theCase, 'operation-tansy-left')
  const animal = dosedAnimalOf(file.theCase, at, dosingRules)
  if (!animal) throw new Error('Tansy has an identity.')
  const knowledge = {
    drugs: formulary,
    rules: dosingRules,
    plans: plansOf(file.house),
    policies: policiesOf(file.house),
  }
  const request = { animal, given: givenOf(file.theCase, at), at: Temporal.Instant.from(at), lines }
  return { lines, result: doseLines(request, knowledge) }
}

describe('why a dose line', () => {
  const { lines, result } = tansysDoses()
  const whyOf = (id: string) => {
    const line = result.lines.find((one) => one.id === id)
    if (!line) throw new Error(id)
    return whyDose(line, { asked: lines.find((one) => one.id === id) ?? null, drugName: line.drug, weightLine: 'w' })
  }

  it('is dose times weight, divided by the strength, drawn to a mark', () => {
    const propofol = say(whyOf('induction'))
    expect(propofol.formula).toEqual([
      '3 mg/kg × 18.4 kg = 55.2 mg',
      '55.2 mg ÷ 10 mg/mL = 5.52 mL',
      '5.52 mL is drawn to the nearest mark of the syringe: 5.5 mL',
      'What is drawn gives 2.99 mg/kg',
    ])
    expect(propofol.result).toBe('Draw 5.5 mL')
    expect(propofol.inputs.map(({ name }) => name)).toContain('Range of the sources')
    expect(propofol.inputs.find(({ name }) => name === 'Weight dosed on')?.input.line).toBe('w')
  })

  it('names the sources of the row and the least sure way they are known', () => {
    const one = whyOf('induction')
    expect(one.facts.length).toBeGreaterThan(0)
    expect(one.facts.map(({ known }) => known)).toContain(one.known)
  })

  it('names the house policy with name, date and reason when nobody else chose', () => {
    const file = fileOf(practiceChart().entries)
    const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: policiesOf(file.house) }
    const asked = {
      id: 'm',
      drug: 'maropitant',
      use: 'antiemetic',
      route: 'SC',
      stock: quantity('10', 'mg/mL'),
    } as const
    const animal = { species: 'dog', weight: quantity('18.4', 'kg'), conditions: [] } as const
    const [line] = doseLines({ animal, given: [], lines: [asked] }, knowledge).lines
    const one = line && whyDose(line, { asked, drugName: 'Maropitant', weightLine: null })
    expect(one && sayWhy(one, whyInEnglish, () => 'Tomas Adeyemi').policy).toBe(
      'House policy maropitant, antiemetic: 1 mg/kg, by Tomas Adeyemi, 6 January 2025, because: The label dose; there is no reason for another.',
    )
  })

  it('gives no number where the line is refused, and keeps what was found', () => {
    const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
    const asked = { id: 'x', drug: 'propofol', use: 'induction' } as const
    const [line] = doseLines({ animal: { species: 'dog', conditions: [] }, given: [], lines: [asked] }, knowledge).lines
    const one = line && whyDose(line, { asked, drugName: 'Propofol', weightLine: null })
    expect(one && say(one).result).toBe('Refused: no number is given')
    expect(one?.formula).toEqual([])
    expect(one?.findings.some(({ level }) => level === 'block')).toBe(true)
  })

  it('shows the ceiling as shares of one limit', () => {
    const [ceiling] = result.ceilings
    const one = ceiling && say(whyCeiling(ceiling))
    expect(one?.inputs.map(({ name, value }) => `${name} ${value}`)).toEqual([
      'Share of its limit: bupivacaine 18.4 mg ÷ 36.8 mg = 0.5',
      'Share of its limit: bupivacaine 18.4 mg ÷ 36.8 mg = 0.5',
    ])
    expect(one?.result).toBe('1 of 1')
  })
})

describe('why these odds', () => {
  it('shows the one study with its count and exact interval (Fox 2008: 81 of 309 dogs)', () => {
    const question = {
      species: 'dog',
      procedure: 'teca-lbo',
      unit: 'animal',
      outcome: 'facial_nerve_deficit_any',
    } as const
    const told = toldOf(question, publishedEvidence)
    const one = say(whyOdds(told, odds, evidenceRules))
    expect(one.formula.join('\n')).toContain('fox-2008: 81 ÷ 309 = 26.2 of 100')
    expect(one.formula.join('\n')).toMatch(/fox-2008: exact 95 % interval 21\.4 to 31\.5 of 100/)
    expect(whyOdds(told, odds, evidenceRules)).toMatchObject({ known: 'read' })
  })

  it('says that nothing is known, with what was set aside', () => {
    const question = { species: 'cat', procedure: 'traction', unit: 'ear', outcome: 'horner_any' } as const
    const one = whyOdds(toldOf(question, { ...publishedEvidence, studies: [] }), odds, evidenceRules)
    expect(say(one).result).toMatch(/Not known/)
    expect(one).toMatchObject({ facts: [], known: null, formula: [] })
  })

  it('shows our own count, what both say together, and whether they disagree', () => {
    const question = {
      species: 'dog',
      procedure: 'teca-lbo',
      unit: 'ear',
      outcome: 'facial_nerve_deficit_any',
    } as const
    const own = { events: 0, total: 12, lost: 1, from: null, until: null, asOf: '2026-06-30' }
    const one = say(whyOdds(toldOf(question, { ...publishedEvidence, ownOf: () => own }), odds, evidenceRules))
    expect(one.inputs.map(({ name, value }) => `${name} ${value}`)).toContain('Our own count, as approved 0 ÷ 12')
    expect(one.formula.at(-2)).toMatch(/^Joined with our 0 ÷ 12: 0\.2 of the weight lies on a weak part/)
    expect(one.formula.at(-1)).toMatch(/at most as likely as ours is 0\.\d{3}/)
  })
})

describe('why something is due', () => {
  const make = entryMaker()
  const stamp = { checkpoint: 'incision', answer: 'done', detail: {}, text: null } as const
  const operated = [
    make({ kind: 'booking' }),
    make({ kind: 'theatre-stamp', body: stamp, at: '2026-03-04T09:00:00.000Z' }),
  ]
  const policy = make({
    kind: 'house-policy',
    at: '2026-01-05T09:00:00.000Z',
    body: { policy: 'owed.suture-check', value: '12..12 days', because: 'Fewer gaps at the T.' },
  })

  it('says the interval, and the policy with its author and day where the house changed it', () => {
    const item = (entries: typeof operated) =>
      owedOf(fileOf(entries), procedures, { rules: owedRules }).owed.find(({ what }) => what === 'suture-check')
    const usual = item(operated)
    const changed = item([...operated, policy])
    const sentence = (one: typeof usual) => one && say(whyOwed(one, owedInEnglish))
    expect(sentence(usual)?.result).toBe('From 14 March 2026 until 18 March 2026')
    expect(sentence(usual)?.policy).toBeNull()
    expect(sentence(changed)?.result).toBe('16 March 2026')
    expect(sentence(changed)?.policy).toBe(
      'House policy owed.suture-check: 12..12 days, by person-surgeon, 5 January 2026, because: Fewer gaps at the T.',
    )
    expect(usual && whyOwed(usual, owedInEnglish).known).toBe('common-practice')
  })
})

describe('why this OTIS-3 total (Nuttall and Bensignor 2014)', () => {
  const line = (otis3: BodyOf<'ear-findings'>['otis3']) => {
    const found = fold([entryMaker()({ kind: 'ear-findings', body: { ...earFindings.example, otis3 } })]).latest(
      'ear-findings',
    )
    if (!found) throw new Error('written above')
    return found
  }
  const all = { erythema: 3, swelling: 3, erosion: 2, exudate: 3 }

  it('is the four signs added, beside the published line', () => {
    const one = say(whyOtis3(line(all), 'dog', otis3CutOffs))
    expect([one.formula, one.result, one.notes]).toEqual([
      ['3 + 3 + 2 + 3 = 11'],
      '11 of 12',
      ['At or above 4: in the range that the study found in ears with otitis.'],
    ])
  })

  it('is unknown while a sign was not assessed, and has no line for a cat', () => {
    expect(say(whyOtis3(line({ ...all, erosion: null }), 'dog', otis3CutOffs)).result).toMatch(/^Unknown/)
    expect(say(whyOtis3(line(all), 'cat', otis3CutOffs)).notes).toEqual([
      'The lines were drawn in dogs; none was found for a cat.',
    ])
  })
})

describe('why this blood loss', () => {
  it('starts from a blood volume of 2880 mL in a 32 kg dog (transfusion refresher for students)', () => {
    const one = say(whyBloodVolume(quantity('32', 'kg'), bloodPerKg.dog, null))
    expect([one.formula[0], one.result, one.notes[0]]).toEqual([
      '90 mL/kg × 32 kg = 2880 mL',
      '2880 mL',
      'Sources quote from 2560 mL to 2880 mL.',
    ])
  })

  it('is jar and swabs without the lavage that was found again', () => {
    const entry = fold([entryMaker()({ kind: 'blood-loss' })]).latest('blood-loss')
    const { jar, lavageIn, lavageInJar, swabs } = bloodLossKind.example
    const outcome = bloodLoss(
      {
        suction: quantity(jar.value, 'mL'),
        lavage: {
          kind: 'recovered',
          given: quantity(lavageIn.value, 'mL'),
          recovered: quantity(lavageInJar?.value ?? '', 'mL'),
        },
        swabs: swabs.map(({ dry, wet, saline }) => ({
          kind: 'weighed',
          dry: quantity(dry.value, 'g'),
          wet: quantity(wet.value, 'g'),
          saline: quantity(saline.value, 'mL'),
        })),
      },
      bloodInSwabs,
    )
    const one = entry && say(whyLoss(entry, outcome, bloodInSwabs))
    expect(one?.formula[1]).toBe('Jar: 60 mL − 40 mL of lavage found again')
    expect(one?.result).toMatch(/^At least 2\d(\.\d+)? mL, at most 2\d(\.\d+)? mL$/)
    const no = entry && whyLoss(entry, refuse({ because: 'negative-measure' }), bloodInSwabs)
    expect(no && say(no).result).toBe('No figure: A volume cannot be below zero. Read the jar and the lavage again.')
  })

  it('fires a mark on the upper end where the lavage was not measured', () => {
    const span = {
      atLeast: quantity('100', 'mL'),
      atMost: quantity('350', 'mL'),
      lavage: 'not-measured',
      estimated: false,
    } as const
    const one = say(whyLossMarks(span, quantity('1000', 'mL'), bloodMarks))
    expect(one.formula).toEqual(['At least 10 %, at most 35 % of the blood volume'])
    expect(one.result).toBe('The loss may have reached the mark: critical. What was not measured cannot be subtracted.')
    expect(one.inputs.find(({ name }) => name === 'Mark: say it aloud')?.value).toBe('10 %: 100 mL')
  })
})

describe('why, for the rest', () => {
  it('says of a referral which flag makes it urgent, and what to ask first', () => {
    const answers = {
      signs: [{ sign: 'severe-pain', answer: 'yes' }],
      drugAllergy: 'no',
      flatFace: 'no',
      mayFetchRecords: 'yes',
    } as const
    const one = say(whyUrgency(triage(answers, triageRules)))
    expect(one.result).toBe('At least this week; ask the rest before deciding')
    expect(one.notes[0]).toBe('Not asked yet: head tilt. A “yes” makes it today.')
  })

  it('shows the formula of the calculator with what was given and where it was seen', () => {
    const calculated = { value: new Decimal('55.2'), unit: 'mg' }
    const one = whyCalculated(
      'dose_mass',
      operations.dose_mass,
      { weight_kg: '18.4' },
      calculated,
      calcFormulas.dose_mass,
    )
    expect(say(one)).toMatchObject({ result: '55.2 mg', inputs: [{ name: 'Given: weight_kg' }] })
    expect(one.facts[0]?.sources).toEqual(['technician-drug-calculations'])
  })
})
