import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { laboratoryTerms } from '#content/exchange/laboratory-terms.ts'
import { readOru } from './hl7/read-oru.ts'
import { writeOru } from './hl7/write-oru.ts'
import { readTable } from './read-table.ts'
import type { LaboratoryReport, ReportedDrug, ReportedIsolate } from './report.ts'
import { ourTable, writeTable } from './write-table.ts'

const nowhere = { line: 0, segment: null, field: null }
/** Words with everything in them that either form uses for itself; never one that means something. */
const word = fc
  .array(fc.constantFrom('A', 'b', 'É', '7', '|', '^', '~', '\\', '&', '"', ',', ';', "'", '=', ' ', '<'), {
    minLength: 1,
    maxLength: 12,
  })
  .map((letters) => `x${letters.join('').replaceAll(/\s+/g, ' ').trim()}`)
const value = fc.record({
  sign: fc.constantFrom('', '<=', '<', '>', '>='),
  number: fc.constantFrom('0.015', '0.12', '0.5', '1', '4', '64'),
  partner: fc.constantFrom('', '', '/2', '/38'),
})
const drug: fc.Arbitrary<Omit<ReportedDrug, 'drug'>> = fc
  .record({ value, unit: fc.constantFrom('mg/L', 'mm'), category: fc.option(fc.constantFrom('S', 'I', 'R', 'SDD')) })
  .map(({ value: { sign, number, partner }, unit, category }) => {
    return { code: null, value: `${sign}${number}${partner}`, unit, disk: null, category, place: nowhere } as const
  })
const isolate = fc.record({
  organism: word,
  amount: fc.option(word),
  drugs: fc.uniqueArray(fc.tuple(word, drug), { selector: ([name]) => name, maxLength: 5 }),
  tests: fc.constantFrom<ReportedIsolate['tests'][]>([], [{ test: 'd-test', result: 'positive' }]),
})
const animal = fc.record({
  name: word,
  owner: fc.option(word),
  chip: fc.option(fc.constant('985112001234567')),
  species: fc.constantFrom('dog', 'cat'),
  born: fc.option(fc.constant('2019-05-04')),
})

const report: fc.Arbitrary<LaboratoryReport> = fc
  .record({
    laboratory: word,
    accession: word,
    label: fc.option(word),
    animal,
    collected: fc.constantFrom(null, '2026-03-01', '2026-03-01T14:20', '2026-03-01T14:20+01:00'),
    reported: fc.constantFrom(null, '2026-03-04T10:15'),
    site: fc.option(word),
    side: fc.constantFrom('LEFT', 'RIGHT'),
    status: fc.constantFrom('preliminary', 'final', 'corrected'),
    isolates: fc.uniqueArray(isolate, { selector: ({ organism }) => organism, maxLength: 3 }),
    text: fc.uniqueArray(word, { maxLength: 3 }),
  })
  .map(({ animal: one, isolates, ...rest }) => ({
    ...rest,
    animal: { ...one, speciesPrinted: one.species },
    standard: null,
    growth: isolates.length > 0 ? 'growth' : 'none',
    isolates: isolates.map(({ drugs, ...more }, place) => {
      return {
        ...more,
        key: String(place + 1),
        code: null,
        drugs: drugs.map(([name, made]) => ({ ...made, drug: name })),
      }
    }),
    doubts: [],
  }))

/** Where a drug stood is of the paper, and that nothing grew is said in words beside. */
function plain(one: LaboratoryReport): LaboratoryReport {
  const isolates = one.isolates.map((made) => ({
    ...made,
    drugs: made.drugs.map((row) => ({ ...row, place: nowhere })),
  }))
  return { ...one, isolates, text: one.text.filter((line) => !line.endsWith('No growth')) }
}

describe('a report that was written and read again', () => {
  it('is the same as a table', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(report, { selector: ({ accession }) => accession, minLength: 1, maxLength: 3 }),
        (all) => {
          const read = readTable(writeTable(all), ourTable, laboratoryTerms)
          expect(read.kind === 'answer' ? read.answer.map(plain) : read.refusal).toEqual(all.map(plain))
        },
      ),
    )
  })

  it('is the same as messages', () => {
    fc.assert(
      fc.property(fc.array(report, { minLength: 1, maxLength: 3 }), (all) => {
        const read = readOru(all.map(writeOru).join(''), laboratoryTerms)
        const reports =
          read.kind === 'refusal'
            ? []
            : read.answer.map(({ read: one }) => (one.kind === 'answer' ? one.answer.map(plain) : one.refusal))
        expect(reports).toEqual(all.map((one) => [plain(one)]))
      }),
    )
  })
})
