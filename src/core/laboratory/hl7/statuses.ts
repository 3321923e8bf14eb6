import { Unreadable } from '../fault.ts'
import type { ReportStatus } from '../report.ts'
import { termOf } from '../terms.ts'
import { component, placeOf } from './fields.ts'
import type { Segment } from './segments.ts'

/** What the state of a line means for it: it stands, it was taken back, it says nothing yet. */
export type LineState = ReportStatus | 'pending' | 'deleted' | 'not-obtained'

// HL7 version 2.5.1, table 0085.
const ofLine: Readonly<Record<string, LineState>> = {
  F: 'final',
  U: 'final',
  C: 'corrected',
  P: 'preliminary',
  R: 'preliminary',
  S: 'preliminary',
  I: 'pending',
  O: 'pending',
  N: 'not-obtained',
  X: 'not-obtained',
  D: 'deleted',
}

// HL7 version 2.5.1, table 0123.
const ofOrder: Readonly<Record<string, ReportStatus>> = {
  F: 'final',
  C: 'corrected',
  P: 'preliminary',
  R: 'preliminary',
  S: 'preliminary',
  A: 'preliminary',
  I: 'preliminary',
  O: 'preliminary',
}

/** The state of an observation; a line that was sent to the wrong animal stops the whole message. */
export function lineState(obx: Segment): LineState | null {
  const code = component(obx, 11)
  if (code === null) return null
  if (code === 'W') throw new Unreadable('wrong-patient', code, placeOf(obx, 11))
  const state = termOf(ofLine, code)
  if (!state) throw new Unreadable('status-unknown', code, placeOf(obx, 11))
  return state
}

/** A line without a state among lines that have one was cut off, and its value with it. */
export function checkNoneCut(lines: readonly Segment[]): void {
  const without = lines.find((obx) => component(obx, 11) === null)
  if (!without || lines.every((obx) => component(obx, 11) === null)) return
  throw new Unreadable('status-unknown', '', placeOf(without, 11))
}

export function orderState(obr: Segment): ReportStatus | null {
  const code = component(obr, 25)
  if (code === null) return null
  const state = termOf(ofOrder, code)
  if (!state) throw new Unreadable('status-unknown', code, placeOf(obr, 25))
  return state
}

/**
 * What the report as a whole is. Corrected and preliminary lines together are for a person to judge: one wants reading
 * again now, the other says that it is not finished.
 */
export function reportStatus(
  orders: readonly (ReportStatus | null)[],
  lines: readonly (LineState | null)[],
): ReportStatus | 'mixed' | null {
  const all = [...orders, ...lines]
  const corrected = all.includes('corrected') || all.includes('deleted')
  const open = all.includes('preliminary') || all.includes('pending')
  if (corrected && open) return 'mixed'
  if (corrected) return 'corrected'
  if (open) return 'preliminary'
  return all.includes('final') ? 'final' : null
}
