import { type DoseRow, type Drug, localLimit } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { isLifted, type ScopedRequest } from './emergency-scope.ts'
import { saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import {
  type Ceiling,
  type CeilingPart,
  givenParts,
  isInfusionIntoVein,
  massOfInfusion,
  one,
  shareOf,
  sumOf,
} from './local-anaesthetic.ts'
import type { DoseRequest, DosingKnowledge, PlannedLine } from './request.ts'
import { drawnFrom, type Syringe, smallestDrawable } from './syringe.ts'
import { volumeOf } from './volume.ts'

export type { Ceiling } from './local-anaesthetic.ts'

/** A line with an amount that is no doubt what was meant. */
export type MeasuredDraft = {
  readonly line: PlannedLine
  readonly drug: Drug
  readonly row: DoseRow
  readonly amount: AnyQuantity
  /** Refused because of the animal or another drug: still asked for, so it still takes its room. */
  readonly refused: boolean
}

export type CeilingVerdict = {
  readonly ceiling?: Ceiling
  readonly findings: ReadonlyMap<string, readonly DoseFinding[]>
  /** Lines whose syringe must be rounded down, so that the drawn sum keeps the limit too. */
  readonly down: ReadonlySet<string>
}

type Asked = { readonly draft: MeasuredDraft; readonly part: CeilingPart }

/**
 * One limit for the whole animal: everything given and not worn off, then the planned lines in their order.
 * The line that would pass the limit is refused, and every one behind it: what was asked for and refused may still be
 * wanted, and a drug more must never make room for another. An infusion into a vein is counted apart and asks to confirm.
 * Shares add up because toxicity is taken to add up; both ears share one limit.
 */
export function judgeCeiling(
  drafts: readonly MeasuredDraft[],
  request: ScopedRequest,
  knowledge: DosingKnowledge,
  weight: Quantity<'kg'> | undefined,
): CeilingVerdict {
  const mine = drafts.filter((draft) => draft.drug.localAnaesthetic)
  if (!weight) return { findings: new Map(), down: new Set() }
  const { parts: given, uncounted } = givenParts(request, knowledge.drugs, weight)
  const asked = mine.flatMap((draft) => askedOf(draft, request, weight))
  if (asked.length === 0 && given.length === 0 && uncounted.length === 0)
    return { findings: new Map(), down: new Set() }

  const findings = new Map<string, DoseFinding[]>()
  const note = (draft: MeasuredDraft, finding: DoseFinding) =>
    findings.set(draft.line.id, [...(findings.get(draft.line.id) ?? []), finding])
  const before = sumOf(given, (part) => part.kind === 'given')
  const { emergency } = request
  const lifts = ({ drug: { id } }: MeasuredDraft) =>
    emergency !== undefined && isLifted(emergency, 'local-anaesthetic-ceiling', id)
  const parts = allow(asked, before, lifts, (draft, part, sum) => note(draft, tooMuch(draft, part, sum)))
  for (const entry of uncounted) for (const { draft } of asked) note(draft, notCounted(draft, saidOf(entry)))

  const infusion = sumOf([...given, ...parts], (part) => part.kind === 'infusion')
  const granted = before.plus(sumOf(parts, (part) => part.kind === 'planned' && part.counted))
  if (infusion.gt(0)) for (const { draft } of asked) note(draft, withInfusion(infusion, granted, knowledge))
  const used = before.plus(sumOf(parts, (part) => part.kind === 'planned'))
  const sources = mine.flatMap(({ drug, row }) => limitsOf(drug, row, request))
  const ceiling = {
    group: 'local-anaesthetic',
    used,
    granted,
    limit: one,
    infusion,
    parts: [...given, ...parts],
    sources,
  } as const
  return { ceiling, findings, down: roundDown(asked, parts, before, weight, request, knowledge.syringes) }
}

function askedOf(draft: MeasuredDraft, request: DoseRequest, weight: Quantity<'kg'>): Asked[] {
  const { drug, amount, line } = draft
  const mass = convert(amount, 'mg') ?? massOfInfusion(drug, amount, line.over)
  const share = mass && shareOf(drug, request.animal.species, mass, weight, draft.row.formulation)
  if (!mass || !share) return []
  const kind = isInfusionIntoVein(line.use) ? 'infusion' : 'planned'
  return [{ draft, part: { kind, drug: drug.id, line: line.id, mass, ...share, counted: !draft.refused } }]
}

/** Lines in their order, each added to all that was asked before it. An emergency dose is counted but never silenced. */
function allow(
  asked: readonly Asked[],
  before: Decimal,
  isLiftedFor: (draft: MeasuredDraft) => boolean,
  refuse: (draft: MeasuredDraft, part: CeilingPart, sum: Decimal) => void,
): CeilingPart[] {
  let sum = before
  return asked.map(({ draft, part }) => {
    if (part.kind === 'infusion') return part
    sum = sum.plus(part.fraction)
    if (sum.gt(one)) refuse(draft, part, sum)
    return { ...part, counted: part.counted && (sum.lte(one) || isLiftedFor(draft) || draft.line.use === 'emergency') }
  })
}

function tooMuch(draft: MeasuredDraft, part: CeilingPart, sum: Decimal): DoseFinding {
  const room = one.minus(sum.minus(part.fraction))
  const left = Decimal.max(0, room.times(part.limit.value))
  const about = {
    drug: draft.drug.name,
    sum: plain(sum.toDecimalPlaces(2, Decimal.ROUND_UP)),
    left: `${plain(left.toSignificantDigits(4, Decimal.ROUND_DOWN))} mg`,
    limit: `${plain(part.limit.value.toSignificantDigits(4, Decimal.ROUND_DOWN))} mg`,
  }
  const level = draft.line.use === 'emergency' ? 'note' : 'block'
  const facts = localLimit(draft.drug, draft.row.formulation)
  return found(level, 'local-anaesthetic-ceiling', about, facts ? [facts.limits[draft.row.species], facts.washout] : [])
}

function notCounted(draft: MeasuredDraft, given: string): DoseFinding {
  const level = draft.line.use === 'emergency' ? 'note' : 'block'
  return found(level, 'local-anaesthetic-uncounted', { drug: draft.drug.name, given })
}

function withInfusion(infusion: Decimal, others: Decimal, { rules }: DosingKnowledge): DoseFinding {
  const about = {
    infusion: plain(infusion.toDecimalPlaces(2)),
    others: plain(others.toDecimalPlaces(2)),
    method: rules.localAnaestheticInfusion.value,
  }
  return found('confirm', 'local-anaesthetic-infusion', about, [rules.localAnaestheticInfusion])
}

function limitsOf(drug: Drug, row: DoseRow, request: DoseRequest) {
  const limit = localLimit(drug, row.formulation)
  return limit ? [limit.limits[request.animal.species]] : []
}

/** When the nearest marks together would pass the limit, every syringe of the group is rounded down. */
function roundDown(
  asked: readonly Asked[],
  parts: readonly CeilingPart[],
  before: Decimal,
  weight: Quantity<'kg'>,
  request: DoseRequest,
  syringes: readonly Syringe[] | undefined,
): ReadonlySet<string> {
  const granted = asked.filter(({ draft }, i) => parts[i]?.counted && parts[i].kind === 'planned' && draft.line.stock)
  const extra = granted.reduce((sum, { draft, part }) => {
    const volume = draft.line.stock && volumeOf(part.mass, draft.line.stock)
    // A dose drawn from a dilution has other marks: it is always rounded down below, so it holds its amount at most.
    if (!volume || isTooSmall(volume)) return sum
    const drawn = drawnFrom(volume, syringes ? { syringes } : {})
    const mass = new Quantity(part.mass.value.times(drawn.value).div(volume.value), 'mg')
    const share = shareOf(draft.drug, request.animal.species, mass, weight, draft.row.formulation)
    return sum.plus(share?.fraction ?? 0).minus(part.fraction)
  }, new Decimal(0))
  const exact = before.plus(sumOf(parts, (part) => part.kind === 'planned' && part.counted))
  const isSmall = ({ draft, part }: Asked) => {
    const volume = draft.line.stock && volumeOf(part.mass, draft.line.stock)
    return volume !== undefined && isTooSmall(volume)
  }
  const lines = exact.plus(extra).gt(one) ? granted : granted.filter(isSmall)
  return new Set(lines.map(({ draft }) => draft.line.id))
}

const isTooSmall = (volume: Quantity<'mL'>): boolean => volume.value.lt(smallestDrawable.value)
