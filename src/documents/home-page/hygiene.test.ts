import { describe, expect, it, test } from 'vitest'
import { hygieneRules } from '#content/follow-up/hygiene-rules.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { hygieneInEnglish } from '#content/wording/hygiene.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { hygieneInSpanish } from '#content/wording/spanish/hygiene.ts'
import { readingLevel } from '#core/agreement/reading-level.ts'
import { emptyReport } from '#core/culture/empty-report.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { owedOf } from '#core/owed/owed.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { isPaper, type PaperDefinition } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { referringLetter } from '../letter/referring-letter.ts'
import { renderText } from '../render/text.ts'
import { homePage } from './home-page.ts'

const entries = exampleEntries()
const specimen = entries.find(({ kind }) => kind === 'specimen')
if (!specimen) throw new Error('The course has a specimen.')
const make = entryMaker({}, 9)

function cultureOf(raw: string): Entry {
  const oxacillin = { drug: 'oxacillin', agent: 'oxacillin', method: 'MIC', raw, disk: null, category: null } as const
  const one = {
    key: '1',
    organism: 'Staphylococcus pseudintermedius',
    species: 'staphylococcus-pseudintermedius',
    amount: 'heavy',
    results: [oxacillin],
    tests: [],
  }
  return make({
    kind: 'specimen-result',
    at: '2026-02-13T10:00:00.000Z',
    body: { ...emptyReport, specimen: specimen?.id ?? '', status: 'final', growth: 'growth', isolates: [one] },
  })
}

function textOf(paper: PaperDefinition, all: readonly Entry[], language: 'en' | 'es' = 'en'): string {
  const made = paper.of({ ...inputFor(all), language })
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made).replaceAll(/\s+/g, ' ')
}

describe('an animal that carries a germ many medicines do not kill', () => {
  const all = [...entries, cultureOf('>=4')]

  it('goes home with what its people do, in their language', () => {
    expect(textOf(homePage, all)).toContain('Its short name is MRSP.')
    expect(textOf(homePage, all)).toContain('Wash your hands before and after')
    expect(textOf(homePage, all, 'es')).toContain('Su nombre corto es MRSP.')
    expect(textOf(homePage, [...entries, cultureOf('<=0.25')])).not.toContain('short name')
  })

  it('is announced to the next clinic in the letter', () => {
    expect(textOf(referringLetter, all)).toContain('MRSP (Staphylococcus pseudintermedius) on record, LEFT ear')
  })

  it('stands at every visit on the list of what is owed, and at the call that tells the result', () => {
    const result = all.at(-1)
    const read = make({
      kind: 'result-read',
      at: '2026-02-13T12:00:00.000Z',
      body: { result: result?.id ?? '', decision: 'no-change', edition: null, text: 'Wound quiet.' },
    })
    const { file } = inputFor([...all, read])
    const owed = owedOf(file, procedures, { rules: owedRules, hygiene: hygieneRules }).owed
    const visits = owed.filter(({ way }) => way === 'visit')
    expect(visits.length).toBeGreaterThan(2)
    for (const one of visits) expect(sayOwed(one, owedInEnglish).why).toContain('MRSP on record since 13 February 2026')
    const call = owed.find(({ what }) => what === 'owner-to-tell')
    expect(call && sayOwed(call, owedInEnglish).why).toContain('hygiene at home belongs to this call')
    const tasks = owed.filter(({ way }) => way === 'task')
    for (const one of tasks) expect(sayOwed(one, owedInEnglish).why).not.toContain('MRSP')
  })
})

test.each([
  ['en', hygieneInEnglish],
  ['es', hygieneInSpanish],
] as const)('The hygiene is easy to read by the formula of its language: %s', (language, words) => {
  const sentences = [words.found, words.maybe, ...words.items.value, words.keep, words.tellVets]
  expect(readingLevel(sentences.join('\n'), language)).toMatchObject({ meetsAim: true })
})
