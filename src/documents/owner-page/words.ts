import { homeInEnglish } from '#content/wording/home.ts'
import { leafletInEnglish } from '#content/wording/leaflet.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { optionsInEnglish } from '#content/wording/options.ts'
import { ownerPageInEnglish } from '#content/wording/owner-page.ts'
import { ownerPlateInEnglish } from '#content/wording/owner-page-plate.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import type { OptionsInWords } from '#core/choice/option.ts'
import type { OddsWording } from '#core/evidence/say-published.ts'
import type { PlateWords } from '#core/plate/words.ts'

/** The shape of an object of sentences, whichever language they are in. */
export type Sentences<Words> = Words extends string
  ? string
  : Words extends readonly (infer One)[]
    ? readonly Sentences<One>[]
    : { readonly [Name in keyof Words]: Sentences<Words[Name]> }

/** Every word of the owner's page in one language. The numbers between them come from one place for all languages. */
export type OwnerPageWords = {
  readonly page: Sentences<typeof ownerPageInEnglish>
  readonly plate: PlateWords
  readonly steps: Sentences<(typeof ownerPlateInEnglish)['steps']>
  readonly options: OptionsInWords
  readonly odds: OddsWording
  /** What an operation does not do, and when to phone: the sentences of the leaflet and of the page that goes home. */
  readonly stays: readonly string[]
  readonly phoneNow: readonly string[]
}

export const ownerPageInLanguages: Readonly<Record<string, OwnerPageWords>> = {
  en: {
    page: ownerPageInEnglish,
    plate: { ...plateInEnglish, structures: ownerPlateInEnglish.structures },
    steps: ownerPlateInEnglish.steps,
    options: optionsInEnglish,
    odds: oddsInEnglish,
    stays: leafletInEnglish.staysText.value,
    phoneNow: homeInEnglish.phoneNowItems.value,
  },
}

/** The language of the household when the page exists in it, otherwise English. `wanted` is what the reader asked for. */
export function languageFor(wanted: string | null, household: string | undefined): string {
  const known = [wanted, household].map((tag) => tag?.split('-')[0] ?? '')
  return known.find((tag) => Object.hasOwn(ownerPageInLanguages, tag)) ?? 'en'
}
