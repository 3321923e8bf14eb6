import { z } from 'zod'
import { blink, moment, shortText, text, yesNo } from '../answers.ts'
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
  rescoreAt: moment.nullable(),
  LEFT: eye,
  RIGHT: eye,
  bandage: z.enum(['none', 'fits', 'tight', 'loosened', 'not-assessed']),
  airway: z.enum(['quiet', 'noisy', 'laboured', 'not-assessed']),
  eats: z.enum(['yes', 'a-little', 'no', 'not-offered', 'not-assessed']),
  urine: z.enum(['passed', 'not-passed', 'catheter', 'not-assessed']),
  text: text.nullable(),
})

/** One round in the ward: pain with what was done about it, eyes, bandage, airway, food, urine. */
export const wardScore = defineKind({
  name: 'ward-score',
  version: 1,
  subjects: ['animal'],
  body: body.refine(({ pain }) => pain === null || pain.score <= painScaleTops[pain.scale], {
    path: ['pain', 'score'],
    message: 'must lie within its scale',
  }),
  example: {
    pain: { scale: 'glasgow-dog-short', score: 7 },
    notScoredBecause: null,
    action: 'Methadone as planned.',
    rescoreAt: { at: '2026-02-10T15:30:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
    LEFT: { blink: 'absent', lubricated: 'yes' },
    RIGHT: { blink: 'normal', lubricated: 'yes' },
    bandage: 'fits',
    airway: 'quiet',
    eats: 'not-offered',
    urine: 'passed',
    text: null,
  },
})
