import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { bloodPerKg } from '#content/protocols/blood-per-kg.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { reportInEnglish as words } from '#content/wording/report.ts'
import { leanWeight } from '#core/dosing/weight.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { type LossSpan, totalLoss } from '#core/theatre/blood-loss.ts'
import { lossFractions } from '#core/theatre/blood-marks.ts'
import { bloodVolume } from '#core/theatre/blood-volume.ts'
import { lossOf } from '#core/theatre/loss-of-entry.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { animalOf, type Operation, timeOf } from '../case/case-words.ts'
import { type Block, facts, paragraph } from '../render/model.ts'

/** The loss of the whole operation as a span, beside this animal's blood volume. */
export function lossBlocks(file: CaseFile, operation: Operation): Block[] {
  const lines = linesAbout(file.theCase, 'blood-loss', operation.id)
  const spans: LossSpan[] = []
  const refused: Block[] = []
  for (const line of lines) {
    const loss = lossOf(line.body, bloodInSwabs)
    if (loss.kind === 'answer') spans.push(loss.answer)
    else {
      const why = words.lossRefusals[loss.refusal.because]
      refused.push(paragraph(fill(words.lossRefused, { time: timeOf(line), why })))
    }
  }
  const sum = totalLoss(spans)
  if (!sum) return [paragraph(words.noLoss), ...refused]
  return [
    facts([words.terms.estimate, spanWords(sum)], [words.terms.ofBlood, shareWords(file, operation, sum)]),
    ...(sum.lavage === 'not-measured' ? [paragraph(words.lavageUnmeasured)] : []),
    ...refused,
  ]
}

export function spanWords({ atLeast, atMost }: LossSpan): string {
  const about = { atLeast: whole(atLeast.value), atMost: whole(atMost.value) }
  return fill(atLeast.value.eq(atMost.value) ? words.spanExact : words.span, about)
}

/** The weight is the last one before the operation, never a later one. */
function shareWords(file: CaseFile, operation: Operation, sum: LossSpan): string {
  const species = animalOf(file)?.species
  const weight = file.theCase.live('weight').findLast((line) => line.at <= operation.moment.at)
  if (!species || !weight) return words.ofBloodUnknown
  const kilograms = fromStored(weight.body.weight)
  // Lean weight in the obese, as on the emergency sheet: a share of too much blood would look smaller than it is.
  const counted = leanWeight(kilograms, weight.body.bodyCondition ?? undefined, dosingRules.weight)
  const blood = bloodVolume(counted, bloodPerKg[species]).counted
  const parts = lossFractions(sum, blood)
  const percent = (part: Decimal) => plain(part.times(100).toDecimalPlaces(1))
  const about = {
    atLeast: percent(parts.atLeast),
    atMost: percent(parts.atMost),
    blood: whole(blood.value),
    weight: plain(counted.value),
  }
  return fill(parts.atLeast.eq(parts.atMost) ? words.ofBloodExact : words.ofBlood, about)
}

function whole(value: Decimal): string {
  return plain(value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP))
}
