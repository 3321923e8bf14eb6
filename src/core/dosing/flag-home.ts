import { Temporal } from 'temporal-polyfill'
import type { z } from 'zod'
import { type DoseRow, type Drug, drugById } from '#core/formulary/drug.ts'
import { type HomeCourse, type HomePlan, homePlanOf } from '#core/home/home-plan.ts'
import { medicineTimes, stretchesOf } from '#core/home/medicine-times.ts'
import type { Case } from '#core/journal/fold.ts'
import type { homeMedicine } from '#core/journal/kinds/discharge.ts'
import { fromStored } from '#core/journal/stored.ts'
import { wallTime } from '#core/time/wall-times.ts'
import { convert, Decimal, Quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import { type DoseFinding, found, isBlock } from './findings.ts'
import { aboutThePlan, mostLikely, wordsOf } from './flag-given.ts'
import { dosedAnimalOf, givenOf } from './from-journal.ts'
import { confirmedHome } from './home-confirmed.ts'
import { judgeDays, judgeFirstDay } from './home-days.ts'
import { judgeEyes } from './home-eye.ts'
import { judgeKnown } from './home-known.ts'
import { drugOfHome } from './home-names.ts'
import { judgeSide } from './home-side.ts'
import type { DosedAnimal, DosingKnowledge, Given, PlannedLine } from './request.ts'
import { leanWeight, usesLeanWeight } from './weight.ts'

type HomeMedicine = z.infer<typeof homeMedicine>

/** What was found about the page for home, and which of its medicines it is about; null for its other answers. */
export type HomeFinding = { readonly finding: DoseFinding; readonly course: HomeCourse | null }

/**
 * What a check has against the page that an animal goes home with: too much each time or in a day, too often, forbidden
 * in this species, an NSAID beside a steroid, the wrong eye, a day that cannot be meant, and what nobody could check.
 * Writing the discharge down is never refused; the page for the owner says that it must not be handed out yet. What a
 * person confirmed is left out.
 *
 * @example flagsOfHome(theCase, 'Europe/London', knowledge).map(({ code }) => code)
 */
export function flagsOfHome(theCase: Case, zone: string, knowledge: DosingKnowledge): readonly DoseFinding[] {
  const plan = homePlanOf(theCase)
  return plan ? onceEach(openOfHome(theCase, plan, zone, knowledge)) : []
}

/** The findings that still wait for a person, each with its medicine. */
export function openOfHome(
  theCase: Case,
  plan: HomePlan,
  zone: string,
  knowledge: DosingKnowledge,
): readonly HomeFinding[] {
  const all = findingsOfHome(theCase, plan, zone, knowledge)
  const isConfirmed = confirmedHome(theCase, plan, onceEach(all)) !== null
  return isConfirmed ? all.filter(({ finding }) => isBlock(finding)) : all
}

/** Two steps may be against the same rule in the same words; it is said once. */
export function onceEach(findings: readonly HomeFinding[]): readonly DoseFinding[] {
  return [...new Map(findings.map(({ finding }) => [JSON.stringify(finding), finding])).values()]
}

/**
 * Everything that is found about a page for home, whether or not somebody confirmed it; also of one that is still being
 * written.
 *
 * @example findingsOfHome(theCase, homePlanWith(theCase, draft), zone, knowledge).map(({ finding }) => finding.code)
 */
export function findingsOfHome(
  theCase: Case,
  plan: HomePlan,
  zone: string,
  knowledge: DosingKnowledge,
): readonly HomeFinding[] {
  const { rules } = knowledge
  const animal = dosedAnimalOf(theCase, plan.changes.at(-1)?.at ?? plan.discharge.at)
  if (!animal) return []
  const given = plan.courses.filter(({ until }) => until === null)
  const ofCourse = given.flatMap((course) =>
    [
      ...judgeSide(course, theCase, rules),
      ...judgeKnown(course, animal, knowledge),
      ...judgeFirstDay(course, plan, theCase, zone, rules),
    ].map((finding) => ({ finding, course })),
  )
  const ofPage = [...judgeDays(plan, zone, rules), ...judgeEyes(plan, theCase, rules)]
  return [
    ...judgeSwallowed(theCase, plan, animal, zone, knowledge),
    ...ofCourse,
    ...ofPage.map((finding) => ({ finding, course: null })),
  ]
}

function judgeSwallowed(
  theCase: Case,
  plan: HomePlan,
  animal: DosedAnimal,
  zone: string,
  knowledge: DosingKnowledge,
): HomeFinding[] {
  const courses = plan.courses.filter(({ form }) => form === 'tablet' || form === 'liquid')
  const swallowed = courses.filter(({ until }) => until === null)
  const stopped = courses.flatMap((course) => lastOf(course, zone))
  // Each step of a dose that is brought down is judged by itself, beside the other medicines: never beside its own steps.
  const stretches = swallowed.flatMap((course, place) => stretchesOf(course).map((medicine) => ({ medicine, place })))
  return stretches.flatMap(({ medicine, place }) => {
    const beside = swallowed.with(place, medicine)
    const lines = beside.flatMap((other, index) => lineOf(other, String(index), animal, knowledge) ?? [])
    const at = Temporal.Instant.from(wallTime(medicine.firstDay, medicine.firstTime, zone).at)
    const before = stopped.filter((given) => Temporal.Instant.compare(given.at, at) <= 0)
    const request = { animal, given: [...givenOf(theCase, at.toString()), ...before], at, lines }
    const mine = doseLines(request, knowledge).lines.find(({ id }) => id === String(place))
    const own = lines.find(({ id }) => id === String(place))
    const judged = (mine?.findings ?? []).filter(
      ({ code, level }) =>
        level !== 'note' &&
        !notOfHome.has(code) &&
        !(code === 'over-single-maximum' && isOnOtherLabel(medicine, own, animal, knowledge)),
    )
    const findings = [...judged, ...tooOften(medicine, own, animal, knowledge)]
    return findings.map((finding) => ({ finding, course: swallowed[place] ?? null }))
  })
}

/** What was stopped is still in the animal for a while: its last dose counts as given. */
function lastOf(course: HomeCourse, zone: string): (Given & { readonly at: Temporal.Instant })[] {
  const last = course.until === null ? null : medicineTimes(course, zone).lastDose
  const amount = massOf(course)
  if (last === null) return []
  return [{ drug: course.drug, route: 'PO', at: Temporal.Instant.from(last.at), ...(amount && { amount }) }]
}

/** The weight is as old as the stay; it was judged when the doses were planned. */
const notOfHome = new Set([...aboutThePlan, 'weight-old', 'given-active-unknown'])

function lineOf(
  medicine: HomeMedicine,
  id: string,
  animal: DosedAnimal,
  knowledge: DosingKnowledge,
): PlannedLine | undefined {
  const drug = drugOfHome(knowledge.drugs, medicine)?.drug
  if (!drug) return undefined
  const rows = rowsByMouth(drug, animal, medicine)
  const perWeight = massOf(medicine)?.value
  const [first] = rows
  const weight = animal.weight && weighed(drug, animal, knowledge)
  const flat = first !== undefined && rows.every((row) => row.range.value.low.unit === 'mg/{animal}')
  const dose =
    perWeight === undefined
      ? undefined
      : flat
        ? new Quantity(perWeight, 'mg/{animal}')
        : weight && new Quantity(perWeight.div(weight.value), 'mg/kg')
  const row = mostLikely(rows, dose)
  const use = row?.use ?? 'analgesia_oral'
  return { id, drug: drug.id, use, route: 'PO', ...(dose && { dose }), ...wordsOf(row) }
}

/** A course is never held against a row that is given once, such as a first day's dose, where another row is. */
function rowsByMouth(drug: Drug, animal: DosedAnimal, { days, times }: HomeMedicine): readonly DoseRow[] {
  const all = drug.doses.filter(({ species, routes }) => species === animal.species && routes.includes('PO'))
  const repeated = all.filter(({ interval }) => interval.value.hours !== undefined)
  return days * times.length > 1 && repeated.length > 0 ? repeated : all
}

function weighed(drug: Drug, animal: DosedAnimal, { rules }: DosingKnowledge): Quantity<'kg'> | undefined {
  const { weight, bodyCondition } = animal
  if (!weight || !usesLeanWeight(drug, 'analgesia_oral', rules)) return weight
  return leanWeight(weight, bodyCondition, rules.weight)
}

/** Milligrams each time; undefined when the strength is not one of mass. */
function massOf({ strength, each }: HomeMedicine): Quantity<'mg'> | undefined {
  if (strength === null || strength.unit === '%') return undefined
  return new Quantity(fromStored(strength).value.times(each), 'mg')
}

/** Tablets come in steps: what the label of the tablet itself delivers by its bands is not over a maximum. */
function isOnOtherLabel(
  { form }: HomeMedicine,
  line: PlannedLine | undefined,
  animal: DosedAnimal,
  knowledge: DosingKnowledge,
): boolean {
  const { dose } = line ?? {}
  if (form !== 'tablet' || !dose) return false
  const labels = (rowOf(line, animal, knowledge)?.otherRanges ?? []).filter(({ strength }) => strength === 'label')
  return labels.some(({ value }) => convert(value.high, dose.unit)?.value.gte(dose.value) === true)
}

function rowOf(line: PlannedLine | undefined, animal: DosedAnimal, { drugs }: DosingKnowledge): DoseRow | undefined {
  return drugById(drugs, line?.drug ?? '')?.doses.find(
    ({ species, use, routes, qualifier }) =>
      species === animal.species && use === line?.use && routes.includes('PO') && qualifier === line?.qualifier,
  )
}

/** More clock times a day than the shortest gap of the row allows. */
function tooOften(
  { times }: HomeMedicine,
  line: PlannedLine | undefined,
  animal: DosedAnimal,
  knowledge: DosingKnowledge,
): DoseFinding[] {
  const drug = line && drugById(knowledge.drugs, line.drug)
  const row = rowOf(line, animal, knowledge)
  const [shortest] = row?.interval.value.hours ?? []
  if (!drug || !row || shortest === undefined || new Decimal(24).div(shortest).gte(times.length)) return []
  const about = { drug: drug.name, times: String(times.length), interval: row.interval.value.words }
  return [found('block', 'home-too-often', about, [row.interval])]
}
