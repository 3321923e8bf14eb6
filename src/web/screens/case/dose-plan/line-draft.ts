import { strengthOf } from '#core/dosing/from-journal.ts'
import { plannedBody } from '#core/dosing/planned-body.ts'
import type { ChosenDraft } from '#core/dosing/read-chosen.ts'
import type { DoseLine, DrawnLine, PlannedLine } from '#core/dosing/request.ts'
import { readQuantityText } from '#core/forms/read-leaf.ts'
import { type Drug, rowKey } from '#core/formulary/drug.ts'
import { stockUnits } from '#core/formulary/words.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { fromStored, type StoredQuantity } from '#core/journal/stored.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import type { Quantity } from '#core/units/quantity.ts'
import { unitWord } from '#core/units/unit-words.ts'

export type Body = BodyOf<'planned-line'>

/** A line as it is typed: nothing is filled in for anybody. */
export type LineDraft = ChosenDraft & {
  readonly line: string
  /** The shelf item it is drawn from; '' when the strength is typed from the label in hand. */
  readonly shelfItem: string
  readonly strength: string
  /** Why it is right all the same, when a check asks for a reason. */
  readonly confirm: string
  /** Why a line that stood is changed. */
  readonly reason: string
}

export const emptyDraft: LineDraft = {
  line: '',
  drug: '',
  row: '',
  route: '',
  dose: '',
  because: '',
  shelfItem: '',
  strength: '',
  confirm: '',
  reason: '',
}

const said = ({ value, unit }: Body['dose']) => `${value} ${unitWord(unit)}`

/** A line that stands, as it would be typed again. */
export function draftOfBody(body: Body, drug: Drug | undefined): LineDraft {
  const row = drug?.doses.find(
    (one) =>
      one.use === body.use &&
      (one.qualifier ?? null) === body.qualifier &&
      (body.route === null || one.routes.some((route) => route === body.route)),
  )
  return {
    ...emptyDraft,
    line: body.line,
    drug: body.drug,
    row: row ? rowKey(row) : '',
    route: body.route ?? '',
    dose: said(body.dose),
    because: body.because,
    strength: body.stock ? said(body.stock) : '',
  }
}

type Stock = NonNullable<PlannedLine['stock']>
export type InHand = Pick<PlannedLine, 'stock' | 'tablet'>

/** What the line is drawn from: the product of the shelf, or the strength on the label; the unit is never guessed. */
export function readInHand(draft: LineDraft, house: Case, decimalMark: '.' | ','): Outcome<InHand, 'wrong'> {
  const item = house.live('shelf-item').find(({ body }) => body.item === draft.shelfItem)?.body
  if (item?.strength) return answer(strengthOf(item))
  if (draft.strength.trim() === '') return answer({})
  const read = readQuantityText(draft.strength, stockUnits, { decimalMark })
  return read.kind === 'answer'
    ? answer({ stock: fromStored(read.answer as unknown as StoredQuantity<Stock['unit']>) as Stock })
    : refuse('wrong')
}

/** Whether the one reason of the line is asked for: a finding stands against it that only a person can answer. */
export function asksReason(line: DoseLine): boolean {
  return line.findings.some(({ level }) => level === 'confirm')
}

/** The entry of a line that may be kept. The reason against the findings stands with the reason for the dose. */
export function bodyOf(
  line: DrawnLine,
  draft: LineDraft,
  asked: PlannedLine,
  weight: Quantity<'kg'>,
  plan: string | null,
): Body {
  const reason = draft.confirm.trim()
  const because = reason === '' ? draft.because.trim() : `${draft.because.trim()} · ${reason}`
  return plannedBody(line, { asked, because: because.slice(0, 300), plan, weight })
}
