import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import type { Outcome } from '#core/outcome/outcome.ts'
import type { LossRefusal, LossSpan } from '#core/theatre/blood-loss.ts'
import { type BloodMark, firedMarks, lossAtMarks, lossFractions } from '#core/theatre/blood-marks.ts'
import type { SwabFacts } from '#core/theatre/blood-swabs.ts'
import { type BloodPerKg, bloodVolume } from '#core/theatre/blood-volume.ts'
import { Decimal, plain, type Quantity } from '#core/units/quantity.ts'
import { input, said, sayAmount, type Why, type WhySaid, why } from './why.ts'

/**
 * Why this animal's blood volume is what it is: millilitres per kilogram times the weight, with the range quoted.
 *
 * @example whyBloodVolume(quantity('32', 'kg'), bloodPerKg.dog, null).result.about.volume // '2880 mL'
 */
export function whyBloodVolume(weight: Quantity<'kg'>, perKg: Sourced<BloodPerKg>, weightLine: string | null): Why {
  const { counted, low, high } = bloodVolume(weight, perKg)
  const rate = sayAmount(perKg.value.counted)
  return why({
    title: said('title-blood-volume'),
    inputs: [input('weight', sayAmount(weight), { line: weightLine }), input('ml-per-kg', rate, { fact: perKg })],
    formula: [said('volume-by-weight', { rate, weight: sayAmount(weight), volume: sayAmount(counted) })],
    result: said('volume-is', { volume: sayAmount(counted) }),
    notes: low.value.eq(high.value) ? [] : [said('volume-range', { low: sayAmount(low), high: sayAmount(high) })],
  })
}

/**
 * Why a loss is said as at least – at most: what was in the jar, what of the lavage was found again, what the swabs
 * gained. Made beside the engine's own answer, which is shown as it is.
 */
export function whyLoss(
  entry: Line<BodyOf<'blood-loss'>>,
  outcome: Outcome<LossSpan, LossRefusal>,
  facts: SwabFacts,
): Why {
  const { jar, lavageIn, lavageInJar, swabs } = entry.body
  const line = entry.header.id
  const gained = swabs.reduce((sum, { dry, wet }) => sum.plus(wet.value).minus(dry.value), new Decimal(0))
  const saline = swabs.reduce((sum, swab) => sum.plus(swab.saline.value), new Decimal(0))
  const inputs = [
    input('jar', `${jar.value} mL`, { line }),
    input('lavage-in', `${lavageIn.value} mL`, { line }),
    input('lavage-in-jar', lavageInJar === null ? 'not-measured' : `${lavageInJar.value} mL`, { line }),
    ...(swabs.length > 0 ? [input('swabs', `${plain(gained)} g, saline ${plain(saline)} mL`, { line })] : []),
    ...(swabs.length > 0 ? [input('density', `${facts.density.value} g/mL`, { fact: facts.density })] : []),
  ]
  const title = said('title-loss')
  if (outcome.kind === 'refusal') {
    return why({ title, inputs, result: said('loss-refused', { because: outcome.refusal.because }) })
  }
  const { atLeast, atMost } = outcome.answer
  const formula: WhySaid[] = [
    ...(swabs.length > 0
      ? [said('swabs-weighed', { gained: plain(gained), density: facts.density.value, saline: plain(saline) })]
      : []),
    ...(lavageInJar === null ? [] : [said('jar-minus-lavage', { jar: jar.value, lavage: lavageInJar.value })]),
    said('jar-plus-swabs'),
  ]
  const unmeasured = outcome.answer.lavage === 'not-measured'
  return why({
    title,
    inputs,
    formula,
    result: said('loss-is', { atLeast: sayAmount(atLeast), atMost: sayAmount(atMost) }),
    notes: unmeasured ? [said('lavage-unmeasured', { lavage: lavageIn.value })] : [],
  })
}

/**
 * Why a mark of blood loss fires, or none does: the loss as a part of the blood volume, beside every mark in millilitres
 * for this animal.
 *
 * @example whyLossMarks(span, blood, bloodMarks).result.code // 'mark-measured'
 */
export function whyLossMarks(span: LossSpan, blood: Quantity<'mL'>, marks: readonly Sourced<BloodMark>[]): Why {
  const parts = lossFractions(span, blood)
  const fired = firedMarks(span, blood, marks)
  const last = fired.at(-1)
  return why({
    title: said('title-loss-marks'),
    inputs: [
      input('loss-at-least', sayAmount(span.atLeast)),
      input('loss-at-most', sayAmount(span.atMost)),
      input('blood-volume', sayAmount(blood)),
      ...lossAtMarks(blood, marks).map(({ mark, volume }) =>
        input('mark', `${percent(new Decimal(mark.value.fraction))} %: ${sayAmount(volume)}`, {
          of: mark.value.code,
          fact: mark,
        }),
      ),
    ],
    formula: [said('loss-share', { atLeast: percent(parts.atLeast), atMost: percent(parts.atMost) })],
    result: last
      ? said(last.by === 'measured' ? 'mark-measured' : 'mark-upper-end', { mark: last.mark.value.code })
      : said('no-mark'),
  })
}

function percent(part: Decimal): string {
  return plain(part.times(100).toDecimalPlaces(1))
}
