import { type BloodGroup, bloodGroups, speciesOfGroup } from '#core/animal/blood-group.ts'
import { type LeafRead, type LeafRefusal, readQuantityText, readText, readWholeNumber } from '#core/forms/read-leaf.ts'
import { typedAgain } from '#core/forms/typed-again.ts'
import type { Carrier } from '#core/formulary/carriers.ts'
import type { Dose, DoseRow, Drug, Stock } from '#core/formulary/drug.ts'
import { stockUnits } from '#core/formulary/words.ts'
import { fromStored, type StoredQuantity } from '#core/journal/stored.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type AnyQuantity, plain, type Quantity } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { kindOf } from './amount.ts'
import type { Container } from './container.ts'
import type { PlannedLine } from './request.ts'

/** How a dose is given, as it is typed or picked; an empty text is "not said", and nothing is filled in. */
export type HowDraft = {
  readonly over: string
  readonly set: string
  readonly mixedFrom: string
  readonly mixedProduct: string
  readonly mixedFinal: string
  readonly runsFrom: '' | Container['kind']
  readonly container: string
  readonly volume: string
  readonly rate: string
  readonly ownVolume: '' | NonNullable<Container['ownVolume']>
  readonly fluid: '' | Carrier
  readonly loading: string
  readonly loadingOver: string
  readonly every: string
  readonly days: string
  readonly mark: string
  readonly xylitol: '' | 'free' | 'contains'
  readonly deficit: string
  readonly deficitOver: string
  readonly pcvNow: string
  readonly pcvAim: string
  readonly pcvDonor: string
  readonly donor: '' | BloodGroup
  readonly crossMatch: '' | 'compatible' | 'incompatible'
}

export const nothingSaid: HowDraft = {
  over: '',
  set: '',
  mixedFrom: '',
  mixedProduct: '',
  mixedFinal: '',
  runsFrom: '',
  container: '',
  volume: '',
  rate: '',
  ownVolume: '',
  fluid: '',
  loading: '',
  loadingOver: '',
  every: '',
  days: '',
  mark: '',
  xylitol: '',
  deficit: '',
  deficitOver: '',
  pcvNow: '',
  pcvAim: '',
  pcvDonor: '',
  donor: '',
  crossMatch: '',
}

/** What may be asked about one row of the formulary. */
export type HowQuestion = 'over' | 'set' | 'mixed' | 'container' | 'loading' | 'course' | 'bottle' | 'deficit' | 'blood'
export type HowRefusal = { readonly at: keyof HowDraft } & LeafRefusal

/** What a line says besides drug, use, route, dose and strength. */
export type SaidHow = Pick<
  PlannedLine,
  | 'formulation'
  | 'over'
  | 'set'
  | 'mixed'
  | 'container'
  | 'loading'
  | 'every'
  | 'days'
  | 'mark'
  | 'xylitolFree'
  | 'deficit'
  | 'goal'
  | 'donor'
  | 'crossMatch'
>

/**
 * The questions that mean something for a row: an infusion runs from something, a course lasts some days. `planned` is
 * false for a usual plan, which knows neither the loss of an animal nor its donor.
 *
 * @example questionsOf(lidocaine, infusionRow, true) // ['over', 'set', 'mixed', 'container', 'loading']
 */
export function questionsOf(drug: Drug, { range, routes, use }: DoseRow, planned: boolean): HowQuestion[] {
  const isInfusion = kindOf(range.value.low) === 'infusion-per-weight'
  const isFluid = use === 'fluid' || use === 'fluid_bolus' || use === 'blood_product'
  const byMouth = routes.includes('PO') || routes.includes('OTM')
  const inVein = routes.includes('IV') || routes.includes('IO')
  return [
    ...(isInfusion || inVein ? (['over'] as const) : []),
    ...(isInfusion || isFluid ? (['set'] as const) : []),
    ...(isInfusion && !isFluid ? (['mixed', 'container', 'loading'] as const) : []),
    ...(byMouth ? (['course', 'bottle'] as const) : []),
    ...(planned && use === 'fluid' ? (['deficit'] as const) : []),
    ...(planned && (use === 'blood_product' || drug.groups.includes('red-cells')) ? (['blood'] as const) : []),
  ]
}

type Facts = { readonly decimalMark: '.' | ',' }

/**
 * How the line is given, or everything that cannot be read, field by field. Answers to questions that the row does not
 * ask are left out: they belong to the drug that stood there before.
 *
 * @example readHowDraft({ ...nothingSaid, over: '30' }, row, ['over'], { decimalMark: '.', line: 'antibiotic' })
 */
export function readHowDraft(
  draft: HowDraft,
  row: DoseRow,
  questions: readonly HowQuestion[],
  facts: Facts & { readonly line: string },
): Outcome<SaidHow, readonly HowRefusal[]> {
  const refusals: HowRefusal[] = []
  const asks = (question: HowQuestion) => questions.includes(question)
  const take = (at: keyof HowDraft, read: LeafRead) => {
    if (read.kind === 'answer') return read.answer
    refusals.push({ at, ...read.refusal })
    return undefined
  }
  function quantity<U extends Unit>(
    at: keyof HowDraft,
    units: readonly U[],
    isNeeded = false,
  ): Quantity<U> | undefined {
    const text = draft[at]
    if (text.trim() === '' && !isNeeded) return undefined
    const read = take(at, readQuantityText(text, units, facts))
    return read === undefined ? undefined : fromStored(read as unknown as StoredQuantity<U>)
  }
  const said = (...fields: readonly (keyof HowDraft)[]) => fields.some((field) => draft[field].trim() !== '')
  const over = asks('over') ? quantity('over', ['min']) : undefined
  const set = asks('set') ? quantity('set', ['[drp]/mL']) : undefined
  const isMixed = asks('mixed') && said('mixedFrom', 'mixedProduct', 'mixedFinal')
  const from = isMixed ? (quantity('mixedFrom', stockUnits, true) as Stock | undefined) : undefined
  const [product, final] = (['mixedProduct', 'mixedFinal'] as const).map((at) =>
    isMixed ? quantity(at, ['mL'], true) : undefined,
  )
  const container = asks('container') ? containerOf() : undefined
  const loadingDose = asks('loading') ? quantity('loading', ['mg/kg', 'ug/kg'], said('loadingOver')) : undefined
  const loadingOver = asks('loading') ? quantity('loadingOver', ['min']) : undefined
  const every = asks('course') ? quantity('every', ['h']) : undefined
  const days =
    asks('course') && said('days')
      ? (take('days', readWholeNumber(draft.days, 1, 366)) as number | undefined)
      : undefined
  const mark = asks('bottle') ? quantity('mark', ['mL']) : undefined
  const lost = asks('deficit') && said('deficit', 'deficitOver')
  const percent = lost ? quantity('deficit', ['%'], true) : undefined
  const within = lost ? quantity('deficitOver', ['h'], true) : undefined
  const hasGoal = asks('blood') && said('pcvNow', 'pcvAim', 'pcvDonor')
  const [now, aim, donorPcv] = (['pcvNow', 'pcvAim', 'pcvDonor'] as const).map((at) =>
    hasGoal ? quantity(at, ['%'], true) : undefined,
  )

  function containerOf(): Container | undefined {
    if (draft.runsFrom === '') return undefined
    const name = said('container') ? take('container', readText(draft.container, 300)) : facts.line
    const volume = quantity('volume', ['mL'], true)
    const rate = quantity('rate', ['mL/h', 'mL/kg/h'], true)
    if (name === undefined || !volume || !rate) return undefined
    return {
      kind: draft.runsFrom,
      name: String(name),
      volume,
      rate: rate as Container['rate'],
      ...(draft.ownVolume && { ownVolume: draft.ownVolume }),
      ...(draft.fluid && { fluid: draft.fluid }),
    }
  }

  if (refusals.length > 0) return refuse(refusals)
  return answer({
    ...(row.formulation !== undefined && { formulation: row.formulation }),
    ...(over && { over }),
    ...(set && { set }),
    ...(from && product && final && { mixed: { from, product, final } }),
    ...(container && { container }),
    ...(loadingDose && { loading: { dose: loadingDose as Dose, ...(loadingOver && { over: loadingOver }) } }),
    ...(every && { every }),
    ...(days !== undefined && { days }),
    ...(mark && { mark }),
    ...(asks('bottle') && draft.xylitol !== '' && { xylitolFree: draft.xylitol === 'free' }),
    ...(percent && within && { deficit: { percent, over: within } }),
    ...(now && aim && donorPcv && { goal: { now, aim, donorPcv } }),
    ...(asks('blood') && draft.donor !== '' && { donor: draft.donor }),
    ...(asks('blood') && draft.crossMatch !== '' && { crossMatch: draft.crossMatch }),
  })
}

/** What is said of a line as it would be typed again. Example: `draftOfHow({ days: 7 }, 'x', { decimalMark: '.' }).days` → '7'. */
export function draftOfHow(how: SaidHow, line: string, { decimalMark }: Facts): HowDraft {
  const text = (quantity: Pick<AnyQuantity, 'value' | 'unit'> | undefined) =>
    quantity === undefined ? '' : typedAgain({ value: plain(quantity.value), unit: quantity.unit }, decimalMark)
  const { container, loading, deficit, goal } = how
  return {
    over: text(how.over),
    set: text(how.set),
    mixedFrom: text(how.mixed?.from),
    mixedProduct: text(how.mixed?.product),
    mixedFinal: text(how.mixed?.final),
    runsFrom: container?.kind ?? '',
    container: container && container.name !== line ? container.name : '',
    volume: text(container?.volume),
    rate: text(container?.rate),
    ownVolume: container?.ownVolume ?? '',
    fluid: container?.fluid ?? '',
    loading: text(loading?.dose),
    loadingOver: text(loading?.over),
    every: text(how.every),
    days: how.days === undefined ? '' : String(how.days),
    mark: text(how.mark),
    xylitol: how.xylitolFree === undefined ? '' : how.xylitolFree ? 'free' : 'contains',
    deficit: text(deficit?.percent),
    deficitOver: text(deficit?.over),
    pcvNow: text(goal?.now),
    pcvAim: text(goal?.aim),
    pcvDonor: text(goal?.donorPcv),
    donor: how.donor ?? '',
    crossMatch: how.crossMatch ?? '',
  }
}

/** The groups a donor of this species can have. */
export function donorGroups(species: DoseRow['species']): BloodGroup[] {
  return bloodGroups.filter((group) => speciesOfGroup(group) === species)
}
