import { type Agreement, agreementFor } from '#core/agreement/agreed-for.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side, Species } from '#core/animal/species.ts'
import { animalOf } from '#core/chapters/ears.ts'
import { type SideDisagreement, sidesOf } from '#core/chapters/sides.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { type Fasting, type FastingAnimal, fastingOf } from '#core/owed/fasting.ts'
import { type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import type { OwedRules } from '#core/procedures/follow-up.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import { type SignOut, signOutOf } from './sign-out.ts'
import { type ConsentRules, lacksConsent, missingBeforeOperation, type TheatreMissing } from './theatre-missing.ts'

/** One line of the theatre list: who, which ear, what, and what still stands in the way. */
export type TheatreLine = {
  readonly stream: string
  readonly animal: string | null
  readonly name: string | null
  readonly species: Species | null
  readonly operation: string
  readonly side: Side
  readonly procedure: ProcedureId
  readonly surgeon: string
  readonly anaesthetist: string | null
  readonly moment: Moment
  /** `agreed`: the consent it stands on counts and covers this plan. */
  readonly state: 'agreed' | 'not-agreed' | 'done'
  readonly agreement: Agreement | null
  /** The last weight before the operation, however old. */
  readonly weight: Line<BodyOf<'weight'>> | null
  readonly missing: readonly TheatreMissing[]
  /** Empty once it was done. */
  readonly sides: readonly SideDisagreement[]
  /** Null before the cut. */
  readonly signOut: SignOut['state'] | null
  readonly fasting: Fasting
  readonly admission: Pick<OwedItem, 'dueFrom' | 'dueBy' | 'precision' | 'why' | 'facts'> | null
}

export type TheatreDay = { readonly day: string; readonly lines: readonly TheatreLine[] }

export type TheatreCase = {
  readonly file: CaseFile
  /** What `owedOf` says of the case; only items before an operation are used. */
  readonly owed: readonly OwedItem[]
}

/** Hours without food, what each test weighs, and what consent is held against. */
export type TheatreRules = Pick<OwedRules['before'], 'fasting' | 'tests'> & { readonly consent: ConsentRules }

/**
 * The operations of some cases by date, between two days both included, those of one day in the order of their time.
 * Each says LEFT or RIGHT, what is missing, the last meal and the admission at clock times for that animal. Animals that
 * have died are not on it.
 *
 * @example theatreListOf([{ file, owed }], theatreRules, { from: '2026-03-01', until: '2026-03-31' })
 * Reference: the job of the day before surgery; hours without food from content/follow-up.
 */
export function theatreListOf(
  cases: readonly TheatreCase[],
  rules: TheatreRules,
  days: { readonly from: string; readonly until: string },
): TheatreDay[] {
  const byDay = new Map<string, TheatreLine[]>()
  for (const one of cases) {
    if (one.file.theCase.latest('death')) continue
    for (const operation of operationsOf(one.file)) {
      if (!operation.booking) continue
      const day = dayOf({ at: operation.moment.at, zone: one.file.clinic.zone })
      if (day < days.from || day > days.until) continue
      byDay.set(day, [...(byDay.get(day) ?? []), theatreLine(operation, one, rules)])
    }
  }
  return [...byDay]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([day, lines]) => ({ day, lines: lines.sort((a, b) => (key(a) < key(b) ? -1 : 1)) }))
}

function key({ moment, stream, operation }: TheatreLine): string {
  return `${moment.at} ${stream} ${operation}`
}

/** One operation as a line of the list. */
export function theatreLine(operation: OperationOnFile, { file, owed }: TheatreCase, rules: TheatreRules): TheatreLine {
  const { theCase } = file
  const identity = theCase.latest('identity')?.body
  const weight = theCase.live('weight').findLast(({ at }) => at <= operation.moment.at) ?? null
  const open = owed.filter((item) => item.operation === operation.id)
  const sides = operation.done ? [] : sidesOf(theCase).disagreements.filter((one) => one.operation === operation.id)
  const missing = operation.done ? [] : missingBeforeOperation(operation, file, open, sides, rules)
  const agreement = agreementFor(operation, theCase)
  const animal: FastingAnimal = { born: identity?.born ?? null, weight: weight ? fromStored(weight.body.weight) : null }
  return {
    stream: file.stream,
    animal: animalOf(theCase),
    name: identity?.name ?? null,
    species: identity?.species ?? null,
    operation: operation.id,
    side: operation.side,
    procedure: operation.procedure,
    surgeon: operation.surgeon,
    anaesthetist: operation.anaesthetist,
    moment: operation.moment,
    state: operation.done ? 'done' : isAgreed(agreement, missing) ? 'agreed' : 'not-agreed',
    agreement,
    weight,
    missing,
    sides,
    signOut: operation.done ? signOutOf(theCase, operation.id).state : null,
    fasting: fastingOf({ ...operation.moment, zone: file.clinic.zone }, animal, rules.fasting),
    admission: open.find(({ what }) => what === 'admission') ?? null,
  }
}

function isAgreed(agreement: Agreement | null, missing: readonly TheatreMissing[]): boolean {
  return agreement !== null && !lacksConsent(missing)
}
