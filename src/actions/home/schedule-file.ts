import type { HomeMedicine } from '#core/home/medicine-times.ts'
import { hashText, type Json } from '#core/journal/canonical.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold, type KindName, kindNamed } from '#core/journal/fold.ts'
import { nothingAssessed } from '#core/journal/nothing-assessed.ts'
import { laterOf } from '#core/owed/setting.ts'
import { addDays, dayOf } from '#core/time/calendar-day.ts'
import { afterMinutes, type Moment } from '#core/time/moment.ts'
import { plain } from '#core/units/quantity.ts'
import type { ScheduledMedicine, ScheduleRequest } from './schedule-request.ts'

/** A medicine at clock times, with its start said or taken as the day after the operation. */
export type ClockMedicine = Extract<ScheduledMedicine, { kind: 'clock' }>

/**
 * The request as the entries of a case, in memory only, so that there is one engine for what is owed: the booking,
 * the cut, what was found, the medicines, the clinic's policies.
 */
export function fileOfRequest(request: ScheduleRequest): CaseFile {
  const { operation, animal, policy, closed } = request
  const write = writer(operation.zone)
  const cut: Moment = { at: operation.at, zone: operation.zone, precision: 'minute', by: 'person' }
  write('identity', cut, { kind: 'animal', animal: 'animal' }, identityOf(request))
  write(
    'booking',
    cut,
    { kind: 'operation', animal: 'animal', operation: 'operation' },
    {
      side: operation.side,
      procedure: operation.procedure,
      agreement: null,
      plannedFor: cut,
      surgeon: 'surgeon',
      anaesthetist: null,
    },
  )
  if (animal.weight) {
    const weight = { value: plain(animal.weight.value), unit: 'kg' } as const
    write(
      'weight',
      cut,
      { kind: 'animal', animal: 'animal' },
      { weight, typed: null, how: 'reported', bodyCondition: null },
    )
  }
  if (operation.stage === 'done') {
    const body = { checkpoint: 'incision', answer: 'done', detail: {}, text: null } as const
    write('theatre-stamp', cut, { kind: 'operation', animal: 'animal', operation: 'operation' }, body)
    writeFindings(request, cut, write)
  }
  for (const [name, value] of Object.entries(policy)) {
    if (typeof value === 'string') {
      write(
        'house-policy',
        cut,
        { kind: 'clinic' },
        { policy: `owed.${name}`, value, because: 'asked for in this request' },
      )
    }
  }
  const { entries } = write
  return {
    clinicId: 'schedule',
    clinic: clinicOf(request),
    people: new Map(),
    contacts: new Map(),
    closedDays: closed,
    stream: `case:${request.case ?? hashText(JSON.stringify([operation, animal.name ?? null])).slice(0, 16)}`,
    theCase: fold(entries.filter(({ stream }) => stream !== 'clinic')),
    house: fold(entries.filter(({ stream }) => stream === 'clinic')),
  }
}

/** Weekends are closed unless the request says otherwise. */
const weekend = [6, 7]

function clinicOf({ operation, policy }: ScheduleRequest): CaseFile['clinic'] {
  return {
    name: 'The practice',
    address: [],
    phone: 'see your papers',
    outOfHoursPhone: null,
    email: null,
    zone: operation.zone,
    language: 'en',
    decimalMark: '.',
    currency: 'EUR',
    closedWeekdays: policy.closedWeekdays ?? weekend,
  }
}

function identityOf({ operation, animal }: ScheduleRequest): BodyOf<'identity'> {
  const born = animal.born
    ? ({ at: `${animal.born}T00:00:00.000Z`, zone: 'UTC', precision: 'day', by: 'person' } as const)
    : null
  return {
    name: animal.name ?? 'Your animal',
    species: operation.species,
    breed: null,
    sex: 'unknown',
    neutered: 'unknown',
    born,
    chip: null,
    household: 'household',
    referringVet: null,
    flatFace: 'unknown',
    abcb1: 'unknown',
  }
}

type Write = {
  <Name extends KindName>(kind: Name, at: Moment, subject: Entry['subject'], body: BodyOf<Name>): void
  readonly entries: Entry[]
}

function writer(zone: string): Write {
  const entries: Entry[] = []
  const write = <Name extends KindName>(kind: Name, at: Moment, subject: Entry['subject'], body: BodyOf<Name>) => {
    const number = (entries.length + 1).toString(16).padStart(12, '0')
    entries.push({
      id: `00000000-0000-7000-8000-${number}`,
      clinic: 'schedule',
      stream: subject.kind === 'clinic' ? 'clinic' : 'case:schedule',
      subject,
      kind,
      version: kindNamed(kind)?.version ?? 1,
      body: body as unknown as Json,
      happenedAt: { ...at, zone },
      writtenAt: at.at,
      author: { kind: 'import', from: 'schedule request' },
      device: { id: 'schedule', boot: 'schedule', wallClock: at.at, monotonicMs: 0, offset: null },
      supersedes: [],
      withdraws: null,
      refiledFrom: null,
      attachments: [],
      reason: null,
    })
  }
  return Object.assign(write, { entries })
}

/** When the eye was found so: as said, else right after the operation and the block. */
export function foundAt({ operation, findings }: ScheduleRequest): string {
  if (findings?.at) return findings.at
  const block = findings?.block?.at ?? operation.at
  const later = laterOf(block, operation.at)
  return afterMinutes({ at: later, zone: operation.zone, precision: 'minute', by: 'person' }, 1).at
}

function writeFindings(request: ScheduleRequest, cut: Moment, write: Write): void {
  const { operation, findings } = request
  if (!findings) return
  const { block } = findings
  if (block) {
    const subject = { kind: 'operation', animal: 'animal', operation: 'operation' } as const
    write('drug-given', { ...cut, at: block.at }, subject, {
      drug: block.drug,
      written: null,
      // The contract names no amount, and nothing that is owed depends on it.
      amount: { value: '0', unit: 'mg' },
      volume: null,
      route: 'infiltration',
      site: null,
      use: 'local_block',
      line: null,
      batch: null,
      ampoule: null,
    })
  }
  const blink = findings.blink?.[operation.side]
  const tearTest = findings.tearTest?.[operation.side]
  if (!blink && !tearTest) return
  write(
    'check',
    { ...cut, at: foundAt(request) },
    { kind: 'ear', animal: 'animal', side: operation.side },
    {
      seenBy: 'us',
      ...nothingAssessed,
      blink: blink ?? 'not-assessed',
      tearTest: tearTest ? { value: plain(tearTest.value), unit: 'mm/min' } : null,
    },
  )
}

/** A medicine of the request as a discharge would write it. */
export function homeMedicineOf(medicine: ClockMedicine, { operation }: ScheduleRequest): HomeMedicine {
  const { drug, days, each, onDays, steps } = medicine
  const times = [...new Set(medicine.times)].sort()
  const firstDay = medicine.firstDay ?? addDays(dayOf(operation), 1)
  const firstTime = medicine.firstTime ?? times[0] ?? '00:00'
  return {
    drug,
    label: drug,
    purpose: '',
    form: 'tablet',
    strength: null,
    each: each ?? '1',
    side: null,
    times,
    firstDay,
    firstTime,
    days,
    onDays,
    withFood: 'either',
    steps: steps.map((step) => ({
      fromDay: step.fromDay,
      each: step.each ?? '1',
      times: [...new Set(step.times)].sort(),
      onDays: step.onDays,
    })),
  }
}
