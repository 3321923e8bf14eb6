import type { FiguresRules } from '#core/owed/figures.ts'
import { houseJudgementOnly } from './provenance.ts'

const house = {
  ...houseJudgementOnly,
  where: 'no source says how soon an owner should hear it',
  checked: '2026-11-30',
} as const

/** Within so long a person looks at what owners read, once our own counts say otherwise; sooner after a late event. */
export const figuresRules = {
  lateEvent: { value: { count: 7, unit: 'days' }, ...house },
  counted: { value: { count: 30, unit: 'days' }, ...house },
} as const satisfies FiguresRules
