import { procedureIds } from '#core/animal/procedure.ts'
import { type Side, sides } from '#core/animal/species.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { isOfEar, operationsOf } from '#core/owed/operations.ts'

/** The animal's id, from the first entry that names it; null while none does. */
export function animalOf(theCase: Case): string | null {
  const own = theCase.latest('identity')?.header.subject ?? theCase.latest('referral')?.header.subject
  if (own && 'animal' in own) return own.animal
  for (const { header } of theCase.lines) if ('animal' in header.subject) return header.subject.animal
  return null
}

const surgical: ReadonlySet<string> = new Set(procedureIds)

/** Whether an option of the choice is an operation. */
export function isOperation(option: BodyOf<'choice'>['options'][number]['option']): boolean {
  return surgical.has(option)
}

/** The operation last chosen for this ear, when one was. */
export function chosenOperation(theCase: Case, side: Side): string | null {
  const choice = theCase.live('choice').findLast((line) => isOfEar(line, side))
  const chosen = choice?.body.options.find(({ option, answer }) => answer === 'chosen' && isOperation(option))
  return chosen?.option ?? null
}

/** The ears the case is about: reported, talked over, or operated. Nobody's guess: an unknown side names none. */
export function affectedEars(theCase: Case): Side[] {
  const reported = theCase.latest('referral')?.body.reportedSide
  const operated = operationsOf({ theCase }).map(({ side }) => side)
  return sides.filter(
    (side) =>
      reported === side ||
      reported === 'BOTH' ||
      operated.includes(side) ||
      theCase.live('choice').some((line) => isOfEar(line, side)),
  )
}
