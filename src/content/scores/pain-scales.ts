import type { PainScales } from '#core/ward/pain-scale.ts'

const remembered = { known: 'remembered', strength: 'study', confidence: 'high', checked: '2026-11-25' } as const
const readAbstract = {
  sources: ['calvo-2014'],
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

/**
 * From which score on more pain relief is given, for each scale whose range and limit a publication names, and which
 * parts of the animal its items look at. The items themselves belong to their authors and stand nowhere here.
 */
export const painScales = {
  'glasgow-dog-short': {
    value: {
      species: 'dog',
      outOf: 24,
      actAt: 6,
      edition: 'short form, 2007, with the walk',
      looksAt: ['walk', 'touch'],
    },
    sources: ['reid-2007'],
    where: 'short form, with the walk',
    ...remembered,
  },
  'glasgow-dog-short-not-walked': {
    value: { species: 'dog', outOf: 20, actAt: 5, edition: 'short form, 2007, without the walk', looksAt: ['touch'] },
    sources: ['reid-2007'],
    where: 'short form, when the walk is left out',
    ...remembered,
  },
  'glasgow-cat': {
    value: {
      species: 'cat',
      outOf: 20,
      actAt: 5,
      edition: 'definitive form, 2017',
      looksAt: ['ears', 'muzzle', 'touch'],
    },
    sources: ['reid-2017'],
    where: 'definitive scale',
    ...remembered,
  },
  'glasgow-cat-earlier': {
    value: { species: 'cat', outOf: 16, actAt: 4, edition: 'earlier form, 2014', looksAt: ['touch'] },
    ...readAbstract,
    where: 'earlier scale for cats, abstract',
  },
  'grimace-cat': {
    value: {
      species: 'cat',
      outOf: 10,
      actAt: 4,
      edition: '2019',
      looksAt: ['ears', 'lids', 'muzzle', 'whiskers', 'head-carriage'],
    },
    sources: ['evangelista-2019'],
    where: '0.39 of 1.0, said as 4 of 10',
    ...remembered,
  },
  'numbers-0-10-cat': {
    value: { species: 'cat', outOf: 10, actAt: 3, edition: 'numerical, as used in 2014', looksAt: [] },
    ...readAbstract,
    where: 'numerical scale in the same abstract',
  },
  'house-0-10': {
    value: { species: null, outOf: 10, actAt: null, edition: 'ours', looksAt: [] },
    sources: ['house-judgement'],
    where: 'our own 0 to 10; nobody has published when to act on it',
    known: 'house',
    strength: 'practice',
    confidence: 'low',
    checked: '2026-11-25',
  },
} as const satisfies PainScales
