import type { Species } from '#core/animal/species.ts'
import { askedOfBody } from '#core/dosing/asked-of-body.ts'
import { strengthOf } from '#core/dosing/from-journal.ts'
import { type ChosenDraft, type ChosenRefusal, readChosen, rowsFor } from '#core/dosing/read-chosen.ts'
import {
  draftOfHow,
  type HowDraft,
  type HowRefusal,
  nothingSaid,
  questionsOf,
  readHowDraft,
} from '#core/dosing/read-how.ts'
import { rowBehind } from '#core/dosing/read-plan.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import type { DosingRules } from '#core/dosing/rules.ts'
import { readQuantityText } from '#core/forms/read-leaf.ts'
import { typedAgain } from '#core/forms/typed-again.ts'
import { type Divides, type Dose, type Drug, rowKey } from '#core/formulary/drug.ts'
import { stockUnits } from '#core/formulary/words.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { fromStored, type StoredQuantity } from '#core/journal/stored.ts'
import { Quantity } from '#core/units/quantity.ts'

export type Body = BodyOf<'planned-line'>

/** A line as it is typed: nothing is filled in for anybody. */
export type LineDraft = ChosenDraft &
  HowDraft & {
    readonly line: string
    /** The shelf item it is drawn from; '' when the strength is typed from the label in hand. */
    readonly shelfItem: string
    readonly strength: string
    /** How a tablet that is typed from its label divides; '' as the sources know this size. */
    readonly divides: '' | Exclude<Divides, 'unknown'>
    /** Where the label of the tablet in hand rounds; '' while nobody has read it. */
    readonly rounds: '' | 'up' | 'down'
    /** Why it is right all the same, when a check asks for a reason. */
    readonly confirm: string
    /** Why a line that stood is changed. */
    readonly reason: string
  }

export const emptyDraft: LineDraft = {
  ...nothingSaid,
  line: '',
  drug: '',
  row: '',
  route: '',
  dose: '',
  because: '',
  shelfItem: '',
  strength: '',
  divides: '',
  rounds: '',
  confirm: '',
  reason: '',
}

type Facts = {
  readonly drugs: readonly Drug[]
  readonly rules: DosingRules
  readonly decimalMark: '.' | ','
  readonly species: Species
}

/** A line that stands, as it would be typed again. */
export function draftOfBody(body: Body, facts: Pick<Facts, 'drugs' | 'decimalMark' | 'species'>): LineDraft {
  const { decimalMark } = facts
  // Of a line that named no bracket, no row with one is chosen for anybody.
  const behind = rowBehind(body, facts.species, facts.drugs)
  const row = (behind?.qualifier ?? null) === body.qualifier ? behind : undefined
  const asked = askedOfBody(body)
  const tablet = body.how?.tablet
  const strength = tablet
    ? `${tablet.strength.value.replace('.', decimalMark)} mg/tablet`
    : body.stock
      ? typedAgain(body.stock, decimalMark)
      : ''
  const divides = tablet?.divides
  return {
    ...emptyDraft,
    ...(asked && draftOfHow(asked, body.line, { decimalMark })),
    line: body.line,
    drug: body.drug,
    row: row ? rowKey(row) : '',
    route: body.route ?? '',
    dose: body.blood?.goal ? '' : typedAgain(body.dose, decimalMark),
    because: body.because,
    shelfItem: body.shelfItem ?? '',
    strength: body.shelfItem === null ? strength : '',
    rounds: tablet?.rounds ?? '',
    divides: divides && divides !== 'unknown' && body.shelfItem === null ? divides : '',
  }
}

type InHand = Pick<PlannedLine, 'stock' | 'tablet'>
const labelUnits = [...stockUnits, 'mg/{tablet}'] as const

/** What the line is drawn from: the product of the shelf, or the strength on the label; the unit is never guessed. */
function readInHand(
  draft: Pick<LineDraft, 'shelfItem' | 'strength' | 'divides'>,
  house: Case,
  decimalMark: '.' | ',',
): InHand | 'wrong' {
  const item = house.live('shelf-item').find(({ body }) => body.item === draft.shelfItem)?.body
  if (item) return strengthOf(item)
  if (draft.shelfItem !== '') return 'wrong'
  if (draft.strength.trim() === '') return {}
  const read = readQuantityText(draft.strength, labelUnits, { decimalMark })
  if (read.kind === 'refusal') return 'wrong'
  const strength = fromStored(read.answer as unknown as StoredQuantity<(typeof labelUnits)[number]>)
  if (strength.unit !== 'mg/{tablet}') return { stock: strength as NonNullable<InHand['stock']> }
  const divides = draft.divides === '' ? {} : { divides: draft.divides }
  return { tablet: { strength: new Quantity(strength.value, 'mg'), ...divides } }
}

export type ReadLine = {
  /** The line to be judged; null while anything of it is missing. */
  readonly asked: PlannedLine | null
  readonly because: string
  readonly chosen: readonly ChosenRefusal[]
  readonly how: readonly HowRefusal[]
  readonly strengthWrong: boolean
}

/**
 * The line that a draft stands for, and every field that cannot be read.
 *
 * @example readLine(draft, facts, house).asked?.container?.name // 'block LEFT'
 */
export function readLine(draft: LineDraft, facts: Facts, house: Case): ReadLine {
  const { species, decimalMark } = facts
  const drug = facts.drugs.find(({ id }) => id === draft.drug)
  const row = rowsFor(drug, species).find((one) => rowKey(one) === draft.row)
  const line = draft.line.trim()
  const inHand = readInHand(draft, house, decimalMark)
  const how = drug && row ? readHowDraft(draft, row, questionsOf(drug, row, true), { decimalMark, line }) : null
  const goal = how?.kind === 'answer' ? how.answer.goal : undefined
  const chosen = readChosen(draft, facts)
  // What blood is to reach chooses its dose; then no dose is typed beside it.
  const refusals =
    chosen.kind === 'refusal'
      ? chosen.refusal.filter(({ at }) => !(goal && draft.dose.trim() === '' && at === 'dose'))
      : []
  const route = row?.routes.find((one) => one === draft.route)
  const isWhole = row && route && how?.kind === 'answer' && inHand !== 'wrong' && refusals.length === 0 && line !== ''
  return {
    asked: isWhole
      ? {
          id: line,
          drug: draft.drug,
          use: row.use,
          route,
          ...(row.qualifier === undefined ? {} : { qualifier: row.qualifier }),
          ...(chosen.kind === 'answer' && { dose: fromStored(chosen.answer.dose) as Dose }),
          ...inHand,
          ...(inHand.tablet && draft.rounds !== '' && { tablet: { ...inHand.tablet, rounds: draft.rounds } }),
          ...how.answer,
        }
      : null,
    because: draft.because.trim(),
    chosen: refusals,
    how: how?.kind === 'refusal' ? how.refusal : [],
    strengthWrong: inHand === 'wrong',
  }
}
