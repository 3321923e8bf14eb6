import type { ProcedureId } from '#core/animal/procedure.ts'
import type { OptionsInWords } from '#core/choice/option.ts'
import type { OddsWording } from '#core/evidence/say-published.ts'
import type { ToldWording } from '#core/evidence/say-told.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { DrawingWords } from '#core/plate/drawings-of.ts'
import type { PlateWords } from '#core/plate/words.ts'
import type { DateWords } from '#core/time/date-words.ts'
import type { handlingInEnglish } from '../wording/handling.ts'
import type { homeInEnglish } from '../wording/home.ts'
import type { homeChangeInEnglish } from '../wording/home-change.ts'
import type { hygieneInEnglish } from '../wording/hygiene.ts'
import type { leafletInEnglish } from '../wording/leaflet.ts'
import type { calendarInEnglish } from '../wording/owed-calendar.ts'
import type { ownerLinkInEnglish } from '../wording/owner-link.ts'
import type { ownerPageInEnglish } from '../wording/owner-page.ts'
import type { ownerPlateInEnglish } from '../wording/owner-page-plate.ts'
import type { ownerQuestionsInEnglish } from '../wording/owner-questions.ts'
import type { papersInEnglish } from '../wording/papers.ts'
import type { agreementWords } from '../wording/papers-agreement.ts'
import type { questionsInEnglish } from '../wording/questions.ts'
import type { readingInEnglish } from '../wording/reading.ts'

/** Every place of the English words with some text in it; lists as long as the English, provenance as it stands there. */
type SameShape<English> = English extends string
  ? string
  : English extends Provenance
    ? { readonly [Place in keyof English]: Place extends keyof Provenance ? English[Place] : SameShape<English[Place]> }
    : { readonly [Place in keyof English]: SameShape<English[Place]> }

/**
 * All that an owner reads, in one language. What is missing does not compile; what is only copied, or says another
 * number, is found by the checker (tests/content/languages.test.ts).
 */
export type OwnerWords = {
  /** In the small print of each paper: who translated and who has read it. Null where nothing was translated. */
  readonly aboutTranslation: string | null
  readonly caution: string
  readonly dates: DateWords
  readonly papers: SameShape<typeof papersInEnglish>
  /** By id, where a source is no publication and its English line would stand among the words of another language. */
  readonly unpublished: Readonly<Record<string, string>>
  readonly leaflet: SameShape<typeof leafletInEnglish>
  readonly options: OptionsInWords
  readonly odds: OddsWording
  readonly told: ToldWording
  readonly agreement: SameShape<typeof agreementWords>
  readonly procedures: Readonly<Record<ProcedureId, string>>
  readonly home: SameShape<typeof homeInEnglish>
  readonly homeChange: SameShape<typeof homeChangeInEnglish>
  readonly handling: SameShape<typeof handlingInEnglish>
  readonly hygiene: SameShape<typeof hygieneInEnglish>
  readonly calendar: SameShape<typeof calendarInEnglish>
  /** The page behind a private link, and what stands on and beside its plates. */
  readonly page: SameShape<typeof ownerPageInEnglish>
  /** The pages beside it, from the day the animal goes home. */
  readonly link: SameShape<typeof ownerLinkInEnglish>
  readonly ownerPlate: SameShape<typeof ownerPlateInEnglish>
  /** What owners are asked at home, and the page that asks it. */
  readonly questions: SameShape<typeof questionsInEnglish>
  readonly asking: SameShape<typeof ownerQuestionsInEnglish>
  readonly plate: PlateWords
  readonly drawing: DrawingWords
  readonly reading: SameShape<typeof readingInEnglish>
}
