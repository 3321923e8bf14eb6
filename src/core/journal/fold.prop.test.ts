import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { entryMaker, testId } from './entries-for-tests.ts'
import type { Entry } from './entry.ts'
import { fold } from './fold.ts'

/** A journal in which entries correct and withdraw each other at random, some before their targets, some in rings. */
const journals = fc
  .array(
    fc.record({
      what: fc.constantFrom('note', 'note', 'theatre-stamp', 'pause-item', 'withdrawal'),
      targets: fc.array(fc.integer({ min: 1, max: 14 }), { maxLength: 2 }),
      minute: fc.integer({ min: 0, max: 5 }),
      measured: fc.option(fc.integer({ min: -400_000, max: 400_000 })),
      byClock: fc.boolean(),
    }),
    { maxLength: 12 },
  )
  .map((plans): Entry[] => {
    const make = entryMaker()
    return plans.map((plan, place) => {
      const at = `2026-03-01T10:0${plan.minute}:00.000Z`
      const targets = [...new Set(plan.targets)]
        .map((target) => testId(target))
        .filter((id) => id !== testId(place + 1))
      const withdrawal = plan.what === 'withdrawal'
      const entry = make({
        kind: plan.what as 'note',
        at,
        supersedes: withdrawal ? [] : targets,
        withdraws: withdrawal ? (targets[0] ?? null) : null,
        reason: 'Because.',
      })
      return {
        ...entry,
        happenedAt: { ...entry.happenedAt, by: plan.byClock ? 'clock' : 'person' },
        device: { ...entry.device, offset: plan.measured === null ? null : { ms: plan.measured, ageMs: 0 } },
      }
    })
  })

/** Everything a reader can see of a case. */
function seen(entries: readonly Entry[]) {
  const theCase = fold(entries)
  return {
    lines: theCase.lines.map((line) => ({
      ...line,
      supersededBy: [...line.supersededBy].sort(),
      withdrawnBy: [...line.withdrawnBy].sort(),
    })),
    live: theCase.live('note').map((line) => line.header.id),
    conflicts: [...theCase.conflicts].sort((a, b) => JSON.stringify(a).localeCompare(JSON.stringify(b), 'en')),
    pending: theCase.pending,
    unknown: theCase.unknown,
  }
}

describe('the fold, whatever the entries', () => {
  it('is the same whatever the order of arrival', () => {
    fc.assert(
      fc.property(
        journals.chain((entries) =>
          fc.tuple(fc.constant(entries), fc.shuffledSubarray(entries, { minLength: entries.length })),
        ),
        ([entries, shuffled]) => {
          expect(seen(shuffled)).toEqual(seen(entries))
        },
      ),
      { numRuns: 400 },
    )
  })

  it('counts an entry that arrives twice once', () => {
    fc.assert(
      fc.property(journals, (entries) => {
        expect(seen([...entries, ...entries])).toEqual(seen(entries))
      }),
    )
  })

  it('never hides the old text from the history', () => {
    fc.assert(
      fc.property(journals, (entries) => {
        const history = new Map(fold(entries).lines.map((line) => [line.header.id, line.body]))
        for (const entry of entries) expect(history.get(entry.id)).toEqual(entry.body)
      }),
    )
  })

  it('never leaves a superseded or withdrawn entry among those that count', () => {
    fc.assert(
      fc.property(journals, (entries) => {
        const theCase = fold(entries)
        for (const line of theCase.live('note')) expect(theCase.line(line.header.id)?.state).toBe('live')
        const counted = theCase.lines.filter((line) => line.state === 'live').length
        expect(counted + theCase.lines.filter((line) => line.state !== 'live').length).toBe(entries.length)
      }),
    )
  })

  it('keeps something that counts wherever only corrections without rings were written', () => {
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 5 }), { minLength: 1, maxLength: 10 }), (choices) => {
        const make = entryMaker()
        const entries: Entry[] = []
        for (const choice of choices) {
          const target = entries[choice % Math.max(1, entries.length)]
          entries.push(make({ supersedes: target ? [target.id] : [], reason: 'Because.' }))
        }
        expect(fold(entries).live('note').length).toBeGreaterThan(0)
      }),
    )
  })
})
