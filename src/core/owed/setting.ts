import type { CaseFile } from '#core/journal/clinic.ts'
import type { OwedRules } from '#core/procedures/follow-up.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import { endOfDay, startOfDay } from '#core/time/calendar-day.ts'
import { type ClosedDays, moveVisit, type VisitWindow } from '#core/time/open-days.ts'
import type { HygieneRules } from './hygiene.ts'
import { type OperationOnFile, operationsOf, timesWritten } from './operations.ts'
import type { OwedItem, Why } from './owed-item.ts'
import { type Policies, policiesOf } from './policies.ts'

export type OwedOptions = {
  readonly rules: OwedRules
  /** What asks for hygiene; left out where nobody reads it, as for a calendar. */
  readonly hygiene?: HygieneRules
  /** Entries the store refused and kept aside for a person. */
  readonly keptAside?: readonly { readonly id: string; readonly receivedAt: string }[]
  /** `done`: also follow-up dates of an operation that is only planned, counted from the plan. */
  readonly plannedCountsAs?: 'booked' | 'done'
}

/** What every rule of owing looks at: the file, the content, and what was read out of the file once. */
export type Setting = {
  readonly file: CaseFile
  readonly procedures: readonly Procedure[]
  readonly rules: OwedRules
  readonly options: OwedOptions
  readonly policies: Policies
  readonly operations: readonly OperationOnFile[]
  readonly closed: ClosedDays
  readonly zone: string
  /** Days agreed with the owner at discharge, latest first. */
  readonly agreedDays: readonly string[]
  /** Added to the revision of every item: entries that can move or cancel any date. */
  readonly revision: number
}

export function settingOf(file: CaseFile, procedures: readonly Procedure[], options: OwedOptions): Setting {
  const policies = policiesOf(file)
  const every = () => true
  return {
    file,
    procedures,
    rules: options.rules,
    options,
    policies,
    operations: operationsOf(file),
    closed: { weekdays: file.clinic.closedWeekdays, days: file.closedDays },
    zone: file.clinic.zone,
    agreedDays: file.theCase.live('discharge').flatMap(({ body }) => body.nextVisit ?? []),
    revision:
      policies.changes + timesWritten(file.theCase, 'death', every) + timesWritten(file.theCase, 'discharge', every),
  }
}

export type DueDates = Pick<OwedItem, 'dueFrom' | 'dueBy' | 'zone' | 'precision'> & { readonly moved: readonly Why[] }

/** Whole days of the clinic's zone as instants. */
export function wholeDays(window: VisitWindow, zone: string): DueDates {
  return {
    dueFrom: startOfDay(window.from, zone),
    dueBy: endOfDay(window.until, zone),
    zone,
    precision: 'day',
    moved: [],
  }
}

/** A visit: on the day agreed with the owner when it lies in the window, else moved off closed days. */
export function visitDays(window: VisitWindow, notBefore: string, setting: Setting): DueDates {
  const { zone, closed, agreedDays } = setting
  const agreed = agreedDays.filter((day) => window.from <= day && day <= window.until).at(-1)
  if (agreed !== undefined) {
    const moved: Why[] = [{ code: 'agreed-with-owner', about: { day: agreed } }]
    return { ...wholeDays({ from: agreed, until: agreed }, zone), moved }
  }
  const visit = moveVisit(window, closed, notBefore)
  const about = { from: window.from, until: window.until }
  switch (visit.moved) {
    case 'kept':
      return wholeDays(visit, zone)
    case 'narrowed':
      return { ...wholeDays(visit, zone), moved: [{ code: 'moved-narrowed', about }] }
    case 'earlier':
      return { ...wholeDays(visit, zone), moved: [{ code: 'moved-earlier', about }] }
    case 'nowhere':
      return { ...wholeDays(visit, zone), moved: [{ code: 'moved-nowhere', about }] }
  }
}

/** Of two days or two instants as text. */
export function earlierOf(a: string, b: string): string {
  return [a, b].sort()[0] as string
}

export function laterOf(a: string, b: string): string {
  return [a, b].sort()[1] as string
}
