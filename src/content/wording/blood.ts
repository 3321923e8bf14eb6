import type { LossRefusal, LossSpan } from '#core/theatre/blood-loss.ts'
import type { BloodMarkCode, FiredMark } from '#core/theatre/blood-marks.ts'
import type { AllowableLoss, AllowableLossRefusal } from '#core/theatre/blood-volume.ts'

/** What a mark asks for. */
export const bloodMarkActs = {
  inform: 'Say it aloud: {percent} of the blood volume is gone.',
  replace: 'Replace with crystalloid and measure the packed cell volume again.',
  'transfusion-ready': 'Have blood ready: typed, matched, warmed.',
  critical: 'Critical loss: stop the source before anything else, transfuse.',
} as const satisfies Record<BloodMarkCode, string>

export const bloodMarkReasons = {
  measured: 'The measured loss has reached this mark.',
  'upper-end': 'The loss may have reached this mark; what was not measured cannot be subtracted.',
} as const satisfies Record<FiredMark['by'], string>

/** The loss in one sentence, by what is known of the lavage. */
export const bloodLossSentences = {
  none: 'Lost: at least {atLeast}, at most {atMost}. No lavage was used.',
  recovered: 'Lost: at least {atLeast}, at most {atMost}. Only the lavage found again in the jar was subtracted.',
  'not-measured': 'Lost: at least {atLeast}, at most {atMost}. The lavage was not recovered and cannot be subtracted.',
  'jar-pcv': 'Lost: at least {atLeast}, at most {atMost}, by the packed cell volume of the jar.',
} as const satisfies Record<LossSpan['lavage'], string>

export const bloodLossRefusals = {
  'wet-below-dry': 'The wet swabs weigh less than the dry ones. Weigh both again.',
  'saline-above-weight':
    'More saline is noted on the swabs than they gained in weight. Weigh again, or note only the saline that is still on them.',
  'count-not-whole': 'The number of soaked swabs must be a whole number from zero.',
  'negative-measure': 'A volume cannot be below zero. Read the jar and the lavage again.',
  'recovered-more-than-given':
    'More lavage is noted as recovered than was given. Correct either figure, or mark the lavage as not measured.',
  'recovered-more-than-jar':
    'More lavage is noted as recovered than the jar holds. Read the jar again, or mark the lavage as not measured.',
  'jar-above-patient':
    'The packed cell volume of the jar is above the patient’s. Measure both again; a clotted jar cannot be used.',
} as const satisfies Record<LossRefusal['because'], string>

/** Which of the two formulas an allowable loss was counted by. */
export const allowableLossFormulas = {
  start: 'blood volume × (start − lowest) ÷ start haematocrit',
  mean: 'blood volume × (start − lowest) ÷ mean of start and lowest haematocrit',
} as const satisfies Record<AllowableLoss['dividedBy'], string>

export const allowableLossRefusals = {
  'lowest-above-start': 'The lowest haematocrit allowed lies above the starting one: no loss is allowable.',
  'haematocrit-not-positive': 'A haematocrit must be above zero.',
} as const satisfies Record<AllowableLossRefusal['because'], string>
