import type { TheatreTests } from '#core/procedures/follow-up.ts'
import { houseJudgementOnly } from './provenance.ts'

const confirm = { dog: 'confirm', cat: 'confirm' } as const
const note = { dog: 'note', cat: 'note' } as const

/** How much each thing weighs on the theatre list while it is not on record. The weights are the house’s. */
export const beforeTheatre = {
  'blood-cells': {
    value: confirm,
    ...houseJudgementOnly,
    where: 'blood that may be lost is counted from the red cells it starts with',
  },
  'blood-chemistry': { value: confirm, ...houseJudgementOnly, where: 'by age and illness in trade practice' },
  clotting: { value: note, ...houseJudgementOnly, where: 'tested where a clotting disorder is thought of' },
  'blood-type': {
    value: { dog: 'note', cat: 'confirm' },
    ...houseJudgementOnly,
    sources: ['house-judgement', 'transfusion-texts'],
    where: 'cats are typed before the first transfusion, always; that it is asked before the cut is the house’s',
  },
  assessment: { value: confirm, ...houseJudgementOnly, where: 'ASA class and airway plan before any anaesthetic' },
  jaw: { value: confirm, ...houseJudgementOnly, where: 'a jaw that will not open decides the way to the airway' },
} as const satisfies TheatreTests
