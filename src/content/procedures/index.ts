// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { lateralWallResection } from './lateral-wall-resection.ts'
import { subtotalAblation } from './subtotal-ablation.ts'
import { tecaLbo } from './teca-lbo.ts'
import { traction } from './traction.ts'
import { ventralBullaOsteotomy } from './ventral-bulla-osteotomy.ts'
import { verticalCanalAblation } from './vertical-canal-ablation.ts'

export const procedures = [
  lateralWallResection,
  subtotalAblation,
  tecaLbo,
  traction,
  ventralBullaOsteotomy,
  verticalCanalAblation,
] as const
