import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { editionCalled } from '#core/culture/editions.ts'
import { methicillinName } from '#core/culture/methicillin.ts'
import { organismById } from '#core/culture/organism.ts'
import { readIsolates } from '#core/culture/read-isolates.ts'
import type { DrugReading, IsolateReading } from '#core/culture/reading.ts'
import { recogniseAgent, recogniseOrganism } from '#core/culture/recognise.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'

type Row = Record<'id' | 'description' | 'inputs' | 'expected' | 'source' | 'provenance', string>
const rows: Row[] = parse(readFileSync(new URL('./data/susceptibility-examples.csv', import.meta.url)), {
  columns: true,
})
const { editions, organisms, agents, rules } = susceptibility

function row(id: string): { readonly inputs: Inputs; readonly expected: Expected; readonly title: string } {
  const found = rows.find((one) => one.id === id)
  if (!found) throw new Error(`No row ${id}.`)
  const title = `${id} ${found.description} [${found.source}; ${found.provenance}]`
  return { inputs: JSON.parse(found.inputs), expected: JSON.parse(found.expected), title }
}

// biome-ignore lint/suspicious/noExplicitAny: each row of the table has its own shape; what is compared is named.
type Inputs = any
// biome-ignore lint/suspicious/noExplicitAny: as above.
type Expected = any
type Value =
  | string
  | { readonly mic?: string; readonly zone_mm?: number; readonly disk?: string; readonly lab?: string }

function printedRow(drug: string, value: Value): StoredIsolate['results'][number] {
  const agent = recogniseAgent(drug, agents).id
  if (agent === null) throw new Error(`No drug "${drug}".`)
  const { mic, zone_mm: zone, disk, lab } = typeof value === 'string' ? { lab: value } : value
  if (mic !== undefined) return { drug, agent, method: 'MIC', raw: mic, disk: null, category: lab ?? null }
  if (zone !== undefined)
    return { drug, agent, method: 'DISK', raw: String(zone), disk: disk ?? null, category: lab ?? null }
  return { drug, agent, method: null, raw: lab ?? '', disk: null, category: null }
}

function isolate(
  organism: string,
  results: Readonly<Record<string, Value>>,
  tests: StoredIsolate['tests'] = [],
): StoredIsolate {
  const species = recogniseOrganism(organism, organisms).id
  if (species === null) throw new Error(`No organism "${organism}".`)
  const printed = Object.entries(results).map(([drug, value]) => printedRow(drug, value))
  return { key: '1', organism, species, amount: null, results: printed, tests }
}

function edition(standard: string | undefined): string {
  if (standard === undefined) return susceptibility.usual
  const found = editionCalled(standard, editions)
  if (!found) throw new Error(`No edition "${standard}".`)
  return found.id
}

function read(
  one: StoredIsolate,
  { host, standard, site }: { host?: 'dog' | 'cat'; standard?: string; site?: 'soft-tissue' | 'urinary' } = {},
): IsolateReading {
  const request = {
    host: host ?? 'dog',
    site: site ?? 'soft-tissue',
    edition: edition(standard),
    isolates: [one],
  } as const
  const [reading] = readIsolates(request, susceptibility)
  if (!reading) throw new Error('Nothing was read.')
  return reading
}

function drug(reading: IsolateReading, name: string): DrugReading {
  const { id } = recogniseAgent(name, agents)
  const found = reading.results.find(({ agent }) => agent === id)
  if (!found) throw new Error(`No reading of ${name}.`)
  return found
}

const codes = ({ findings }: IsolateReading) => findings.map(({ code }) => code)
const label = (reading: IsolateReading) => {
  const { methicillinResistant: status } = reading.phenotype
  const organism = organismById(organisms, reading.organism)
  if (!organism || status === 'no') return 'not_MR'
  return status === 'yes' || status === 'presumed' ? methicillinName(organism, rules.methicillin) : status
}
/** `>=0.5` and `≥ 0.5` of one table, `SDD 0.12; 0.25` of both. */
const steps = (text: string | null) => (text ?? '').match(/[\d.]+/g) ?? []

describe('the table of worked readings', () => {
  it('holds 89 rows, each naming its source', () => {
    expect(rows).toHaveLength(89)
    expect(rows.filter(({ provenance }) => provenance.trim() === '')).toEqual([])
  })
})

describe('one drug, one number', () => {
  const single = rows.filter(({ id }) => id <= 'SX051')
  it('is 51 rows', () => expect(single).toHaveLength(51))

  for (const { id } of single) {
    const { inputs, expected, title } = row(id)
    it(title, () => {
      const value = inputs.method === 'MIC' ? { mic: inputs.mic } : { zone_mm: inputs.zone_mm }
      const site = inputs.breakpoint_site === 'urinary' ? 'urinary' : 'soft-tissue'
      const reading = read(isolate(inputs.organism, { [inputs.drug]: value }), { ...inputs, site })
      const one = drug(reading, inputs.drug)
      // A human or other-host reading stands beside the category and never fills it.
      const flags: Record<string, string> = {
        human_breakpoint: 'human-breakpoint',
        extrapolated_from_other_host: 'extrapolated-from-other-host',
      }
      const human = expected.flag === 'human_breakpoint'
      expect(one.category).toBe(human ? 'no_breakpoint' : expected.category)
      const beside = human ? { category: expected.category, flag: expected.flag } : expected.fallback
      if (beside) {
        expect(one.fallback?.category).toBe(beside.category)
        expect(one.flags).toContain(flags[beside.flag])
        if (beside.host) expect(one.fallback?.breakpoint.host).toBe(beside.host)
      }
      if (expected.breakpoint) {
        const used = human ? one.fallback?.breakpoint : one.breakpoint
        expect(used?.susceptible).toBe(expected.breakpoint.S)
        expect(used?.resistant ?? '').toBe(expected.breakpoint.R)
        if (!human && !expected.breakpoint.I_or_SDD.startsWith('(')) {
          expect(steps(used?.between ?? null)).toEqual(steps(expected.breakpoint.I_or_SDD))
        }
      }
      if (expected.possible) expect(one.possible).toEqual(expected.possible)
      if (expected.dose_needed)
        expect(expected.dose_needed).toContain(one.breakpoint?.dose?.match(/^[\d.]+ mg\/kg/)?.[0])
      if (expected.note === 'not susceptible either way') expect(one.flags).toContain('not-susceptible-either-way')
      if (expected.warning) {
        const finding = reading.findings.find(({ code }) => code === 'proposed-value-lower')
        expect(finding?.about.proposed).toBe('<=0.12')
        expect(finding?.about.dose).toMatch(/5 mg\/kg every 24 h.*never more/)
      }
    })
  }
})

describe('methicillin resistance', () => {
  it(row('SX052').title, () => {
    const { inputs, expected } = row('SX052')
    const reading = read(isolate(inputs.organism, inputs.results), inputs)
    expect(label(reading)).toBe(expected.mr_status)
    for (const name of ['oxacillin', 'cefazolin', 'amoxicillin-clavulanate', 'cefovecin', 'clindamycin']) {
      expect(drug(reading, name).category).toBe(expected[name])
    }
    for (const [name, before] of Object.entries(expected.raw_before_override)) {
      expect(drug(reading, name)).toMatchObject({ before, changedBy: 'methicillin-resistance' })
    }
  })

  it(row('SX053').title, () => {
    const { inputs, expected } = row('SX053')
    const reading = read(isolate(inputs.organism, inputs.results), inputs)
    expect(label(reading)).toBe(expected.mr_status)
    expect(drug(reading, 'cefalexin').category).toBe(expected.cefalexin)
  })

  it(row('SX054').title, () => {
    const { inputs, expected } = row('SX054')
    const one = isolate(inputs.organism, inputs.results)
    const own = read(one, { ...inputs, standard: inputs.standards[0] })
    expect(drug(own, 'oxacillin').category).toBe(expected.by_standard[inputs.standards[0]])
    expect(label(own)).toBe('MRSP')
    expect(own.phenotype.methicillinResistant).toBe('presumed')
    expect(codes(own)).toContain('methicillin-standards-disagree')
    expect(codes(own)).toContain('methicillin-presumed') // asks for mecA or PBP2a
    const human = read(one, { ...inputs, standard: inputs.standards[1] })
    expect(drug(human, 'oxacillin').fallback?.category).toBe(expected.by_standard[inputs.standards[1]])
    expect(drug(human, 'oxacillin').category).toBe(expected.default)
  })

  it(row('SX055').title, () => {
    const { inputs, expected } = row('SX055')
    const reading = read(isolate(inputs.organism, inputs.results), inputs)
    expect(label(reading)).toBe(expected.mr_status)
    expect(drug(reading, 'cefoxitin').flags).toContain('not-used-in-this-species')
    expect(drug(reading, 'cefoxitin').fallback).toBeNull()
  })

  it(row('SX056').title, () => {
    const { inputs, expected } = row('SX056')
    const reading = read(isolate(inputs.organism, inputs.results), inputs)
    expect(label(reading)).toBe(expected.mr_status)
    expect(drug(reading, 'amoxicillin-clavulanate').category).toBe('R')
  })

  it(row('SX057').title, () => {
    const { inputs, expected } = row('SX057')
    expect(label(read(isolate(inputs.organism, inputs.results), inputs))).toBe(expected.mr_status)
  })
})

describe('inducible clindamycin resistance', () => {
  const without = (results: Record<string, Value>) =>
    Object.fromEntries(Object.entries(results).filter(([name]) => name !== 'd_test'))

  it(row('SX058').title, () => {
    const { inputs, expected } = row('SX058')
    const tested = isolate(inputs.organism, without(inputs.results), [
      { test: 'd-test', result: inputs.results.d_test },
    ])
    expect(drug(read(tested, inputs), 'clindamycin')).toMatchObject({
      category: expected.clindamycin,
      changedBy: expected.reason,
    })
  })

  it(row('SX059').title, () => {
    const { inputs, expected } = row('SX059')
    const reading = read(isolate(inputs.organism, without(inputs.results)), inputs)
    expect(drug(reading, 'clindamycin').category).toBe(expected.clindamycin)
    expect(drug(reading, 'clindamycin').flags).toContain('d-test-missing')
    expect(codes(reading)).toContain('d-test-missing')
  })
})

describe('what an organism is always resistant to', () => {
  /** `R_intrinsic` of the table is category R with its reason. */
  function compare(reading: IsolateReading, expected: Readonly<Record<string, string>>) {
    for (const [name, answer] of Object.entries(expected)) {
      const one = drug(reading, name)
      if (answer === 'R_intrinsic') expect(one, name).toMatchObject({ category: 'R', changedBy: 'intrinsic' })
      else if (answer === 'do_not_report_S') {
        expect(one.category, name).not.toBe('S')
        expect(one.flags, name).toContain('not-to-be-reported-susceptible')
      } else expect(one.category, name).toBe(answer)
    }
  }

  for (const id of ['SX060', 'SX061', 'SX062']) {
    const { inputs, expected, title } = row(id)
    it(title, () => compare(read(isolate(inputs.organism, inputs.results), inputs), expected))
  }

  it(row('SX063').title, () => {
    const { inputs, expected } = row('SX063')
    inputs.items.forEach((item: { organism: string; drug: string; mic: string }, at: number) => {
      compare(read(isolate(item.organism, { [item.drug]: { mic: item.mic } }), inputs), {
        [item.drug]: expected.answers[at],
      })
    })
  })
})

describe('one drug standing for another', () => {
  it(row('SX064').title, () => {
    const { inputs, expected } = row('SX064')
    const reading = read(isolate(inputs.organism, inputs.results), inputs)
    expect(drug(reading, 'tetracycline').category).toBe(expected.tetracycline)
    for (const name of ['doxycycline', 'minocycline']) {
      expect(expected[name]).toBe('S_inferred')
      expect(drug(reading, name)).toMatchObject({ category: 'S', changedBy: 'inferred' })
    }
  })

  /** EUCAST before v12 read doxycycline R by inference; no edition held here is as old as that. */
  it(row('SX065').title, () => {
    const { inputs, expected } = row('SX065')
    expect(expected.doxycycline).toMatchObject({ CLSI: 'unknown_test_it', EUCAST_v12_and_later: 'unknown_test_it' })
    for (const standard of ['CLSI VET01S ed7 (2024)', 'EUCAST v15.0 (2025)']) {
      const reading = read(isolate(inputs.organism, inputs.results), { ...inputs, standard })
      expect(reading.results.map(({ agent }) => agent)).toEqual(['tetracycline'])
      if (standard.startsWith('CLSI')) {
        expect(drug(reading, 'tetracycline').category).toBe(expected.tetracycline)
        expect(codes(reading)).toContain('open-though-resistant')
      }
    }
  })

  it(row('SX066').title, () => {
    const { inputs, expected } = row('SX066')
    const reading = read(isolate(inputs.organism, inputs.results), inputs)
    expect(drug(reading, 'cefalotin').category).toBe(expected.cefalotin)
    expect(expected.cefalexin).toBe('unknown_test_it')
    expect(reading.results.map(({ agent }) => agent)).toEqual(['cefalotin'])
    expect(codes(reading)).toContain('does-not-stand-for')
  })
})

describe('extended-spectrum beta-lactamases', () => {
  const zones = (some: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(some).map(([name, zone_mm]) => [name, { zone_mm }]))

  it(row('SX067').title, () => {
    const { inputs, expected } = row('SX067')
    expect(expected.confirmed).toBe(true)
    expect(read(isolate(inputs.organism, zones(inputs.zones))).phenotype.esbl).toBe('confirmed')
  })

  it(row('SX068').title, () => {
    const { inputs, expected } = row('SX068')
    expect(expected.confirmed).toBe(false)
    // The row names no organism; the screen is one of Escherichia coli.
    expect(read(isolate('Escherichia coli', zones(inputs.zones))).phenotype.esbl).toBe('not-confirmed')
  })
})

describe('multidrug resistance by the published categories', () => {
  /** One drug of each category as the table names them. */
  const drugOf: Record<string, string> = {
    'beta-lactams': 'oxacillin',
    'anti-staphylococcal_beta-lactams': 'oxacillin',
    lincosamides: 'clindamycin',
    folate_pathway_inhibitors: 'trimethoprim-sulfamethoxazole',
    fluoroquinolones: 'ciprofloxacin',
    tetracyclines: 'doxycycline',
    phenicols: 'chloramphenicol',
    aminoglycosides: 'gentamicin',
    carbapenems: 'imipenem',
    cephalosporins: 'ceftazidime',
    penicillins_inhibitor: 'piperacillin-tazobactam',
    monobactams: 'aztreonam',
    phosphonic_acids: 'fosfomycin',
    polymyxins: 'colistin',
  }
  function byCategories(organism: string, categories: Readonly<Record<string, string | null>>): IsolateReading {
    const entries = Object.entries(categories).filter((entry): entry is [string, string] => entry[1] !== null)
    return read(
      isolate(organism, Object.fromEntries(entries.map(([name, category]) => [drugOf[name] ?? name, category]))),
    )
  }

  for (const id of ['SX069', 'SX070', 'SX071', 'SX072', 'SX073']) {
    const { inputs, expected, title } = row(id)
    it(title, () => {
      const reading = byCategories(inputs.organism, inputs.categories)
      const { multidrug, counted } = reading.phenotype
      expect(multidrug).toBe(expected.class === 'not_MDR' ? 'no' : expected.class)
      if (expected.non_susceptible_categories) expect(counted).toHaveLength(expected.non_susceptible_categories)
      if (expected.also_flag) expect(label(reading)).toBe(expected.also_flag)
    })
  }

  it(row('SX074').title, () => {
    const { inputs, expected } = row('SX074')
    const list = rules.multidrug.lists.find(({ id }) => id === 'pseudomonas-aeruginosa')
    const all = Object.fromEntries((list?.categories ?? []).flatMap(({ agents: ids }) => ids.map((id) => [id, 'R'])))
    const { multidrug, tested } = read(isolate(inputs.organism, all)).phenotype
    expect({ class: multidrug, tested }).toEqual({ class: expected.class, tested: inputs.categories_tested })
  })

  it(row('SX075').title, () => {
    const { inputs, expected } = row('SX075')
    expect(expected).toMatchObject({ class: 'MDR', possible: ['XDR', 'PDR'] })
    // Everything tested was resistant: MDR is certain, and neither XDR nor PDR can be excluded.
    const { multidrug, tested, of } = byCategories(inputs.organism, inputs.categories).phenotype
    expect({ multidrug, tested, of }).toEqual({ multidrug: 'possible PDR', tested: 4, of: 8 })
  })

  it(row('SX076').title, () => {
    const { inputs, expected } = row('SX076')
    const all = [
      ...inputs.resistant.map((name: string) => [name, 'R']),
      ...inputs.susceptible.map((name: string) => [name, 'S']),
    ]
    const { counted, multidrug } = read(isolate(inputs.organism, Object.fromEntries(all))).phenotype
    expect([...counted].sort()).toEqual([...expected.counted].sort())
    expect(multidrug).toBe('no')
  })

  it(row('SX077').title, () => {
    const { inputs, expected } = row('SX077')
    const { counted, multidrug } = read(isolate(inputs.organism, inputs.results)).phenotype
    expect(counted).toHaveLength(expected.non_susceptible_categories)
    expect(multidrug).toBe(expected.class)
  })
})

describe('the laboratory’s word beside ours', () => {
  it(row('SX089').title, () => {
    const { inputs, expected } = row('SX089')
    const reading = read(
      isolate(inputs.organism, { [inputs.drug]: { mic: inputs.mic, lab: inputs.lab_category } }),
      inputs,
    )
    const one = drug(reading, inputs.drug)
    expect({ ours: one.category, theirs: one.laboratory }).toEqual({
      ours: expected.our_category,
      theirs: expected.lab_category,
    })
    const finding = reading.findings.find(({ code }) => code === 'laboratory-differs-by-edition')
    expect(finding?.about).toMatchObject({ year: '2024', likely: 'CLSI VET01S ed6 (2023)' })
  })
})
