import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { speciesList } from '#core/animal/species.ts'
import { isolateTests } from '#core/journal/kinds/specimen-result.ts'
import { highestRung, lowestRung, rungName, type Sign } from './ladder.ts'
import { readIsolates } from './read-isolates.ts'
import { readValue, resistanceOrder } from './read-value.ts'

const { editions, organisms, agents } = susceptibility
/** Every row that has an end, with the convention that it is read by. */
const rows = editions.flatMap(({ convention, rows: all }) =>
  all
    .filter(({ ends: { value } }) => value.susceptible !== null || value.resistant !== null)
    .map((row) => ({ row, convention })),
)
const ofMethod = (method: 'MIC' | 'DISK') => fc.constantFrom(...rows.filter(({ row }) => row.method === method))
const rung = fc.integer({ min: -10, max: 12 })
const width = fc.integer({ min: 6, max: 55 })
const signs: readonly Sign[] = ['=', '<=', '<', '>=', '>']
const sign = fc.constantFrom(...signs)

const mic = (one: Sign, at: number) => ({ kind: 'mic', sign: one, amount: rungName(at), partner: null }) as const
const zone = (one: Sign, at: number) => ({ kind: 'zone', sign: one, millimetres: String(at) }) as const
type Read = typeof readValue
function possible(...args: Parameters<Read>): string[] {
  const read = readValue(...args)
  if (read.kind === 'doubt') throw new Error(`No reading: ${read.doubt}.`)
  return read.possible.map(({ category }) => category)
}
const rank = (categories: readonly string[]) => (resistanceOrder as readonly string[]).indexOf(categories[0] ?? '')

describe('readings of one number, over every row of every edition', () => {
  it('a higher MIC is never read as more susceptible', () => {
    fc.assert(
      fc.property(ofMethod('MIC'), rung, rung, ({ row, convention }, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)]
        expect(rank(possible(mic('=', low), row, convention))).toBeLessThanOrEqual(
          rank(possible(mic('=', high), row, convention)),
        )
      }),
      { numRuns: 2000 },
    )
  })

  it('a wider zone is never read as more resistant', () => {
    fc.assert(
      fc.property(ofMethod('DISK'), width, width, ({ row, convention }, one, other) => {
        const [narrow, wide] = [Math.min(one, other), Math.max(one, other)]
        expect(rank(possible(zone('=', narrow), row, convention))).toBeGreaterThanOrEqual(
          rank(possible(zone('=', wide), row, convention)),
        )
      }),
      { numRuns: 2000 },
    )
  })

  it('a sign never rules out what the plain number is: widening loses certainty, never invents it', () => {
    fc.assert(
      fc.property(ofMethod('MIC'), rung, rung, ({ row, convention }, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)]
        const narrower = possible(mic('<=', low), row, convention)
        expect(possible(mic('<=', high), row, convention)).toEqual(expect.arrayContaining(narrower))
        const higher = possible(mic('>=', high), row, convention)
        expect(possible(mic('>=', low), row, convention)).toEqual(expect.arrayContaining(higher))
        for (const wide of ['<=', '>='] as const) {
          const exact = possible(mic('=', low), row, convention)
          expect(possible(mic(wide, low), row, convention)).toEqual(expect.arrayContaining(exact))
        }
      }),
      { numRuns: 2000 },
    )
  })

  it('below and from a number together are everything that it can be', () => {
    fc.assert(
      fc.property(ofMethod('MIC'), rung, ({ row, convention }, at) => {
        const parts = [...possible(mic('<', at), row, convention), ...possible(mic('>=', at), row, convention)]
        const all = Array.from({ length: highestRung - lowestRung + 1 }, (_, place) => lowestRung + place)
        const every = new Set(all.flatMap((one) => (one >= -10 ? possible(mic('=', one), row, convention) : [])))
        expect([...every].every((category) => parts.includes(category))).toBe(true)
      }),
      { numRuns: 500 },
    )
  })
})

describe('readings of whole isolates', () => {
  const animalEditions = editions.filter(
    ({ audience, rows: all }) => audience === 'animals' && all.some(({ kind }) => kind === 'clinical'),
  )
  const peopleEditions = editions.filter(({ id }) => susceptibility.people.includes(id))
  const raw = fc.oneof(
    fc
      .tuple(sign, rung)
      .map(([one, at]) => ({ raw: `${one === '=' ? '' : one}${rungName(at)}`, method: 'MIC' as const })),
    width.map((at) => ({ raw: `${at} mm`, method: 'DISK' as const })),
    fc.constantFrom('S', 'I', 'R').map((text) => ({ raw: text, method: null })),
    fc.string({ maxLength: 12 }).map((text) => ({ raw: text, method: null })),
  )
  const line = fc.record({
    agent: fc.option(fc.constantFrom(...agents.map(({ id }) => id)), { freq: 20 }),
    printed: raw,
    disk: fc.constantFrom(null, '5 µg', '10 µg', '30 µg'),
    category: fc.constantFrom(null, null, 'S', 'R'),
  })
  const isolate = fc.record({
    key: fc.constant('1'),
    organism: fc.constantFrom('as printed', 'MRSP', 'ESBL'),
    species: fc.option(fc.constantFrom(...organisms.map(({ id }) => id)), { freq: 20 }),
    amount: fc.constant(null),
    results: fc
      .array(line, { maxLength: 8 })
      .map((lines) =>
        lines.map(({ agent, printed, disk, category }) => ({ drug: agent ?? '?', agent, disk, category, ...printed })),
      ),
    tests: fc.array(
      fc.record({ test: fc.constantFrom(...isolateTests), result: fc.constantFrom('positive', 'negative') }),
      { maxLength: 2 },
    ),
  })
  const request = fc.record({
    host: fc.constantFrom(...speciesList),
    edition: fc.constantFrom(...[...animalEditions, ...peopleEditions].map(({ id }) => id)),
    isolates: isolate.map((one) => [one]),
  })

  it('never throw, read by this animal’s own rows, never by a urine value, and only ever by the edition asked', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const [reading] = readIsolates({ ...asked, site: 'soft-tissue' }, susceptibility)
        for (const { breakpoint, fallback, category, flags } of reading?.results ?? []) {
          if (breakpoint) {
            expect(breakpoint.host).toBe(asked.host)
            expect(breakpoint.edition).toBe(asked.edition)
            expect(breakpoint.site).toMatch(/soft-tissue|any/)
          }
          if (fallback) {
            expect(fallback.breakpoint.host).not.toBe(asked.host)
            expect(fallback.breakpoint.site).not.toBe('urinary')
            expect(fallback.breakpoint.dose).toBeNull()
          }
          if (category === 'S' && breakpoint === null) {
            expect(
              flags.some((flag) => flag === 'laboratory-category-only' || flag === 'not-printed') ||
                fallback?.category === 'S',
            ).toBe(true)
          }
        }
      }),
      { numRuns: 1500 },
    )
  })

  it('keep every printed line, in its order and as printed', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const printed = asked.isolates[0]?.results ?? []
        const [reading] = readIsolates({ ...asked, site: 'soft-tissue' }, susceptibility)
        expect(reading?.results.slice(0, printed.length).map((one) => one.raw)).toEqual(printed.map((one) => one.raw))
      }),
      { numRuns: 300 },
    )
  })

  it('call no beta-lactam S in a methicillin-resistant isolate, and nothing S that its organism always resists', () => {
    const staphylococci = organisms.filter(
      ({ id, groups }) => id === 'staphylococcus' || groups.includes('staphylococcus'),
    )
    const resistant = fc.tuple(request, fc.constantFrom(...staphylococci)).map(([asked, { id }]) => ({
      ...asked,
      isolates: asked.isolates.map((one) => ({
        ...one,
        species: id,
        tests: [{ test: 'meca' as const, result: 'positive' as const }],
      })),
    }))
    fc.assert(
      fc.property(resistant, (asked) => {
        const [reading] = readIsolates({ ...asked, site: 'soft-tissue' }, susceptibility)
        const betaLactams = [
          'cefalexin',
          'cefovecin',
          'cefpodoxime',
          'amoxicillin-clavulanate',
          'ampicillin',
          'cefazolin',
          'imipenem',
        ]
        const read = (reading?.results ?? []).filter(({ agent }) => agent !== null && betaLactams.includes(agent))
        expect(read.map(({ category }) => category).filter((category) => category !== 'R')).toEqual([])
      }),
      { numRuns: 500 },
    )
    const pseudomonas = request.map((asked) => ({
      ...asked,
      isolates: asked.isolates.map((one) => ({ ...one, species: 'pseudomonas-aeruginosa' })),
    }))
    fc.assert(
      fc.property(pseudomonas, (asked) => {
        const [reading] = readIsolates({ ...asked, site: 'soft-tissue' }, susceptibility)
        const always = [
          'amoxicillin-clavulanate',
          'doxycycline',
          'cefalexin',
          'chloramphenicol',
          'trimethoprim-sulfonamide',
        ]
        const read = (reading?.results ?? []).filter(({ agent }) => agent !== null && always.includes(agent))
        expect(read.map(({ category }) => category).filter((category) => category !== 'R')).toEqual([])
      }),
      { numRuns: 500 },
    )
  })
})
