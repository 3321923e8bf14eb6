import { animalWordsInEnglish } from '#content/wording/app-formulary.ts'
import { doseFindingWords, liftedWords } from '#content/wording/dosing-findings.ts'
import { doseSheetWords as words } from '#content/wording/papers-dose.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { sayLifted } from '#core/dosing/emergency-declared.ts'
import type { DoseFinding } from '#core/dosing/findings.ts'
import { isDrawnOtherwise } from '#core/dosing/planned-body.ts'
import type { DoseLine, DrawnLine } from '#core/dosing/request.ts'
import { saidConditions } from '#core/dosing/said-conditions.ts'
import type { Dose, DoseRange } from '#core/formulary/drug.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { capital } from '#core/outcome/capital.ts'
import { bySeverity, fill } from '#core/outcome/finding.ts'
import { Decimal } from '#core/units/quantity.ts'
import { spellUnits } from '#core/units/unit-words.ts'
import { drugName } from '../case/drug-name.ts'
import { lineSteps } from '../case/line-steps.ts'
import { sayQuantity, sayUnit } from '../case/say-quantity.ts'
import { type Run, small, strong, type Table, text, type Words } from '../render/model.ts'

export type PlannedEntry = Line<BodyOf<'planned-line'>>

/**
 * What to draw, in the order of the plan, read from a distance. A line that would be refused now shows no number to
 * draw; nor does one of an operation still to come (`isOpen`) that would be drawn otherwise now.
 */
export function planTable(planned: readonly PlannedEntry[], doses: DoseResult | null, isOpen: boolean): Table {
  const { purpose, drug, drawn, from, dose } = words.columns
  return {
    kind: 'table',
    caption: words.linesCaption,
    rowHeader: false,
    columns: [
      { head: purpose, align: 'left', share: 1.5 },
      { head: drug, align: 'left', share: 2.1, weight: 'strong' },
      { head: drawn, align: 'right', share: 1.8, weight: 'big' },
      { head: from, align: 'left', share: 1.5, weight: 'strong' },
      { head: dose, align: 'left', share: 3 },
    ],
    rows: planned.map((line) =>
      planRow(
        line,
        doses?.lines.find(({ id }) => id === line.body.line),
        isOpen,
        planned,
      ),
    ),
  }
}

function planRow(
  { body }: PlannedEntry,
  judged: DoseLine | undefined,
  isOpen: boolean,
  planned: readonly PlannedEntry[],
): Words[] {
  const head = [sayUse(body.use), [text(drugName(body.drug)), small(`\n${routeOf(body)}`)]]
  if (judged?.verdict === 'refused') return [...head, words.refusedNow, '', sayUnit(body.dose)]
  if (isOpen && judged && drawsOtherwise(body, judged)) return [...head, words.planAgain, '', sayUnit(body.dose)]
  const { volume, drawn } = body
  const behind = [
    ...(volume && drawn && volume.value !== drawn.value ? [fill(words.exact, { volume: sayUnit(volume) })] : []),
    ...(judged?.delivered && !drawsOtherwise(body, judged)
      ? [fill(words.gives, { delivered: shortened(judged.delivered) })]
      : []),
  ]
  const named = planned.map((one) => ({ id: one.body.line, drug: drugName(one.body.drug) }))
  const steps = judged && !drawsOtherwise(body, judged) ? lineSteps(judged, named) : []
  const under = [...(behind.length === 0 ? [] : [behind.join(', ')]), ...steps]
  return [
    ...head,
    ...drawnFrom(body, judged),
    [text(sayDose(body)), ...(under.length === 0 ? [] : [small(`\n${under.join('\n')}`)])],
  ]
}

/** A setting, such as a share of the gas, is its own amount. */
function sayDose({ dose, amount }: BodyOf<'planned-line'>): string {
  const [said, much] = [sayUnit(dose), sayUnit(amount)]
  return said === much ? said : fill(words.doseAmount, { dose: said, amount: much })
}

/** The volume and the strength it is drawn from. What is too little to be drawn comes from a weaker dilution, said how. */
function drawnFrom(
  { volume, drawn, stock, worked, how }: BodyOf<'planned-line'>,
  judged: DrawnLine | undefined,
): [Words, Words] {
  if (worked?.tablets && how?.tablet) {
    return [sayUnit(worked.tablets), fill(words.tabletOf, { strength: sayUnit(how.tablet.strength) })]
  }
  const draw = drawn ?? volume
  const of = stock ? sayUnit(stock) : words.notGiven
  if (draw) return [sayUnit(draw), of]
  const { dilution, rate } = judged ?? {}
  if (!dilution) return [rate ? sayQuantity(rate) : words.notGiven, of]
  const { parts, recipe, strength } = dilution
  const about = { parts: `${parts}`, product: sayQuantity(recipe.product), diluent: sayQuantity(recipe.diluent) }
  return [sayQuantity(dilution.drawn), [text(sayQuantity(strength)), small(`\n${fill(words.diluted, about)}`)]]
}

/** Whose choice, the range beside it, and everything the check found, worst first. */
export function whyTable(planned: readonly PlannedEntry[], doses: DoseResult | null): Table {
  const { line: head, choice, findings } = words.whyColumns
  return {
    kind: 'table',
    caption: words.whyCaption,
    rowHeader: true,
    columns: [
      { head, align: 'left', share: 1.5 },
      { head: choice, align: 'left', share: 3 },
      { head: findings, align: 'left', share: 3.4 },
    ],
    rows: planned.map(({ body }): Words[] => {
      const judged = doses?.lines.find(({ id }) => id === body.line)
      const chosen = fill(words.chosen, { because: body.because, plan: body.plan ?? words.noPlan })
      const range = judged?.range ? [rangeWords(judged.range)] : []
      const again = judged?.interval ? [fill(words.interval, { interval: judged.interval })] : []
      return [
        `${sayUse(body.use)}: ${drugName(body.drug)}`,
        [chosen, ...range, ...again].join('\n'),
        foundWords(body, judged),
      ]
    }),
  }
}

function rangeWords({ low, high }: DoseRange): string {
  const about = { low: sayQuantity(low), high: sayQuantity(high) }
  return fill(low.value.eq(high.value) ? words.rangeOne : words.range, about)
}

/** The plan on file and the check of today do not draw the same. */
function drawsOtherwise(body: BodyOf<'planned-line'>, judged: DoseLine): boolean {
  return judged.verdict !== 'refused' && isDrawnOtherwise(body, judged)
}

function foundWords(body: BodyOf<'planned-line'>, judged: DoseLine | undefined): Words {
  if (!judged) return words.notGiven
  const said = [...otherVolume(body, judged), ...findingLines(judged.findings)]
  const mind = judged.cautions.map((caution) => fill(words.caution, { words: caution }))
  const never = judged.never.map((caution) => fill(words.never, { words: caution }))
  const rest = [...mind, ...never].join('\n')
  if (said.length === 0) return [text(rest === '' ? words.nothingFound : rest)]
  const lines = said.flatMap((line, index): Run[] => (index === 0 ? [...line] : [text('\n'), ...line]))
  return rest === '' ? lines : [...lines, text(`\n${rest}`)]
}

function otherVolume(body: BodyOf<'planned-line'>, judged: DoseLine): (readonly Run[])[] {
  if (judged.verdict === 'refused' || !judged.drawn || !body.drawn || !drawsOtherwise(body, judged)) return []
  const about = { now: sayQuantity(judged.drawn), planned: sayUnit(body.drawn) }
  return [[strong(`${words.levels.block}: `), text(fill(words.otherVolume, about))]]
}

/** One line for each finding; its level stands in a word before it. */
export function findingLines(findings: readonly DoseFinding[]): (readonly Run[])[] {
  return bySeverity(findings).map((finding) => [strong(`${words.levels[finding.level]}: `), text(sayFinding(finding))])
}

/** A finding as a sentence; behind one that an emergency lifted, by whose. */
export function sayFinding(finding: DoseFinding): string {
  const { code, about } = finding
  const said = capital(spellUnits(fill(doseFindingWords[code], saidConditions(about, animalWordsInEnglish))))
  return [said, sayLifted(finding, liftedWords)].filter(Boolean).join(' ')
}

export function sayUse(use: string): string {
  return words.uses[use] ?? use.replaceAll('_', ' ')
}

export function routeOf({ route, qualifier }: BodyOf<'planned-line'>): string {
  if (route === null) return words.notGiven
  return qualifier === null ? route : `${route} (${qualifier})`
}

/** Three figures: nobody reads a delivered dose further. */
function shortened({ value, unit }: Dose): string {
  return sayQuantity({ value: value.toSignificantDigits(3, Decimal.ROUND_HALF_UP), unit })
}
