import { datesInEnglish } from '#core/time/date-words.ts'
import { lateralWallResection } from '../procedures/lateral-wall-resection.ts'
import { subtotalAblation } from '../procedures/subtotal-ablation.ts'
import { tecaLbo } from '../procedures/teca-lbo.ts'
import { traction } from '../procedures/traction.ts'
import { ventralBullaOsteotomy } from '../procedures/ventral-bulla-osteotomy.ts'
import { verticalCanalAblation } from '../procedures/vertical-canal-ablation.ts'
import { caution } from '../wording/caution.ts'
import { handlingInEnglish } from '../wording/handling.ts'
import { homeInEnglish } from '../wording/home.ts'
import { homeChangeInEnglish } from '../wording/home-change.ts'
import { hygieneInEnglish } from '../wording/hygiene.ts'
import { leafletInEnglish } from '../wording/leaflet.ts'
import { oddsInEnglish } from '../wording/odds.ts'
import { optionsInEnglish } from '../wording/options.ts'
import { calendarInEnglish } from '../wording/owed-calendar.ts'
import { ownerLinkInEnglish } from '../wording/owner-link.ts'
import { ownerPageInEnglish } from '../wording/owner-page.ts'
import { ownerPlateInEnglish } from '../wording/owner-page-plate.ts'
import { ownerQuestionsInEnglish } from '../wording/owner-questions.ts'
import { papersInEnglish } from '../wording/papers.ts'
import { agreementWords } from '../wording/papers-agreement.ts'
import { keptDrawingInEnglish, plateInEnglish } from '../wording/plate.ts'
import { questionsInEnglish } from '../wording/questions.ts'
import { readingInEnglish } from '../wording/reading.ts'
import { toldInEnglish } from '../wording/told.ts'
import type { OwnerWords } from './owner-words.ts'

/** The language in which the words are written first. */
export const english = {
  aboutTranslation: null,
  caution,
  dates: datesInEnglish,
  papers: papersInEnglish,
  unpublished: {},
  leaflet: leafletInEnglish,
  options: optionsInEnglish,
  odds: oddsInEnglish,
  told: toldInEnglish,
  agreement: agreementWords,
  procedures: {
    'lateral-wall-resection': lateralWallResection.name,
    'subtotal-ablation': subtotalAblation.name,
    'teca-lbo': tecaLbo.name,
    traction: traction.name,
    'ventral-bulla-osteotomy': ventralBullaOsteotomy.name,
    'vertical-canal-ablation': verticalCanalAblation.name,
  },
  home: homeInEnglish,
  homeChange: homeChangeInEnglish,
  handling: handlingInEnglish,
  hygiene: hygieneInEnglish,
  calendar: calendarInEnglish,
  page: ownerPageInEnglish,
  link: ownerLinkInEnglish,
  ownerPlate: ownerPlateInEnglish,
  questions: questionsInEnglish,
  asking: ownerQuestionsInEnglish,
  plate: plateInEnglish,
  drawing: keptDrawingInEnglish,
  reading: readingInEnglish,
} as const satisfies OwnerWords
