import type { Sourced } from '#core/evidence/sourced.ts'
import { houseJudgementOnly } from './provenance.ts'

/** How much an owner can send through the link: enough for a worried evening, too little to fill the machine. */
export const ownerNoteLimits = {
  letters: { value: 4_000, ...houseJudgementOnly, where: 'two pages; whoever needs more is better phoned' },
  pictures: { value: 4, ...houseJudgementOnly, where: 'in one note: both sides of the wound, the face, the eye' },
  pictureMegabytes: { value: 8, ...houseJudgementOnly, where: 'a photograph of an ordinary phone is 3 to 6 MB' },
  notesOfADay: { value: 20, ...houseJudgementOnly, where: 'one link in 24 hours' },
  picturesAtOnce: { value: 40, ...houseJudgementOnly, where: 'then one a minute, for one link' },
} as const satisfies Readonly<Record<string, Sourced<number>>>
