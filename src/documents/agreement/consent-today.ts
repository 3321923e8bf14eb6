import { owedRules } from '#content/follow-up/owed-rules.ts'
import { languages, type OwnerLanguage } from '#content/languages/index.ts'
import { procedures } from '#content/procedures/index.ts'
import { consentInEnglish } from '#content/wording/consent.ts'
import { leafletEdition } from '#content/wording/leaflet.ts'
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
import { ownerLanguageOf } from '../case/owner-words.ts'

/** Worked out once for each approval of our own figures: a theatre list asks for the same ones again and again. */
const known = new Map<string, readonly ShownNumber[]>()

function numbersToday(
  house: Case,
  species: Species,
  procedure: ProcedureId,
  language: OwnerLanguage,
): readonly ShownNumber[] {
  const evidence = evidenceOf(house)
  const approved = approvedFor(house, species, procedure)?.header.id ?? ''
  const key = `${species} ${procedure} ${approved} ${evidence.shownFrom} ${language}`
  const before = known.get(key)
  if (before) return before
  const { odds, told } = languages[language]
  const said = procedureNamed(procedure, procedures).risks.flatMap(({ outcome }) =>
    toldPerUnit({ species, procedure, outcome }, evidence).map((one) => ({
      outcome,
      unit: one.published.question.unit,
      said: sayTold(one, { odds, told }),
    })),
  )
  const made = numbersShown(procedure, said)
  known.set(key, made)
  return made
}

/** What an owner is told today: the leaflet in force and the numbers of an operation, in words of the language asked for. */
export const toldToday: ToldToday = {
  leafletOf: () => leafletEdition,
  numbersOf: (file, procedure, language) => {
    const species = file.theCase.latest('identity')?.body.species
    const spoken = ownerLanguageOf(language) ?? 'en'
    return species === undefined ? [] : numbersToday(file.house, species, procedure, spoken)
  },
}

/** What the theatre list goes by. */
export const theatreRules: TheatreRules = {
  ...owedRules.before,
  consent: { told: toldToday, words: consentInEnglish },
}
