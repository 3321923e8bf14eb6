import type { DraftFacts } from '#core/theatre/draft-findings.ts'
import { houseJudgementOnly } from './provenance.ts'

/** What was stamped at the facial nerve that puts "keep the eye wet until it blinks" into the plan of the summary. */
export const eyeAfterNerve: DraftFacts['eyeAfterNerve'] = {
  value: {
    checkpoint: 'k3-facial-nerve',
    answers: {
      nerve: ['not-found'],
      state: ['stuck', 'embedded', 'cut'],
      held: ['hand-retractor', 'self-retaining', 'sling'],
    },
  },
  ...houseJudgementOnly,
  sources: ['house-judgement', 'smeak-inpanbutr-2005'],
  where: 'strong retraction is blamed for much weakness that passes; which answers count is the house’s',
  checked: '2026-11-29',
}
