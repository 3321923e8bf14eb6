import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { studies } from '#content/studies/index.ts'
import { consentInEnglish } from '#content/wording/consent.ts'
import { leafletEdition } from '#content/wording/leaflet.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { numbersShown, type ShownNumber } from '#core/agreement/numbers-shown.ts'
import type { ToldToday } from '#core/agreement/plan-changes.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { publishedPerUnit } from '#core/evidence/published.ts'
import { sayPublished } from '#core/evidence/say-published.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import type { TheatreRules } from '#core/theatre/theatre-list.ts'

/** Published counts do not change while the program runs; a theatre list asks for the same ones again and again. */
const published = new Map<string, readonly ShownNumber[]>()

function publishedNumbers(species: Species, procedure: ProcedureId): readonly ShownNumber[] {
  const key = `${species} ${procedure}`
  const known = published.get(key)
  if (known) return known
  const said = procedureNamed(procedure, procedures).risks.flatMap(({ outcome }) =>
    publishedPerUnit({ species, procedure, outcome }, studies).map((one) => ({
      outcome,
      unit: one.question.unit,
      said: sayPublished(one, oddsInEnglish),
    })),
  )
  const made = numbersShown(procedure, said)
  published.set(key, made)
  return made
}

/** What an owner is told today: the leaflet in force and the numbers of an operation, as the leaflet says them. */
export const toldToday: ToldToday = {
  leafletOf: () => leafletEdition,
  numbersOf: ({ theCase }, procedure) => {
    const species = theCase.latest('identity')?.body.species
    return species === undefined ? [] : publishedNumbers(species, procedure)
  },
}

/** What the theatre list goes by. */
export const theatreRules: TheatreRules = {
  ...owedRules.before,
  consent: { told: toldToday, words: consentInEnglish },
}
