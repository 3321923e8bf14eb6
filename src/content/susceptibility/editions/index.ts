// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { clsiM10028 } from './clsi-m100-28.ts'
import { clsiM10030 } from './clsi-m100-30.ts'
import { clsiM10031 } from './clsi-m100-31.ts'
import { clsiM10032 } from './clsi-m100-32.ts'
import { clsiM10033 } from './clsi-m100-33.ts'
import { clsiM10034 } from './clsi-m100-34.ts'
import { clsiM10035 } from './clsi-m100-35.ts'
import { clsiM45 } from './clsi-m45.ts'
import { clsiVet01s5 } from './clsi-vet01s-5.ts'
import { clsiVet01s6 } from './clsi-vet01s-6.ts'
import { clsiVet01s7 } from './clsi-vet01s-7.ts'
import { clsiVet084 } from './clsi-vet08-4.ts'
import { eucast12 } from './eucast-12.ts'
import { eucast13 } from './eucast-13.ts'
import { eucast14 } from './eucast-14.ts'
import { eucast15 } from './eucast-15.ts'
import { eucastEcoff2023 } from './eucast-ecoff-2023.ts'
import { eucastEcoff2025 } from './eucast-ecoff-2025.ts'
import { proposalPapich2025 } from './proposal-papich-2025.ts'
import { vetcast2026 } from './vetcast-2026.ts'

export const editions = [
  clsiM10028,
  clsiM10030,
  clsiM10031,
  clsiM10032,
  clsiM10033,
  clsiM10034,
  clsiM10035,
  clsiM45,
  clsiVet01s5,
  clsiVet01s6,
  clsiVet01s7,
  clsiVet084,
  eucast12,
  eucast13,
  eucast14,
  eucast15,
  eucastEcoff2023,
  eucastEcoff2025,
  proposalPapich2025,
  vetcast2026,
] as const
