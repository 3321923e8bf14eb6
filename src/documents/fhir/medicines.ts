import type { Dosage, MedicationAdministrationDosage } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import { homePlansOf } from '#core/home/home-plan.ts'
import {
  daysApart,
  type HomeMedicine,
  medicineTimes,
  stretchesOf,
  type TimedMedicine,
} from '#core/home/medicine-times.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { wallClock } from '#core/time/moment.ts'
import { wallTime } from '#core/time/wall-times.ts'
import { drugName } from '../case/drug-name.ts'
import { openHomeOf } from '../case/home-checks.ts'
import { sayFinding } from '../dose-sheet/plan-tables.ts'
import type { Around, Mapping, OfLine } from './around.ts'
import { answer, exactly, local, notes, sideSite, withoutLeadingNoughts, words } from './concepts.ts'
import { dateTime, period } from './fhir-time.ts'
import { derivedUuid, entryUuid, urn } from './naming.ts'
import { operationReference } from './observations.ts'
import { ExactNumber, type Resource, type Written } from './written.ts'

const rates: readonly string[] = ['ug/kg/h', 'mg/kg/h', 'mL/h', '%{vol}']

/** Our substance by its own name, and the words somebody wrote on the label. */
function medicine(drug: string, written: string | null) {
  return { ...local(drug, drugName(drug)), text: written ?? drugName(drug) }
}

/** What was really given. Of a rate or a vapour setting the entry says the start only, so its status is unknown. */
export const drugGiven: Mapping<'drug-given'> = (line, around) => {
  const { body, header } = line
  const { subject } = header
  return [
    {
      resourceType: 'MedicationAdministration',
      id: entryUuid(header.id),
      partOf: subject.kind === 'operation' ? operationReference(around, subject.operation) : [],
      status: rates.includes(body.amount.unit) ? 'unknown' : 'completed',
      medicationCodeableConcept: medicine(body.drug, body.written),
      subject: around.patient(line),
      effectiveDateTime: dateTime(header.happenedAt),
      performer: header.author.kind === 'person' ? [{ actor: around.people.person(header.author.person) }] : [],
      reasonCode: [answer(body.use)],
      dosage: givenDosage(body),
      note: notes(
        body.batch === null ? null : fill(say.batch, { batch: body.batch }),
        body.ampoule === null ? null : fill(say.ampoule, { ampoule: body.ampoule }),
      ),
    },
  ]
}

function givenDosage(body: BodyOf<'drug-given'>): Written<MedicationAdministrationDosage> {
  const amount = exactly(body.amount)
  return {
    text: body.volume === null ? undefined : fill(say.volume, body.volume),
    site: body.site === null ? undefined : words(body.site),
    route: words(body.route),
    ...(rates.includes(body.amount.unit) ? { rateQuantity: amount } : { dose: amount }),
  }
}

/** What others gave before us, as it was told; the dose stays in its words. */
export const medicineBefore: Mapping<'medicine-before'> = (line, around) => {
  const { body, header } = line
  const route = body.route === 'unknown' ? undefined : answer(body.route)
  return [
    {
      resourceType: 'MedicationStatement',
      id: entryUuid(header.id),
      status: body.ongoing ? 'active' : body.until === null ? 'unknown' : 'completed',
      medicationCodeableConcept: body.substance === null ? words(body.written) : medicine(body.substance, body.written),
      subject: around.patient(line),
      effectivePeriod: period(body.from, body.until),
      dateAsserted: dateTime(header.happenedAt),
      note: notes(fill(say.medicineEffect, { effect: body.effect })),
      dosage: body.dose === null && route === undefined ? [] : [{ text: body.dose ?? undefined, route }],
    },
  ]
}

/** Going home: one request for each medicine, and the care around them as a plan. */
export const discharge: Mapping<'discharge'> = (line, around) => {
  const { body } = line
  const requests = requestsOf(line, body.medicines, around)
  const sentences = [
    body.food,
    body.rest,
    body.eyeCare,
    fill(say.collarUntil, { day: body.collarUntil }),
    fill(say.suturesAre, { sutures: body.sutures.replaceAll('-', ' ') }),
    body.nextVisit === null ? null : fill(say.nextVisit, { day: body.nextVisit }),
  ].filter((sentence) => sentence !== null)
  return [planOf(line, around, { title: say.homeCare, requests, sentences }), ...requests]
}

/** A change of medicines at home: what starts as requests of its own, what stops in words; its requests end there. */
export const medicineChange: Mapping<'medicine-change'> = (line, around) => {
  const { body } = line
  const requests = requestsOf(line, body.starts, around)
  const stops = body.stops.map(({ label, fromDay, fromTime }) =>
    fill(say.medicineStops, { label, day: fromDay, time: fromTime }),
  )
  const about = { title: say.medicineChange, requests, sentences: [body.because, ...stops] }
  return [planOf(line, around, about), ...requests]
}

/** One request for each medicine, with what stopped it since. */
function requestsOf(line: OfLine, medicines: readonly HomeMedicine[], around: Around): Resource[] {
  const { header } = line
  const courses = homePlansOf(around.file.theCase)
    .flatMap((plan) => plan.courses)
    .filter(({ entry }) => entry === header.id)
  return medicines.map((given, place): Resource => {
    const course = courses[place] ?? { ...given, until: null }
    const status = statusAt(course, around)
    const held = status === 'active' ? heldBecause(course, around) : []
    return {
      resourceType: 'MedicationRequest',
      id: derivedUuid(header.id, 'medicine', String(place)),
      status: held.length > 0 ? 'on-hold' : status,
      ...(held.length > 0 && { statusReason: words(held.join(' ')) }),
      intent: 'order',
      medicationCodeableConcept: medicine(given.drug, given.label),
      subject: around.patient(line),
      authoredOn: dateTime(header.happenedAt),
      requester: around.author(line),
      reasonCode: [words(given.purpose)],
      dosageInstruction: stretchesOf(course).map((stretch) => homeDosage(stretch, around)),
    }
  })
}

type PlanAbout = {
  readonly title: string
  readonly requests: readonly Resource[]
  readonly sentences: readonly string[]
}

function planOf(line: OfLine, around: Around, { title, requests, sentences }: PlanAbout): Resource {
  const { header } = line
  return {
    resourceType: 'CarePlan',
    id: entryUuid(header.id),
    status: planStatus(requests, around),
    intent: 'plan',
    title,
    subject: around.patient(line),
    created: dateTime(header.happenedAt),
    author: around.author(line),
    activity: [
      ...requests.map(({ id = '' }) => ({ reference: { reference: urn(id), type: 'MedicationRequest' } })),
      // Whether the owner did it, nobody knows.
      ...sentences.map((description) => ({ detail: { status: 'unknown' as const, description } })),
    ],
  }
}

/** The plan runs as long as one of its medicines does; afterwards nobody said that it ended. */
function planStatus(requests: readonly Resource[], { file }: Around): 'active' | 'on-hold' | 'revoked' | 'unknown' {
  if (file.theCase.live('death').length > 0) return 'revoked'
  const isAny = (status: string) => requests.some((one) => 'status' in one && one.status === status)
  return isAny('on-hold') ? 'on-hold' : isAny('active') ? 'active' : 'unknown'
}

/** Why the page with this medicine may not be handed out yet; empty when nothing waits for a person. */
function heldBecause({ drug, label, side }: TimedMedicine, { file }: Around): string[] {
  const open = openHomeOf(file).filter(
    ({ course }) => course?.drug === drug && course.label === label && course.side === side,
  )
  return [...new Set(open.map(({ finding }) => sayFinding(finding)))]
}

/** A request whose days are over is not called completed: nobody counted the tablets. */
function statusAt(medicine: TimedMedicine, { file, on }: Around): 'active' | 'stopped' | 'unknown' {
  if (file.theCase.live('death').length > 0 || isStoppedBy(on, medicine, file.clinic.zone)) return 'stopped'
  const last = medicineTimes(medicine, file.clinic.zone).lastDose
  if (medicine.untilSaid) return 'active'
  return last !== null && last.at < on ? 'unknown' : 'active'
}

function isStoppedBy(on: string, { until }: TimedMedicine, zone: string): boolean {
  return until != null && wallTime(until.day, until.time, zone).at <= on
}

/** What is counted has no unit in UCUM, only a word in braces. */
const ucumOf = {
  tablet: '{tablet}',
  liquid: 'mL',
  'eye-gel': '{application}',
  'eye-ointment': '{application}',
} as const satisfies Record<HomeMedicine['form'], string>

function homeDosage(medicine: TimedMedicine, { file }: Around): Written<Dosage> {
  const { zone } = file.clinic
  const { doses } = medicineTimes(medicine, zone)
  const times = [...new Set(medicine.times)].sort()
  const unit = say.doseUnits[medicine.form]
  const at = (instant: string | undefined) =>
    instant === undefined
      ? undefined
      : `${wallClock({ at: instant, zone }).toString({ timeZoneName: 'never', smallestUnit: 'second' })}`
  const value = new ExactNumber(withoutLeadingNoughts(medicine.each))
  const coding = { system: systems.ucum, code: ucumOf[medicine.form] }
  return {
    text: fill(daysApart(medicine) === 2 ? say.eachTimeSecondDay : say.eachTime, {
      each: medicine.each,
      unit,
      times: times.join(', '),
      days: String(medicine.days),
      first: `${medicine.firstDay}, ${medicine.firstTime}`,
    }),
    // Food says something of what is swallowed only.
    additionalInstruction:
      medicine.form === 'tablet' || medicine.form === 'liquid' ? [answer(say.withFood[medicine.withFood])] : [],
    timing: {
      repeat: {
        boundsPeriod: { start: at(doses[0]?.at), end: medicine.untilSaid ? undefined : at(doses.at(-1)?.at) },
        frequency: times.length,
        period: daysApart(medicine),
        periodUnit: 'd',
        timeOfDay: times.map((time) => `${time}:00`),
      },
    },
    site: medicine.side === null ? undefined : sideSite(medicine.side, medicine.form.startsWith('eye') ? 'eye' : 'ear'),
    doseAndRate: [{ doseQuantity: { value, unit, ...coding } }],
  }
}
