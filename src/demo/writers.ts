import { boundPlanOf } from '#core/dosing/second-check.ts'
import type { Subject } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import type { Chart } from './chart.ts'
import { writePlannedLines } from './planned-lines.ts'
import { staff } from './practice.ts'

/** What both invented cases write in the same way; the words and numbers are each case's own. */

/** One checkpoint stamped as done by the circulating nurse. */
export function stamp(
  chart: Chart,
  operation: Subject,
  at: string,
  checkpoint: string,
  detail: Record<string, string> = {},
  text: string | null = null,
): void {
  chart.write(
    'theatre-stamp',
    { at, by: staff.castellane, subject: operation },
    { checkpoint, answer: 'done', detail, text },
  )
}

/** The named plan worked out by the engine, every line checked by a second person ten minutes later. */
export function planAndCheck(chart: Chart, operation: Subject, plan: string, at: string, checkedAt: string): void {
  const planned = [...writePlannedLines(chart, { operation, by: staff.adeyemi, at, plan }).values()]
  chart.write(
    'second-check',
    { at: checkedAt, by: staff.castellane, subject: operation },
    { of: planned, verdict: 'agrees', text: null, plan: boundPlan(chart, planned) },
  )
}

function boundPlan(chart: Chart, planned: readonly string[]) {
  const theCase = fold(chart.entries)
  return boundPlanOf(
    theCase,
    theCase.live('planned-line').filter(({ header }) => planned.includes(header.id)),
  )
}

type GivenDose = Omit<BodyOf<'drug-given'>, 'written' | 'batch' | 'site' | 'ampoule'> & {
  site?: string
  ampoule?: string
}

/** Writes doses as the anaesthetist gives them. */
export function giver(chart: Chart, operation: Subject): (at: string, dose: GivenDose) => void {
  return (at, dose) => {
    const body = { written: null, batch: null, site: null, ampoule: null, ...dose }
    chart.write('drug-given', { at, by: staff.adeyemi, subject: operation }, body)
  }
}

export const mg = (value: string) => ({ value, unit: 'mg' }) as const
export const mL = (value: string) => ({ value, unit: 'mL' }) as const

/** A look at the operated ear; what nobody says was not assessed, or was not there. */
export function writeCheck(chart: Chart, ear: Subject, at: string, by: string, body: Partial<BodyOf<'check'>>): void {
  chart.write(
    'check',
    { at, by, subject: ear },
    {
      seenBy: 'us',
      wound: 'not-assessed',
      woundNeeded: 'nothing',
      sutures: 'in',
      blink: 'not-assessed',
      lipOrEarDroop: 'no',
      nostril: 'not-assessed',
      possibleBlockEffect: false,
      horner: 'no',
      headTilt: 'no',
      nystagmus: 'no',
      unsteady: 'no',
      gag: 'not-assessed',
      hears: 'not-assessed',
      tearTest: null,
      fluorescein: 'not-assessed',
      painful: 'no',
      text: null,
      ...body,
    },
  )
}
