// Written by scripts/write-indexes.mjs: sorted, one line per file.
import { bodySurface } from './body-surface.ts'
import { calcFormulas } from './calc-formulas.ts'
import { labelBands } from './label-bands.ts'
import { patchSizes } from './patch-sizes.ts'

export const protocols = [
  bodySurface,
  calcFormulas,
  labelBands,
  patchSizes,
] as const
