import { describe, expect, it } from 'vitest'
import { laboratoryTerms } from '#content/exchange/laboratory-terms.ts'
import type { LaboratoryReport } from '../report.ts'
import { readOru } from './read-oru.ts'

/** A segment by the numbers of its fields. */
function segment(name: string, fields: Readonly<Record<number, string>>): string {
  const last = Math.max(...Object.keys(fields).map(Number))
  return [name, ...Array.from({ length: last }, (_, place) => fields[place + 1] ?? '')].join('|')
}

const bacteria = '634-6^Bacteria identified^LN'
const order = { 2: 'B-1^QE', 3: 'NL-26-00417^LIS', 4: bacteria, 7: '202603011420', 22: '202603041000', 25: 'F' }
const child = { ...order, 4: '29576-6^Susceptibility^LN', 26: '634-6&Bacteria identified&LN^1^Staphylococcus pseudint' }

/** A culture of an invented dog: two isolates, the drugs of the first under it. Lines can be changed by their name. */
const lines = {
  MSH: 'MSH|^~\\&|LIS|Northfold Laboratory|CLINIC|QE|202603041015+0000||ORU^R01^ORU_R01|M-1|P|2.5.1',
  PID: segment('PID', {
    3: '985112001234567^^^^CHIP~77^^^^MR',
    5: 'Okafor^Bramble',
    7: '20190504',
    35: '448771007^Canis lupus familiaris^SCT',
  }),
  ORC: 'ORC|RE|B-1|NL-26-00417',
  OBR: segment('OBR', order),
  OBX1: `OBX|1|CWE|${bacteria}|1|427316000^Staphylococcus pseudintermedius^SCT||||||F`,
  OBX2: 'OBX|2|ST|Q^Amount of growth^L|1|heavy||||||F',
  OBX3: `OBX|3|CWE|${bacteria}|2|52499004^Pseudomonas aeruginosa^SCT||||||F`,
  OBX4: 'OBX|4|ST|D^D-test^L|1|POS||||||F',
  NTE: 'NTE|1||Interpreted by CLSI VET01S ed7. Growth \\T\\ smear agree.',
  SPM: segment('SPM', { 2: 'B-1', 4: '309204006^Bulla^SCT', 8: 'Bulla on entry', 9: 'L^Left', 17: '202603011420' }),
  OBR2: segment('OBR', { ...child, 29: 'B-1^NL-26-00417' }),
  OBX5: 'OBX|1|SN|18908-4^Clindamycin^LN||<=^0.25|mg/L||S|||F',
  OBX6: 'OBX|2|SN|18862-3^Amoxicillin-clavulanate^LN||>=^4^/^2|ug/mL||R|||F',
  OBX7: 'OBX|3|NM|1^Enrofloxacin^L||18|mm||I|||F||||||^disk 5 µg',
  OBX8: 'OBX|4|ST|2^Marbofloxacin^L||≤0,5 mg/L|||S|||F',
  OBX9: 'OBX|5|CWE|3^Cefalexin^L||R^Resistant||||||F',
}
type Lines = typeof lines

function message(change: Partial<Lines> = {}, end = '\r'): string {
  return `${Object.values({ ...lines, ...change }).join(end)}${end}`
}
function reports(text: string): readonly LaboratoryReport[] {
  const read = readOru(text, laboratoryTerms)
  if (read.kind === 'refusal') throw new Error(JSON.stringify(read.refusal))
  return read.answer.flatMap(({ read: one }) => {
    if (one.kind === 'refusal') throw new Error(JSON.stringify(one.refusal))
    return one.answer
  })
}
function report(change: Partial<Lines> = {}): LaboratoryReport {
  const [only, ...others] = reports(message(change))
  if (!only || others.length > 0) throw new Error('not one report')
  return only
}
function fault(change: Partial<Lines>) {
  const read = readOru(message(change), laboratoryTerms)
  if (read.kind === 'refusal') return read.refusal
  const [first] = read.answer
  return first?.read.kind === 'refusal' ? first.read.refusal : null
}

describe('a culture in a result message', () => {
  it('is read whole: animal, tube, ear, isolates, and each drug under its own isolate', () => {
    const { isolates, doubts, ...rest } = report()
    expect(rest).toEqual({
      laboratory: 'Northfold Laboratory',
      accession: 'NL-26-00417',
      label: 'B-1',
      animal: {
        name: 'Bramble',
        owner: 'Okafor',
        chip: '985112001234567',
        species: 'dog',
        speciesPrinted: 'Canis lupus familiaris',
        born: '2019-05-04',
      },
      collected: '2026-03-01T14:20',
      reported: '2026-03-04T10:00',
      site: 'Bulla, Bulla on entry',
      side: 'LEFT',
      status: 'final',
      growth: 'growth',
      standard: 'CLSI VET01S ed7',
      text: ['Interpreted by CLSI VET01S ed7. Growth & smear agree.'],
    })
    expect(doubts).toEqual([])
    expect(isolates.map(({ key, organism, code, amount, tests }) => [key, organism, code, amount, tests])).toEqual([
      ['1', 'Staphylococcus pseudintermedius', '427316000', 'heavy', [{ test: 'd-test', result: 'positive' }]],
      ['2', 'Pseudomonas aeruginosa', '52499004', null, []],
    ])
    expect(isolates[1]?.drugs).toEqual([])
    expect(isolates[0]?.drugs.map((one) => [one.drug, one.value, one.unit, one.category, one.disk])).toEqual([
      ['Clindamycin', '<=0.25', 'mg/L', 'S', null],
      ['Amoxicillin-clavulanate', '>=4/2', 'mg/L', 'R', null],
      ['Enrofloxacin', '18', 'mm', 'I', '5 µg'],
      ['Marbofloxacin', '<=0.5', 'mg/L', 'S', null],
      ['Cefalexin', null, null, 'R', null],
    ])
  })

  it('is the same with other delimiters, other line ends and a frame around it', () => {
    const plain = report()
    const turned = message().replaceAll(
      /[|^~\\&]/g,
      (one) => ({ '|': '*', '^': ':', '~': '?', '\\': '!', '&': '+' })[one] ?? one,
    )
    const [read] = reports(turned)
    // The escape for the sub-component separator is whatever this message uses for it.
    expect(read).toEqual({ ...plain, text: plain.text.map((line) => line.replace('&', '+')) })
    expect(reports(message({}, '\n'))).toEqual([plain])
    expect(reports(`\u000b${message({}, '\r\n')}\u001c\r`)).toEqual([plain])
  })

  it('may put the drugs before their culture, and name its parent by either number', () => {
    const { OBR2, OBX5, ...rest } = lines
    const { MSH, PID, ...after } = rest
    const early = [
      MSH,
      PID,
      OBR2,
      OBX5,
      ...Object.values(after).filter((line) => !/^OBX\|[2-5]\|.*(?:Amoxi|Enro|Marbo|Cefa)/.test(line)),
    ]
    const [read] = reports(early.join('\r'))
    expect(read?.isolates[0]?.drugs.map(({ drug }) => drug)).toEqual(['Clindamycin'])
    expect(report({ OBR2: segment('OBR', { ...child, 29: 'B-1' }) })).toEqual(report())
  })

  it('may carry the drugs in the order of the culture, tied by their number', () => {
    const { ORC: _, OBR2: __, ...one } = lines
    const inside = { ...one, OBX5: one.OBX5.replace('LN||', 'LN|1|'), OBX6: one.OBX6.replace('LN||', 'LN|2.1|') }
    const text = Object.values({ ...inside, OBX7: '', OBX8: '', OBX9: '' })
      .filter((line) => line !== '')
      .join('\r')
    const [read] = reports(text)
    expect(read?.isolates.map(({ drugs }) => drugs.map(({ drug }) => drug))).toEqual([
      ['Clindamycin'],
      ['Amoxicillin-clavulanate'],
    ])
  })

  it('is preliminary while a line is, and corrected when one was corrected; both together are asked about', () => {
    expect(report({ OBX5: lines.OBX5.replace('|||F', '|||P') }).status).toBe('preliminary')
    expect(report({ OBX5: lines.OBX5.replace('|||F', '|||C') }).status).toBe('corrected')
    const both = report({ OBX5: lines.OBX5.replace('|||F', '|||C'), OBX6: lines.OBX6.replace('|||F', '|||P') })
    expect([both.status, both.doubts.map(({ code }) => code)]).toEqual([null, ['some-corrected-some-preliminary']])
  })

  it('leaves out a line that was taken back, and lets a corrected line stand for the one it corrects', () => {
    const gone = report({ OBX6: lines.OBX6.replace('|||F', '|||D') })
    expect(gone.isolates[0]?.drugs.map(({ drug }) => drug)).not.toContain('Amoxicillin-clavulanate')
    expect(gone.status).toBe('corrected')
    const again = report({ OBX6: 'OBX|9|SN|18908-4^Clindamycin^LN||>^4|mg/L||R|||C' })
    expect(again.isolates[0]?.drugs[0]).toMatchObject({ drug: 'Clindamycin', value: '>4', category: 'R' })
  })

  it('of no growth says so, and keeps the words', () => {
    const none = reports(
      [
        lines.MSH,
        lines.PID,
        lines.OBR,
        'OBX|1|ST|634-6^Bacteria identified^LN|1|No growth after 48 hours.||||||F',
        lines.SPM,
      ].join('\r'),
    )
    expect(none).toMatchObject([
      { growth: 'none', isolates: [], text: ['Bacteria identified: No growth after 48 hours.'] },
    ])
  })

  it('without a side, a unit or a state asks for it and takes none for granted', () => {
    const bare = report({
      SPM: 'SPM|1|B-1||309204006^Bulla^SCT',
      OBX5: lines.OBX5.replace('mg/L', ''),
      OBX6: lines.OBX6.replace('ug/mL', 'IU'),
    })
    expect(bare.side).toBeNull()
    expect(bare.doubts.map(({ code, place }) => [code, place.field])).toEqual([
      ['side-not-said', 'OBR-25'],
      ['unit-not-said', 'OBX-6'],
      ['unit-unknown', 'OBX-6'],
    ])
    expect(report({ SPM: lines.SPM.replace('L^Left', 'B^Both ears') }).side).toBe('BOTH')
    expect(report({ SPM: lines.SPM.replace('Bulla on entry', 'right ear') }).side).toBe('BOTH')
  })

  it('reads the ear of an older message from its order', () => {
    const older = {
      MSH: lines.MSH.replace('2.5.1', '2.3'),
      SPM: 'NTE|2||x',
      OBR: segment('OBR', { ...order, 15: 'SWB^^^Middle ear^RT' }),
    }
    expect(report(older)).toMatchObject({ side: 'RIGHT', site: 'SWB, Middle ear', status: 'final' })
  })

  it('keeps several animals and several reports of one file apart', () => {
    const other = message({
      PID: lines.PID.replace('985112001234567', '985112009999999').replace('Bramble', 'Fern'),
      ORC: 'NTE|1||Another animal.',
      OBR: lines.OBR.replaceAll('NL-26-00417', 'NL-26-00418'),
      OBR2: lines.OBR2.replaceAll('NL-26-00417', 'NL-26-00418'),
    })
    const together = message() + other.slice(other.indexOf('\r') + 1)
    for (const read of [reports(message() + other), reports(together)]) {
      expect(
        read.map(({ animal, accession, isolates }) => [animal.name, accession, isolates[0]?.drugs.length]),
      ).toEqual([
        ['Bramble', 'NL-26-00417', 5],
        ['Fern', 'NL-26-00418', 5],
      ])
    }
  })
})

describe('a message that is wrong', () => {
  it('says where and why, and gives nothing', () => {
    const found = (change: Partial<Lines>) => {
      const wrong = fault(change)
      return wrong && [wrong.code, wrong.place.line, wrong.place.field]
    }
    // SX086 of the examples: the category stands one field too far to the right.
    expect(found({ OBX5: 'OBX|7|SN|18908-4^Clindamycin^LN||<=^0.25|mg/L|||S|||F' })).toEqual([
      'category-in-wrong-field',
      12,
      'OBX-9',
    ])
    expect(found({ MSH: lines.MSH.replace('2.5.1', '2.8') })).toEqual(['version-unknown', 1, 'MSH-12'])
    expect(found({ MSH: lines.MSH.replace('ORU^R01', 'ORM^O01') })).toEqual(['not-a-result-message', 1, 'MSH-9'])
    expect(found({ OBX5: lines.OBX5.replace('<=^0.25', '0.25^-^1') })).toEqual(['number-unreadable', 12, 'OBX-5'])
    expect(found({ OBX7: lines.OBX7.replace('|18|', '|eighteen|') })).toEqual(['number-unreadable', 14, 'OBX-5'])
    expect(found({ OBX9: lines.OBX9.replace('||||||F', '|||S|||F') })).toEqual(['category-twice', 16, 'OBX-8'])
    expect(found({ OBX5: lines.OBX5.replace('|||F', '|||W') })).toEqual(['wrong-patient', 12, 'OBX-11'])
    expect(found({ OBX5: lines.OBX5.replace('|||F', '|||constructor') })).toEqual(['status-unknown', 12, 'OBX-11'])
    expect(found({ OBR2: lines.OBR2.replace('^1^', '^7^') })).toEqual(['parent-missing', 11, 'OBR-29'])
    expect(found({ OBR2: lines.OBR2.replace('pseudint', 'aureus') })).toEqual(['parent-disagrees', 11, 'OBR-26'])
    expect(found({ OBX6: 'OBX|9|SN|18908-4^Clindamycin^LN||>^4|mg/L||R|||F' })).toEqual(['drug-twice', 13, 'OBX-3'])
    const unnamed = segment('OBR', { ...child, 26: '634-6&Bacteria identified&LN^1' })
    expect(found({ OBX3: lines.OBX3.replace('LN|2|', 'LN|1|'), OBR2: unnamed })).toEqual(['isolate-twice', 7, 'OBX-4'])
    expect(found({ OBR: lines.OBR.replace('202603041000', '20261301') })).toEqual(['date-unreadable', 4, 'OBR-22'])
    expect(found({ ORC: 'a line that was broken in two' })).toEqual(['not-a-segment', 3, null])
    expect(found({ OBR: 'ORC|RE' })).toEqual(['observation-without-order', 5, null])
    expect(found({ OBX9: 'OBX|5|CWE|3^Cefalexin^L||R' })).toEqual(['status-unknown', 16, 'OBX-11'])
    expect(found({ OBX9: lines.OBX9.replace('OBX', 'OBY') })).toEqual(['not-a-segment', 16, null])
    expect(found({ MSH: 'PID|1' })).toEqual(['begins-with-no-header', 1, null])
    expect(found({ MSH: 'MSH|^^^^|' })).toEqual(['delimiters-unreadable', 1, 'MSH-2'])
  })

  it('leaves the other messages of its file alone; a batch that lost one is refused whole', () => {
    const broken = message({ OBX5: 'OBX|7|SN|18908-4^Clindamycin^LN||<=^0.25|mg/L|||S|||F' })
    const read = readOru(broken + message(), laboratoryTerms)
    expect(read.kind === 'answer' && read.answer.map(({ read: one }) => one.kind)).toEqual(['refusal', 'answer'])
    const batch = readOru(`BHS|^~\\&\r${message()}BTS|2\r`, laboratoryTerms)
    expect(batch).toMatchObject({ kind: 'refusal', refusal: { code: 'batch-count', found: '2 / 1' } })
    expect(reports(`FHS|^~\\&\rBHS|^~\\&\r${message()}BTS|1\rFTS|1\r`)).toHaveLength(1)
  })

  it('with drugs of which nobody says the isolate is refused when there are two', () => {
    const OBR2 = segment('OBR', { ...child, 26: '', 29: 'B-1^NL-26-00417' })
    expect(fault({ OBR2 })?.code).toBe('isolate-unclear')
    expect(report({ OBR2, OBX3: 'NTE|1||One isolate.' }).isolates[0]?.drugs).toHaveLength(5)
  })
})
