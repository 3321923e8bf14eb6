import { z } from 'zod'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { funnelLimit, funnelSpread } from '#core/stats/monitoring/funnel.ts'
import { listed } from '../input.ts'
import { operation, share, whole } from './operation.ts'

/** What groups may be made of. People are not among them: nothing here ranks a surgeon. */
const groupings = ['species', 'procedure', 'indication', 'year'] as const
const tails = { outer: 0.001, inner: 0.025 } as const

const group = z
  .strictObject({ group: z.string().min(1), events: whole(0), total: whole(1).max(100_000) })
  .refine(({ events, total }) => events <= total, {
    path: ['events'],
    error: 'there are more events than cases; write at most the total.',
  })

export const funnel = operation(
  'funnel',
  { by: listed(groupings, 'way to make groups'), groups: z.array(group).min(2), target: share.optional() },
  (input) => {
    const spread = funnelSpread(input.groups)
    const target = input.target ?? spread.target
    const known = target > 0 && target < 1
    const least = ownCounting.shownFrom.value
    return {
      by: input.by,
      target,
      targetFrom: input.target === undefined ? 'these-groups' : 'given',
      least,
      // In the order in which they were brought, never from best to worst.
      groups: input.groups.map(({ group: name, events, total }) => {
        const about = { group: name, events, total, share: events / total }
        if (total < least || !known)
          return { ...about, limits: null, standing: known ? 'too-few' : 'nothing-to-compare' }
        const at = (tail: number) => funnelLimit(target, total, tail)
        const inner: [number, number] = [at(tails.inner), at(1 - tails.inner)]
        const outer: [number, number] = [at(tails.outer), at(1 - tails.outer)]
        const beyond = ([low, high]: [number, number]) => events / total < low || events / total > high
        const standing = beyond(outer) ? 'beyond-outer' : beyond(inner) ? 'beyond-inner' : 'within'
        return { ...about, limits: { inner, outer }, standing }
      }),
      spread: known ? { factor: spread.factor, factorDrawnIn: spread.factorDrawnIn, between: spread.between } : null,
    }
  },
)
