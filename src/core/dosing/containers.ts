import type { Drug, Stock } from '#core/formulary/drug.ts'
import { stockUnits } from '#core/formulary/words.ts'
import { type AnyQuantity, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { kindOf } from './amount.ts'
import { type Container, type FillRefusal, fill, hourOf, type Poured, rateOf } from './container.ts'
import { type Drawing, strengthNotAsMixed, strengthOfOther, strengthUnusual, undiluted } from './drawing.ts'
import { type DoseFinding, found, isBlock } from './findings.ts'
import { judgeMixture } from './mixing.ts'
import type { DoseRequest, DosingKnowledge, PlannedLine } from './request.ts'
import { volumeOf } from './volume.ts'

/** A line on its way to a bag or syringe, with what was found so far. */
export type ContainerDraft = Partial<Pick<Drawing, 'drug' | 'row' | 'dose' | 'amount' | 'body'>> & {
  readonly line: PlannedLine
  readonly findings: readonly DoseFinding[]
}

export type ContainerVerdict = {
  readonly findings: ReadonlyMap<string, readonly DoseFinding[]>
  readonly poured: ReadonlyMap<string, Poured>
}

type Ready = ContainerDraft & Required<Pick<ContainerDraft, 'drug' | 'row' | 'dose' | 'amount' | 'body'>>

/**
 * Fills every bag and syringe of the plan. What shares one is worked out together or not at all: a line that is
 * refused, or whose strength nobody stated, keeps the others out of the bag too.
 *
 * @example judgeContainers(drafts, request, knowledge, new Set()).poured.get('morphine')?.mine.drawn // 2.4 mL
 */
export function judgeContainers(
  drafts: readonly ContainerDraft[],
  request: DoseRequest,
  knowledge: DosingKnowledge,
  down: ReadonlySet<string>,
): ContainerVerdict {
  const findings = new Map<string, DoseFinding[]>()
  const poured = new Map<string, Poured>()
  const note = (line: string, ...more: DoseFinding[]) => findings.set(line, [...(findings.get(line) ?? []), ...more])
  const alone = drafts.filter(({ line }) => !line.container)
  const running = new Map(alone.filter(isReady).map((draft) => [draft.line.id, neatRate(draft)]))

  const names = [...new Set(drafts.flatMap(({ line }) => line.container?.name ?? []))]
  for (const name of names) {
    const group = drafts.filter(({ line }) => line.container?.name === name)
    const verdict = judgeGroup(group, request, knowledge, down)
    for (const [line, more] of verdict.findings) note(line, ...more)
    for (const [line, share] of verdict.poured) poured.set(line, share)
    const [first] = verdict.poured
    if (first) running.set(first[0], first[1].pump.value)
  }
  for (const [line, finding] of tooMuchFluid(drafts, running, request, knowledge)) note(line, finding)
  return { findings, poured }
}

function judgeGroup(
  group: readonly ContainerDraft[],
  request: DoseRequest,
  knowledge: DosingKnowledge,
  down: ReadonlySet<string>,
): ContainerVerdict {
  const { rules } = knowledge
  const container = group[0]?.line.container
  const { weight } = request.animal
  if (!container || !weight) return nothing
  const about = { container: container.kind, name: container.name }
  const all = (finding: DoseFinding) => new Map(group.map(({ line }) => [line.id, [finding]]))
  if (group.some(({ line }) => !line.container || !isSame(line.container, container))) {
    return { ...nothing, findings: all(found('block', 'container-disagrees', about)) }
  }
  const findings = new Map<string, DoseFinding[]>()
  const note = (line: string, ...more: DoseFinding[]) => findings.set(line, [...(findings.get(line) ?? []), ...more])
  for (const draft of group) note(draft.line.id, ...ofOne(draft, group, container, weight, knowledge))

  const drugLines = group.filter((draft) => draft.amount?.unit !== 'mL/h')
  const stops = (draft: ContainerDraft) =>
    !isReady(draft) || (findings.get(draft.line.id) ?? []).some(isBlock) || strengthBlocks(draft, rules)
  const waiting = drugLines.filter((draft) => stops(draft) || !draft.line.stock)
  if (waiting.length > 0) {
    for (const { line } of group) {
      const other = waiting.find((draft) => draft.line.id !== line.id)
      if (other) note(line.id, found('block', 'container-incomplete', { ...about, other: nameOf(other) }))
    }
    return { findings, poured: new Map() }
  }
  const ready = drugLines.filter(isReady)
  if (ready.length === 0) return { findings, poured: new Map() }
  const parts = ready.flatMap(({ line, amount }) =>
    line.stock ? [{ line: line.id, perHour: amount, stock: line.stock, down: down.has(line.id) }] : [],
  )
  const filled = fill(container, parts, weight, rules.infusions, {
    ...(knowledge.syringes && { syringes: knowledge.syringes }),
    dilutions: rules.dilutions.value,
  })
  if (filled.kind === 'refusal') {
    for (const { line } of ready) note(line.id, refusedAs(filled.refusal, about, ready, rules))
    return { findings, poured: new Map() }
  }
  const poured = new Map<string, Poured>()
  for (const draft of ready) {
    const mine = filled.answer.parts.find((part) => part.line === draft.line.id)
    if (!mine) throw new Error(`${draft.line.id} was poured into nothing.`)
    const off = mine.perHour.value.div(draft.amount.value).minus(1)
    const share = { ...filled.answer, container, mine, off }
    poured.set(draft.line.id, share)
    note(draft.line.id, ...ofFilled(draft, share, rules), ...undiluted({ ...draft, rules }, strengthIn(share)))
  }
  const barred = ready.find(({ line }) => findings.get(line.id)?.some(isBlock))
  if (!barred) return { findings, poured }
  for (const { line } of group) {
    if (line.id !== barred.line.id)
      note(line.id, found('block', 'container-incomplete', { ...about, other: nameOf(barred) }))
  }
  return { findings, poured: new Map() }
}

/** How strong a drug is in what runs out of its container; undefined for an amount that no strength holds. */
function strengthIn({ mine, final }: Poured): Stock | undefined {
  const unit = stockUnits.find((word) => word === `${mine.amount.unit}/mL`)
  return unit && (new Quantity(mine.amount.value.div(final.value), unit) as Stock)
}

const nothing: ContainerVerdict = { findings: new Map(), poured: new Map() }

/** What one line may not do in its container, whatever the amounts are. */
function ofOne(
  draft: ContainerDraft,
  group: readonly ContainerDraft[],
  container: Container,
  weight: Quantity<'kg'>,
  { rules }: DosingKnowledge,
): DoseFinding[] {
  const { drug, dose, amount } = draft
  const about = { container: container.kind, name: container.name, drug: drug?.name ?? draft.line.drug }
  if (dose && kindOf(dose) !== 'infusion-per-weight') return [found('block', 'container-not-infusion', about)]
  const others = group.filter((other) => other !== draft)
  const mixed = drug
    ? judgeMixture(
        drug,
        others.flatMap((other) => other.drug ?? []),
        container.fluid,
        rules.mixing,
      )
    : []
  if (amount?.unit !== 'mL/h') return mixed
  const rate = rateOf(container, weight)
  const isOther = amount.value.div(rate.value).minus(1).abs().gt(rules.infusions.within.value)
  const said = { ...about, rate: shown(rate), other: shown(amount) }
  return [
    ...mixed,
    ...(isOther ? [found('block', 'container-rate-other', said, [rules.infusions.within])] : []),
    ...(others.length > 0 ? [found('confirm', 'container-rate-tied', said, [rules.fluids.cut])] : []),
  ]
}

/** What is to be said of one line once the container is filled. */
function ofFilled({ drug, line }: Ready, poured: Poured, rules: DosingKnowledge['rules']): DoseFinding[] {
  const { container, off, pump, share, lasts, convention } = poured
  const about = { container: container.kind, name: container.name, drug: drug.name, rate: shown(pump) }
  const percent = (value: Decimal) => plain(value.abs().times(100).toDecimalPlaces(1))
  const hours = line.over && new Quantity(line.over.value.div(60), 'h')
  return [
    ...(off.abs().gt(rules.infusions.within.value)
      ? [found('confirm', 'infusion-off', { ...about, percent: percent(off) }, [rules.infusions.within])]
      : []),
    ...(convention === 'added' && share.gt(rules.infusions.ownShare.value)
      ? [found('note', 'container-own-volume', { ...about, percent: percent(share) }, [rules.infusions.ownShare])]
      : []),
    ...(pump.value.lt(rules.slowestRate.value.value)
      ? [found('note', 'rate-too-slow', { ...about, least: rules.slowestRate.value.toString() }, [rules.slowestRate])]
      : []),
    ...(hours?.value.gt(lasts.value)
      ? [found('note', 'container-empties', { ...about, lasts: shown(lasts), hours: shown(hours) })]
      : []),
  ]
}

function refusedAs(
  refusal: FillRefusal,
  about: Record<string, string>,
  ready: readonly Ready[],
  rules: DosingKnowledge['rules'],
): DoseFinding {
  switch (refusal.because) {
    case 'too-slow':
      return found('block', 'container-too-slow', { ...about, rate: shown(refusal.rate), least: shown(refusal.least) })
    case 'pump-cannot':
      return found('block', 'pump-cannot', { ...about, rate: shown(refusal.rate), step: refusal.step.toString() }, [
        rules.infusions.pumpStep,
      ])
    case 'too-little':
    case 'strength-does-not-fit': {
      const other = ready.find(({ line }) => line.id === refusal.line)
      const drug = other?.drug.name ?? refusal.line
      if (refusal.because === 'strength-does-not-fit') {
        return found('block', 'strength-does-not-fit', {
          drug,
          amount: shown(other?.amount),
          stock: other?.line.stock?.toString() ?? '',
        })
      }
      return found('block', 'container-too-little', { ...about, drug, volume: shown(refusal.volume) })
    }
  }
}

/** Drug infusions together, as fluid, against what anaesthesia starts with. */
function tooMuchFluid(
  drafts: readonly ContainerDraft[],
  running: ReadonlyMap<string, Decimal | undefined>,
  { animal }: DoseRequest,
  { rules }: DosingKnowledge,
): [string, DoseFinding][] {
  if (!animal.weight) return []
  const fact = rules.fluids.start[animal.species]
  const sum = [...running.values()].reduce<Decimal>((total, rate) => total.plus(rate ?? 0), new Decimal(0))
  const perKg = sum.div(animal.weight.value)
  if (perKg.lte(fact.value.value)) return []
  const about = {
    sum: `${plain(perKg.toSignificantDigits(3))} mL/kg/h`,
    most: fact.value.toString(),
    species: animal.species,
  }
  return drafts
    .filter((draft) => isReady(draft) && isDrugInfusion(draft))
    .map(({ line }) => [line.id, found('note', 'infusion-over-fluid-allowance', about, [fact])])
}

function neatRate(draft: Ready): Decimal | undefined {
  if (!isDrugInfusion(draft) || !draft.line.stock) return undefined
  return volumeOf(hourOf(draft.amount), draft.line.stock)?.value
}

function isDrugInfusion({ dose, amount }: Ready): boolean {
  return kindOf(dose) === 'infusion-per-weight' && amount.unit !== 'mL/h'
}

function isReady(draft: ContainerDraft): draft is Ready {
  const { drug, row, dose, amount, body } = draft
  return Boolean(drug && row && dose && amount && body) && !draft.findings.some(isBlock)
}

function strengthBlocks(draft: ContainerDraft, rules: DosingKnowledge['rules']): boolean {
  if (!isReady(draft)) return true
  const drawing = { ...draft, rules, down: false }
  return [...strengthOfOther(drawing), ...strengthNotAsMixed(drawing), ...strengthUnusual(drawing)].some(isBlock)
}

function isSame(a: Container, b: Container): boolean {
  return (
    a.kind === b.kind &&
    a.volume.value.eq(b.volume.value) &&
    a.rate.unit === b.rate.unit &&
    a.rate.value.eq(b.rate.value) &&
    a.ownVolume === b.ownVolume &&
    a.fluid === b.fluid
  )
}

function nameOf({ drug, line }: { readonly drug?: Drug; readonly line: PlannedLine }): string {
  return `${drug?.name ?? line.drug} (line ${line.id})`
}

function shown(quantity: AnyQuantity | undefined): string {
  return quantity ? `${plain(quantity.value.toSignificantDigits(4))} ${quantity.unit}` : ''
}
