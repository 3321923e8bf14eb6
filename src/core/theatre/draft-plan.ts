import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { isOfEar, type OperationOnFile } from '#core/owed/operations.ts'
import { stampSentences } from '#core/procedures/stamp-sentences.ts'
import type { DraftFacts } from './draft-findings.ts'
import { potsOf } from './specimens.ts'
import type { Stamp, ToStamp } from './stamps.ts'

/** One statement for the plan, with the entry it was read from. */
export type DraftPlan =
  | { readonly kind: 'awaited'; readonly from: string; readonly specimen: Line<BodyOf<'specimen'>> }
  | {
      readonly kind: 'dose'
      readonly from: string
      readonly line: Line<BodyOf<'planned-line'>>
      /** When its line was last given; null while it was not. */
      readonly lastAt: string | null
    }
  | { readonly kind: 'eye'; readonly from: string; readonly sentences: readonly string[] }

type About = { readonly items: readonly ToStamp[]; readonly facts: DraftFacts }

/**
 * What is known to come: results that are awaited, doses whose plan names how often, and the eye where an answer at the
 * nerve asks for it and nobody has seen a blink since.
 *
 * @example draftPlan(theCase, operation, about).map(({ kind }) => kind) // ['awaited', 'dose']
 */
export function draftPlan(theCase: Case, operation: OperationOnFile, { items, facts }: About): DraftPlan[] {
  const awaited = potsOf(theCase, operation.id)
    .filter(({ specimen }) => !hasFinal(theCase, specimen.header.id))
    .map(({ specimen }): DraftPlan => ({ kind: 'awaited', from: specimen.header.id, specimen }))
  const doses = linesAbout(theCase, 'planned-line', operation.id)
    .filter(({ body }) => body.how?.every)
    .map((line): DraftPlan => {
      const given = linesAbout(theCase, 'drug-given', operation.id).findLast(({ body }) => body.line === line.body.line)
      return { kind: 'dose', from: line.header.id, line, lastAt: given?.at ?? null }
    })
  return [...awaited, ...doses, ...eye(theCase, operation, { items, facts })]
}

function hasFinal(theCase: Case, specimen: string): boolean {
  return theCase.live('specimen-result').some(({ body }) => body.specimen === specimen && body.status !== 'preliminary')
}

function eye(theCase: Case, operation: OperationOnFile, { items, facts }: About): DraftPlan[] {
  const { checkpoint: wanted, answers } = facts.eyeAfterNerve.value
  const item = items.find(({ id }) => id === wanted)
  const [stamp, other] = item?.stamps ?? []
  if (!item?.checkpoint || !stamp || other || blinkedSince(theCase, operation, stamp)) return []
  const telling = Object.fromEntries(
    Object.entries(stamp.body.detail).filter(([id, answer]) => answers[id]?.includes(answer)),
  )
  const asks = stamp.body.answer === 'not-done' || Object.keys(telling).length > 0
  if (!asks) return []
  const said = stampSentences(item.checkpoint, { ...stamp.body, detail: telling })
  return [{ kind: 'eye', from: stamp.header.id, sentences: said }]
}

function blinkedSince(theCase: Case, { side }: OperationOnFile, { at }: Stamp): boolean {
  const seen = theCase.live('check').some((line) => isOfEar(line, side) && line.at > at && line.body.blink === 'normal')
  return seen || theCase.live('ward-score').some((line) => line.at > at && line.body[side].blink === 'normal')
}
