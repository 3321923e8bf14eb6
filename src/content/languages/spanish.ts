import { cautionInSpanish } from '../wording/spanish/caution.ts'
import { datesInSpanish } from '../wording/spanish/dates.ts'
import { handlingInSpanish } from '../wording/spanish/handling.ts'
import { homeInSpanish } from '../wording/spanish/home.ts'
import { homeChangeInSpanish } from '../wording/spanish/home-change.ts'
import { hygieneInSpanish } from '../wording/spanish/hygiene.ts'
import { leafletInSpanish } from '../wording/spanish/leaflet.ts'
import { oddsInSpanish } from '../wording/spanish/odds.ts'
import { optionsInSpanish } from '../wording/spanish/options.ts'
import { calendarInSpanish } from '../wording/spanish/owed-calendar.ts'
import { ownerLinkInSpanish } from '../wording/spanish/owner-link.ts'
import { ownerPageInSpanish } from '../wording/spanish/owner-page.ts'
import { ownerPlateInSpanish } from '../wording/spanish/owner-page-plate.ts'
import { ownerQuestionsInSpanish } from '../wording/spanish/owner-questions.ts'
import { papersInSpanish } from '../wording/spanish/papers.ts'
import { agreementInSpanish } from '../wording/spanish/papers-agreement.ts'
import { keptDrawingInSpanish, plateInSpanish } from '../wording/spanish/plate.ts'
import { procedureNamesInSpanish } from '../wording/spanish/procedures.ts'
import { questionsInSpanish } from '../wording/spanish/questions.ts'
import { readingInSpanish } from '../wording/spanish/reading.ts'
import { toldInSpanish } from '../wording/spanish/told.ts'
import { aboutTheSpanish } from '../wording/spanish/translation.ts'
import { unpublishedInSpanish } from '../wording/spanish/unpublished.ts'
import type { OwnerWords } from './owner-words.ts'

/** Translated by us; no vet whose first language is Spanish has read it yet, and each paper says so. */
export const spanish = {
  aboutTranslation: aboutTheSpanish,
  caution: cautionInSpanish,
  dates: datesInSpanish,
  papers: papersInSpanish,
  unpublished: unpublishedInSpanish,
  leaflet: leafletInSpanish,
  options: optionsInSpanish,
  odds: oddsInSpanish,
  told: toldInSpanish,
  agreement: agreementInSpanish,
  procedures: procedureNamesInSpanish,
  home: homeInSpanish,
  homeChange: homeChangeInSpanish,
  handling: handlingInSpanish,
  hygiene: hygieneInSpanish,
  calendar: calendarInSpanish,
  page: ownerPageInSpanish,
  link: ownerLinkInSpanish,
  ownerPlate: ownerPlateInSpanish,
  questions: questionsInSpanish,
  asking: ownerQuestionsInSpanish,
  plate: plateInSpanish,
  drawing: keptDrawingInSpanish,
  reading: readingInSpanish,
} as const satisfies OwnerWords
