import { compareText } from '#core/journal/compare-text.ts'
import type { ProcedureId } from '../animal/procedure.ts'
import { procedureIds } from '../animal/procedure.ts'
import type { Side } from '../animal/species.ts'
import type { Case, KindName, Line } from '../journal/fold.ts'
import { operationsOf } from '../owed/operations.ts'
import { type Procedure, procedureNamed } from '../procedures/procedure.ts'
import { stampSentences } from '../procedures/stamp-sentences.ts'
import type { Pin, PinAnswers, PinEntry, Pinned, PinPlaces, PinSign } from './pin.ts'
import type { StructureId } from './scene.ts'

export type PinnedFacts = { readonly places: PinPlaces; readonly procedures: readonly Procedure[] }

/**
 * What is known, planned and at risk at one part of one ear, each with the entry or the source that says so. Of a sign
 * the latest answer stands that was one; "not assessed" is said only when no look answered. Nothing planned, no risk:
 * the risks are those of the operations chosen, agreed or booked for this ear.
 *
 * @example pinnedTo('facial-nerve', theCase, 'LEFT', { places: pinPlaces, procedures }).atRisk
 * Reference: the kinds ear-findings, imaging, baseline, check, choice, agreement, booking and theatre-stamp.
 */
export function pinnedTo(structure: StructureId, theCase: Case, side: Side, facts: PinnedFacts): Pinned {
  const plans = plansOf(theCase, side)
  const planned = [...new Set(plans.map(({ procedure }) => procedure))].map((id) =>
    procedureNamed(id, facts.procedures),
  )
  const here = (list: readonly StructureId[] | undefined) => list?.includes(structure) ?? false
  const steps = planned.flatMap(({ id, checkpoints }) =>
    checkpoints
      .filter((checkpoint) => here(facts.places.checkpoints[checkpoint.id]))
      .map((checkpoint) => ({ procedure: id, checkpoint })),
  )
  return {
    known: [
      ...signsOf(theCase, side).filter(({ sign }) => here(facts.places.signs[sign])),
      ...stampsOf(theCase, side, facts, here),
    ],
    planned: [
      ...plans.filter(({ procedure }) => here(facts.places.procedures[procedure])),
      ...steps.map(
        ({ procedure, checkpoint: { id, title, mind } }): Pin => ({
          kind: 'step',
          procedure,
          checkpoint: { id, title, mind },
        }),
      ),
    ],
    atRisk: [
      ...steps.flatMap(({ procedure, checkpoint }) =>
        checkpoint.because.map((because): Pin => ({ kind: 'reason', procedure, because })),
      ),
      ...planned.flatMap(({ id, risks }) =>
        risks
          .filter(({ outcome }) => here(facts.places.outcomes.value[outcome]))
          .map(({ outcome, shows }): Pin => ({ kind: 'risk', procedure: id, outcome, shows })),
      ),
    ],
  }
}

type SignPin = Extract<Pin, { kind: 'sign' }>
type PlanPin = Extract<Pin, { kind: 'plan' }>
type Said = { readonly [Sign in PinSign]?: PinAnswers[Sign] | undefined }

function fromLine({ header }: Pick<Line<unknown>, 'header'>): PinEntry {
  return { entry: header.id, kind: header.kind as KindName, moment: header.happenedAt }
}

function isEar({ header: { subject } }: Pick<Line<unknown>, 'header'>, side: Side): boolean {
  return subject.kind === 'ear' && subject.side === side
}

/** What each entry says of this ear, sign by sign, oldest first. */
function saidOf(
  theCase: Case,
  side: Side,
): { readonly at: string; readonly line: Line<unknown>; readonly said: Said }[] {
  const looks = theCase.live('ear-findings').filter((line) => isEar(line, side))
  const checks = theCase.live('check').filter((line) => isEar(line, side))
  return [
    ...looks.map((line) => ({ at: line.at, line, said: line.body })),
    ...theCase.live('imaging').flatMap((line) => {
      const scan = line.body[side]
      if (!scan) return []
      const { bulla, bullaWall, canalMineral, mass } = scan
      return [{ at: line.at, line, said: { bulla, bullaWall, canalMineral, scannedMass: mass } }]
    }),
    ...theCase.live('baseline').map((line) => {
      const { blink, lipOrEarDroop } = line.body[side]
      return { at: line.at, line, said: { blink, lipOrEarDroop } }
    }),
    ...checks.map((line) => {
      const { wound, blink, lipOrEarDroop, possibleBlockEffect } = line.body
      // A missing blink within the time of the block is not a finding of the nerve.
      return { at: line.at, line, said: possibleBlockEffect ? { wound } : { wound, blink, lipOrEarDroop } }
    }),
  ].sort((a, b) => compareText(a.at, b.at))
}

const signs = [
  'flapCarriage',
  'canalFeel',
  'stenosis',
  'discharge',
  'drum',
  'mass',
  'scannedMass',
  'canalMineral',
  'bulla',
  'bullaWall',
  'painOnPressing',
  'painOnJawOpening',
  'swelling',
  'drainingTract',
  'blink',
  'lipOrEarDroop',
  'wound',
] as const satisfies readonly PinSign[]

function signsOf(theCase: Case, side: Side): SignPin[] {
  const all = saidOf(theCase, side)
  return signs.flatMap((sign): SignPin[] => {
    const given = all.flatMap(({ line, said }) => {
      const answer = said[sign]
      return answer === undefined ? [] : [{ line, answer }]
    })
    const last = given.findLast(({ answer }) => answer !== 'not-assessed' && answer !== 'not-reported') ?? given.at(-1)
    return last ? [{ kind: 'sign', sign, answer: last.answer, from: fromLine(last.line) }] : []
  })
}

/** Chosen, agreed, booked: each plan for this ear that stands, and who wrote it. */
function plansOf(theCase: Case, side: Side): PlanPin[] {
  const chosen = theCase
    .live('choice')
    .filter((line) => isEar(line, side))
    .at(-1)
  const agreed = theCase.live('agreement').at(-1)
  const plan = (how: PlanPin['plan'], procedure: ProcedureId, line: Pick<Line<unknown>, 'header'>): PlanPin => ({
    kind: 'plan',
    plan: how,
    procedure,
    from: fromLine(line),
  })
  return [
    ...(chosen?.body.options ?? []).flatMap(({ option, answer }) => {
      const procedure = procedureIds.find((id) => id === option)
      return chosen && procedure && answer === 'chosen' ? [plan('chosen', procedure, chosen)] : []
    }),
    ...(agreed?.body.plan.ears ?? []).flatMap((ear) =>
      agreed && ear.side === side ? [plan('agreed', ear.procedure, agreed)] : [],
    ),
    ...operationsOf({ theCase }).flatMap(({ side: of, procedure, booking }) =>
      of === side && booking ? [plan('booked', procedure, booking)] : [],
    ),
  ]
}

/** What was stamped at a step that belongs to this part, in the words of the report. */
function stampsOf(
  theCase: Case,
  side: Side,
  { places, procedures }: PinnedFacts,
  here: (list: readonly StructureId[] | undefined) => boolean,
): Pin[] {
  return operationsOf({ theCase })
    .filter((operation) => operation.side === side)
    .flatMap(({ id, procedure }) => {
      const { checkpoints } = procedureNamed(procedure, procedures)
      return theCase.live('theatre-stamp').flatMap((line): Pin[] => {
        const { subject } = line.header
        if (subject.kind !== 'operation' || subject.operation !== id) return []
        const checkpoint = checkpoints.find((one) => one.id === line.body.checkpoint)
        if (!checkpoint || !here(places.checkpoints[checkpoint.id])) return []
        return [{ kind: 'stamp', sentences: stampSentences(checkpoint, line.body), from: fromLine(line) }]
      })
    })
}
