import { columnsOfEars, deIdentifiedWords as say } from '#content/wording/columns-of-ears.ts'
import { type OwnOutcome, ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import type { DeIdentifiedEar } from '#core/results/de-identify.ts'
import { sheet } from '../render/sheet.ts'

/** The de-identified ears as CSV; its dictionary is `dictionaryOf(columnsOfEars)`. */
export function sheetOfEars(ears: readonly DeIdentifiedEar[]): string {
  return sheet(
    columnsOfEars.map(({ column }) => column),
    ears.map((ear) => [
      String(ear.ear),
      String(ear.animal),
      String(ear.anaesthetic),
      ear.species,
      ear.procedure,
      ear.side,
      ear.year ?? say.withheld,
      ...[
        ear.diedAfterDays,
        ear.followedForDays,
        ear.tractAfterDays,
        ear.blinkLostAfterDays,
        ear.blinkBackAfterDays,
      ].map((days) => (days === null ? '' : String(days))),
      ...ownOutcomes.map((outcome) => knownOf(ear, outcome)),
    ]),
  )
}

function knownOf({ known }: DeIdentifiedEar, outcome: OwnOutcome): string {
  const happened = known[outcome]
  return happened === null ? '' : happened ? say.yes : say.no
}
