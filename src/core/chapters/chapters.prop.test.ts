import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { lanesInEnglish } from '#content/wording/app-lanes.ts'
import { sidesInEnglish } from '#content/wording/app-sides.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import { chaptersOf } from './chapters-of.ts'
import { laneItems } from './lane-words.ts'
import { lanesOf } from './lanes.ts'
import { sayMissing } from './say-missing.ts'
import { sayDisagreement, sidesOf } from './sides.ts'

const caseKinds = kinds
  .filter(({ subjects }) => !subjects.every((subject) => subject === 'clinic'))
  .map(({ name }) => name)

/** Any course, as badly written as it may be: any kinds, at any time, some corrected, some taken back. */
const course: fc.Arbitrary<Entry[]> = fc
  .array(
    fc.record({
      kind: fc.constantFrom(...caseKinds),
      day: fc.integer({ min: 0, max: 800 }),
      minute: fc.integer({ min: 0, max: 1439 }),
      side: fc.constantFrom('LEFT', 'RIGHT'),
      after: fc.constantFrom('stays', 'stays', 'corrected', 'taken-back'),
    }),
    { maxLength: 25 },
  )
  .map((wanted) => {
    const make = entryMaker()
    return wanted.flatMap(({ kind, day, minute, side, after }) => {
      const at = new Date(Date.UTC(2026, 0, 1) + (day * 1440 + minute) * 60_000).toISOString()
      const first = make({ kind, at })
      const entry = first.subject.kind === 'ear' ? { ...first, subject: { ...first.subject, side } } : first
      if (after === 'corrected')
        return [entry, { ...make({ kind, at }), subject: entry.subject, supersedes: [entry.id] }]
      if (after === 'taken-back')
        return [entry, make({ kind: 'withdrawal', at, withdraws: entry.id, reason: 'Wrong.' })]
      return [entry]
    })
  })

const takesBack = new Set(['withdrawal', 'refile'])

describe('chapters of any course', () => {
  it('hold every line that counts once, every owed thing once, and a sentence for everything missing', () => {
    fc.assert(
      fc.property(course, (entries) => {
        const file = fileOf(entries)
        const { owed } = owedOf(file, procedures, { rules: owedRules })
        const { chapters, aside } = chaptersOf(file, { procedures, owed })
        const there = chapters.flatMap((view) => view.there.map(({ header }) => header.id))
        const live = file.theCase.lines.filter(({ state, header }) => state === 'live' && !takesBack.has(header.kind))
        expect([...there].sort()).toEqual(live.map(({ header }) => header.id).sort())
        const next = [...chapters.flatMap((view) => view.next), ...aside].map(({ id }) => id)
        expect(next.sort()).toEqual(owed.map(({ id }) => id).sort())
        for (const view of chapters) {
          for (const one of view.missing) expect(sayMissing(one, chaptersInEnglish)).not.toContain('{')
          if (view.state === 'done') expect(view.next).toEqual([])
          if (view.state === 'not-reached') expect(view.there).toEqual([])
        }
      }),
      { numRuns: 60 },
    )
  })

  it('name every source of side that disagrees, and never the same side on both sides', () => {
    fc.assert(
      fc.property(course, (entries) => {
        const file = fileOf(entries)
        for (const found of sidesOf(file.theCase).disagreements) {
          expect(found.LEFT.every(({ says }) => says === 'LEFT')).toBe(true)
          expect(found.RIGHT.every(({ says }) => says === 'RIGHT')).toBe(true)
          expect(
            JSON.stringify(
              Object.values(
                sayDisagreement(found, file, sidesInEnglish).parts.flatMap(({ said, sources }) => [said, ...sources]),
              ),
            ),
          ).not.toContain('{')
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('lanes of any course', () => {
  it('show every line once, never touching, in time from left to right, inside their width, and read in order', () => {
    fc.assert(
      fc.property(course, fc.integer({ min: 320, max: 1600 }), (entries, width) => {
        const file = fileOf(entries)
        const lanes = lanesOf(file, { width })
        const marked = lanes.marks.flatMap(({ lines }) => lines)
        const live = file.theCase.lines.filter(({ state, header }) => state === 'live' && !takesBack.has(header.kind))
        expect(marked.map(({ header }) => header.id).sort()).toEqual(live.map(({ header }) => header.id).sort())
        const byTime = [...lanes.marks].sort((a, b) => ((a.lines[0]?.at ?? '') < (b.lines[0]?.at ?? '') ? -1 : 1))
        for (const [at, mark] of byTime.entries()) {
          expect(mark.x).toBeGreaterThanOrEqual((byTime[at - 1]?.x ?? 0) - 1e-6)
          expect(mark.x).toBeLessThanOrEqual(lanes.width)
          const level = lanes.marks.filter((one) => one.lane === mark.lane && one.level === mark.level && one !== mark)
          for (const other of level) expect(Math.abs(other.x - mark.x)).toBeGreaterThanOrEqual(24)
        }
        const items = laneItems(lanes, lanesInEnglish)
        const times = items.flatMap((item) => (item.kind === 'entry' ? [item.line.at] : []))
        expect(times).toEqual([...times].sort())
        expect(items.length - times.length).toBe(lanes.gaps.length)
      }),
      { numRuns: 60 },
    )
  })
})
