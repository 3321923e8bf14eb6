import { type Drug, isAntibiotic } from '#core/formulary/drug.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'

export type OnBoard = {
  /** Given here within the day before, oldest first. */
  readonly given: readonly Line<BodyOf<'drug-given'>>[]
  /** Brought along: a medicine before us that goes on. */
  readonly goesOn: readonly Line<BodyOf<'medicine-before'>>[]
}

const day = 24 * 60 * 60_000

/**
 * The antibiotics that were in the animal when a sample was taken, as far as entries say: none written is not "none".
 *
 * @example antibioticsOnBoard(theCase, at, formulary).given.map(({ body }) => body.drug) // ['cefazolin']
 */
export function antibioticsOnBoard(theCase: Case, at: string, drugs: readonly Drug[]): OnBoard {
  return {
    given: theCase
      .live('drug-given')
      .filter((line) => line.at <= at && Date.parse(at) - Date.parse(line.at) <= day)
      .filter(({ body }) => body.use.startsWith('antibiotic') || isAntibiotic(drugs, body.drug)),
    goesOn: theCase
      .live('medicine-before')
      .filter(
        ({ body }) =>
          body.substance !== null &&
          isAntibiotic(drugs, body.substance) &&
          (body.ongoing || (body.until?.at ?? '') >= at),
      ),
  }
}
