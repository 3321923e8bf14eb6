import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { consentInEnglish } from '#content/wording/consent.ts'
import { leafletEdition } from '#content/wording/leaflet.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import { numbersShown, type ShownNumber } from '#core/agreement/numbers-shown.ts'
import type { ToldToday } from '#core/agreement/plan-changes.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { approvedFor } from '#core/evidence/own/approved.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { toldPerUnit } from '#core/evidence/told.ts'
import type { Case } from '#core/journal/fold.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import type { TheatreRules } from '#core/theatre/theatre-list.ts'
import { evidenceOf } from '../case/evidence-of.ts'

/** Worked out once for each approval of our own figures: a theatre list asks for the same ones again and again. */
const known = new Map<string, readonly ShownNumber[]>()

function numbersToday(house: Case, species: Species, procedure: ProcedureId): readonly ShownNumber[] {
  const evidence = evidenceOf(house)
  const approved = approvedFor(house, species, procedure)?.header.id ?? ''
  const key = `${species} ${procedure} ${approved} ${evidence.shownFrom}`
  const before = known.get(key)
  if (before) return before
  const said = procedureNamed(procedure, procedures).risks.flatMap(({ outcome }) =>
    toldPerUnit({ species, procedure, outcome }, evidence).map((one) => ({
      outcome,
      unit: one.published.question.unit,
      said: sayTold(one, { odds: oddsInEnglish, told: toldInEnglish }),
    })),
  )
  const made = numbersShown(procedure, said)
  known.set(key, made)
  return made
}

/** What an owner is told today: the leaflet in force and the numbers of an operation, as the leaflet says them. */
export const toldToday: ToldToday = {
  leafletOf: () => leafletEdition,
  numbersOf: ({ theCase, house }, procedure) => {
    const species = theCase.latest('identity')?.body.species
    return species === undefined ? [] : numbersToday(house, species, procedure)
  },
}

/** What the theatre list goes by. */
export const theatreRules: TheatreRules = {
  ...owedRules.before,
  consent: { told: toldToday, words: consentInEnglish },
}
