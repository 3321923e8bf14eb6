import { readNotes, readSecondHand, readStudy } from '../follow-up/provenance.ts'

/** Where the published reasons of the choice were read; each is used by several rules. */
export const brockman = { sources: ['brockman-2008-wsava'], ...readNotes } as const
export const house = { sources: ['house-2015-wsava'], ...readNotes } as const
export const nerveNotes = { sources: ['vin-8896829'], ...readNotes } as const
export const cockerFailure = {
  sources: ['bsava-head-neck-thoracic', 'sylvestre-1998'],
  where: 'manual page 76',
  ...readSecondHand,
} as const
export const manual77 = { sources: ['bsava-head-neck-thoracic'], where: 'manual page 77', ...readSecondHand } as const
export const manual78 = { sources: ['bsava-head-neck-thoracic'], where: 'manual page 78', ...readSecondHand } as const
export const houseAndManual80 = {
  sources: ['house-2015-wsava', 'bsava-head-neck-thoracic'],
  where: 'manual page 80',
  ...readSecondHand,
} as const
export const smeakAndManual78 = {
  sources: ['house-2015-wsava', 'bsava-head-neck-thoracic', 'smeak-1996'],
  where: 'manual page 78',
  ...readSecondHand,
} as const
export const tumourPages = { sources: ['vsso-ear-tumours', 'merck-ear-tumours'], ...readSecondHand } as const
export const bacon = { sources: ['bacon-2003'], ...readStudy } as const
export const coleman = { sources: ['coleman-2016'], ...readStudy } as const
export const wainberg = { sources: ['wainberg-2019'], ...readStudy } as const
export const hardie = { sources: ['hardie-2008'], ...readStudy } as const
export const smeak = { sources: ['smeak-1996'], ...readStudy } as const
export const mathews = { sources: ['mathews-2006'], where: '18 dogs, one cat', ...readStudy } as const
export const smallMasses = { sources: ['small-canal-masses-2016'], ...readStudy } as const
export const houseAndTumours = {
  sources: ['house-2015-wsava', 'vsso-ear-tumours', 'merck-ear-tumours'],
  ...readNotes,
} as const
export const polypStudies = { sources: ['greci-2014', 'anderson-2000'], ...readStudy } as const
export const imai = { sources: ['imai-2019'], ...readStudy } as const
export const banks = { sources: ['banks-2023'], ...readStudy } as const
