import { describe, expect, it } from 'vitest'
import { lanesInEnglish } from '#content/wording/app-lanes.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { moss } from '#demo/cat.ts'
import { tansy } from '#demo/spaniel.ts'
import { laneItems, sayGap } from './lane-words.ts'
import { lanesOf } from './lanes.ts'
import { placedLines } from './placed-lines.ts'

const hours = 3_600_000
const lay = (entries: readonly Entry[], width = 1200) => lanesOf(fileOf(entries), { width })

describe('the lanes of a whole year', () => {
  const lanes = lay(tansy().entries)

  it('give every chapter its room: the operation of two hours as well as the year', () => {
    const of = (chapter: string) => lanes.stretches.find((stretch) => stretch.chapter === chapter)
    expect(lanes.stretches.map(({ chapter }) => chapter)).toEqual([
      'Referral',
      'Work-up',
      'Choice',
      'Agreement',
      'Theatre',
      'Ward',
      'Home',
      'Year',
    ])
    expect(lanes.width).toBe(1200)
    expect(of('Theatre')?.width).toBeGreaterThan(160)
    expect(of('Year')?.width).toBeGreaterThan(150)
  })

  it('say dates with the month as a word, and times of day inside the operation', () => {
    const labels = lanes.ticks.map(({ label }) => label)
    expect(labels.every((label) => /^(\d{1,2} [A-Z][a-z]+( \d{4})?|\d{2}:\d{2})$/.test(label))).toBe(true)
    expect(labels).toContain('11 March 2025')
    expect(lanes.ticks.filter(({ is }) => is === 'time').map(({ label }) => label)).toContain('11:00')
  })

  it('never print two words of the axis over each other, nor over the border of a chapter', () => {
    for (const [at, { x, label, is }] of lanes.ticks.entries()) {
      const next = lanes.ticks.slice(at + 1).find((one) => one.is === is)
      if (next) expect(next.x).toBeGreaterThanOrEqual(x + label.length * 6.5)
      const stretch = lanes.stretches.findLast((one) => one.x <= x)
      expect(x + label.length * 6.5).toBeLessThanOrEqual((stretch?.x ?? 0) + (stretch?.width ?? 0))
    }
  })

  it('put LEFT and RIGHT in their lanes and the animal between', () => {
    const lanesOfKind = (kind: string) =>
      lanes.marks.filter(({ lines }) => lines.some(({ header }) => header.kind === kind)).map(({ lane }) => lane)
    expect(new Set(lanesOfKind('theatre-stamp'))).toEqual(new Set(['LEFT']))
    expect(lanesOfKind('ear-findings').sort()).toEqual(['LEFT', 'RIGHT'])
    expect(new Set(lanesOfKind('baseline'))).toEqual(new Set(['animal']))
  })

  it('read as a list of dates, sides and names, with the gaps between', () => {
    const said = laneItems(lanes, lanesInEnglish).map((item) => item.said)
    expect(said[0]).toMatch(/2025, \d{2}:\d{2}, the animal as a whole: /)
    expect(said).toContain('11 March 2025, 09:44, LEFT: Checkpoint')
    expect(said.some((one) => /^\d+ (weeks|months|days) without an entry$/.test(one))).toBe(true)
    const times = laneItems(lanes, lanesInEnglish).flatMap((item) => (item.kind === 'entry' ? [item.line.at] : []))
    expect(times).toEqual([...times].sort())
  })
})

describe('the lanes of any case', () => {
  const make = entryMaker()
  const cases = [tansy().entries, moss().entries, [make()], [make(), make({ kind: 'death' })], []]

  it.each([320, 768, 1280])(
    'hold every entry once, in time from left to right, without collisions, at %i px',
    (width) => {
      for (const entries of cases) {
        const file = fileOf(entries)
        const lanes = lanesOf(file, { width })
        const ids = lanes.marks.flatMap(({ lines }) => lines.map(({ header }) => header.id))
        expect([...ids].sort()).toEqual([...placedLines(file.theCase).keys()].sort())
        for (const mark of lanes.marks) {
          expect(mark.x).toBeGreaterThanOrEqual(0)
          expect(mark.x).toBeLessThanOrEqual(lanes.width)
          const others = lanes.marks.filter((one) => one !== mark && one.lane === mark.lane && one.level === mark.level)
          for (const other of others) expect(Math.abs(other.x - mark.x)).toBeGreaterThanOrEqual(24)
        }
        const byTime = lanes.marks
          .map(({ lines, x }) => ({ at: lines[0]?.at ?? '', x }))
          .sort((a, b) => (a.at < b.at ? -1 : 1))
        for (const [at, { x }] of byTime.entries()) expect(x).toBeGreaterThanOrEqual((byTime[at - 1]?.x ?? 0) - 1e-6)
      }
    },
  )

  it('are wider than asked when the chapters would not fit', () => {
    const lanes = lay(tansy().entries, 320)
    expect(lanes.width).toBeGreaterThan(320)
    expect(lanes.width).toBe(8 * 108)
    expect(lanes.ticks.filter(({ is }) => is === 'date').length).toBeGreaterThanOrEqual(8)
    expect(lay([make()], 320).width).toBe(320)
  })

  it('begin a new stretch of Theatre for a second operation, and not for a check of the other ear', () => {
    const second = { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } as const
    const at = (day: string) => `2026-${day}T09:00:00.000Z`
    const entries = [
      make({ kind: 'referral', at: at('01-01') }),
      make({ kind: 'theatre-stamp', at: at('02-01') }),
      make({ kind: 'operation-summary', at: at('02-02') }),
      make({ kind: 'discharge', at: at('02-03') }),
      make({ kind: 'check', at: at('02-20') }),
      make({ kind: 'choice', at: at('03-01') }),
      make({ kind: 'check', at: at('03-20') }),
      make({ kind: 'theatre-stamp', at: at('05-01'), subject: second }),
      make({ kind: 'operation-summary', at: at('05-02'), subject: second }),
    ]
    expect(lay(entries).stretches.map(({ chapter }) => chapter)).toEqual([
      'Referral',
      'Theatre',
      'Ward',
      'Home',
      'Year',
      'Theatre',
      'Ward',
    ])
  })

  it('bundle what has no room, and say where a conflict waits', () => {
    const many = Array.from({ length: 12 }, () => make({ kind: 'note', at: '2026-01-01T09:00:00.000Z' }))
    const lanes = lay([make({ kind: 'weight', at: '2026-01-01T08:00:00.000Z' }), ...many])
    const bundle = lanes.marks.find(({ lines }) => lines.length > 1)
    expect(bundle?.lines.length).toBe(9)
    const weight = make({ kind: 'weight' })
    const correct = () => make({ kind: 'weight', supersedes: [weight.id], reason: 'Read again.' })
    const conflicted = lay([weight, correct(), correct()]).marks
    expect(conflicted.every(({ conflict }) => conflict)).toBe(true)
  })
})

describe('a gap of time', () => {
  it.each([
    [90 / 60, '90 minutes'],
    [5, '5 hours'],
    [50, '2 days'],
    [14 * 24, '2 weeks'],
    [91 * 24, '3 months'],
    [3 * 366 * 24, '3 years'],
  ])('of %d hours is said as %s', (count, said) => {
    expect(sayGap({ from: 0, until: count * hours }, lanesInEnglish)).toBe(said)
  })
})
