import type { CaseFile } from '#core/journal/clinic.ts'
import type { Naming } from '#core/questionnaire/put-together.ts'
import type { OwnerPageWords } from '../owner-page/words.ts'

/** How the questions to an owner are filled: the name of the animal, and the sides in the words of the language. */
export function namingOf({ theCase }: Pick<CaseFile, 'theCase'>, { plate }: Pick<OwnerPageWords, 'plate'>): Naming {
  return { name: theCase.latest('identity')?.body.name ?? '', sides: plate.sides }
}
