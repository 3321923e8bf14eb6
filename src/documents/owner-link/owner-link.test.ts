import { describe, expect, test } from 'vitest'
import { countText, fleschKincaidGrade, smogGrade } from '#core/agreement/readability.ts'
import { readingLevel } from '#core/agreement/reading-level.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { medicineChange } from '#core/journal/kinds/medicine-change.ts'
import { exampleEntries, fileAround } from '../case/sample-case-for-tests.ts'
import { ownerPageStyle } from '../owner-page/style.ts'
import { ownerPageInLanguages } from '../owner-page/words.ts'
import type { LinkInput } from './destinations.ts'
import { homeBehindLink, quietPage } from './home.ts'
import { readNote } from './note-sent.ts'
import { type NotesInput, notesPage } from './notes.ts'

const on = { at: '2026-03-05T09:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'clock' } as const
const make = entryMaker({}, 9)
const owner = { kind: 'owner-link', contact: 'contact-1' } as const
const alive = exampleEntries().filter(({ kind }) => kind !== 'death')

function inputFor(entries: readonly Entry[], language: 'en' | 'es' = 'en', more: Partial<LinkInput> = {}): LinkInput {
  const words = ownerPageInLanguages[language]
  const until = { ...on, at: '2027-05-01T00:00:00.000Z' }
  return {
    file: fileAround(entries),
    on,
    contact: 'contact-1',
    use: 'private',
    until,
    words,
    asked: { language: null },
    ...more,
  }
}

function notesFor(entries: readonly Entry[], language: 'en' | 'es' = 'en', more: Partial<NotesInput> = {}): string {
  const entry = '0190a7c2-0000-7000-8000-000000000099'
  return notesPage({
    ...inputFor(entries, language),
    entry,
    link: 'link-1',
    told: null,
    typed: { get: () => null },
    ...more,
  })
}

/** What is read on a page, one sentence after another. */
function read(page: string): string {
  return page
    .replace(/^.*<body>/s, '')
    .replaceAll(/<\/(p|li|h\d|dd|dt|td|th|legend|label|a|button|caption)>/g, '\n')
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replaceAll(/\n\s*\n+/g, '\n')
}

/** Every sentence that the page or its script may say of a note, too. */
function withRefusals(page: string, language: 'en' | 'es'): string {
  const { note } = ownerPageInLanguages[language].link
  return [read(page), ...Object.values(note.refused), note.closed, note.waits, note.stillHere, note.asTyped].join('\n')
}

const note = make({ kind: 'owner-note', author: owner, at: '2026-03-04T08:00:00.000Z' })
const reply = make({
  kind: 'owner-reply',
  at: '2026-03-04T09:00:00.000Z',
  body: { note: note.id, text: 'That is <usual>.' },
})

describe('the pages behind the link at home', () => {
  test('read at grade 8 or below in English, refusals and all', () => {
    const pages = [homeBehindLink(inputFor(alive)) ?? '', quietPage(inputFor(alive))].map(read)
    const counts = countText([...pages, withRefusals(notesFor([...alive, note, reply]), 'en')].join('\n'))
    expect(counts.sentences).toBeGreaterThan(60)
    expect(fleschKincaidGrade(counts).toNumber()).toBeLessThanOrEqual(8)
    expect(smogGrade(counts).toNumber()).toBeLessThanOrEqual(10)
  })

  test('are fairly easy to read in Spanish by the formula of that language', () => {
    const pages = [homeBehindLink(inputFor(alive, 'es')) ?? '', quietPage(inputFor(alive, 'es'))].map(read)
    const text = [...pages, withRefusals(notesFor([...alive, note, reply], 'es'), 'es')].join('\n')
    expect(readingLevel(text, 'es')).toMatchObject({ meetsAim: true })
  })

  test('hold no address but their own, and no style or script within the page', () => {
    for (const page of [homeBehindLink(inputFor(alive)) ?? '', notesFor([...alive, note, reply])]) {
      const addresses = [...page.matchAll(/\s(?:href|src|action)="([^"]*)"/g)].map(([, one = '']) => one)
      const own = /^(\?|#|tel:|\/o\/(page\.css|(keep|note)\.js)$|[a-z]+(\.pdf|\.ics)?$|picture\/[0-9a-f]{64}$)/
      expect(addresses.filter((one) => !own.test(one))).toEqual([])
      expect(page).not.toMatch(/<style|style="|<script(?! type="module" src="\/o\/(keep|note)\.js"><\/script>)/)
    }
    expect(ownerPageStyle).not.toMatch(/url\(|@import|grid|var\(/)
  })

  test('show no list of medicines while a check has something against it, and when to phone all the same', () => {
    const { link, home } = ownerPageInLanguages.en
    const stops = medicineChange.example.stops.map((stop) => ({
      ...stop,
      drug: 'nothing',
      label: 'Nothing that was ever given',
    }))
    const body = { ...medicineChange.example, stops, starts: [] } as typeof medicineChange.example
    const change = make({ kind: 'medicine-change', at: '2026-03-04T10:00:00.000Z', body })
    expect(read(homeBehindLink(inputFor(alive)) ?? '')).toContain(home.medicines)
    const held = read(homeBehindLink(inputFor([...alive, change])) ?? '')
    expect(held).toContain(link.checking)
    expect(held).toContain(home.phoneNow)
    expect(held).not.toContain(home.columns.last)
  })

  test('say once what was sent, with its answer and who gave it, and what somebody else wrote to nobody', () => {
    const page = read(notesFor([...alive, note, reply]))
    expect(page).toContain('a little blood on the collar')
    expect(page).toContain('Ada Surgeon answered on 4 March 2026, 09:00:')
    expect(page).toContain('That is <usual>.')
    expect(page).not.toContain('No answer yet.')
    const others = read(notesFor([...alive, { ...note, author: { ...owner, contact: 'contact-2' } }, reply]))
    expect(others).toContain('You have not sent a note yet.')
  })

  test('keep nothing on a tablet of the house', () => {
    expect(homeBehindLink(inputFor(alive, 'en', { use: 'in-room' }))).not.toMatch(/<script|href="notes"/)
  })
})

describe('a note that was sent', () => {
  const about = { pictures: 0, language: 'en', now: on }
  const of = (query: string, pictures = 0) => readNote(new URLSearchParams(query), { ...about, pictures })

  test('is read strictly: the text as it was written, a day that exists and is not ahead, one of our ears', () => {
    expect(of('text=%20Two%0D%0Alines%20&seen-day=2026-03-05&ear=LEFT')).toEqual({
      language: 'en',
      text: 'Two\nlines',
      seen: { day: '2026-03-05', time: null },
      ear: 'LEFT',
      keptSince: null,
    })
    expect(of('text=a&ear=tail')).toMatchObject({ ear: null })
    expect([of('text='), of('text=', 1)]).toEqual(['nothing', expect.objectContaining({ text: null })])
    expect(of('text=a&seen-day=2026-02-29')).toBe('day-wrong')
    expect(of('text=a&seen-day=2026-03-06')).toBe('day-ahead')
    expect(of('text=a&seen-time=07:00')).toBe('day-wrong')
    expect(of(`text=${'x'.repeat(4_001)}`)).toBe('too-long')
  })

  test('says since when it waited on the phone, unless the clock of that phone cannot be right', () => {
    expect(of('text=a&kept-since=2026-03-05T08:00:00.000Z')).toMatchObject({
      keptSince: { at: '2026-03-05T08:00:00.000Z' },
    })
    expect(of('text=a&kept-since=2027-03-05T08:00:00.000Z')).toMatchObject({ keptSince: null })
    expect(of('text=a&kept-since=yesterday')).toMatchObject({ keptSince: null })
  })
})
