import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseFindingWords, spelledUnits } from '#content/wording/dosing-findings.ts'
import type { AnimalWord } from '#core/animal/conditions.ts'
import { type DoseResult, doseLines } from '#core/dosing/dose-lines.ts'
import type { DoseFinding } from '#core/dosing/findings.ts'
import type { DoseLine, DoseRequest, DrawnLine, PlannedLine } from '#core/dosing/request.ts'
import type { LabelTable } from '#core/dosing/rules.ts'
import { usualSyringes } from '#core/dosing/syringe.ts'
import { leanWeight } from '#core/dosing/weight.ts'
import { type Divides, type Dose, type DoseRow, type Drug, localLimit, type Stock } from '#core/formulary/drug.ts'
import { fill, type Level } from '#core/outcome/finding.ts'
import { type AnyQuantity, convert, Decimal, Quantity } from '#core/units/quantity.ts'
import { drugs, inOtherUnit, kilogramsOfPounds, now, type RandomPlan } from './random-plans.ts'

/** What may never be broken, said as a sentence; `check` throws with the plan's own words. */
export type Law = { readonly says: string; readonly check: (plan: RandomPlan, result: DoseResult) => void }

const knowledge = { drugs, rules: dosingRules, plans: [], policies: [] }
export const judge = (request: DoseRequest): DoseResult => doseLines(request, knowledge)

const isDrawn = (line: DoseLine | undefined): line is DrawnLine => line !== undefined && line.verdict !== 'refused'
/** Quotients of forty figures are not exact in their last ones. */
const hair = new Decimal('1.00000000000000000000000000001')
const zero = new Decimal(0)

function must(isKept: boolean, what: () => string): void {
  if (!isKept) throw new Error(what())
}

const drugOf = (id: string): Drug | undefined => drugs.find((drug) => drug.id === id)

/** The row a line was worked out with: its words fit one row only, or the line is refused. */
function rowOf(line: DrawnLine, asked: PlannedLine, species: string): DoseRow | undefined {
  return drugOf(line.drug)?.doses.find(
    (row) =>
      row.species === species &&
      row.use === asked.use &&
      (asked.route === undefined || row.routes.includes(asked.route)) &&
      (asked.qualifier === undefined || row.qualifier === asked.qualifier) &&
      row.formulation === asked.formulation &&
      convert(line.dose, row.range.value.low.unit) !== undefined,
  )
}

const sum = (values: readonly Decimal[]) => values.reduce((total, value) => total.plus(value), zero)

/** What really comes out of syringe or box, as milligrams; the planned amount where nothing is rounded. */
function milligrams(line: DrawnLine): Decimal | undefined {
  const planned = convert(line.amount, 'mg')?.value
  if (!planned || !line.delivered) return planned
  return planned.times(line.delivered.value).div(line.dose.value)
}

/** What a syringe or a pump gives of a fluid within a day; an infusion without an end is not counted here. */
function millilitres({ amount, delivered, dose, total }: DrawnLine): Decimal {
  const once = convert(amount, 'mL')?.value
  if (once) return delivered ? once.times(delivered.value).div(dose.value) : once
  const perHour = convert(amount, 'mL/h')?.value
  const all = total && convert(total, 'mL')?.value
  return perHour && all ? Decimal.min(all, perHour.times(24)) : zero
}

type Worked = {
  readonly line: DrawnLine
  readonly asked: PlannedLine
  readonly row: DoseRow
  readonly drug: Drug
}

function workedOf({ request }: RandomPlan, result: DoseResult): Worked[] {
  return result.lines.flatMap((line, place) => {
    const asked = request.lines[place]
    const drug = drugOf(line.drug)
    const row = isDrawn(line) && asked ? rowOf(line, asked, request.animal.species) : undefined
    return isDrawn(line) && asked && row && drug ? [{ line, asked, row, drug }] : []
  })
}

function givenMilligrams(request: DoseRequest, drug: string, hours: string, isInfusion = false): Decimal {
  return sum(
    request.given
      .filter((given) => given.drug === drug && (given.use === 'cri') === isInfusion)
      .filter(
        ({ at }) => !at || !request.at || new Decimal(now.since(at).total('minutes')).lt(new Decimal(hours).times(60)),
      )
      .map(({ amount, stock }) => {
        const mass = amount && convert(amount, 'mg')
        const volume = amount && convert(amount, 'mL')
        const strength = stock && convert(stock, 'mg/mL')
        return mass?.value ?? (volume && strength ? volume.value.times(strength.value) : zero)
      }),
  )
}

function givenMillilitres(request: DoseRequest, drug: string): Decimal {
  const day = request.given.filter(
    ({ drug: given, at }) =>
      given === drug && (!at || !request.at || new Decimal(now.since(at).total('minutes')).lt(24 * 60)),
  )
  return sum(day.map(({ amount }) => (amount && convert(amount, 'mL')?.value) ?? zero))
}

const emergency = ({ line }: Worked) => line.use === 'emergency'

/** How the tablet in hand divides: as said with it, else as its size is listed; what nobody knows stays whole. */
function piecesOf(asked: PlannedLine, row: DoseRow): Divides {
  const listed = row.tablets?.value.find(({ strength }) => asked.tablet?.strength.value.eq(strength.value))
  return asked.tablet?.divides ?? listed?.divides ?? 'unknown'
}

/**
 * The label whose table by weight gives just this count. A limit belongs to the label it comes from: the count that a
 * label prints for exactly this species, use, product, dose and gap is held to that label's own most. A lower maximum
 * of another label is then said beside it, with both sources. Every other line is held to the maximum of its row.
 */
function labelOf({ line, asked, row }: Worked): LabelTable | undefined {
  const { tablets, dosingWeight } = line
  const size = asked.tablet?.strength.value
  if (!tablets || !dosingWeight || !size) return undefined
  const table = dosingRules.labelTables.find(
    (one) =>
      one.drug === line.drug &&
      one.species === row.species &&
      one.use === row.use &&
      one.qualifier === row.qualifier &&
      one.size.value.eq(size) &&
      one.divides === piecesOf(asked, row) &&
      asked.every === undefined &&
      convert(line.dose, one.dose.unit)?.value.eq(one.dose.value) === true,
  )
  const weight = dosingWeight.value.toDecimalPlaces(1, Decimal.ROUND_HALF_UP)
  const band = table?.bands.find(({ value }) => weight.gte(value.fromKg) && weight.lte(value.toKg))?.value
  return band && tablets.each.value.eq(band.tablets) ? table : undefined
}

/** Over the row's maximum only by its own label, under that label's most, and said with both. */
function byItsLabel(worked: Worked, given: Dose, most: string): void {
  const { line, row } = worked
  const label = labelOf(worked)
  must(label !== undefined, () => `${line.id} gives ${given}, the most is ${most}.`)
  if (!label) return
  const own = convert(label.most, given.unit)
  must(own !== undefined && given.value.lte(own.value.times(hair)), () => `${line.id} gives ${given}, its label stops.`)
  const both = [...label.sources, ...(row.maxSingle?.sources ?? [])]
  const said = line.findings.find(({ code, level }) => code === 'label-over-maximum' && level === 'confirm')
  must(
    said !== undefined && both.every((source) => said.sources.includes(source)),
    () => `${line.id} gives ${given} by its label, and does not say that another one stops at ${most}.`,
  )
}

function belowCeilings(plan: RandomPlan, result: DoseResult): void {
  const { request } = plan
  const { animal } = request
  const worked = workedOf(plan, result)
  const lean = animal.weight && leanWeight(animal.weight, animal.bodyCondition, dosingRules.weight)
  for (const one of worked) {
    const { line, row } = one
    const most = row.maxSingle?.value.limit
    const given = line.delivered ?? line.dose
    const perDose = most && convert(most, given.unit)
    if (perDose && given.value.gt(perDose.value.times(hair))) byItsLabel(one, given, String(most))
    const asMass = most && convert(most, 'mg')
    const mass = milligrams(line)
    must(
      !asMass || !mass || mass.lte(asMass.value.times(hair)),
      () => `${line.id} gives ${mass} mg of at most ${most}.`,
    )
    const range = convert(row.range.value.high, line.dose.unit)
    must(!range || line.dose.value.lt(range.value.times(5)), () => `${line.id} is five times its range.`)
    must(row.species === animal.species, () => `${line.id} is a dose of the other species.`)
  }
  if (!lean) return
  localAnaesthetic(request, worked, lean)
  days(request, worked, lean)
}

/** One limit for both ears and all routes; a dose of the emergency sheet is not silenced, and not counted against it. */
function localAnaesthetic(request: DoseRequest, worked: readonly Worked[], lean: Quantity<'kg'>): void {
  const counted = worked.filter((entry) => entry.drug.localAnaesthetic && entry.line.use !== 'cri' && !emergency(entry))
  if (counted.length === 0) return
  const { species } = request.animal
  const share = (drug: Drug, mass: Decimal, formulation?: string) => {
    const limit = localLimit(drug, formulation)?.limits[species].value
    return limit ? mass.div(limit.value.times(lean.value)) : zero
  }
  // No given dose of these plans names the strength of a formulation of its own: each counts as the usual product.
  const before = drugs
    .filter(({ localAnaesthetic }) => localAnaesthetic)
    .map((drug) =>
      share(drug, givenMilligrams(request, drug.id, String(drug.localAnaesthetic?.washout.value.value ?? 0))),
    )
  const planned = counted.map(({ drug, row, line }) => share(drug, massIn(line), row.formulation))
  const all = sum([...before, ...planned])
  must(all.lte(hair), () => `local anaesthetic reaches ${all} of the limit.`)
}

/** A wound catheter runs by the hour: over its time, and at most over the washout. */
function massIn(line: DrawnLine): Decimal {
  const perHour = convert(line.amount, 'mg/h')
  if (!perHour) return milligrams(line) ?? zero
  const total = line.total && convert(line.total, 'mg')
  const washout = drugOf(line.drug)?.localAnaesthetic?.washout.value.value ?? zero
  const whole = perHour.value.times(washout)
  return total ? Decimal.min(total.value, whole) : whole
}

/** Daily maxima: given in a day and planned together; an NSAID row is one dose of its interval. */
function days(request: DoseRequest, worked: readonly Worked[], lean: Quantity<'kg'>): void {
  const measured = request.animal.weight ?? lean
  for (const one of worked) {
    const { row, drug, line } = one
    const mine = worked.filter((entry) => entry.drug.id === drug.id)
    const weight = line.dosingWeight ?? measured
    // A mark that asks for a person bars nothing.
    const { limit, per, asks } = row.maxCumulative?.value ?? {}
    const perKilogram = limit && per === 'day' && !asks ? convert(limit, 'mg/kg') : undefined
    const planned = sum(mine.map((entry) => milligrams(entry.line) ?? zero))
    if (perKilogram) {
      const day = planned.plus(givenMilligrams(request, drug.id, '24'))
      const most = perKilogram.value.times(weight.value)
      must(day.lte(most.times(hair)), () => `${drug.id} reaches ${day} mg in a day, the most is ${most}.`)
    }
    const volume = limit && per === 'day' && !asks ? convert(limit, 'mL/kg') : undefined
    // The emergency sheet is never silenced: there a ceiling is a note.
    if (volume && !emergency(one)) {
      const day = sum(mine.map((entry) => millilitres(entry.line))).plus(givenMillilitres(request, drug.id))
      const most = volume.value.times(weight.value)
      must(day.lte(most.times(hair)), () => `${drug.id} reaches ${day} mL in a day, the most is ${most}.`)
    }
    const single = row.maxSingle && convert(row.maxSingle.value.limit, 'mg/kg')
    if (single && drug.groups.includes('nsaid')) {
      // One dose by its own label was held to that label; beside a second one of its row nothing is.
      const same = mine.filter((entry) => entry.row === row)
      if (same.length === 1 && labelOf(one)) continue
      const mass = sum(same.map((entry) => milligrams(entry.line) ?? zero))
      must(mass.lte(single.value.times(weight.value).times(hair)), () => `${drug.id} is planned twice: ${mass} mg.`)
    }
  }
  // Gelatt 2001: the cat's retina, whatever laboratory, route or category.
  const enrofloxacin = worked.filter(({ drug }) => drug.id === 'enrofloxacin' && request.animal.species === 'cat')
  if (enrofloxacin.length === 0) return
  const planned = sum(enrofloxacin.map(({ line }) => milligrams(line) ?? zero))
  const day = planned.plus(givenMilligrams(request, 'enrofloxacin', '24'))
  must(day.lte(measured.value.times(5).times(hair)), () => `the cat gets ${day} mg of enrofloxacin in a day.`)
}

const measures = [
  'amount',
  'volume',
  'drawn',
  'delivered',
  'tablets',
  'rate',
  'total',
  'dilution',
  'dosingWeight',
] as const

function refusedIsEmpty(_: RandomPlan, { lines }: DoseResult): void {
  for (const line of lines) {
    const blocks = line.findings.filter(({ level }) => level === 'block')
    must(
      (line.verdict === 'refused') === blocks.length > 0,
      () => `${line.id} is ${line.verdict} with ${blocks.length} blocks.`,
    )
    must((line.verdict === 'ok') === (line.findings.length === 0), () => `${line.id} is ${line.verdict} with findings.`)
    const carried = measures.filter((field) => line.verdict === 'refused' && field in line)
    must(carried.length === 0, () => `the refused ${line.id} carries ${carried.join(', ')}.`)
    must(isDrawn(line) || line.verdict === 'refused', () => `${line.id} has no verdict.`)
  }
}

function saysWhy(_: RandomPlan, { lines, findings }: DoseResult): void {
  for (const finding of [...findings, ...lines.flatMap((line) => line.findings)]) {
    must(finding.sources.length > 0, () => `${finding.code} names no source.`)
    const words = fill(doseFindingWords[finding.code], finding.about)
    const said = Object.keys(spelledUnits).reduce((text, unit) => text.replaceAll(unit, ''), words)
    must(!/\{[a-z]+\}|undefined|NaN|\[object/u.test(said), () => `${finding.code} is said as "${said}".`)
  }
}

const perPiece: Readonly<Record<Divides, string>> = { whole: '1', unknown: '1', halves: '0.5', quarters: '0.25' }

/** Half a mark of the smallest syringe that holds it; a whole mark where a ceiling rounds down; pieces that the tablet has. */
function withinRounding({ request }: RandomPlan, { lines }: DoseResult): void {
  lines.forEach((line, place) => {
    const asked = request.lines[place]
    if (!isDrawn(line) || !asked) return
    const { volume, drawn } = line.dilution ?? line
    if (volume && drawn) {
      const syringe = usualSyringes.find(({ holds }) => volume.value.lte(holds)) ?? usualSyringes.at(-1)
      const mark = new Decimal(syringe?.mark ?? 0)
      must(drawn.value.mod(mark).isZero(), () => `${line.id} draws ${drawn}, which is no mark of ${mark} mL.`)
      const off = drawn.value.minus(volume.value)
      must(off.gt(mark.neg()) && off.lte(mark.div(2)), () => `${line.id} draws ${drawn} of ${volume}.`)
      deliveredIsDrawn(line, line.dilution?.strength ?? asked.stock, drawn)
    }
    if (line.tablets) {
      const { each, strength } = line.tablets
      const mass = convert(line.amount, 'mg')?.value ?? zero
      const off = each.value.times(strength.value).minus(mass).abs()
      must(off.lt(strength.value), () => `${line.id} counts ${each} of ${strength} for ${mass} mg.`)
      const row = rowOf(line, asked, request.animal.species)
      const divides = row ? piecesOf(asked, row) : 'unknown'
      must(each.value.mod(perPiece[divides]).isZero(), () => `${line.id} counts ${each}: it divides ${divides}.`)
    }
  })
}

function deliveredIsDrawn(line: DrawnLine, stock: Stock | undefined, drawn: Quantity<'mL'>): void {
  const strength = stock && convert(stock, 'mg/mL')
  const planned = convert(line.amount, 'mg')
  if (!strength || !planned || !line.delivered) return
  const share = drawn.value.times(strength.value).div(planned.value)
  const told = line.delivered.value.div(line.dose.value)
  must(share.minus(told).abs().lt('1e-25'), () => `${line.id} says ${told} of the dose, the syringe holds ${share}.`)
}

/** The same animal with its weight in pounds, and every dose and strength in another unit: the same answer. */
function poundsAgree({ request, pounds }: RandomPlan): void {
  const other = (line: PlannedLine): PlannedLine => ({
    ...line,
    ...(line.dose && { dose: inOtherUnit(line.dose) as Dose }),
    ...(line.stock && { stock: inOtherUnit(line.stock) as unknown as Stock }),
  })
  const exact = new Quantity(pounds.times('0.45359237'), 'kg')
  const inKilograms = judge({ ...request, animal: { ...request.animal, weight: exact } })
  const inPounds = judge({
    ...request,
    animal: { ...request.animal, weight: kilogramsOfPounds(pounds) },
    lines: request.lines.map(other),
  })
  inKilograms.lines.forEach((line, place) => {
    const twin = inPounds.lines[place]
    must(twin?.verdict === line.verdict, () => `${line.id} is ${line.verdict}, in other units ${twin?.verdict}.`)
    if (!isDrawn(line) || !isDrawn(twin)) return
    const amount = convert(twin.amount, line.amount.unit)
    const off = amount?.value.div(line.amount.value).minus(1).abs()
    must(off?.lt('1e-25') === true, () => `${line.id} is ${line.amount}, in other units ${twin.amount}.`)
    must(line.drawn?.toString() === twin.drawn?.toString(), () => `${line.id} draws ${line.drawn} or ${twin.drawn}.`)
    must(sameTablets(line, twin), () => `${line.id} counts other tablets in other units.`)
  })
}

const sameTablets = (a: DrawnLine, b: DrawnLine) => a.tablets?.each.toString() === b.tablets?.each.toString()

function heavierIsNotLess({ request, heavier }: RandomPlan, light: DoseResult): void {
  if (!request.animal.weight) return
  const heavy = judge({ ...request, animal: { ...request.animal, weight: heavier } })
  light.lines.forEach((line, place) => {
    const more = heavy.lines[place]
    if (!isDrawn(line) || !isDrawn(more)) return
    must(
      more.amount.value.gte(line.amount.value),
      () => `${line.id}: ${more.amount} at ${heavier}, ${line.amount} before.`,
    )
    // Where several syringes share one limit all are rounded down together; each by itself may then lose a mark.
    if (drugOf(line.drug)?.localAnaesthetic) return
    const [less, now] = [milligrams(line), milligrams(more)]
    must(
      !less || !now || now.times(hair).gte(less),
      () => `${line.id}: ${now} mg really given at ${heavier}, ${less} before.`,
    )
  })
}

const rank: Readonly<Record<Level, number>> = { note: 1, confirm: 2, block: 3 }
/** What a rounded syringe, a volume or a strength is told belongs to the drawing, not to the drug. */
const aboutDrawing = /^(rounding|rounded|volume|tablet|rate|strength|duration)-/u

/**
 * `loads` names the drug that came in. Where it is a single dose of the drug that runs in, nothing climbs from nothing
 * any more: that note is answered, not weaker. A refused line answers nothing. The fluid of all infusions together is less
 * once one of them is refused for a new reason: then that note of the others may go. Drums that were seen whole answer
 * the note that nobody looked.
 */
function notWeaker(before: DoseResult, after: DoseResult, loads?: string, word?: AnimalWord): void {
  const kept = (finding: DoseFinding, now: readonly DoseFinding[]) =>
    now.some(({ code, level }) => code === finding.code && rank[level] >= rank[finding.level]) ||
    now.some(({ level }) => rank[level] > rank[finding.level])
  const runsLess = before.lines.some(({ id, findings }) => {
    const now = after.lines.find((line) => line.id === id)?.findings ?? []
    return now.some(({ code, level }) => level === 'block' && !findings.some((finding) => finding.code === code))
  })
  for (const line of before.lines) {
    const now = after.lines.find(({ id }) => id === line.id)
    const lost = line.findings.find(
      (finding) =>
        !aboutDrawing.test(finding.code) &&
        !(finding.code === 'loading-not-chosen' && line.drug === loads) &&
        !(finding.code === 'infusion-over-fluid-allowance' && runsLess) &&
        !(finding.code === 'drums-unknown' && word === 'intact-drums') &&
        !(finding.code === 'over-daily-maximum-in-time' && isReached(now)) &&
        !(now && kept(finding, now.findings)),
    )
    must(!lost, () => `${line.id} loses ${lost?.level} ${lost?.code}.`)
    must(line.verdict !== 'refused' || now?.verdict === 'refused', () => `${line.id} is no longer refused.`)
  }
  const lost = before.findings.find((finding) => !kept(finding, after.findings))
  must(!lost, () => `the plan loses ${lost?.level} ${lost?.code}.`)
}

/** The most of the day is no more reached in time, but by what is counted already. */
function isReached(now: DoseLine | undefined): boolean {
  return now?.findings.some(({ code }) => code === 'over-daily-maximum') === true
}

function anotherGiven({ request, another }: RandomPlan, result: DoseResult): void {
  notWeaker(result, judge({ ...request, given: [another, ...request.given] }), another.drug)
}

function anotherPlanned({ request, anotherLine }: RandomPlan, result: DoseResult): void {
  const after = judge({ ...request, lines: [anotherLine, ...request.lines] })
  notWeaker(result, after, isDrawn(after.lines[0]) ? anotherLine.drug : undefined)
}

function anotherCondition({ request, anotherCondition: word }: RandomPlan, result: DoseResult): void {
  const conditions = [...new Set([word, ...request.animal.conditions])]
  notWeaker(result, judge({ ...request, animal: { ...request.animal, conditions } }), undefined, word)
}

/** Held against every plan. */
export const lawsOfOne: readonly Law[] = [
  { says: 'no accepted plan is above a ceiling', check: belowCeilings },
  { says: 'a refused line carries no amount, and says why', check: refusedIsEmpty },
  { says: 'every finding names its source, in a whole sentence', check: saysWhy },
  { says: 'what is delivered is the amount within the stated rounding', check: withinRounding },
]

/** They judge a second plan beside the first; each plan takes its turn at one of them. */
export const lawsOfTwo: readonly Law[] = [
  { says: 'kilograms and pounds, milligrams and micrograms agree', check: poundsAgree },
  { says: 'more weight never gives less drug', check: heavierIsNotLess },
  { says: 'a drug more, given before, never makes a check weaker', check: anotherGiven },
  { says: 'a drug more, planned as well, never makes a check weaker', check: anotherPlanned },
  { says: 'a condition more never makes a check weaker', check: anotherCondition },
]

/** Holds one plan against the laws; throws a sentence that names the law. */
export function holdLaws(plan: RandomPlan, turn: number): void {
  const result = judge(plan.request)
  const second = lawsOfTwo[turn % lawsOfTwo.length]
  for (const law of [...lawsOfOne, ...(second ? [second] : [])]) {
    try {
      law.check(plan, result)
    } catch (error) {
      throw new Error(`Law "${law.says}": ${(error as Error).message}`)
    }
  }
}

/** Findings as short words, to read a counterexample. */
export function told({ lines, findings }: DoseResult): string {
  const short = (some: readonly DoseFinding[]) => some.map(({ level, code }) => `${level} ${code}`).join(', ')
  return [
    ...lines.map(
      (line) => `${line.id} ${line.drug} ${line.use} ${line.verdict} ${amountOf(line)}: ${short(line.findings)}`,
    ),
    `plan: ${short(findings)}`,
  ].join('\n')
}

function amountOf(line: DoseLine): string {
  if (!isDrawn(line)) return ''
  const parts: readonly (AnyQuantity | Dose | undefined)[] = [
    line.dose,
    line.amount,
    line.drawn as AnyQuantity | undefined,
  ]
  return parts.filter(Boolean).map(String).join(' | ')
}
