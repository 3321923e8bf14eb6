import { describe, expect, it, test } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { homeChangeInEnglish } from '#content/wording/home-change.ts'
import { homeChangeInSpanish } from '#content/wording/spanish/home-change.ts'
import { readingLevel } from '#core/agreement/reading-level.ts'
import type { HomeMedicine } from '#core/home/medicine-times.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { owedOf } from '#core/owed/owed.ts'
import { calendarOf } from '../calendar/calendar.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderText } from '../render/text.ts'
import { homePage } from './home-page.ts'

const make = entryMaker({}, 9)
const entries = exampleEntries()
const wentHome = entries.find(({ kind }) => kind === 'discharge')
if (!wentHome) throw new Error('The course has a discharge.')
const [first] = (wentHome.body as unknown as BodyOf<'discharge'>).medicines
if (!first) throw new Error('It went home with a medicine.')
const { drug, label, side } = first

const started: HomeMedicine = {
  ...first,
  drug: 'marbofloxacin',
  label: 'Marbofloxacin tablet 20 mg',
  each: '2',
  times: ['18:00'],
  firstDay: '2026-02-14',
  firstTime: '18:00',
  days: 21,
}

function change(body: Partial<BodyOf<'medicine-change'>> = {}): Entry {
  return make({
    kind: 'medicine-change',
    at: '2026-02-14T12:00:00.000Z',
    body: {
      read: null,
      because: 'Resistant.',
      stops: [{ drug, label, side, fromDay: '2026-02-14', fromTime: '12:00' }],
      starts: [started],
      ...body,
    },
  })
}

function pageOf(all: readonly Entry[], language: 'en' | 'es' = 'en'): string {
  const made = homePage.of({ ...inputFor(all), language })
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made).replaceAll(/\s+/g, ' ')
}

describe('a home page after a change of medicine', () => {
  it('says which page it takes the place of, what stops, what starts, and names in the table only what is given', () => {
    const page = pageOf([...entries, change()])
    expect(page).toContain('This is page 2, of 14 February 2026. It takes the place of the page of')
    expect(page).toContain(`Stop: ${label}. Give no more from 14 February 2026, 12:00 on.`)
    expect(page).toContain('New: Marbofloxacin tablet 20 mg. First dose 14 February, 18:00.')
    // 21 days of two tablets in the evening.
    expect(page).toMatch(/6 March, 18:00 42 /)
    expect(page.split(label)).toHaveLength(2)
  })

  it('says of a step that is over that it is finished, and names in the table only what is still to be given', () => {
    const brought = {
      ...started,
      label: 'Inventine tablet 5 mg',
      drug: 'invented',
      times: ['08:00'],
      firstDay: '2026-02-12',
      firstTime: '08:00',
      days: 9,
      steps: [
        { fromDay: '2026-02-14', each: '1', times: ['08:00'], onDays: 'every-day' as const },
        { fromDay: '2026-02-17', each: '0.5', times: ['08:00'], onDays: 'every-second-day' as const },
      ],
    }
    const short = {
      ...first,
      label: 'Shortine tablet',
      drug: 'short',
      firstDay: '2026-02-12',
      firstTime: '08:00',
      days: 1,
    }
    const tapered = entries.map((entry): Entry => {
      if (entry.kind !== 'discharge') return entry
      const body = entry.body as unknown as BodyOf<'discharge'>
      return { ...entry, body: { ...body, medicines: [...body.medicines, brought, short] } as unknown as Entry['body'] }
    })
    const page = pageOf([...tapered, change()])
    expect(page).toContain(
      'Inventine tablet 5 mg, 2 tablets each time: finished on 13 February 2026. Now follow the table.',
    )
    expect(page).toContain('Shortine tablet: finished on 12 February 2026. Give no more.')
    // 3 × 1 from 14 February and ½ on the 17th and the 19th: what was over is not among it.
    expect(page).toContain('All rows together: 4 tablets.')
    expect(page).toContain('EVERY SECOND DAY')
    expect(page).toContain('give it on 17 February, 19 February. Give none on the days between.')
    expect(pageOf([...tapered, change()], 'es')).toContain('se terminó el 13 de febrero de 2026. Ahora siga la tabla.')
    expect(pageOf(tapered)).not.toContain('finished on')
  })

  it('counts what is left over: what was handed out less the doses until the stop', () => {
    expect(pageOf([...entries, change()])).toMatch(/If you gave every dose until then, [\d½¼¾]+ tablets? will be left/)
  })

  it('says nothing of the kind before a change', () => {
    expect(pageOf(entries)).not.toContain('takes the place')
  })

  it('tells the owner of a stop that no page named, and asks the clinic', () => {
    const page = pageOf([...entries, change({ stops: [{ ...change0, label: 'Doxycycline tablet 100 mg' }] })])
    expect(page).toContain('Stop: Doxycycline tablet 100 mg.')
    expect(page).toContain('no page of this stay names it')
  })

  it('keeps in the table what is stopped only later', () => {
    const stops = [{ drug, label, side, fromDay: '2026-02-16', fromTime: '00:00' }]
    expect(pageOf([...entries, change({ stops })]).split(label).length).toBeGreaterThan(2)
  })

  it('says it in Spanish too', () => {
    expect(pageOf([...entries, change()], 'es')).toContain('Sustituye a la hoja del')
  })
})

const change0 = { drug: 'doxycycline', side: null, fromDay: '2026-02-14', fromTime: '12:00' } as const

test('The calendar ends the reminders where the medicine was stopped and holds those of the new one', () => {
  const events = (all: readonly Entry[]) => {
    const { file } = inputFor(all)
    const text = calendarOf(file, owedOf(file, procedures, { rules: owedRules }), '2026-02-14T13:00:00.000Z', {
      words: 'full',
    }).replaceAll('\r\n ', '')
    return text.split('BEGIN:VEVENT').filter((event) => event.includes('RRULE') || event.includes('CANCELLED'))
  }
  const of = (all: readonly Entry[], name: string) => events(all).filter((event) => event.includes(name))
  const before = of(entries, label)
  const after = of([...entries, change()], label)
  expect(after.length).toBe(before.length)
  const uid = (event: string) => /UID:(\S+)/.exec(event)?.[1]
  expect(after.map(uid).sort()).toEqual(before.map(uid).sort())
  const count = (event: string) => Number(/COUNT=(\d+)/.exec(event)?.[1] ?? 0)
  const sum = (all: readonly string[]) => all.reduce((total, event) => total + count(event), 0)
  expect(sum(after)).toBeLessThan(sum(before))
  expect(of(entries, started.label)).toEqual([])
  expect(of([...entries, change()], started.label).map(count)).toEqual([21])
  const [sequence] = after.map((event) => Number(/SEQUENCE:(\d+)/.exec(event)?.[1]))
  expect(sequence).toBeGreaterThan(Number(/SEQUENCE:(\d+)/.exec(before[0] ?? '')?.[1]))
})

test.each([
  ['en', homeChangeInEnglish],
  ['es', homeChangeInSpanish],
] as const)('The sentences of a change are easy to read by the formula of their language: %s', (language, words) => {
  expect(readingLevel(Object.values(words).join('\n'), language)).toMatchObject({ meetsAim: true })
})
