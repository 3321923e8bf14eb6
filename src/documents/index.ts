import { agreementSheet } from './agreement/agreement-sheet.ts'
import { anaestheticRecord } from './anaesthetic-record/anaesthetic-record.ts'
import type { PaperDefinition } from './case/paper-input.ts'
import { doseSheet } from './dose-sheet/dose-sheet.ts'
import { emergencySheetPaper } from './emergency-sheet/emergency-sheet.ts'
import { homePage } from './home-page/home-page.ts'
import { ownerLeaflet } from './leaflet/owner-leaflet.ts'
import { referringLetter } from './letter/referring-letter.ts'
import { operationReport } from './operation-report/operation-report.ts'
import { specimenLabels } from './specimen-labels/specimen-labels.ts'
import { syringeLabels } from './syringe-labels/syringe-labels.ts'
import { theatreSheet } from './theatre-sheet/theatre-sheet.ts'
import { wholeRecord } from './whole-record/whole-record.ts'

/** Every paper of a case, sorted by id. A new one joins here and nowhere else. */
export const papers: readonly PaperDefinition[] = [
  agreementSheet,
  anaestheticRecord,
  doseSheet,
  emergencySheetPaper,
  homePage,
  operationReport,
  ownerLeaflet,
  referringLetter,
  specimenLabels,
  syringeLabels,
  theatreSheet,
  wholeRecord,
]
