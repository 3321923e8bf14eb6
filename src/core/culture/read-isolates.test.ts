import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { isolateOf } from './isolates-for-tests.ts'
import { type ReadingRequest, readIsolates } from './read-isolates.ts'
import type { IsolateReading } from './reading.ts'

const mrsp = 'staphylococcus-pseudintermedius'

function read(isolate: StoredIsolate, request: Partial<ReadingRequest> = {}): IsolateReading {
  const asked = { host: 'dog', site: 'soft-tissue', edition: 'clsi-vet01s-7', isolates: [isolate], ...request } as const
  const [reading] = readIsolates(asked, susceptibility)
  if (!reading) throw new Error('Nothing was read.')
  return reading
}
const drug = ({ results }: IsolateReading, id: string) => {
  const found = results.find(({ agent }) => agent === id)
  if (!found) throw new Error(`No ${id}.`)
  return found
}
const codes = ({ findings }: IsolateReading) => findings.map(({ code }) => code)

describe('what nobody recognises', () => {
  it('is not read: an unknown organism leaves every drug open, and is said', () => {
    const reading = read(isolateOf(mrsp, { cefalexin: '1' }, { species: null, organism: 'Gram-positive cocci' }))
    expect(drug(reading, 'cefalexin').category).toBe('NI')
    expect(codes(reading)).toEqual(['organism-not-recognised'])
  })

  it('an unknown drug is kept as printed, and its neighbours are read', () => {
    const reading = read(
      isolateOf(mrsp, { cefalexin: '1', x: { agent: null, drug: 'Foobarin', raw: '2', method: 'MIC' } }),
    )
    expect(reading.results[1]).toMatchObject({ printed: 'Foobarin', raw: '2', category: 'NI' })
    expect(drug(reading, 'cefalexin').category).toBe('S')
    expect(codes(reading)).toContain('drug-not-recognised')
  })

  it('a yeast has no breakpoints', () => {
    const reading = read(isolateOf('malassezia-pachydermatis', { enrofloxacin: '0.03', miconazole: 'S' }))
    expect(reading.results.map(({ category }) => category)).toEqual(['no_breakpoint', 'no_breakpoint'])
  })

  it('a name of a group asks for the species', () => {
    expect(codes(read(isolateOf('staphylococcus', { clindamycin: '0.25' })))).toContain('named-by-group-only')
  })
})

describe('a stand-in', () => {
  it('never fills the category, and carries no dose of people or of another species', () => {
    const cat = read(isolateOf(mrsp, { cefalexin: '2' }), { host: 'cat' })
    expect(drug(cat, 'cefalexin')).toMatchObject({ category: 'no_breakpoint', fallback: { category: 'S' } })
    expect(drug(cat, 'cefalexin').fallback?.breakpoint).toMatchObject({
      step: 'other-host',
      host: 'dog',
      dose: null,
    })
    const dog = read(isolateOf('pseudomonas-aeruginosa', { ciprofloxacin: '0.25' }))
    expect(drug(dog, 'ciprofloxacin')).toMatchObject({ category: 'no_breakpoint', none: 'no-row' })
    expect(drug(dog, 'ciprofloxacin').fallback?.breakpoint).toMatchObject({ step: 'human', dose: null })
  })

  it('is not looked for where the edition says that the drug tells nothing', () => {
    const reading = read(isolateOf(mrsp, { cefoxitin: '0.5' }), { edition: 'clsi-vet01s-6' })
    expect(drug(reading, 'cefoxitin')).toMatchObject({ category: 'no_breakpoint', fallback: null })
  })

  it('says why the own kind has none', () => {
    expect(drug(read(isolateOf('escherichia-coli', { cefovecin: '1' })), 'cefovecin').none).toBe('urinary-only')
    expect(drug(read(isolateOf(mrsp, { enrofloxacin: '25 mm' })), 'enrofloxacin').none).toBe('other-method')
    const otherDisk = isolateOf(mrsp, { clindamycin: { method: 'DISK', raw: '25', disk: '10 µg' } })
    expect(drug(read(otherDisk), 'clindamycin')).toMatchObject({ category: 'no_breakpoint', none: 'other-disk' })
  })
})

describe('a disk', () => {
  it('that nobody names is taken from the standard, and said', () => {
    const reading = drug(read(isolateOf('pseudomonas-aeruginosa', { gentamicin: '16 mm' })), 'gentamicin')
    expect(reading).toMatchObject({ category: 'S', flags: ['disk-assumed'] })
  })

  it('is not read unnamed when the laboratory works by the other system', () => {
    const reading = read(isolateOf('pseudomonas-aeruginosa', { gentamicin: '16 mm' }), { laboratory: 'eucast-15' })
    expect(drug(reading, 'gentamicin')).toMatchObject({ category: 'no_breakpoint', flags: ['disk-not-stated'] })
    const onlyNamed = read(isolateOf('pseudomonas-aeruginosa', { gentamicin: '16 mm' }), {
      laboratoryConvention: 'EUCAST',
    })
    expect(drug(onlyNamed, 'gentamicin').category).toBe('no_breakpoint')
  })
})

describe('a value that cannot be told', () => {
  it('is never S nor R, names what is possible, and says which panel would tell', () => {
    const reading = read(isolateOf(mrsp, { enrofloxacin: '<=0.5' }))
    expect(drug(reading, 'enrofloxacin')).toMatchObject({ category: 'NI', possible: ['S', 'SDD', 'R'] })
    const finding = reading.findings.find(({ code }) => code === 'panel-does-not-reach')
    expect(finding?.about).toMatchObject({ raw: '<=0.5', ends: 'S <=0.06, SDD 0.12; 0.25, R >=0.5' })
  })

  it.each([
    ['trimethoprim-sulfonamide', '<=10', 'sum-of-both-parts'],
    ['trimethoprim-sulfonamide', '38/2', 'value-not-read'],
    ['enrofloxacin', '1,024', 'comma-doubtful'],
  ])('%s %s: %s', (agent, raw, code) => {
    const reading = read(isolateOf(mrsp, { [agent]: { raw, method: 'MIC' } }))
    expect(drug(reading, agent).category).toBe('NI')
    expect(codes(reading)).toContain(code)
  })

  it('the laboratory’s word does not make it certain', () => {
    const reading = read(isolateOf(mrsp, { enrofloxacin: { raw: '<=0.5', method: 'MIC', category: 'S' } }))
    expect(drug(reading, 'enrofloxacin')).toMatchObject({ category: 'NI', laboratory: 'S' })
  })

  it('a drug tested twice with two answers is relied on in neither', () => {
    const twice = isolateOf(mrsp, {
      clindamycin: '0.25',
      again: { agent: 'clindamycin', raw: '12 mm', method: 'DISK' },
    })
    const reading = read(twice)
    expect(reading.results.map(({ flags }) => flags.includes('same-drug-differs'))).toEqual([true, true])
    expect(codes(reading)).toContain('same-drug-differs')
  })
})

describe('methicillin resistance', () => {
  const panel = { cefalexin: '1', cefovecin: '0.25', imipenem: '0.12', clindamycin: '0.25' }
  const turned = ['cefalexin', 'cefovecin', 'imipenem']

  it.each([
    ['a gene test', isolateOf(mrsp, panel, { tests: [{ test: 'meca', result: 'positive' }] }), 'yes'],
    ['oxacillin well above', isolateOf(mrsp, { ...panel, oxacillin: '4' }), 'yes'],
    ['the disputed value', isolateOf(mrsp, { ...panel, oxacillin: '0.5' }), 'presumed'],
    ['the laboratory’s word on oxacillin', isolateOf(mrsp, { ...panel, oxacillin: 'R' }), 'presumed'],
    [
      'its word beside a number without a method',
      isolateOf(mrsp, { ...panel, oxacillin: { raw: '1', category: 'R' } }),
      'presumed',
    ],
    [
      'the name that the laboratory gives the strain',
      isolateOf(mrsp, panel, { organism: 'S. pseudintermedius (MRSP)' }),
      'presumed',
    ],
  ])('by %s turns every beta-lactam, with its own category kept', (_, isolate, status) => {
    const reading = read(isolate)
    expect(reading.phenotype.methicillinResistant).toBe(status)
    for (const id of turned)
      expect(drug(reading, id)).toMatchObject({ category: 'R', changedBy: 'methicillin-resistance' })
    expect(drug(reading, 'cefalexin').before).toBe('S')
    expect(drug(reading, 'clindamycin').category).toBe('S')
    expect(drug(reading, 'cefalexin').because?.sources).toContain('cain-2013')
  })

  it.each([
    ['an oxacillin panel that ends too early', isolateOf(mrsp, { ...panel, oxacillin: '<=1' }), 'methicillin-possible'],
    ['cefovecin R and no oxacillin', isolateOf(mrsp, { ...panel, cefovecin: '8' }), 'methicillin-suspected'],
    [
      'cefoxitin called R, which says little here',
      isolateOf(mrsp, { ...panel, cefoxitin: 'R' }),
      'methicillin-possible',
    ],
  ])('stays possible with %s: no beta-lactam is relied on', (_, isolate, code) => {
    const reading = read(isolate)
    expect(reading.phenotype.methicillinResistant).toBe('possible')
    expect(codes(reading)).toContain(code)
    expect(drug(reading, 'cefalexin').flags).toContain('methicillin-possible')
  })

  it('not tested is said beside every beta-lactam that looks susceptible', () => {
    const reading = read(isolateOf(mrsp, panel))
    expect(reading.phenotype.methicillinResistant).toBe('not-tested')
    expect(codes(reading)).toContain('methicillin-not-tested')
  })

  it('a negative gene test against a resistant number leaves it presumed', () => {
    const tests = [{ test: 'meca', result: 'negative' }] as const
    const reading = read(isolateOf(mrsp, { ...panel, oxacillin: '4' }, { tests: [...tests] }))
    expect(reading.phenotype.methicillinResistant).toBe('presumed')
    expect(codes(reading)).toContain('methicillin-tests-disagree')
  })

  it('of a zone is told by the limits of the edition’s own system', () => {
    const isolate = isolateOf(mrsp, { oxacillin: { method: 'DISK', raw: '18', disk: '1 µg' } })
    expect(read(isolate).phenotype.methicillinResistant).toBe('no')
    expect(read(isolate, { edition: 'eucast-15' }).phenotype.methicillinResistant).toBe('yes')
  })

  it('penicillin R without it is a beta-lactamase of its own', () => {
    const reading = read(
      isolateOf(mrsp, { oxacillin: '0.12', benzylpenicillin: '2', ampicillin: '0.25', cefalexin: '1' }),
    )
    expect(drug(reading, 'ampicillin')).toMatchObject({ category: 'R', before: 'S', changedBy: 'beta-lactamase' })
    expect(drug(reading, 'cefalexin').category).toBe('S')
  })
})

describe('rules across drugs', () => {
  it('ciprofloxacin R takes the other fluoroquinolones of an Enterobacterales with it', () => {
    const reading = read(isolateOf('escherichia-coli', { ciprofloxacin: '4', enrofloxacin: '0.06' }))
    expect(drug(reading, 'enrofloxacin')).toMatchObject({ category: 'R', before: 'S', changedBy: 'inferred' })
  })

  it('an untested D-test makes clindamycin R in Staphylococcus aureus, a negative one leaves it', () => {
    const isolate = isolateOf('staphylococcus-aureus', { erythromycin: '16', clindamycin: '0.25', oxacillin: '0.5' })
    expect(drug(read(isolate), 'clindamycin')).toMatchObject({ category: 'R', before: 'S', changedBy: 'inducible' })
    const negative = { ...isolate, tests: [{ test: 'd-test', result: 'negative' }] } as StoredIsolate
    expect(drug(read(negative), 'clindamycin').category).toBe('S')
  })

  it('an ESBL named by the laboratory takes three cephalosporins off', () => {
    const reading = read(
      isolateOf(
        'escherichia-coli',
        { cefalexin: '2', cefpodoxime: '1', gentamicin: '1' },
        { organism: 'E. coli ESBL' },
      ),
    )
    expect(reading.phenotype.esbl).toBe('confirmed')
    expect(drug(reading, 'cefalexin')).toMatchObject({ category: 'R', changedBy: 'esbl' })
    expect(drug(reading, 'gentamicin').changedBy).toBeNull()
  })

  it('a carbapenem above its human S value is said aloud', () => {
    const reading = read(isolateOf('klebsiella-pneumoniae', { meropenem: '8' }))
    expect(reading.phenotype.carbapenemase).toBe('suspected')
    expect(codes(reading)).toContain('carbapenemase-suspected')
    expect(read(isolateOf('proteus-mirabilis', { imipenem: '4' })).phenotype.carbapenemase).toBe('no')
  })

  it('what an organism is always resistant to reads R, without any stand-in beside it', () => {
    const reading = read(isolateOf('pseudomonas-aeruginosa', { doxycycline: '0.12' }))
    expect(drug(reading, 'doxycycline')).toMatchObject({ category: 'R', changedBy: 'intrinsic', fallback: null })
  })
})
