import type { Provenance } from '#core/evidence/sourced.ts'

/**
 * How the values of the editions are known. None was read in CLSI or EUCAST themselves: they are second-hand, and a
 * clinic has to compare them with its own copy.
 */
export const read = {
  sources: ['amr-dataset-2025'],
  where: 'clinical_breakpoints',
  known: 'read',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Provenance

export const readTwice = { ...read, sources: ['amr-dataset-2025', 'mevis-2023-tables'], confidence: 'high' } as const

export const readWithPapich = {
  ...read,
  sources: ['amr-dataset-2025', 'papich-2023-fluoroquinolones'],
  confidence: 'high',
} as const

export const readThrice = {
  ...read,
  sources: ['amr-dataset-2025', 'mevis-2023-tables', 'papich-2023-fluoroquinolones'],
  confidence: 'high',
} as const

export const tables = {
  ...read,
  sources: ['mevis-2023-tables'],
  where: 'table of breakpoints',
  confidence: 'high',
} as const

export const tablesUnsure = { ...tables, confidence: 'medium' } as const

export const tablesWithMecA = {
  ...tables,
  sources: ['mevis-2023-tables', 'jvdi-2009-oxacillin'],
  where: 'table of breakpoints; abstract: the disk found 6.7 % of the isolates with mecA',
} as const

export const schleiferi = {
  ...read,
  sources: ['jcm-2018-schleiferi'],
  where: 'abstract and table',
  confidence: 'high',
} as const

export const wildType = { ...read, strength: 'study', confidence: 'high' } as const

export const wildTypeTables = {
  ...wildType,
  sources: ['mevis-2023-tables'],
  where: 'table of wild-type limits',
} as const

/** The numbers were worked out from the sentence that the values lie two dilutions lower. */
export const derivedFromPapich = {
  ...read,
  sources: ['papich-2025-feline-fluoroquinolones'],
  where: 'worked out from the sentence that the values lie two dilutions lower; the numbers themselves were not read',
  strength: 'study',
  confidence: 'low',
} as const

export const clsiRemembered = {
  ...read,
  sources: ['clsi-remembered'],
  where: 'M100, table 3',
  known: 'remembered',
} as const

export const eucastRemembered = {
  ...read,
  sources: ['eucast-remembered'],
  where: 'table of staphylococci, note on use in the nose',
  known: 'remembered',
} as const

export const noneForYeast = {
  ...read,
  sources: ['clsi-remembered', 'eucast-remembered'],
  where: 'the documents of antifungals',
  known: 'remembered',
  confidence: 'high',
} as const

export const absent = { ...read, where: 'no such row among those of dogs and cats' } as const
export const absentSurely = { ...absent, confidence: 'high' } as const
export const vetcastState = { ...read, sources: ['amr-issue-303', 'amr-dataset-2025'] } as const

/** The doses that S assumes, from the comments of the tables as remembered. */
export const dosesRemembered = {
  ...read,
  sources: ['clsi-remembered'],
  where: 'VET01S, comments of the tables',
  known: 'remembered',
  confidence: 'low',
} as const

export const dosesOfPapich = {
  ...read,
  sources: ['papich-2023-fluoroquinolones'],
  where: 'abstract',
  confidence: 'high',
} as const

export const labelLimit = {
  ...read,
  sources: ['usual-products'],
  where: 'limit on the label, remembered',
  known: 'remembered',
  strength: 'label',
} as const
