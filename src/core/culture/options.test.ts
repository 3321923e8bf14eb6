import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { tiers } from '#content/susceptibility/tiers.ts'
import type { AnimalWord } from '#core/animal/conditions.ts'
import type { Species } from '#core/animal/species.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import { quantity } from '#core/units/quantity.ts'
import type { Agent } from './agent.ts'
import { cultureOptions, type OptionFacts, type OptionsQuestion } from './options.ts'
import type { Category, ChangedBy, DrugReading, IsolateReading } from './reading.ts'

const agents: readonly Agent[] = [
  agent('enrofloxacin', 'fluoroquinolone'),
  agent('doxycycline', 'tetracycline'),
  agent('cefalexin', 'first-generation-cephalosporin'),
  agent('amoxicillin-clavulanate', 'aminopenicillin-with-inhibitor'),
  agent('trimethoprim-sulfonamide', 'folate-inhibitor'),
  { ...agent('oxacillin', 'staphylococcal-penicillin'), formulary: null },
  agent('rifampicin', 'rifamycin'),
  agent('gentamicin', 'aminoglycoside'),
]

function agent(id: string, family: Agent['family']): Agent {
  return { id, name: id, family, formulary: id, aliases: [] }
}

const known = {
  sources: ['house-judgement'],
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-30',
} as const

const facts: OptionFacts = {
  agents,
  editions: [{ id: 'invented', convention: 'CLSI' }],
  cautions: [
    { ...known, value: 'said of cats only', families: ['fluoroquinolone'], species: 'cat' },
    { ...known, value: 'said of dogs only', families: ['fluoroquinolone'], species: 'dog' },
  ],
  tiers,
  knowledge: { drugs: formulary, rules: dosingRules, plans: [], policies: [] },
}

type Row = readonly [agent: string, category: Category, rest?: { dose?: string; changedBy?: ChangedBy }]

function isolate(rows: readonly Row[], key = '1'): IsolateReading {
  const results = rows.map(
    ([id, category, { dose = null, changedBy = null } = {}]): DrugReading => ({
      agent: id,
      printed: id,
      raw: '0.5 mg/L',
      method: 'MIC',
      category,
      before: null,
      changedBy,
      possible: [],
      breakpoint: {
        edition: 'invented',
        standard: 'an invented standard',
        row: 'row',
        step: 'same-organism',
        host: 'dog',
        site: 'soft-tissue',
        organisms: 'any',
        susceptible: '0.5',
        between: null,
        resistant: '4',
        dose,
      },
      fallback: null,
      laboratory: null,
      flags: [],
    }),
  )
  return {
    key,
    printed: 'an organism',
    organism: 'an-organism',
    results,
    phenotype: {
      methicillinResistant: 'not-applicable',
      esbl: 'not-tested',
      ampc: 'no',
      carbapenemase: 'no',
      multidrug: 'no',
      counted: [],
      tested: 0,
      of: 0,
    },
    findings: [],
  }
}

function ask(
  rows: readonly Row[],
  { species = 'dog', kg = '10', conditions = [] as AnimalWord[], lines = [] as PlannedLine[] } = {},
  more: Partial<OptionsQuestion> = {},
) {
  return cultureOptions(
    {
      isolates: [isolate(rows)],
      animal: { species: species as Species, weight: quantity(kg, 'kg'), ageMonths: 60, conditions },
      given: [],
      lines,
      ...more,
    },
    facts,
  )
}

const enrofloxacinAt = (mg: string, rest: Partial<PlannedLine> = {}): PlannedLine => ({
  id: 'chosen',
  drug: 'enrofloxacin',
  use: 'antibiotic_course',
  route: 'PO',
  dose: quantity(mg, 'mg/kg'),
  ...rest,
})

describe('what could be used', () => {
  it('is never given a dose that nobody chose: the range stands there', () => {
    const [option] = ask([['enrofloxacin', 'S']])
    expect(option?.verdict).toBe('could')
    expect(
      option?.ways.map(({ line }) => [line.dose, line.range?.low.toString(), line.range?.high.toString()]),
    ).toEqual([[undefined, '5 mg/kg', '20 mg/kg']])
    expect(option?.ways[0]?.line.findings.map(({ code }) => code)).toContain('dose-not-chosen')
  })

  it('stands in the order of stewardship, and what nobody can say of after it', () => {
    const said = ask([
      ['rifampicin', 'S'],
      ['enrofloxacin', 'S'],
      ['cefalexin', 'SDD', { dose: '22 mg/kg' }],
      ['amoxicillin-clavulanate', 'S'],
      ['doxycycline', 'S'],
      ['trimethoprim-sulfonamide', 'no_breakpoint'],
    ]).map(({ agent: id, verdict }) => `${id}: ${verdict}`)
    expect(said).toEqual([
      'doxycycline: could',
      'amoxicillin-clavulanate: could',
      'cefalexin: could',
      'enrofloxacin: could',
      'rifampicin: could',
      'trimethoprim-sulfonamide: doubt',
    ])
  })

  it('counts the tablets of the course that a person chose', () => {
    const tablet = { strength: quantity('50', 'mg'), divides: 'halves' } as const
    const [option] = ask([['enrofloxacin', 'S']], { lines: [enrofloxacinAt('5', { tablet, days: 14 })] })
    const line = option?.ways[0]?.line
    expect(line?.verdict === 'refused' ? line.findings : line?.tablets?.each.toString()).toBe('1 {tablet}')
    expect(line?.verdict !== 'refused' && line?.dispense?.amount.toString()).toBe('14 {tablet}')
  })

  it('says when the dose chosen is less than the standard asks for', () => {
    const at = (mg: string) => ask([['enrofloxacin', 'SDD', { dose: '10 mg/kg' }]], { lines: [enrofloxacinAt(mg)] })[0]
    expect(at('5')?.findings.map(({ code }) => code)).toEqual(['dose-below-needed'])
    expect(at('10')?.findings).toEqual([])
    expect(at('10')?.verdict).toBe('could')
  })

  it('has to work against every isolate it is asked for', () => {
    const isolates = [isolate([['doxycycline', 'S']], '1'), isolate([['doxycycline', 'R']], '2')]
    expect(ask([], {}, { isolates }).map(({ verdict }) => verdict)).toEqual(['cannot'])
    expect(ask([], {}, { isolates: isolates.slice(0, 1) }).map(({ verdict }) => verdict)).toEqual(['could'])
    const untested = [isolate([['doxycycline', 'S']], '1'), isolate([], '2')]
    expect(ask([], {}, { isolates: untested }).map(({ verdict }) => verdict)).toEqual(['doubt'])
  })
})

describe('what it swallows at home', () => {
  it('is met by the choice, and a drug never meets its own course', () => {
    const at = Temporal.Instant.from('2026-03-10T10:00:00Z')
    const home = (drug: string) => [{ drug, route: 'PO' as const, at: at.subtract({ hours: 2 }) }]
    const of = (drug: string, on: string) => ask([[drug, 'S']], {}, { at, atHome: home(on) })[0]
    expect(of('gentamicin', 'meloxicam')?.inAnimal.map(({ code }) => code)).toContain('pair-forbidden')
    expect(of('gentamicin', 'meloxicam')?.verdict).toBe('cannot')
    expect(of('gentamicin', 'gabapentin')?.verdict).toBe('could')
    expect(of('enrofloxacin', 'enrofloxacin')?.verdict).toBe('could')
  })
})

describe('a yeast beside the bacteria', () => {
  it('takes no drug away from them', () => {
    const yeast: IsolateReading = {
      ...isolate([], '2'),
      findings: [
        { code: 'not-a-bacterium', level: 'note', about: { organism: 'a yeast' }, sources: [], provenance: [] },
      ],
    }
    const isolates = [isolate([['doxycycline', 'S']]), yeast]
    expect(ask([], {}, { isolates }).map(({ verdict }) => verdict)).toEqual(['could'])
  })
})

describe('a cat and enrofloxacin', () => {
  const cat = { species: 'cat', kg: '4' } as const

  it('gets 5 mg/kg a day and no more, whatever is typed', () => {
    const way = (mg: string) => ask([['enrofloxacin', 'S']], { ...cat, lines: [enrofloxacinAt(mg)] })[0]?.ways[0]?.line
    expect(way('5')?.verdict).not.toBe('refused')
    expect(way('20')?.verdict).toBe('refused')
    expect(way('20')?.findings.map(({ code }) => code)).toContain('over-single-maximum')
    expect(way('5.5')?.verdict).toBe('refused')
  })

  it('is not offered it where the standard asks for 20 mg/kg', () => {
    const [option] = ask([['enrofloxacin', 'SDD', { dose: '20 mg/kg' }]], cat)
    expect(option?.verdict).toBe('cannot')
    expect(option?.findings.map(({ code }) => code)).toEqual(['dose-needed-over-most'])
    const [dog] = ask([['enrofloxacin', 'SDD', { dose: '20 mg/kg' }]])
    expect(dog?.verdict).toBe('could')
  })

  it('is barred from it by a diseased kidney, though the organism is susceptible', () => {
    const [option] = ask([['enrofloxacin', 'S']], { ...cat, conditions: ['renal-disease'] })
    expect(option?.verdict).toBe('cannot')
    expect(option?.inAnimal.map(({ code, level }) => `${level}: ${code}`)).toContain('block: excluded')
  })

  it('is told what is said of cats, not of dogs', () => {
    const said = ask([['enrofloxacin', 'S']], cat)[0]?.harms.map(({ value }) => value) ?? []
    expect(said).toContain('more blinds cats: marbofloxacin or pradofloxacin first')
    expect(said).toContain('said of cats only')
    expect(said).not.toContain('said of dogs only')
  })
})

describe('what cannot be used', () => {
  it('names methicillin resistance as the reason for every beta-lactam', () => {
    const changedBy = 'methicillin-resistance'
    const options = ask([
      ['cefalexin', 'R', { changedBy }],
      ['amoxicillin-clavulanate', 'R', { changedBy }],
    ])
    expect(options.map(({ verdict, against }) => [verdict, against[0]?.because])).toEqual([
      ['cannot', 'resistant-methicillin-resistance'],
      ['cannot', 'resistant-methicillin-resistance'],
    ])
  })

  it('is a drying drug in an eye that does not blink', () => {
    const [option] = ask([['trimethoprim-sulfonamide', 'S']], { conditions: ['no-blink'] })
    expect(option?.verdict).toBe('cannot')
  })
})

describe('what nobody can say', () => {
  it('is a drug without a dose here, an animal without a species, an organism without a name', () => {
    expect(ask([['oxacillin', 'S']])[0]?.verdict).toBe('doubt')
    expect(ask([['doxycycline', 'S']], {}, { animal: null })[0]?.verdict).toBe('doubt')
    const unknown = [{ ...isolate([['doxycycline', 'S']]), organism: null }]
    expect(ask([], {}, { isolates: unknown })[0]?.against[0]?.because).toBe('organism-unknown')
  })

  it('is a dose of the standard that cannot be read: it is not guessed', () => {
    const [option] = ask([['enrofloxacin', 'SDD', { dose: 'the higher dose' }]])
    expect(option?.verdict).toBe('doubt')
    expect(option?.findings.map(({ code }) => code)).toEqual(['dose-needed-unread'])
  })
})
