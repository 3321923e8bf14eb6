import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { sayEditionFault } from '#documents/sources/say-edition-fault.ts'
import { readEditionFile } from './edition-file.ts'

const heading =
  'standard,edition,year,convention,audience,host,organism,drug,sites,route,method,disk,susceptible,between,resistant,dose,kind,remark'
const about = 'Invented standard,ed1,2026,CLSI,animals'
const cefalexin = `${about},dog,Staphylococcus spp.,cephalexin,soft-tissue,,MIC,,<=16,32,>=64,,,`
const file = (...rows: readonly string[]) => [heading, ...rows].join('\r\n')
const read = (text: string) => readEditionFile(text, susceptibility)
const faultsOf = (...rows: readonly string[]) => {
  const outcome = read(file(...rows))
  return outcome.kind === 'refusal' ? outcome.refusal : []
}

describe('the file of an edition', () => {
  it('is read whole, with the names as people write them', () => {
    const outcome = read(
      file(
        cefalexin,
        `${about},dog,E. coli,enrofloxacin,soft-tissue; urinary,oral,MIC,,<=0.06,SDD 0.12 (10 mg/kg); 0.25 (20 mg/kg),>=0.5,5 mg/kg,,`,
        `${about},cat,Pseudomonas aeruginosa,gentamicin,any,,disk,10 µg,>=16,13-15,<=12,,,`,
        `${about},dog,Staphylococcus pseudintermedius,cefoxitin,any,,MIC,,,,,,none,never for methicillin`,
      ),
    )
    expect(outcome).toMatchObject({
      kind: 'answer',
      answer: {
        standard: 'Invented standard',
        year: 2026,
        rows: [
          { kind: 'clinical', organisms: 'staphylococcus', agent: 'cefalexin', sites: ['soft-tissue'], disk: null },
          { organisms: 'escherichia-coli', sites: ['soft-tissue', 'urinary'], route: 'oral', dose: '5 mg/kg' },
          { host: 'cat', method: 'DISK', disk: '10 µg' },
          { kind: 'none', remark: 'never for methicillin', susceptible: '' },
        ],
      },
    })
  })

  it('may have other delimiters, another order, and no column that can be left out', () => {
    const columns =
      'drug;host;organism;sites;method;disk;susceptible;between;resistant;year;standard;edition;convention;audience'
    const row = 'cefalexin;dog;Staphylococcus spp.;any;MIC;;<=16;32;>=64;2026;Invented;ed1;CLSI;animals'
    expect(read(`${columns}\n${row}\n`)).toMatchObject({ answer: { rows: [{ agent: 'cefalexin', route: null }] } })
  })

  it.each([
    [
      'drug',
      cefalexin.replace('cephalexin', 'cefalexine'),
      'drug-unknown',
      /^line 2, drug: .*cefalexine.*may mean: cefalexin/,
    ],
    ['drug', cefalexin.replace('cephalexin', 'CN'), 'drug-unknown', /may mean: cefalexin, gentamicin/],
    ['organism', cefalexin.replace('Staphylococcus spp.', 'Staphylokokken'), 'organism-unknown', /^line 2, organism: /],
    ['year', cefalexin.replace('2026', '26'), 'not-a-year', /no year like 2024/],
    ['convention', cefalexin.replace('CLSI', 'VET'), 'not-one-of', /“VET” is none of: CLSI, EUCAST/],
    ['host', cefalexin.replace(',dog,', ',human,'), 'host-of-others', /human/],
    ['host', cefalexin.replace(',dog,', ',horse,'), 'not-one-of', /dog, cat, human/],
    ['sites', cefalexin.replace('soft-tissue', 'ear'), 'not-one-of', /soft-tissue, urinary/],
    ['disk', cefalexin.replace(',MIC,,', ',MIC,30 µg,'), 'disk-of-dilution', /A dilution has no disk/],
    ['disk', cefalexin.replace(',MIC,,<=16,32,>=64', ',DISK,,>=16,13-15,<=12'), 'disk-missing', /load of its disk/],
    ['resistant', cefalexin.replace('>=64', '>32'), 'end-not-understood', /“>32” is not understood/],
    ['susceptible', cefalexin.replace('<=16', '<=0,5').replace('<=0,5', '"<=0,5"'), 'end-not-understood', /<=0,5/],
    ['susceptible', cefalexin.replace('<=16', '<=15'), 'off-the-ladder', /doubling ladder/],
    ['susceptible', cefalexin.replace('32,>=64', ',>=64'), 'ends-gap', /step without a name/],
    ['susceptible', cefalexin.replace('<=16,32,>=64', '<=64,,>=16'), 'ends-turned', /one way/],
    ['between', cefalexin.replace(',32,', ',SDD 32,'), 'dose-missing', /dose of each step/],
    ['susceptible', cefalexin.replace('<=16,32,>=64', ',,'), 'no-ends', /No end/],
    ['kind', cefalexin.replace(',,,', ',,human,'), 'not-one-of', /clinical, human-derived, none/],
  ] as const)('names the field %s of %s', (column, row, code, said) => {
    const [fault, another] = faultsOf(row)
    expect(fault).toMatchObject({ line: 2, column, code })
    expect(another).toBeUndefined()
    expect(fault && sayEditionFault(fault)).toMatch(said)
  })

  it('tells every fault at once, and takes nothing', () => {
    const faults = faultsOf(
      cefalexin.replace('cephalexin', 'what'),
      cefalexin.replace('ed1', 'ed2'),
      cefalexin.replace('>=64', '64'),
    )
    expect(faults.map(({ line, column }) => `${line} ${column}`)).toEqual(['2 drug', '3 edition', '4 resistant'])
  })

  it('refuses two rows of the same thing, also under another name', () => {
    expect(faultsOf(cefalexin, cefalexin.replace('cephalexin', 'LEX').replace('<=16,32', '<=32,'))).toEqual([
      { code: 'row-twice', line: 3, column: null, found: '2' },
    ])
  })

  it('refuses doses of people', () => {
    const people = cefalexin.replace('animals,dog', 'people,human').replace('>=64,,', '>=64,1 g,')
    expect(faultsOf(people)).toMatchObject([{ code: 'dose-of-people', column: 'dose' }])
  })

  it('refuses what is no table, has a strange or missing column, or no row', () => {
    const codes = (text: string) => {
      const outcome = read(text)
      return outcome.kind === 'refusal'
        ? outcome.refusal.map(({ code, column, found }) => `${code} ${column ?? found}`)
        : []
    }
    expect(codes('')).toEqual([expect.stringMatching(/^not-a-table/)])
    expect(codes(heading)).toEqual(['no-rows '])
    expect(codes(`${heading},breakpoint\n${cefalexin},`)).toEqual(['column-unknown breakpoint'])
    expect(codes(`${heading.replace(',disk', '')}\n${cefalexin.replace(',MIC,,', ',MIC,')}`)).toEqual([
      'column-missing disk',
    ])
    expect(codes(`${heading}\n${cefalexin},one more`)).toEqual([expect.stringMatching(/^not-a-table/)])
  })
})
