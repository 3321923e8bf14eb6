/** Worked answers of the reference table (data/susceptibility-examples.csv); each names its rule and how it is known. */
import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { antibiogramOf } from '#core/antibiogram/antibiogram.ts'
import { differencePoints } from '#core/antibiogram/difference-points.ts'
import { drugFigures, noCounts } from '#core/antibiogram/drug-figures.ts'
import { firstIsolates } from '#core/antibiogram/first-isolates.ts'
import type { GrownIsolate } from '#core/antibiogram/isolate.ts'
import type { AntibiogramMethod } from '#core/antibiogram/method.ts'
import { notCounted, type Purpose } from '#core/antibiogram/purpose.ts'
import { asGiven, isolateOf, plainMethod } from '#core/antibiogram/readings-for-tests.ts'
import type { Category, DrugReading } from '#core/culture/reading.ts'

type Row = Record<'id' | 'description' | 'inputs' | 'expected' | 'source', string>
const rows: Row[] = parse(readFileSync(new URL('./data/susceptibility-examples.csv', import.meta.url)), {
  columns: true,
})
const example = <Inputs, Expected>(id: string) => {
  const row = rows.find((one) => one.id === id)
  if (!row) throw new Error(`No example ${id}.`)
  const read = { inputs: JSON.parse(row.inputs) as Inputs, expected: JSON.parse(row.expected) as Expected }
  return { name: `${id} ${row.description} [${row.source}]`, ...read }
}
const usual: AntibiogramMethod = { ...plainMethod, edition: 'clsi-vet01s-7' }
const points = { susceptibleToResistant: 1, byOneStep: 0.5 }
const categoriesOf = ({ tested }: GrownIsolate<DrugReading>) =>
  new Map(tested.map(({ agent, category }) => [agent ?? '', category]))

type Printed = { animal: string; date: string; organism: string; site: string; category: Category }
const isolateFrom = ({ animal, date, organism, site, category }: Printed, drug: string) =>
  isolateOf(animal, date, { [drug]: category }, { organism, site })

describe('worked answers about antibiograms', () => {
  const yearly = example<
    { period: [string, string]; drug: string; isolates: Printed[] },
    { kept: [string, string, string][] } & Record<string, { n: number; S: number; percent_S: number; flag: string }>
  >('SX078')
  it(yearly.name, () => {
    const { period, drug, isolates } = yearly.inputs
    const method = { ...usual, from: period[0], until: period[1] }
    const grown = isolates.map((isolate) => isolateFrom(isolate, drug))
    const kept = firstIsolates(grown, method, { patternOf: categoriesOf, points })
    expect(kept.map(({ animal, day, organism }) => [animal, day, organism])).toEqual(
      expect.arrayContaining(yearly.expected.kept),
    )
    expect(kept).toHaveLength(yearly.expected.kept.length)
    for (const row of antibiogramOf(grown, asGiven, { method, points })) {
      const wanted = yearly.expected[row.organism]
      const [figures] = row.drugs
      expect({ n: row.n, S: figures?.s, percent_S: figures?.percent, flag: row.flag }).toEqual(wanted)
    }
  })

  const episode = example<{ episode_days: number }, { kept: string[]; dropped: string[] }>('SX079')
  it(episode.name, () => {
    const first = { kind: 'episode', days: episode.inputs.episode_days } as const
    const grown = yearly.inputs.isolates
      .filter(({ animal }) => animal === 'B')
      .map((isolate) => isolateFrom(isolate, yearly.inputs.drug))
    const kept = firstIsolates(grown, { ...usual, first }, { patternOf: categoriesOf, points }).map(({ day }) => day)
    expect(kept).toEqual(episode.expected.kept)
    expect(grown.map(({ day }) => day).filter((day) => !kept.includes(day))).toEqual(episode.expected.dropped)
  })

  const shares = example<
    { counts: { S: number; SDD: number; I: number; R: number; NI: number; not_tested: number } },
    { n: number; percent_S: number; percent_SDD: number; percent_R: number; flag: string | null }
  >('SX080')
  it(shares.name, () => {
    const { S: s, SDD: sdd, I: i, R: r, NI: notInterpretable, not_tested: notTested } = shares.inputs.counts
    const figures = drugFigures({ ...noCounts, s, sdd, i, r, notInterpretable, notTested }, usual)
    const { n, percent_S, percent_SDD, percent_R, flag } = shares.expected
    const wanted = { n, percent: percent_S, percentSdd: percent_SDD, percentR: percent_R, flag }
    expect(figures).toMatchObject({ ...wanted, notInterpretable: 4, notTested: 3 })
  })

  const few = example<
    { counts: { S: number; R: number } },
    { n: number; percent_S: number; flag: string; ci95_wilson: [number, number] }
  >('SX081')
  it(few.name, () => {
    const figures = drugFigures({ ...noCounts, s: few.inputs.counts.S, r: few.inputs.counts.R }, usual)
    const { n, percent_S, flag, ci95_wilson } = few.expected
    expect(figures).toMatchObject({ n, percent: percent_S, flag, interval: ci95_wilson })
  })

  const practice = example<
    { counts: { S: number; R: number }; minimum: number },
    { n: number; percent_S: number; flag: string }
  >('SX082')
  it(practice.name, () => {
    const { counts, minimum } = practice.inputs
    const figures = drugFigures({ ...noCounts, s: counts.S, r: counts.R }, { ...usual, minimum })
    const { n, percent_S, flag } = practice.expected
    expect(figures).toMatchObject({ n, percent: percent_S, flag })
  })

  const clinical = example<
    { isolates: { animal: string; reason: Purpose; category: Category }[] },
    { n: number; percent_S: number }
  >('SX083')
  it(clinical.name, () => {
    const grown = clinical.inputs.isolates
      .filter(({ reason }) => notCounted(reason, 'final') === null)
      .map(({ animal, category }) => isolateOf(animal, '2026-01-05', { cefalexin: category }))
    const [row] = antibiogramOf(grown, asGiven, { method: usual, points })
    expect(row?.drugs[0]).toMatchObject({ n: clinical.expected.n, percent: clinical.expected.percent_S })
  })

  const pattern = example<
    { first: Record<string, Category>; second: Record<string, Category> },
    { points: number; kept_second: boolean }
  >('SX084')
  it(pattern.name, () => {
    const [first, second] = [pattern.inputs.first, pattern.inputs.second]
    const sum = differencePoints(new Map(Object.entries(first)), new Map(Object.entries(second)), points)
    expect(sum).toBe(pattern.expected.points)
    const grown = [isolateOf('A', '2026-01-05', first), isolateOf('A', '2026-02-05', second)]
    const rule = (when: 'exceeded' | 'reached', threshold: number) =>
      ({ ...usual, first: { kind: 'phenotype', days: 365, points: threshold, when } }) as const
    const kept = (when: 'exceeded' | 'reached', threshold = 2) =>
      firstIsolates(grown, rule(when, threshold), { patternOf: categoriesOf, points }).length === 2
    expect([kept('exceeded'), kept('reached')]).toEqual([pattern.expected.kept_second, pattern.expected.kept_second])
    // At the threshold itself the two ways differ.
    expect([kept('exceeded', 3), kept('reached', 3)]).toEqual([false, true])
  })
})
