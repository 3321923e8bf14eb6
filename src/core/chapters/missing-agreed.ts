import { authorityRefusalsOf } from '#core/agreement/authority.ts'
import { faultsOf, newestEstimate } from '#core/agreement/estimate.ts'
import { isUnderstood } from '#core/agreement/state.ts'
import { type Side, sides } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { isOfEar, operationsOf } from '#core/owed/operations.ts'
import { secondSideAhead } from '#core/second-side/second-side.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { affectedEars, animalOf, chosenOperation } from './ears.ts'
import { type Missing, missingIn } from './missing.ts'

type Make = ReturnType<typeof missingIn>

/** What has not been weighed or said for the ears the case is about. */
export function missingInChoice({ theCase }: CaseFile): Missing[] {
  const missing = missingIn('Choice', animalOf(theCase))
  const ears = affectedEars(theCase)
  const open = ears.flatMap((side) => {
    const choice = theCase.live('choice').findLast((line) => isOfEar(line, side))
    return choice ? choiceGaps(choice, side, missing) : [missing('choice-missing', 'choice', { side })]
  })
  return [...open, ...unplanned(theCase, ears, missing)]
}

/** Once an ear is operated, what becomes of the skin and of the ear that is not. */
function unplanned(theCase: CaseFile['theCase'], ears: readonly Side[], missing: Make): Missing[] {
  if (!sides.some((side) => chosenOperation(theCase, side) !== null)) return []
  const others = sides.filter((side) => !ears.includes(side))
  const weight = 'useful' as const
  return [
    ...(theCase.latest('skin-plan') ? [] : [missing('skin-plan-missing', 'skin-plan', { weight })]),
    ...others
      .filter((side) => !theCase.live('other-ear-plan').some((line) => isOfEar(line, side)))
      .map((side) => missing('other-ear-plan-missing', 'other-ear-plan', { side, weight })),
  ]
}

function choiceGaps({ header, body }: Line<BodyOf<'choice'>>, side: Side, missing: Make): Missing[] {
  const here = { side, amends: header.id }
  const offered = new Set<string>(body.options.map(({ option }) => option))
  return [
    ...(body.options.some(({ answer }) => answer === 'chosen') ? [] : [missing('nothing-chosen', 'choice', here)]),
    ...(offered.has('no-treatment') || offered.has('medical-control')
      ? []
      : [missing('no-surgery-not-offered', 'choice', here)]),
    ...body.missing.map((what) =>
      missing('choice-lacks', 'choice', { ...here, weight: 'useful' as const, about: { what } }),
    ),
  ]
}

/** Estimate, consent and booking, as soon as an operation was chosen for an ear. */
export function missingInAgreement(file: CaseFile): Missing[] {
  const { theCase } = file
  const missing = missingIn('Agreement', animalOf(theCase))
  const wanted = sides.filter((side) => chosenOperation(theCase, side) !== null)
  const done = operationsOf(file).filter((operation) => operation.done)
  const open = wanted.filter((side) => !done.some((operation) => operation.side === side))
  const second = secondSideAhead(theCase)?.second
  // What was agreed or reckoned before a second side was decided does not count for it.
  const counts = (at: string, side: Side) => !second || side !== second.side || at >= second.since
  const agreed = theCase.live('agreement')
  return [
    ...open.flatMap((side) => {
      const agreement = agreed.findLast(
        ({ at, body }) => counts(at, side) && body.plan.ears.some((ear) => ear.side === side),
      )
      if (!agreement) return [missing('agreement-missing', 'agreement', { about: { ear: side } })]
      const booked = theCase.live('booking').some(({ body }) => body.side === side)
      return booked ? [] : [missing('booking-missing', 'booking', { about: { ear: side } })]
    }),
    ...(open.length > 0 ? estimateGaps(file, second?.since ?? null, missing) : []),
    ...(wanted.length === 2 && open.length > 0 ? undecidedSession(theCase, missing) : []),
    ...agreed.slice(-1).flatMap((line) => agreementGaps(line, file, missing)),
  ]
}

/** An estimate is asked for until the agreement holds one; the newest must be answered and fit together. */
function estimateGaps({ theCase }: CaseFile, since: string | null, missing: Make): Missing[] {
  const newest = newestEstimate(theCase)
  if (since !== null && (!newest || newest.at < since)) return [missing('estimate-missing', 'estimate')]
  if (!newest) return theCase.latest('agreement') ? [] : [missing('estimate-missing', 'estimate')]
  const amends = newest.header.id
  const faults = faultsOf(newest.body)
  return [
    ...(newest.body.answer === null ? [missing('estimate-not-answered', 'estimate', { amends })] : []),
    ...(faults.length > 0
      ? [missing('estimate-at-odds', 'estimate', { amends, about: { what: faults.join(', ') } })]
      : []),
  ]
}

function undecidedSession(theCase: CaseFile['theCase'], missing: Make): Missing[] {
  const open = sides.filter(
    (side) => theCase.live('choice').findLast((line) => isOfEar(line, side))?.body.session === 'not-decided',
  )
  return open.map((side) => missing('session-not-decided', 'choice', { side, weight: 'useful' }))
}

/** The five things said back, from the journal's own list; medicines belong to the way home. */
const saidBack = ['which-ear', 'two-risks', 'eye-care', 'collar', 'when-to-phone'] as const

function agreementGaps({ header, body, at }: Line<BodyOf<'agreement'>>, file: CaseFile, missing: Make): Missing[] {
  const amends = header.id
  const open = saidBack.filter((item) => !isSaidBack(body.teachBack, item))
  const day = dayOf({ at, zone: file.clinic.zone })
  const refusals = authorityRefusalsOf({ ...body, ceiling: body.plan.ceiling }, file, day)
  const nobody = body.authority === 'owner' && !file.theCase.latest('household')
  return [
    ...(refusals.length > 0 || nobody
      ? [missing('consent-not-by-who-may', 'agreement', { amends, about: { contact: body.consentBy } })]
      : []),
    ...(open.length > 0
      ? [missing('teach-back-open', 'agreement', { amends, about: { items: open.join(', ') } })]
      : []),
    ...(body.resuscitate === 'not-decided' ? [missing('resuscitation-open', 'agreement', { amends })] : []),
  ]
}

/** Said back in the owner's own words, or with help, at first or after it was explained again; silence is open. */
export function isSaidBack(
  taught: readonly {
    readonly item: string
    readonly answer: 'own-words' | 'with-help' | 'not-yet'
    readonly again?: 'own-words' | 'with-help' | 'not-yet' | null
  }[],
  item: string,
): boolean {
  return taught.some((one) => one.item === item && isUnderstood({ answer: one.answer, again: one.again ?? null }))
}
