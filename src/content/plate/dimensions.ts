import { quantity } from '#core/units/quantity.ts'

const abstract = { known: 'read', strength: 'study', confidence: 'medium', checked: '2026-11-25' } as const
const page = { known: 'read', strength: 'web', confidence: 'low', checked: '2026-11-25' } as const

/**
 * What is published of the size of the parts. The drawing keeps their proportions; none of these is printed as a measure of
 * the patient. Not found in print: size of the drum, meatus to nerve, wall of the dog's bulla, vertical canal of the cat.
 */
export const earDimensions = {
  dogVertical: { value: quantity('25', 'mm'), sources: ['cole-2009'], where: 'abstract: about one inch', ...abstract },
  dogCanal: {
    value: { mean: quantity('53', 'mm'), deviation: quantity('10', 'mm') },
    sources: ['ear-canal-histology-2009'],
    where: 'abstract: 40 ears of 20 dogs',
    ...abstract,
  },
  dogAuricular: {
    value: { mean: quantity('41', 'mm'), deviation: quantity('9', 'mm') },
    sources: ['ear-canal-histology-2009'],
    where: 'abstract',
    ...abstract,
  },
  dogAnnular: {
    value: { mean: quantity('12', 'mm'), deviation: quantity('2', 'mm') },
    sources: ['ear-canal-histology-2009'],
    where: 'abstract',
    ...abstract,
  },
  dogBend: {
    value: { degrees: 75 },
    sources: ['veteriankey-ear-canal-examination'],
    where: 'the canal turns by about 75 degrees',
    ...page,
  },
  catBend: { value: { degrees: 90 }, sources: ['icatcare-ear-anatomy'], where: 'a right angle', ...page },
  catHorizontal: { value: quantity('10', 'mm'), sources: ['icatcare-ear-anatomy'], where: 'about 1 cm', ...page },
  catBullaWall: {
    value: { mean: quantity('1.0', 'mm'), deviation: quantity('0.1', 'mm') },
    sources: ['cat-bulla-wall-2024'],
    where: 'abstract: domestic shorthairs; 1.3 mm in flat-faced cats',
    ...abstract,
  },
} as const
