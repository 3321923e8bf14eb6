import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Category, DrugReading } from '#core/culture/reading.ts'
import { antibiogramOf } from './antibiogram.ts'
import { gatherIsolates } from './gather-isolates.ts'
import type { GrownIsolate } from './isolate.ts'
import type { AntibiogramMethod, FirstIsolateRule } from './method.ts'
import { asGiven, isolateOf, plainMethod } from './readings-for-tests.ts'

const categories: readonly Category[] = ['S', 'SDD', 'I', 'R', 'NS', 'NI', 'no_breakpoint']
const drugs = ['amikacin', 'cefalexin', 'doxycycline']
const points = { susceptibleToResistant: 1, byOneStep: 0.5 }
type Isolate = GrownIsolate<DrugReading>

/** Isolates of three animals over two years; each day of an animal holds one of each organism at most. */
const isolates = fc
  .uniqueArray(
    fc.record({
      animal: fc.constantFrom('A', 'B', 'C'),
      day: fc
        .integer({ min: 0, max: 729 })
        .map((day) => new Date(Date.UTC(2025, 0, 1 + day)).toISOString().slice(0, 10)),
      organism: fc.constantFrom('escherichia-coli', 'proteus-mirabilis'),
      site: fc.constantFrom('canal', 'bulla-on-entry'),
      pattern: fc.array(fc.constantFrom(...categories), { minLength: 3, maxLength: 3 }),
    }),
    { selector: ({ animal, day, organism }) => `${animal} ${day} ${organism}`, maxLength: 25 },
  )
  .map((plans) =>
    plans.map(({ animal, day, organism, site, pattern }): Isolate => {
      const read = Object.fromEntries(drugs.map((drug, place) => [drug, pattern[place] ?? 'NI']))
      return isolateOf(animal, day, read, { organism, site })
    }),
  )
const rules = fc.constantFrom<FirstIsolateRule>(
  { kind: 'calendar-year' },
  { kind: 'episode', days: 365 },
  { kind: 'phenotype', days: 365, points: 1, when: 'reached' },
)
const methods = fc.record({
  first: rules,
  sites: fc.constantFrom('together', 'apart', 'each'),
  from: fc.constantFrom(null, '2025-07-01'),
  until: fc.constantFrom(null, '2026-06-30'),
  minimum: fc.constantFrom(1, 3),
  flagBelow: fc.constant(30),
  edition: fc.constant('an-edition'),
}) satisfies fc.Arbitrary<AntibiogramMethod>

const table = (all: readonly Isolate[], method: AntibiogramMethod) => antibiogramOf(all, asGiven, { method, points })

describe('laws of an antibiogram', () => {
  it('is the same when its rows come one by one and in any order', () => {
    fc.assert(
      fc.property(
        isolates,
        methods,
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (all, method, keys) => {
          const gathering = gatherIsolates<DrugReading>(method)
          const rows = all.flatMap((isolate) => isolate.tested.map((tested) => ({ ...isolate, tested })))
          const shuffled = rows
            .map((row) => ({ row, key: keys.next().value ?? 0 }))
            .sort((a, b) => a.key - b.key)
            .map(({ row }) => row)
          for (const row of shuffled) gathering.add(row)
          expect(table(gathering.isolates(), method)).toEqual(table(all, method))
        },
      ),
    )
  })

  it('counts every isolate of a row once under each drug, and holds the share within its interval', () => {
    fc.assert(
      fc.property(isolates, methods, (all, method) => {
        for (const { n, drugs: counted } of table(all, method)) {
          for (const drug of counted) {
            const { s, sdd, i, r, ns, notInterpretable, noBreakpoint, notTested, percent, interval } = drug
            expect(drug.n).toBe(s + sdd + i + r + ns)
            expect(drug.n + notInterpretable + noBreakpoint + notTested).toBe(n)
            if (percent === null || interval === null) continue
            expect(drug.n).toBeGreaterThanOrEqual(method.minimum)
            expect(interval[0]).toBeLessThanOrEqual(percent)
            expect(interval[1]).toBeGreaterThanOrEqual(percent)
          }
        }
      }),
    )
  })

  it('never counts an animal twice for one organism in a year, whatever came later', () => {
    fc.assert(
      fc.property(isolates, (all) => {
        const method = { ...plainMethod, sites: 'together' } as const
        const rows = table(all, method)
        const wanted = new Set(all.map(({ animal, organism, day }) => `${animal} ${organism} ${day.slice(0, 4)}`))
        expect(rows.reduce((sum, { n }) => sum + n, 0)).toBe(wanted.size)
      }),
    )
  })
})
