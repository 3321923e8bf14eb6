import { describe, expect, it } from 'vitest'
import { laboratoryTerms as terms } from '#content/exchange/laboratory-terms.ts'
import { guessMapping } from './guess-mapping.ts'
import type { TableMapping } from './mapping.ts'
import { readTable } from './read-table.ts'

const drugs = ['marbofloxacin', 'amc', 'gentamicin']
const guess = (text: string) => guessMapping(text, terms, (heading) => drugs.includes(heading.toLowerCase()))
const read = (text: string, change: Partial<TableMapping> = {}) => readTable(text, { ...guess(text), ...change }, terms)
const reports = (text: string, change: Partial<TableMapping> = {}) => {
  const found = read(text, change)
  if (found.kind === 'refusal') throw new Error(JSON.stringify(found.refusal))
  return found.answer
}
const fault = (text: string, change: Partial<TableMapping> = {}) => {
  const found = read(text, change)
  return found.kind === 'refusal' ? [found.refusal.code, found.refusal.place.line, found.refusal.place.field] : null
}

const long = `report_id;animal;owner;species;sample_date;side;status;organism;growth;drug;operator;value;unit;category;method
N-1;Bramble;Okafor;dog;2026-03-01;left;final;S. pseudintermedius;heavy;Marbofloxacin;≤;0,5;µg/ml;S;MIC
N-1;Bramble;Okafor;dog;2026-03-01;left;final;S. pseudintermedius;heavy;AMC;>;4;ug/ml;R;MIC
N-1;Bramble;Okafor;dog;2026-03-01;left;final;S. pseudintermedius;heavy;Gentamicin;;18;;S;disk diffusion
N-1;Bramble;Okafor;dog;2026-03-01;left;final;S. pseudintermedius;heavy;D-test;;POS;;;
N-2;Fern;Bell;cat;2026-03-02;R;prelim;No growth;;;;;;;
`

describe('a long table', () => {
  it('is a report for each number, with signs of their own column, decimal commas and zones', () => {
    const [first, second, ...others] = reports(long)
    expect(others).toEqual([])
    expect(first).toMatchObject({ accession: 'N-1', side: 'LEFT', status: 'final', growth: 'growth', doubts: [] })
    expect(first?.animal).toMatchObject({ name: 'Bramble', owner: 'Okafor', species: 'dog' })
    expect(first?.isolates).toMatchObject([
      { key: '1', amount: 'heavy', tests: [{ test: 'd-test', result: 'positive' }] },
    ])
    expect(first?.isolates[0]?.drugs.map((one) => [one.drug, one.value, one.unit, one.category])).toEqual([
      ['Marbofloxacin', '<=0.5', 'mg/L', 'S'],
      ['AMC', '>4', 'mg/L', 'R'],
      ['Gentamicin', '18', 'mm', 'S'],
    ])
    expect(second).toMatchObject({ accession: 'N-2', side: 'RIGHT', status: 'preliminary', growth: 'none' })
  })

  it('asks what a bare number is; a laboratory that said so once is not asked again', () => {
    const bare = 'report_id;status;side;organism;drug;value\nN-1;final;L;E. coli;Marbofloxacin;0.5\n'
    expect(reports(bare)[0]?.doubts.map(({ code }) => code)).toEqual(['unit-not-said'])
    expect(reports(bare, { unit: 'mg/L' })[0]?.isolates[0]?.drugs[0]).toMatchObject({ value: '0.5', unit: 'mg/L' })
    const thousand = bare.replace(';0.5', ';1,000')
    expect(reports(thousand)[0]?.doubts.map(({ code }) => code)).toEqual(['value-unclear'])
    expect(reports(thousand, { comma: 'decimal', unit: 'mg/L' })[0]?.isolates[0]?.drugs[0]?.value).toBe('1')
  })

  it('refuses a date that can be two days until somebody said which number is the day', () => {
    const dated = long.replaceAll('2026-03-01', '03/04/2026').replaceAll('2026-03-02', '25/03/2026')
    expect(fault(dated)).toEqual(['date-two-readings', 2, 'sample_date'])
    expect(reports(dated, { dates: 'day-first' })[0]?.collected).toBe('2026-04-03')
    expect(reports(dated, { dates: 'month-first' }).map(({ collected }) => collected)).toEqual([
      '2026-03-04',
      '2026-03-25',
    ])
  })
})

describe('a wide table', () => {
  const wide = `accession,animal,owner,side,status,organism,Marbofloxacin MIC,Marbofloxacin SIR,AMC_mm,Gentamicin
N-1,Bramble,"Okafor, R.",LEFT,final,P. aeruginosa,>=4,R,12,<=0.5 mg/L
N-1,Bramble,"Okafor, R.",LEFT,final,P. mirabilis,n.t.,,,"0.5"
`
  it('has a column for each drug and, where it likes, one for its category', () => {
    const [only] = reports(wide)
    expect(only?.isolates.map((one) => one.drugs.map((row) => [row.drug, row.value, row.unit, row.category]))).toEqual([
      [
        ['Marbofloxacin', '>=4', 'mg/L', 'R'],
        ['AMC', '12', 'mm', null],
        ['Gentamicin', '<=0.5', 'mg/L', null],
      ],
      [['Gentamicin', '0.5', null, null]],
    ])
    expect(only?.animal.owner).toBe('Okafor, R.')
    expect(only?.doubts.map(({ code, about }) => [code, about.drug])).toEqual([['unit-not-said', 'Gentamicin']])
  })
})

describe('a table that is wrong', () => {
  it('says the line and the column, and gives nothing', () => {
    expect(fault(long.replace('N-1;Bramble;Okafor;dog', 'N-1;Bramble;Bell;dog'))).toEqual([
      'animals-differ',
      3,
      'owner',
    ])
    expect(fault(long.replace('No growth;;;;;;;', 'No growth;;AMC;;4;mg/L;;'))).toEqual([
      'drug-without-isolate',
      6,
      null,
    ])
    expect(fault(long.replace(';0,5;µg/ml;S;MIC', ';0,5;mm;S;MIC'))).toEqual(['unit-disagrees', 2, 'value'])
    expect(fault(long.replace('AMC;>;4', 'Marbofloxacin;>;4'))).toEqual(['drug-twice', 3, 'value'])
    const mapping = guess(long)
    expect(readTable(long.replace('owner', 'holder'), mapping, terms)).toMatchObject({
      refusal: { code: 'column-missing', found: 'owner' },
    })
    const more = long
      .split('\n')
      .map((line) => (line === '' ? '' : `${line};x`))
      .join('\n')
    expect(readTable(more, mapping, terms)).toMatchObject({ refusal: { code: 'column-new', found: 'x' } })
    expect(readTable(long.replace(';heavy;AMC', ';AMC'), mapping, terms)).toMatchObject({
      refusal: { code: 'ragged-row' },
    })
    expect(readTable(`${long}N-3;"Moss`, mapping, terms)).toMatchObject({
      refusal: { code: 'quote-open', place: { line: 7 } },
    })
  })

  it('of commas that are decimals and delimiters at once is refused, not cut at the wrong place', () => {
    const commas = 'organism,drug,value\nE. coli,Marbofloxacin,0,5\n'
    expect(() => guess(commas)).toThrow('no-columns')
  })
})
