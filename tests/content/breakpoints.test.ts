import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { speciesList } from '#core/animal/species.ts'
import type { Breakpoint, Edition } from '#core/culture/breakpoint.ts'
import { chooseBreakpoint, chooseFallback } from '#core/culture/choose-breakpoint.ts'
import { editionById } from '#core/culture/editions.ts'

const { editions, organisms, agents } = susceptibility
const all = editions.flatMap((edition) => edition.rows.map((row) => ({ edition, row })))
const twice = (texts: readonly string[]) => texts.filter((text, at) => texts.indexOf(text) !== at)
const wrong = (is: (edition: Edition, row: Breakpoint) => boolean) =>
  all.filter(({ edition, row }) => is(edition, row)).map(({ edition, row }) => `${edition.id} ${row.id}`)

/** Steps of the doubling ladder, as standards print them. */
const ladder =
  '0.001 0.002 0.004 0.008 0.015 0.016 0.03 0.032 0.06 0.064 0.12 0.125 0.25 0.5 1 2 4 8 16 32 64 128 256 512'

describe('editions of breakpoints', () => {
  it('have ids unlike each other, and rows unlike each other', () => {
    expect(twice(editions.map(({ id }) => id))).toEqual([])
    expect(editions.flatMap(({ id, rows }) => twice(rows.map((row) => `${id} ${row.id}`)))).toEqual([])
    expect(all.length).toBeGreaterThan(2000)
  })

  it('name one current edition of a standard at most', () => {
    expect(twice(editions.filter(({ current }) => current).map(({ standard }) => standard))).toEqual([])
  })

  it('name only organisms and drugs that are there', () => {
    const organism = new Set(['any', ...organisms.map(({ id }) => id)])
    const agent = new Set(['any', ...agents.map(({ id }) => id)])
    expect(wrong((_, row) => !organism.has(row.organisms) || !agent.has(row.agent))).toEqual([])
  })

  it('speak of the hosts that their readers are', () => {
    const hosts: Record<Breakpoint['kind'], readonly string[]> = {
      clinical: ['dog', 'cat'],
      'human-derived': ['dog', 'cat'],
      human: ['human'],
      screen: ['human'],
      'wild-type-limit': ['any'],
      proposal: ['cat'],
      none: ['any', 'dog', 'cat'],
    }
    expect(wrong((_, { kind, host }) => !hosts[kind].includes(host))).toEqual([])
    expect(wrong((edition, { host }) => (edition.audience === 'people') !== (host === 'human'))).toEqual([])
  })

  it('name the load of every disk, and none for a dilution', () => {
    expect(wrong((_, { method, disk }) => (method === 'DISK') !== /^\d.* (µg|units?)$/.test(disk ?? ''))).toEqual([])
  })
})

describe('the ends of a row', () => {
  const steps = new Set(ladder.split(' '))
  const numbers = ({ ends: { value } }: Breakpoint) =>
    [
      value.susceptible,
      ...(value.between?.steps.flatMap(({ value: from, upTo }) => [from, upTo ?? from]) ?? []),
      value.resistant,
    ].filter((end) => end !== null)

  it('are steps of the ladder, or whole zones no smaller than a disk', () => {
    const off = (row: Breakpoint) => (end: string) =>
      row.method === 'MIC' ? !steps.has(end) : !/^\d+$/.test(end) || Number(end) < 6
    expect(wrong((_, row) => numbers(row).some(off(row)))).toEqual([])
  })

  it('go one way, from S to R', () => {
    const turned = (row: Breakpoint) => {
      const { susceptible, between, resistant } = row.ends.value
      const middle = between?.steps.flatMap(({ value, upTo }) => [value, upTo ?? value]).map(Number) ?? []
      const ordered = row.method === 'MIC' ? middle : middle.sort((a, b) => b - a)
      const line = [susceptible ?? [], ordered, resistant ?? []].flat().map(Number)
      const risen = row.method === 'MIC' ? line : line.map((width) => -width)
      return risen.some((end, at) => at > 0 && end < (risen[at - 1] ?? end))
    }
    expect(wrong((_, row) => turned(row))).toEqual([])
  })

  it('leave none out between them: by CLSI each step has its name, by EUCAST R begins right behind', () => {
    const rung = (end: string) => Math.round(Math.log2(Number(end)))
    const gap = (edition: Edition, row: Breakpoint) => {
      const { susceptible, between, resistant } = row.ends.value
      if (susceptible === null || resistant === null) return false
      const at = row.method === 'MIC' ? rung : (end: string) => -Number(end)
      const closed = edition.convention === 'CLSI' ? 1 : 0
      const named = (between?.steps ?? []).flatMap(({ value, upTo }) => {
        const [from, to] = [at(value), at(upTo ?? value)].sort((a, b) => a - b)
        return Array.from({ length: (to ?? 0) - (from ?? 0) + 1 }, (_, place) => (from ?? 0) + place)
      })
      const wanted = at(resistant) - at(susceptible) - closed
      return new Set(named).size !== wanted
    }
    expect(wrong(gap)).toEqual([])
  })

  it('are there wherever a category can be given, and nowhere else than in a row that says so', () => {
    const gives = ['clinical', 'human-derived', 'human', 'screen']
    expect(wrong((_, row) => gives.includes(row.kind) && numbers(row).length === 0)).toEqual([])
    expect(wrong((_, row) => row.kind === 'none' && numbers(row).length > 0)).toEqual([])
  })

  it('carry a dose with every SDD step of an animal, and with no value of people', () => {
    const bare = ({ ends }: Breakpoint) =>
      ends.value.between?.category === 'SDD' && ends.value.between.steps.some(({ dose }) => dose === undefined)
    expect(wrong(({ audience }, row) => audience === 'animals' && bare(row))).toEqual([])
    expect(wrong(({ audience }, row) => audience === 'people' && row.dose !== undefined)).toEqual([])
  })
})

/** Cases were judged by these rows. A change is a new edition in a new file, never another print of an old one. */
const givenOut = [
  ['clsi-m100-28', 2, '90296e70801e47ba'],
  ['clsi-m100-30', 143, '37a190283bfa022a'],
  ['clsi-m100-31', 143, 'd82652c32bab648f'],
  ['clsi-m100-32', 143, 'b30a98290eddff49'],
  ['clsi-m100-33', 143, '80c1dd3366239368'],
  ['clsi-m100-34', 172, '92da2727f8da0c08'],
  ['clsi-m100-35', 175, 'c76b0483f7b9d54e'],
  ['clsi-m45', 35, 'cd93b03911177b50'],
  ['clsi-vet01s-5', 142, '54f4807798082862'],
  ['clsi-vet01s-6', 163, 'ecbe662f602d7bcd'],
  ['clsi-vet01s-7', 194, '638d6b72d99313e7'],
  ['clsi-vet08-4', 132, '71ad1e23cf0063aa'],
  ['eucast-12', 152, 'e35500e4d49612ee'],
  ['eucast-13', 184, 'e0e7e50fe61cb532'],
  ['eucast-14', 184, '9373e8919788e73b'],
  ['eucast-15', 226, '3587077e6bdf34db'],
  ['eucast-ecoff-2023', 1, '44d195dd6a9f25a9'],
  ['eucast-ecoff-2025', 46, '5c39b5cade631491'],
  ['proposal-papich-2025', 8, 'db3027f525473b1f'],
  ['vetcast-2026', 1, '7e89521c73e93387'],
] as const

describe('an edition that was given out', () => {
  it.each(givenOut)('%s is never edited', (id, rows, print) => {
    const edition = editions.find((one) => one.id === id)
    expect(edition?.rows.length).toBe(rows)
    expect(printOf(edition)).toBe(print)
  })

  it('is pinned above', () => expect(givenOut.map(([id]) => id)).toEqual(editions.map(({ id }) => id)))

  it('would be caught with one value changed', () => {
    const [first] = editions
    const changed = { ...first, rows: first?.rows.map((row, at) => (at === 0 ? { ...row, disk: '31 µg' } : row)) }
    expect(printOf(changed as Edition)).not.toBe(printOf(first))
  })
})

describe('an ear', () => {
  const people = susceptibility.people.map((id) => editionById(editions, id))
  const drugs = agents.filter(({ id }) => all.some(({ row }) => row.agent === id))

  it.each(['clsi-vet01s-7', 'clsi-vet01s-6', 'clsi-vet01s-5', 'clsi-vet08-4', 'clsi-m100-35', 'eucast-15'])(
    'is never read by a value of urine, whatever grows and is tested: %s',
    (id) => {
      const edition = editionById(editions, id)
      const found = speciesList.flatMap((host) =>
        organisms.flatMap((organism) =>
          drugs.flatMap(({ id: agent }) =>
            (['MIC', 'DISK'] as const).flatMap((method) => {
              const wanted = { host, site: 'soft-tissue', organism, agent, method, disk: null } as const
              const chosen = chooseBreakpoint(wanted, edition)
              const beside = chooseFallback(wanted, edition, people)
              return [...(typeof chosen === 'string' ? [] : chosen.rows), ...(beside?.rows ?? [])]
            }),
          ),
        ),
      )
      expect(found.length).toBeGreaterThan(1000)
      expect(found.filter(({ sites }) => sites.every((site) => site === 'urinary'))).toEqual([])
    },
  )
})

/** What a row decides: not its remark, not how it is known. */
function printOf(edition: Edition | undefined): string {
  const rows = edition?.rows.map(({ id, kind, disk, ends, dose }) => [id, kind, disk, ends.value, dose?.value ?? null])
  return createHash('sha256')
    .update(JSON.stringify([edition?.convention, rows]))
    .digest('hex')
    .slice(0, 16)
}
