import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { sidesOf } from '#core/chapters/sides.ts'
import { readEntry } from '#core/journal/accept.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fold } from '#core/journal/fold.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import { standingOf } from '#core/owed/standing.ts'
import { theatreListOf } from '#core/theatre/theatre-list.ts'
import { addDays, daysBetween, startOfDay } from '#core/time/calendar-day.ts'
import { isOpen } from '#core/time/open-days.ts'
import { closedAround } from '#demo/living/closed-days.ts'
import { liveCharts } from '#demo/living/index.ts'
import { practiceChart, zone } from '#demo/practice.ts'
import { theatreRules } from '#documents/agreement/consent-today.ts'

/** Four hundred days with four clock changes, Easter and Christmas among them. */
export const everyDay = Array.from({ length: 400 }, (_, index) => addDays('2025-03-01', index))

/** Easter, Christmas and the clock changes among them, where the days of a case are moved about. */
const turns = ['2025-03-30', '2025-04-20', '2025-10-26', '2025-12-25', '2026-03-29', '2026-04-05']

/** Of those every ninth, so that each day of the week comes round, and the days before and after each turn. */
export const someDays = everyDay.filter((day, index) => {
  return index % 9 === 0 || turns.some((turn) => Math.abs(daysBetween(turn, day)) <= 3)
})

/** What each case shows as owed on the day of opening, late or to be done now, whatever the day. */
const owedNow: Readonly<Record<string, readonly string[]>> = {
  'case:barley': ['conflict-to-settle', 'face-and-eye-look', 'owner-to-tell', 'result-to-read', 'suture-check'],
  'case:hazel': ['ward-airway', 'ward-owner-call', 'ward-pain', 'ward-urine'],
  'case:juniper': [],
  'case:rowan': ['late-event-decision', 'late-event-look'],
  'case:sorrel': ['eye-lubricated', 'first-call', 'result-expected'],
  'case:teasel': ['urgent-referral'],
}
/** Visits: on a day on which the clinic is closed they may still lie ahead. */
const visits = ['face-and-eye-look', 'suture-check']
/** What lies ahead of each case and must be on its page too. */
const owedLater: Readonly<Record<string, readonly string[]>> = {
  'case:barley': ['wound-check', 'recheck'],
  'case:juniper': ['weight-before-operation', 'second-check-of-lines', 'last-meal', 'admission'],
  'case:sorrel': ['eye-at-risk-look', 'suture-check'],
}
/** What may stand there as late: stitches only round holidays, when the last open day before them has passed. */
const lateAtMost: Readonly<Record<string, readonly string[]>> = {
  'case:barley': ['owner-to-tell', 'result-to-read', 'conflict-to-settle', 'face-and-eye-look', 'suture-check'],
  // The night is over and nobody has written the round of the morning.
  'case:hazel': [
    'first-call',
    'ward-airway',
    'ward-dose',
    'ward-food',
    'ward-owner-call',
    'ward-pain',
    'ward-temperature',
    'ward-urine',
  ],
  'case:rowan': ['recheck'],
  'case:sorrel': ['result-expected'],
  'case:teasel': ['urgent-referral'],
}

/** The same on every day, and read-only: folded once. */
const house = fold(practiceChart().entries)

function fileFor(day: string, stream: string, entries: Parameters<typeof fold>[0]): CaseFile {
  const closed = closedAround(day)
  const file = fileOf([])
  const clinic = { ...file.clinic, zone, closedWeekdays: [...closed.weekdays] }
  return { ...file, stream, clinic, closedDays: closed.days, house, theCase: fold(entries) }
}

/** What holds of the living cases whichever day the practice is opened on. */
export function livingCases(which: string, days: readonly string[]): void {
  describe(`the living cases, on ${which}`, () => {
    const charts = new Map(days.map((day) => [day, liveCharts(day)]))

    it('are made of entries that are read at the door and lie before the day of opening', () => {
      for (const [day, cases] of charts) {
        const opened = startOfDay(day, zone)
        for (const entry of cases.flatMap(({ entries }) => entries)) {
          expect(readEntry(entry), `${day} ${entry.kind} ${JSON.stringify(entry.body)}`).toMatchObject({
            kind: 'answer',
          })
          expect(entry.happenedAt.at < opened && entry.writtenAt < opened, `${day} ${entry.kind}`).toBe(true)
        }
      }
    }, 60_000)

    it('fold without pending or unknown entries and owe what they are meant to owe', () => {
      for (const [day, cases] of charts) {
        const noon = `${day}T12:00:00.000Z`
        for (const { stream, entries } of cases) {
          const file = fileFor(day, stream, entries)
          expect([file.theCase.pending, file.theCase.unknown]).toEqual([[], []])
          const { owed } = owedOf(file, procedures, { rules: owedRules })
          const now = owed.filter((item) => standingOf(item, noon).kind !== 'later').map(({ what }) => what)
          const meant = owedNow[stream] ?? []
          const wanted = isOpen(day, closedAround(day)) ? meant : meant.filter((what) => !visits.includes(what))
          expect(now, `${day} ${stream}`).toEqual(expect.arrayContaining([...wanted]))
          const late = owed.filter((item) => standingOf(item, noon).kind === 'late').map(({ what }) => what)
          expect([...(lateAtMost[stream] ?? []), 'never'], `${day} ${stream}`).toEqual(expect.arrayContaining(late))
          const all = owed.map(({ what }) => what)
          expect(all, `${day} ${stream}`).toEqual(expect.arrayContaining([...meant, ...(owedLater[stream] ?? [])]))
        }
      }
    }, 60_000)

    it('put Juniper on the theatre list of an open day ahead, her sides disagreeing', () => {
      for (const [day, cases] of charts) {
        const juniper = cases.find(({ stream }) => stream === 'case:juniper')
        const file = fileFor(day, 'case:juniper', juniper?.entries ?? [])
        const { owed } = owedOf(file, procedures, { rules: owedRules })
        const until = addDays(day, 14)
        const [list] = theatreListOf([{ file, owed }], theatreRules, { from: addDays(day, 2), until })
        expect(list && isOpen(list.day, closedAround(day)), day).toBe(true)
        const [line] = list?.lines ?? []
        expect(line).toMatchObject({ side: 'RIGHT', state: 'agreed' })
        const missing = line?.missing.filter(({ level }) => level !== 'note').map(({ code }) => code)
        expect(missing?.sort(), day).toEqual(['second-check', 'side-disagreement', 'weight'])
        expect(sidesOf(file.theCase).disagreements, day).toMatchObject([{ level: 'block' }])
      }
    }, 60_000)

    it('are the same bytes for the same day', () => {
      expect(JSON.stringify(liveCharts('2026-03-10'))).toBe(JSON.stringify(liveCharts('2026-03-10')))
    })
  })
}
