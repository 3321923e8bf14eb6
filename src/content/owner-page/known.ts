import type { Provenance } from '#core/evidence/sourced.ts'
import { commonPractice, readStudy } from '../follow-up/provenance.ts'

export const afterTopics = ['hearing', 'looks', 'time'] as const
export type AfterTopic = (typeof afterTopics)[number]

/** How it is known what the page says about life after the canal was taken out; the words stand in content/wording/owner-page.ts. */
export const afterKnown: Readonly<Record<AfterTopic, readonly Provenance[]>> = {
  hearing: [commonPractice, { sources: ['mcanulty-1995-ablation'], ...readStudy }],
  looks: [commonPractice],
  time: [commonPractice],
}
