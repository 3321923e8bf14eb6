import { z } from 'zod'
import { blink, entryId, moment, shortText, text, yesNo } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

/**
 * The highest score of each scale, as its authors built it; content/scores says where it is published and from when on
 * one acts. `house-0-10` is our own and claims nothing else.
 */
export const painScaleTops = {
  'glasgow-dog-short': 24,
  'glasgow-dog-short-not-walked': 20,
  'glasgow-cat': 20,
  'glasgow-cat-earlier': 16,
  'grimace-cat': 10,
  'numbers-0-10-cat': 10,
  'house-0-10': 10,
} as const
export type PainScale = keyof typeof painScaleTops
export const painScales = Object.keys(painScaleTops) as [PainScale, ...PainScale[]]

const eye = z.strictObject({ blink, lubricated: yesNo })

const body = z.strictObject({
  /** Null: not scored. Asleep is not without pain. */
  pain: z.strictObject({ scale: z.enum(painScales), score: z.int().min(0).max(24) }).nullable(),
  notScoredBecause: shortText.nullable(),
  action: text.nullable(),
  /** The drugs that were the action, by the entries that say they were given. */
  given: z.array(entryId).max(20),
  rescoreAt: moment.nullable(),
  LEFT: eye,
  RIGHT: eye,
  bandage: z.enum(['none', 'fits', 'tight', 'loosened', 'not-assessed']),
  airway: z.enum(['quiet', 'noisy', 'laboured', 'not-assessed']),
  /** The throat and neck by eye and hand; whatever is not soft is looked at by somebody else at once. */
  throat: z.enum(['soft', 'swollen', 'not-assessed']),
  eats: z.enum(['yes', 'a-little', 'no', 'not-offered', 'not-assessed']),
  urine: z.enum(['passed', 'not-passed', 'catheter', 'not-assessed']),
  text: text.nullable(),
})

/** One round in the ward: pain with what was done about it, eyes, bandage, airway, food, urine. */
export const wardScore = defineKind({
  name: 'ward-score',
  version: 2,
  subjects: ['animal'],
  body: body.refine(({ pain }) => pain === null || pain.score <= painScaleTops[pain.scale], {
    path: ['pain', 'score'],
    message: 'must lie within its scale',
  }),
  /** Version 1 named the action in words only, and did not ask for the throat. */
  upcasts: { 1: (older) => ({ ...(older as Record<string, Json>), given: [], throat: 'not-assessed' }) },
  example: {
    pain: { scale: 'glasgow-dog-short', score: 7 },
    notScoredBecause: null,
    action: 'Methadone as planned.',
    given: [],
    rescoreAt: { at: '2026-02-10T15:30:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
    LEFT: { blink: 'absent', lubricated: 'yes' },
    RIGHT: { blink: 'normal', lubricated: 'yes' },
    bandage: 'fits',
    airway: 'quiet',
    throat: 'soft',
    eats: 'not-offered',
    urine: 'passed',
    text: null,
  },
})
