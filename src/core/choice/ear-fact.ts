/** What the rules of the choice ask of an animal and one of its ears. */
export const earFactIds = [
  'cat',
  'flat-face',
  'cocker',
  'skin-disease',
  'skin-treated',
  'nerve-signs',
  'jaw-pain',
  'stenosis-marked',
  'canal-mineral',
  'canal-healthy',
  'horizontal-open',
  'canal-removed',
  'drum-lost',
  'bulla-filled',
  'bulla-wall-changed',
  'bulla-wall-eaten',
  'pain',
  'swelling-or-tract',
  'mass',
  'mass-outer',
  'mass-deep',
  'mass-small',
  'odd-cells',
  'medicine-failed',
  'steroid-failed',
  'erect-ear',
  'both-ears-ill',
  'operated-before',
  'injured',
  'closed-from-birth',
  'history-taken',
  'advanced-imaging',
  'tissue-result',
  'node-result',
  'culture-result',
  'cytology-read',
  'session-decided',
] as const
export type EarFactId = (typeof earFactIds)[number]

/** `unknown` is never read as `no`: it was not assessed, could not be seen, or is not on record. */
export type FactValue = 'yes' | 'no' | 'unknown'

/** One fact, and the entries it was read from; `words` where the entry speaks only in words and a person must judge. */
export type EarFact = { readonly value: FactValue; readonly from: readonly string[]; readonly words: string | null }
export type EarFacts = Readonly<Record<EarFactId, EarFact>>

/** A fact that only means something once another is there: the place of a mass that nobody has found. */
export const presupposes: Readonly<Partial<Record<EarFactId, EarFactId>>> = {
  'skin-treated': 'skin-disease',
  'mass-outer': 'mass',
  'mass-deep': 'mass',
  'mass-small': 'mass',
}

/** Facts that one entry settles together: while that entry is not there, it alone is asked for. */
export const askedTogether: Readonly<Partial<Record<EarFactId, EarFactId>>> = {
  'operated-before': 'history-taken',
  injured: 'history-taken',
  'closed-from-birth': 'history-taken',
  'canal-removed': 'stenosis-marked',
  'canal-healthy': 'stenosis-marked',
}

/** What only an entry that says so makes known: once the history is written, its silence is no question any more. */
export const onlyWhenWritten: ReadonlySet<EarFactId> = new Set(['operated-before', 'injured', 'closed-from-birth'])
