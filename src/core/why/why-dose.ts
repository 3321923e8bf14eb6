import type { Ceiling } from '#core/dosing/local-anaesthetic-ceiling.ts'
import type { ChosenBy, DoseLine, DrawnLine, PlannedLine } from '#core/dosing/request.ts'
import { plain } from '#core/units/quantity.ts'
import { input, said, sayAmount, type Why, type WhyInput, type WhyPolicy, type WhySaid, why } from './why.ts'

/** What stands around a dose line: the line as it was asked, and the entry the weight came from. */
export type AroundDose = {
  readonly asked: PlannedLine | null
  /** The drug as people call it. */
  readonly drugName: string
  readonly weightLine: string | null
}

/**
 * Why a dose line is what it is: dose times weight, divided by the strength, drawn to a mark of the syringe; whose
 * choice the dose is; the range of the sources; everything that was found.
 *
 * @example sayWhy(whyDose(line, { asked, drugName: 'Propofol', weightLine: null }), whyInEnglish).formula[0] // '3 mg/kg × 18.4 kg = 55.2 mg'
 */
export function whyDose(line: DoseLine, around: AroundDose): Why {
  const title = said('title-dose', { drug: around.drugName })
  const { findings, sources: facts } = line
  const policy = policyOf(line)
  if (line.verdict === 'refused') {
    return why({ title, inputs: inputsOf(line, around), result: said('refused'), findings, facts, policy })
  }
  const notes = line.secondPerson ? [said('second-person')] : []
  return why({
    title,
    inputs: inputsOf(line, around),
    formula: stepsOf(line, around),
    result: resultOf(line),
    notes,
    findings,
    facts,
    policy,
  })
}

function inputsOf(line: DoseLine, { asked, weightLine }: AroundDose): WhyInput[] {
  const { dose, range } = line
  const weight = line.verdict === 'refused' ? undefined : line.dosingWeight
  const surface = line.verdict === 'refused' ? undefined : line.bodySurface
  return [
    ...(dose ? [input('dose', sayAmount(dose))] : []),
    ...(range ? [input('range', sayRange(range))] : []),
    ...(weight ? [input('dosing-weight', sayAmount(weight), { line: weightLine })] : []),
    ...(surface ? [input('body-surface', sayAmount(surface))] : []),
    ...(asked?.stock ? [input('strength', sayAmount(asked.stock))] : []),
    ...(asked?.tablet ? [input('tablet', sayAmount(asked.tablet.strength))] : []),
  ]
}

function sayRange({ low, high }: NonNullable<DoseLine['range']>): string {
  return low.value.eq(high.value) ? sayAmount(low) : `${sayAmount(low)} – ${sayAmount(high)}`
}

function stepsOf(line: DrawnLine, { asked }: AroundDose): WhySaid[] {
  const { amount, volume, drawn, dilution, delivered, tablets, rate, total } = line
  const strength = asked?.stock && sayAmount(asked.stock)
  return [
    amountStep(line),
    ...(volume && strength
      ? [said('amount-by-strength', { amount: sayAmount(amount), strength, volume: sayAmount(volume) })]
      : []),
    ...(dilution
      ? [
          said('from-dilution', {
            parts: String(dilution.parts),
            strength: sayAmount(dilution.strength),
            drawn: sayAmount(dilution.drawn),
          }),
        ]
      : []),
    ...(volume && drawn ? [drawnStep(sayAmount(volume), sayAmount(drawn))] : []),
    ...(tablets ? [said('in-tablets', { each: sayAmount(tablets.each), strength: sayAmount(tablets.strength) })] : []),
    ...(tablets?.total ? [said('tablets-in-all', { total: sayAmount(tablets.total) })] : []),
    ...(rate ? [said('runs-at', { rate: sayAmount(rate) })] : []),
    ...(total ? [said('runs-in', { total: sayAmount(total) })] : []),
    ...(delivered ? [said('gives', { delivered: shortened(delivered) })] : []),
  ]
}

function amountStep({ dose, dosingWeight, bodySurface, amount }: DrawnLine): WhySaid {
  const about = { dose: sayAmount(dose), amount: sayAmount(amount) }
  if (bodySurface) return said('dose-by-surface', { ...about, surface: sayAmount(bodySurface) })
  if (dosingWeight && dose.unit.includes('/kg'))
    return said('dose-by-weight', { ...about, weight: sayAmount(dosingWeight) })
  return said('dose-as-amount', about)
}

function drawnStep(volume: string, drawn: string): WhySaid {
  return volume === drawn ? said('drawn-exactly', { drawn }) : said('drawn-to-mark', { volume, drawn })
}

/** Three figures: nobody reads a delivered dose further. */
function shortened({ value, unit }: NonNullable<DrawnLine['delivered']>): string {
  return sayAmount({ value: value.toSignificantDigits(3), unit })
}

function resultOf({ drawn, volume, dilution, tablets, rate, amount }: DrawnLine): WhySaid {
  if (dilution) return said('draw', { volume: sayAmount(dilution.drawn) })
  if (tablets) return said('count-out', { tablets: sayAmount(tablets.each) })
  if (rate) return said('run', { rate: sayAmount(rate) })
  const inHand = drawn ?? volume
  return inHand ? said('draw', { volume: sayAmount(inHand) }) : said('amount', { amount: sayAmount(amount) })
}

function policyOf({ chosenBy, dose, drug, use }: DoseLine): WhyPolicy | null {
  if (!chosenBy || chosenBy.kind === 'person' || !dose) return null
  const { person: by, date: on, reason: because } = chosenBy
  return { name: nameOf(chosenBy, drug, use), value: sayAmount(dose), by, on, because }
}

function nameOf(chosenBy: Exclude<ChosenBy, { kind: 'person' }>, drug: string, use: string): string {
  return chosenBy.kind === 'plan' ? chosenBy.plan : `${drug}, ${use}`
}

/**
 * Why so much of a group's ceiling is used: each part as a share of its own limit in this animal, all shares added.
 *
 * @example whyCeiling(result.ceilings[0]).inputs.map(({ of, value }) => `${of}: ${value}`)
 */
export function whyCeiling(ceiling: Ceiling): Why {
  const shareOf = (value: Ceiling['used']) => plain(value.toDecimalPlaces(3, 2))
  const counted = ceiling.parts.filter((part) => part.counted && part.kind !== 'infusion')
  return why({
    title: said('title-ceiling'),
    inputs: ceiling.parts.map(({ drug, mass, limit, fraction }) =>
      input('share', `${sayAmount(mass)} ÷ ${sayAmount(limit)} = ${shareOf(fraction)}`, { of: drug }),
    ),
    formula: [
      said('share-of-limit'),
      ...(counted.length > 1
        ? [said('shares-add-up', { sum: counted.map(({ fraction }) => shareOf(fraction)).join(' + ') })]
        : []),
    ],
    result: said('ceiling-used', { granted: shareOf(ceiling.granted), limit: shareOf(ceiling.limit) }),
    notes: ceiling.infusion.isZero() ? [] : [said('ceiling-infusion', { infusion: shareOf(ceiling.infusion) })],
    facts: ceiling.sources,
  })
}
