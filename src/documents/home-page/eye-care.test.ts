import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { owedOf } from '#core/owed/owed.ts'
import { calendarOf } from '../calendar/calendar.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderText } from '../render/text.ts'
import { homePage } from './home-page.ts'

const make = entryMaker({}, 11)
/** Operated on 10 February 2026, weak on the 11th, home on the 12th. */
const course = exampleEntries()
const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
const well: BodyOf<'check'> = {
  ...checkKind.example,
  blink: 'normal',
  lipOrEarDroop: 'no',
  tearTest: { value: '18', unit: 'mm/min' },
}
const look = (day: string, body: Partial<BodyOf<'check'>> = {}) =>
  make({ kind: 'check', at: `${day}T10:00:00.000Z`, subject: left, body: { ...well, ...body } })

const care = 'Gel into the left eye'
const goesOn = 'Go on until we have seen a normal blink'
const ends = 'We have seen a normal blink, so the eye care ends.'

/** What stands on the page for home, in the list of what is owed, and in the owner's calendar, of the same entries. */
function chain(all: readonly Entry[]) {
  const withCare = all.map((entry) =>
    entry.kind === 'discharge'
      ? { ...entry, body: { ...(entry.body as object), eyeCare: `${care}.` } as typeof entry.body }
      : entry,
  )
  const made = homePage.of(inputFor(withCare))
  if (!isPaper(made)) throw new Error(made.because)
  const page = renderText(made).replaceAll(/\s+/g, ' ')
  const { file } = inputFor(withCare)
  const owed = owedOf(file, procedures, { rules: owedRules })
  const looks = owed.owed.filter(({ what }) => what === 'face-and-eye-look' || what === 'eye-at-risk-look')
  const events = calendarOf(file, owed, '2026-04-01T12:00:00.000Z', { words: 'full' })
    .replaceAll('\r\n ', '')
    .split('BEGIN:VEVENT')
    .filter((event) => !event.includes('STATUS:CANCELLED') && /SUMMARY:.*(face|eye)/i.test(event))
  return {
    page: { care: page.includes(care), goesOn: page.includes(goesOn), ends: page.includes(ends) },
    owed: looks.length,
    kept: owed.owed.some(({ what }) => what === 'eye-lubricated'),
    calendar: events.filter((event) =>
      looks.some(({ dueBy }) => event.includes(dueBy.slice(0, 10).replaceAll('-', ''))),
    ).length,
  }
}

describe('the eye care of a weak blink, on the page for home, in what is owed and in the calendar', () => {
  const later = [look('2026-03-12', { blink: 'weak' })]
  const stays = { page: { care: true, goesOn: true, ends: false }, owed: 1, calendar: 1 }

  it('stays while it is weak, after every planned look as well', () => {
    expect(chain([...course, ...later])).toMatchObject(stays)
  })

  it('stays when an owner tells that it is normal', () => {
    const told = look('2026-03-20', { seenBy: 'owner-words', tearTest: null, fluorescein: 'not-assessed' })
    expect(chain([...course, ...later, told])).toMatchObject(stays)
  })

  it('ends in all three by an examination that finds it normal', () => {
    const ended = { page: { care: false, goesOn: false, ends: true }, owed: 0, calendar: 0, kept: false }
    expect(chain([...course, ...later, look('2026-04-10')])).toEqual(ended)
  })

  it('begins again in all three when it is weak later', () => {
    const again = [...later, look('2026-04-10'), look('2026-04-20', { blink: 'weak' })]
    expect(chain([...course, ...again])).toMatchObject(stays)
  })

  it('goes on with a normal blink while the cornea stains or tears are few, and says why', () => {
    const dry = chain([...course, ...later, look('2026-04-10', { tearTest: { value: '4', unit: 'mm/min' } })])
    expect(dry).toMatchObject({ page: { care: true, goesOn: false, ends: false }, kept: true })
    expect(dry.owed).toBeGreaterThan(0)
    const stained = chain([...course, look('2026-04-10', { fluorescein: 'positive' })])
    expect(stained).toMatchObject({ page: { care: true, ends: false }, kept: true })
  })

  it('is not ended for an eye without a blink by an account, and is begun by one', () => {
    const absent = look('2026-03-12', { blink: 'absent' })
    const told = (blink: 'normal' | 'absent', day: string) =>
      look(day, { seenBy: 'owner-words', blink, tearTest: null, fluorescein: 'not-assessed' })
    expect(chain([...course, absent, told('normal', '2026-03-14')]).kept).toBe(true)
    expect(chain([...course, absent, look('2026-03-20')]).kept).toBe(false)
    expect(chain([...course, look('2026-03-20'), told('absent', '2026-03-25')]).kept).toBe(true)
  })
})
