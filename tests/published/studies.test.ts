/** Percentages printed in abstracts, recomputed from the counts we hold. Contradictions inside a paper stay visible. */
import { describe, expect, it } from 'vitest'
import { studies } from '#content/studies/index.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import type { CountUnit, StudyOutcome } from '#core/evidence/study.ts'
import reference from './data/study-counts.json' with { type: 'json' }

type Wanted = { unit?: CountUnit; subgroup?: string; reading?: string }

function rowsOf(study: string, outcome: OutcomeCode, wanted: Wanted = {}): StudyOutcome[] {
  const found = studies.find(({ id }) => id === study)
  if (found === undefined) throw new Error(`There is no study ${study}.`)
  return found.rows.filter(
    (row) =>
      row.outcome === outcome &&
      (wanted.unit === undefined || row.unit === wanted.unit) &&
      row.subgroup === wanted.subgroup &&
      (wanted.reading === undefined || row.reading?.startsWith(wanted.reading)),
  )
}

function countOf(study: string, outcome: OutcomeCode, wanted?: Wanted): { events: number; total: number } {
  const [row, ...others] = rowsOf(study, outcome, wanted)
  if (row?.counted.kind !== 'count' || others.length > 0) throw new Error(`${study}, ${outcome}: not one count.`)
  return { events: row.counted.events, total: row.counted.total }
}

function percentOf(study: string, outcome: OutcomeCode, wanted?: Wanted): string {
  const { events, total } = countOf(study, outcome, wanted)
  return ((100 * events) / total).toFixed(1)
}

describe('every count as it was taken down from its abstract', () => {
  const line = (row: StudyOutcome) => {
    const { events, total } = row.counted.kind === 'count' ? row.counted : { events: null, total: null }
    return [row.study, row.species, row.unit, row.outcome, events, total, row.pool.use, row.confidence].join(' ')
  }
  const held = studies.flatMap((study) => study.rows.map(line))

  it('stands in the content, with its use and confidence', () => {
    expect(reference.counts).toHaveLength(112)
    for (const count of reference.counts) expect(held).toContain(count.join(' '))
  })

  it('is joined only by the three that the commentary and the wound percentage add, and by bare percentages', () => {
    const known = new Set(reference.counts.map((count) => count.join(' ')))
    const added = studies.flatMap((study) => study.rows).filter((row) => !known.has(line(row)))
    expect(added.map(({ study, outcome, counted }) => `${study} ${outcome} ${counted.kind}`)).toEqual([
      'coleman-2016 vestibular_any count',
      'coleman-2016 horner_any count',
      'fox-2008 wound_any count',
      'janssens-2017 disease_recurrence_local percent-only',
      'marino-1993 tumour_local_recurrence percent-only',
      'sylvestre-1998 resolution_or_improved percent-only',
    ])
  })
})

const arms = { both: 'both ears in one session (20 dogs)', one: 'one side (37 dogs)' }

describe('Fox 2008, 309 dogs (BSAVA Congress abstract)', () => {
  it.each([
    ['postop_complication_any', 112, '36.2'],
    ['vestibular_any', 35, '11.3'],
    ['neuro_complication_any', 93, '30.1'],
    ['wound_any', 23, '7.4'],
    ['wound_infection_or_dehiscence', 7, '2.3'],
    ['deep_recurrence', 16, '5.2'],
    ['haemorrhage_intraop_any', 29, '9.4'],
  ] as const)('%s: %i of 309 is %s %%', (outcome, events, percent) => {
    expect(countOf('fox-2008', outcome)).toEqual({ events, total: 309 })
    expect(percentOf('fox-2008', outcome)).toBe(percent)
  })

  it('keeps both contradictions as printed: 36.3 % for 36.2 %, and 25.5 % for 26.2 %', () => {
    expect(rowsOf('fox-2008', 'postop_complication_any')[0]?.printed).toContain('36.3 %')
    expect(percentOf('fox-2008', 'facial_nerve_deficit_any')).toBe('26.2')
    expect(rowsOf('fox-2008', 'facial_nerve_deficit_any')[0]?.printed).toContain('25.5 %')
    expect(((100 * 79) / 309).toFixed(1)).toBe('25.6')
    expect(((100 * 81) / 318).toFixed(1)).toBe('25.5')
  })
})

describe('Coleman & Smeak 2016, 79 ears of 57 dogs', () => {
  it.each([
    ['postop_complication_any', '72.5', '64.1'],
    ['facial_nerve_deficit_any', '40.0', '33.3'],
    ['ocular_surface_any', '15.0', '12.8'],
    ['wound_minor_any', '32.5', '23.1'],
  ] as const)('%s: %s %% of both-sided and %s %% of one-sided ears add up to the whole', (outcome, both, one) => {
    expect(percentOf('coleman-2016', outcome, { subgroup: arms.both })).toBe(both)
    expect(percentOf('coleman-2016', outcome, { subgroup: arms.one })).toBe(one)
    const parts = [arms.both, arms.one].map((subgroup) => countOf('coleman-2016', outcome, { subgroup }))
    expect(countOf('coleman-2016', outcome)).toEqual(summed(parts))
  })

  it('balance signs 15 % and 23.1 %, Horner 7.5 % and 5.1 %, from the commentary, fit 40 and 39 ears', () => {
    expect([6 / 40, 9 / 39, 3 / 40, 2 / 39].map((share) => (100 * share).toFixed(1))).toEqual([
      '15.0',
      '23.1',
      '7.5',
      '5.1',
    ])
    expect(countOf('coleman-2016', 'vestibular_any')).toEqual({ events: 6 + 9, total: 79 })
    expect(countOf('coleman-2016', 'horner_any')).toEqual({ events: 3 + 2, total: 79 })
  })
})

describe('Banks 2023, 306 ears', () => {
  const breeds = ['extremely flat-faced breeds', 'other breeds']

  it.each([
    ['intraop_complication_any', ['11.1', '5.3'], '6.9'],
    ['periop_complication_any', ['23.5', '29.3'], '27.8'],
  ] as const)('%s: the two groups give the printed percentages and add up', (outcome, percents, whole) => {
    expect(breeds.map((subgroup) => percentOf('banks-2023', outcome, { subgroup }))).toEqual(percents)
    expect(countOf('banks-2023', outcome)).toEqual(
      summed(breeds.map((subgroup) => countOf('banks-2023', outcome, { subgroup }))),
    )
    expect(percentOf('banks-2023', outcome)).toBe(whole)
  })
})

describe('Esposito 2026, 156 operations with two incisions', () => {
  const incisions = ['circular incision', 'T-shaped incision']

  it.each(['haemorrhage_intraop_any', 'facial_nerve_deficit_any', 'wound_any'] as const)(
    '%s: the two incisions add up to the whole',
    (outcome) => {
      const parts = incisions.map((subgroup) => countOf('esposito-2026', outcome, { subgroup }))
      expect(countOf('esposito-2026', outcome)).toEqual(summed(parts))
    },
  )

  it('keeps the contradiction: 60 of 156 is 38.5 %, printed as 38.6 %', () => {
    expect(percentOf('esposito-2026', 'postop_complication_any')).toBe('38.5')
    expect(rowsOf('esposito-2026', 'postop_complication_any')[0]?.printed).toContain('38.6 %')
  })
})

describe('Wainberg 2019, 289 ventral operations on 282 cats', () => {
  it.each([
    ['horner_any', 197, '68.2'],
    ['horner_permanent', 56, '19.4'],
    ['vestibular_any', 87, '30.1'],
    ['vestibular_permanent', 64, '22.1'],
    ['facial_nerve_deficit_any', 39, '13.5'],
    ['facial_nerve_deficit_permanent', 23, '8.0'],
    ['disease_recurrence_local', 18, '6.2'],
  ] as const)('%s: %i of 289 is %s %%', (outcome, events, percent) => {
    expect(countOf('wainberg-2019', outcome)).toEqual({ events, total: 289 })
    expect(percentOf('wainberg-2019', outcome)).toBe(percent)
  })

  it('a session on both sides counts once: 211 + 14 + 64 = 289', () => {
    expect(211 + 14 + 64).toBe(countOf('wainberg-2019', 'horner_any').total)
  })

  it('trouble breathing: 9 % one side, 29 % staged, 47 % both in one session, together 50 of 282', () => {
    const groups = ['one side', 'both sides, staged', 'both sides in one session']
    const counts = groups.map((subgroup) => countOf('wainberg-2019', 'respiratory_complication', { subgroup }))
    expect(counts.map(({ events, total }) => Math.round((100 * events) / total))).toEqual([9, 29, 47])
    expect(countOf('wainberg-2019', 'respiratory_complication')).toEqual(summed(counts))
  })
})

describe('Bacon 2003, 52 ears of 44 cats: one sentence, two readings', () => {
  it('56 % and 42 % of 52 ears', () => {
    expect(Number(percentOf('bacon-2003', 'facial_nerve_deficit_any'))).toBeCloseTo(56, 0)
    expect(Number(percentOf('bacon-2003', 'horner_any'))).toBeCloseTo(42, 0)
  })

  it('reading A: 28 % and 14 % of all ears need 50 ears', () => {
    expect(percentOf('bacon-2003', 'facial_nerve_deficit_permanent', { reading: 'A' })).toBe('28.0')
    expect(percentOf('bacon-2003', 'horner_permanent', { reading: 'A' })).toBe('14.0')
  })

  it('reading B: 28 % of the 29 and 14 % of the 22 affected, on the stated 52 ears', () => {
    const facial = countOf('bacon-2003', 'facial_nerve_deficit_permanent', { reading: 'B' })
    const horner = countOf('bacon-2003', 'horner_permanent', { reading: 'B' })
    expect([facial.total, horner.total]).toEqual([52, 52])
    expect(Math.round((100 * facial.events) / countOf('bacon-2003', 'facial_nerve_deficit_any').events)).toBe(28)
    expect(Math.round((100 * horner.events) / countOf('bacon-2003', 'horner_any').events)).toBe(14)
  })
})

describe('other abstracts', () => {
  it('Folk 2022 keeps its contradiction: 95 of 111 is 85.6 %, printed as 85.5 %', () => {
    expect(rowsOf('folk-2022', 'culture_positive_bulla')[0]?.printed).toContain('85.5 %')
  })

  it.each([
    ['smeak-1986', 'facial_nerve_deficit_any', '35.9'],
    ['smeak-1986', 'wound_infection_or_dehiscence', '41.0'],
    ['smeak-1986', 'postop_complication_any', '82.1'],
    ['sharp-1990', 'facial_nerve_deficit_any', '30.8'],
    ['sharp-1990', 'postop_complication_any', '38.5'],
    ['folk-2022', 'revision_surgery', '10.8'],
    ['folk-2022', 'culture_positive_bulla', '85.6'],
    ['doyle-2004', 'resolution_or_improved', '93.1'],
    ['greci-2014', 'disease_recurrence_local', '13.5'],
    ['janssens-2017', 'horner_any', '11.5'],
    ['hartrum-2025', 'facial_nerve_deficit_any', '47.2'],
    ['hartrum-2025', 'horner_any', '45.3'],
    ['hartrum-2025', 'corneal_ulcer', '17.0'],
    ['hartrum-2025', 'ocular_or_neuro_ophthalmic_any', '64.2'],
    ['greci-2011', 'facial_nerve_deficit_any', '18.2'],
  ] as const)('%s, %s: %s %%', (study, outcome, percent) => {
    const [row] = rowsOf(study, outcome)
    if (row?.counted.kind !== 'count') throw new Error('No count.')
    expect(((100 * row.counted.events) / row.counted.total).toFixed(1)).toBe(percent)
  })
})

function summed(counts: readonly { events: number; total: number }[]): { events: number; total: number } {
  return counts.reduce((a, b) => ({ events: a.events + b.events, total: a.total + b.total }))
}
