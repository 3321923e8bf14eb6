// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { bothInOneSession } from './both-in-one-session.ts'
import { deepFlush } from './deep-flush.ts'
import { euthanasia } from './euthanasia.ts'
import { lateralWallResection } from './lateral-wall-resection.ts'
import { medicalControl } from './medical-control.ts'
import { noTreatment } from './no-treatment.ts'
import { staged } from './staged.ts'
import { subtotalAblation } from './subtotal-ablation.ts'
import { tecaLbo } from './teca-lbo.ts'
import { traction } from './traction.ts'
import { ventralBullaOsteotomy } from './ventral-bulla-osteotomy.ts'
import { verticalCanalAblation } from './vertical-canal-ablation.ts'

export const options = [
  bothInOneSession,
  deepFlush,
  euthanasia,
  lateralWallResection,
  medicalControl,
  noTreatment,
  staged,
  subtotalAblation,
  tecaLbo,
  traction,
  ventralBullaOsteotomy,
  verticalCanalAblation,
] as const
