// Written by scripts/write-indexes.mjs: sorted, one line per file.
import { erasure } from './erasure.ts'
import { merge } from './merge.ts'
import { note } from './note.ts'
import { weight } from './weight.ts'
import { withdrawal } from './withdrawal.ts'

export const kinds = [erasure, merge, note, weight, withdrawal] as const
