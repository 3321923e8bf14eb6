import { parse } from 'csv-parse/sync'
import { expect, it } from 'vitest'
import { columnsOfEars } from '#content/wording/columns-of-ears.ts'
import { columnsOfTimeline } from '#content/wording/columns-of-timeline.ts'
import { type OwnOutcome, ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import type { DeIdentifiedEar } from '#core/results/de-identify.ts'
import { dictionaryOf } from '../render/data-dictionary.ts'
import { sheetOfEars } from './sheet-of-ears.ts'

const known = Object.fromEntries(ownOutcomes.map((one) => [one, null])) as Record<OwnOutcome, boolean | null>
const ear: DeIdentifiedEar = {
  ear: 1,
  animal: 2,
  anaesthetic: 3,
  species: 'dog',
  procedure: 'teca-lbo',
  side: 'RIGHT',
  year: null,
  diedAfterDays: 60,
  followedForDays: 61,
  tractAfterDays: null,
  blinkLostAfterDays: 1,
  blinkBackAfterDays: 30,
  known: { ...known, horner_any: true, horner_permanent: false },
}

it('a row says yes, no and not known apart, and every line ends with CRLF', () => {
  const csv = sheetOfEars([ear])
  expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  expect(parse(csv, { columns: true })).toEqual([
    expect.objectContaining({
      ear: '1',
      year: 'withheld',
      died_after: '60',
      followed_for: '61',
      tract_after: '',
      blink_back_after: '30',
      horner_any: 'yes',
      horner_permanent: 'no',
      vestibular_any: '',
    }),
  ])
})

it.each([
  ['ears', columnsOfEars],
  ['timeline', columnsOfTimeline],
])('the dictionary of %s survives the way through a spreadsheet, every column once', (_, columns) => {
  const read: Record<string, string>[] = parse(dictionaryOf(columns), { columns: true })
  expect(read.slice(0, -1)).toEqual(columns)
  expect(new Set(read.map(({ column }) => column)).size).toBe(read.length)
  expect(read.at(-1)?.means).toContain('lossless')
})
