// Written by scripts/write-indexes.mjs: sorted, one line per file.
import { bloodInSwabs } from './blood-in-swabs.ts'
import { bloodMarks } from './blood-marks.ts'
import { bloodPerKg } from './blood-per-kg.ts'
import { bodySurface } from './body-surface.ts'
import { calcFormulas } from './calc-formulas.ts'
import { labelBands } from './label-bands.ts'
import { patchSizes } from './patch-sizes.ts'

export const protocols = [
  bloodInSwabs,
  bloodMarks,
  bloodPerKg,
  bodySurface,
  calcFormulas,
  labelBands,
  patchSizes,
] as const
