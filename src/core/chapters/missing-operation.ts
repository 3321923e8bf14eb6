import type { CaseFile } from '#core/journal/clinic.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import { isOfEar, type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { type Procedure, procedureNamed } from '#core/procedures/procedure.ts'
import { animalOf } from './ears.ts'
import { type Missing, missingIn } from './missing.ts'
import { isSaidBack } from './missing-agreed.ts'
import { missingAssessment } from './missing-for-theatre.ts'

type TheCase = CaseFile['theCase']

/** What the record of theatre lacks: the plan before the cut, the rest once it was cut. */
export function missingInTheatre(file: CaseFile, procedures: readonly Procedure[]): Missing[] {
  const operations = operationsOf(file)
  return operations.flatMap((operation) => {
    const missing = missingIn('Theatre', animalOf(file.theCase))
    const here = { operation: operation.id }
    const planned = linesAbout(file.theCase, 'planned-line', operation.id).length > 0
    return [
      ...missingAssessment(operation, operations, file.theCase),
      ...(planned ? [] : [missing('planned-lines-missing', 'planned-line', here)]),
      ...(operation.done ? afterTheCut(file.theCase, operation, operations, procedures) : []),
    ]
  })
}

/** The second ear of one anaesthetic was asked about between the ears, not before it all. */
function pausesAsked(operation: OperationOnFile, operations: readonly OperationOnFile[], theCase: TheCase) {
  const isSecond = oneAnaesthetic(operation, operations, theCase)?.second.id === operation.id
  return [isSecond ? 'before-second-ear' : 'before-anaesthesia', 'before-incision', 'before-leaving'] as const
}

function afterTheCut(
  theCase: TheCase,
  operation: OperationOnFile,
  operations: readonly OperationOnFile[],
  procedures: readonly Procedure[],
): Missing[] {
  const missing = missingIn('Theatre', animalOf(theCase))
  const here = { operation: operation.id }
  const spoken = new Set(linesAbout(theCase, 'pause-item', operation.id).map(({ body }) => body.pause))
  const stamped = new Set(linesAbout(theCase, 'theatre-stamp', operation.id).map(({ body }) => body.checkpoint))
  const unstamped = procedureNamed(operation.procedure, procedures).checkpoints.filter(({ id }) => !stamped.has(id))
  const summary = linesAbout(theCase, 'operation-summary', operation.id).length > 0
  return [
    ...pausesAsked(operation, operations, theCase)
      .filter((pause) => !spoken.has(pause))
      .map((pause) => missing('pause-missing', 'pause-item', { ...here, about: { pause } })),
    ...unstamped.map(({ title }) =>
      missing('checkpoint-missing', 'theatre-stamp', { ...here, about: { checkpoint: title } }),
    ),
    ...counts(theCase, operation),
    ...samples(theCase, operation, stamped),
    ...(linesAbout(theCase, 'blood-loss', operation.id).length > 0
      ? []
      : [missing('loss-missing', 'blood-loss', { ...here, weight: 'useful' })]),
    ...(summary ? [] : [missing('summary-missing', 'operation-summary', here)]),
  ]
}

function counts(theCase: TheCase, { id }: OperationOnFile): Missing[] {
  const missing = missingIn('Theatre', animalOf(theCase))
  const final = linesAbout(theCase, 'count', id).findLast(({ body }) => body.when === 'final')
  if (!final) return [missing('count-missing', 'count', { operation: id })]
  const unequal = final.body.items.filter(({ expected, found }) => expected !== found).map(({ what }) => what)
  const here = { operation: id, amends: final.header.id }
  return [
    ...(unequal.length > 0
      ? [missing('count-unequal', 'count', { ...here, about: { items: unequal.join(', ') } })]
      : []),
    ...(final.body.throatPack === 'in' ? [missing('throat-pack-in', 'count', here)] : []),
  ]
}

/** A bulla that was opened is sampled: owed by nobody's memory but by the stamp that says it was opened. */
function samples(theCase: TheCase, operation: OperationOnFile, stamped: ReadonlySet<string>): Missing[] {
  if (![...stamped].some((checkpoint) => checkpoint.endsWith('-bulla'))) return []
  const taken = theCase
    .live('specimen')
    .some(({ body }) => body.operation === operation.id && body.site.startsWith('bulla'))
  if (taken) return []
  return [missingIn('Theatre', animalOf(theCase))('bulla-sample-missing', 'specimen', { side: operation.side })]
}

/** First blink, pain and the way home of an animal that was operated. */
export function missingInWard({ theCase }: CaseFile): Missing[] {
  const missing = missingIn('Ward', animalOf(theCase))
  return operationsOf({ theCase }).flatMap((operation) => {
    const { done } = operation
    if (!done) return []
    const home = theCase.live('discharge').find(({ at }) => at >= done.moment.at)
    const during = (line: { readonly at: string }) => line.at >= done.moment.at && (!home || line.at <= home.at)
    const looks = theCase.live('observation').filter(during)
    const checks = theCase.live('check').filter((line) => during(line) && isOfEar(line, operation.side))
    const rounds = theCase.live('ward-score').filter(during)
    const blinked =
      looks.some(({ body }) => body.first === 'blink' && (body.side ?? operation.side) === operation.side) ||
      checks.some(({ body }) => body.blink !== 'not-assessed') ||
      rounds.some(({ body }) => body[operation.side].blink !== 'not-assessed')
    return [
      ...(blinked ? [] : [missing('first-blink-missing', 'check', { side: operation.side })]),
      ...([...looks, ...rounds].some(({ body }) => body.pain !== null)
        ? []
        : [missing('pain-not-scored', 'ward-score')]),
      ...(home ? [] : [missing('discharge-missing', 'discharge')]),
    ]
  })
}

const taughtAtHome = ['eye-care', 'collar', 'when-to-phone', 'medicines'] as const

/** What the owner has not said back, and an eye at home without a plan. */
export function missingAtHome({ theCase }: CaseFile): Missing[] {
  const missing = missingIn('Home', animalOf(theCase))
  const discharge = theCase.latest('discharge')
  if (!discharge) return []
  const { header, body, at } = discharge
  const open = taughtAtHome.filter((item) => !isSaidBack(body.taught, item))
  const weak = theCase
    .live('check')
    .filter((line) => line.at <= at && (line.body.blink === 'weak' || line.body.blink === 'absent'))
    .at(-1)
  return [
    ...(open.length > 0
      ? [missing('home-teach-back-open', 'discharge', { amends: header.id, about: { items: open.join(', ') } })]
      : []),
    ...(weak && body.eyeCare === null ? [missing('eye-care-not-said', 'discharge', { amends: header.id })] : []),
  ]
}

/** Silence after a year is never success: the status of every operated ear. */
export function missingInYear({ theCase }: CaseFile): Missing[] {
  const missing = missingIn('Year', animalOf(theCase))
  const ears = new Set(operationsOf({ theCase }).flatMap(({ done, side }) => (done ? [side] : [])))
  return [...ears]
    .filter((side) => !theCase.live('twelve-months').some((line) => isOfEar(line, side)))
    .map((side) => missing('year-status-missing', 'twelve-months', { side }))
}
