import { z } from 'zod'
import { poolNotes, poolTable } from '#content/wording/pooling.ts'
import { fill } from '#core/outcome/finding.ts'
import { leaveOneOut, mostLeftOut } from '#core/stats/pooling/leave-one-out.ts'
import { type Pooled, type PoolNote, poolCounts } from '#core/stats/pooling/pool.ts'
import { exactInterval, type Interval } from '#core/stats/proportion-interval.ts'
import { InputError, listed, readInput } from '../input.ts'

/** Says by itself only what no other reader says: a share of a case cannot be counted. */
const count = (least: number) =>
  z
    .int({
      error: ({ code, input }) =>
        code !== 'invalid_type'
          ? undefined
          : input === undefined
            ? 'is missing; write a whole number.'
            : 'must be a whole number.',
    })
    .min(least)
const request = z.strictObject({
  studies: z
    .array(z.strictObject({ id: z.string().min(1), events: count(0), total: count(1) }))
    .min(1, { error: 'must hold at least one study.' }),
  method: listed(['binomial-normal', 'inverse-variance-logit', 'double-arcsine'], 'method').default('binomial-normal'),
  tau: listed(['ML', 'REML', 'DL'], 'way to find tau').optional(),
})

export type PoolAnswer = {
  readonly k: number
  readonly method: string
  readonly estimate: number | null
  readonly interval: readonly [number, number]
  readonly prediction: readonly [number, number] | null
  readonly tau2: number | null
  /** 0–1, from tau². */
  readonly i2: number | null
  readonly q: number | null
  readonly qDf: number | null
  readonly qP: number | null
  readonly studies: readonly {
    readonly id: string
    readonly events: number
    readonly total: number
    readonly proportion: number
    /** Exact (Clopper-Pearson). */
    readonly interval: readonly [number, number]
  }[]
  readonly leaveOneOut: readonly {
    readonly without: string
    readonly estimate: number | null
    readonly interval: readonly [number, number]
    readonly tau2: number | null
    readonly notes: readonly PoolNote[]
  }[]
  readonly notes: readonly { readonly code: PoolNote | 'not-left-out'; readonly text: string }[]
}

/**
 * Published counts pooled; every proportion on 0–1.
 *
 * @example pool({ studies: [{ id: 'a', events: 4, total: 40 }, { id: 'b', events: 9, total: 52 }] })
 */
export function pool(input: unknown): PoolAnswer {
  const { studies, method, tau } = readInput(request, input)
  const seen = new Set<string>()
  studies.forEach(({ id, events, total }, index) => {
    if (events > total) {
      const path = `studies[${index}].events`
      throw new InputError(
        'more-events-than-cases',
        path,
        `${path}: ${events} of ${total} cannot be; write at most ${total}.`,
      )
    }
    if (seen.has(id)) {
      const path = `studies[${index}].id`
      throw new InputError(
        'same-study-twice',
        path,
        `${path}: "${id}" stands there twice; give every study its own id.`,
      )
    }
    seen.add(id)
  })
  if (method === 'binomial-normal' && tau !== undefined && tau !== 'ML') {
    throw new InputError(
      'tau-by-likelihood',
      'tau',
      'tau: the binomial-normal method finds tau by its likelihood; write "ML" or leave it out.',
    )
  }
  const how = { method, ...(tau !== undefined && { tau }) }
  const pooled = poolCounts(studies, how)
  const { i2, q, qDf, qP } = pooled.heterogeneity ?? nothingApart
  return {
    k: pooled.k,
    method,
    ...point(pooled),
    prediction: pooled.prediction && ends(pooled.prediction),
    tau2: pooled.tau2,
    i2,
    q,
    qDf,
    qP,
    studies: studies.map((study) => ({ ...study, proportion: study.events / study.total, interval: exact(study) })),
    leaveOneOut: leaveOneOut(studies, how).map((rest, index) => ({
      without: studies[index]?.id ?? '',
      ...point(rest),
      tau2: rest.tau2,
      notes: rest.notes,
    })),
    notes: [
      ...pooled.notes.map((code) => ({ code, text: poolNotes[code] })),
      ...(studies.length > mostLeftOut
        ? [{ code: 'not-left-out' as const, text: fill(poolTable.notLeftOut, { most: String(mostLeftOut) }) }]
        : []),
    ],
  }
}

const nothingApart = { i2: null, q: null, qDf: null, qP: null }

function point({ estimate, interval }: Pooled) {
  return { estimate, interval: ends(interval) }
}

function ends({ low, high }: Interval): readonly [number, number] {
  return [low, high]
}

function exact(study: { readonly events: number; readonly total: number }): readonly [number, number] {
  const interval = exactInterval(study)
  if (interval.kind === 'refusal') throw new Error('A study without a case was read.')
  return ends(interval.answer)
}
