import type { OddsWording } from '#core/evidence/say-published.ts'
import type { AsideReason, CountBasis } from '#core/evidence/study.ts'
import { outcomeDefinitions } from '../outcomes/outcome-definitions.ts'

/** The odds page in English. One denominator throughout: 100. */
export const oddsInEnglish = {
  sentences: {
    'one-study':
      'In one study of {group}, {events} {happened}. That is {middle} of 100; the true figure probably lies between {low} and {high}.',
    'one-study-none':
      'In one study of {group}, none {happened}. That does not mean never: the true figure could still be as high as {high} of 100.',
    'one-study-all':
      'In one study of {group}, all {events} {happened}. The true figure could still be as low as {low} of 100.',
    'several-studies':
      '{number} studies of {animals} counted this and found between {lowest} and {highest} of 100. We show each by itself and do not merge them into one figure.',
    'two-readings':
      'One study of {animals} printed this in a way that can be read as {lowest} or as {highest} of 100. Until that is settled, the true figure probably lies somewhere between {low} and {high}.',
    unknown:
      'Not known in {animals} after {procedure}: {what}. We found no study that we can use. Not known does not mean never.',
    'unknown-in-this-unit':
      'Not known per {unit} in {animals} after {procedure}: {what}. Studies counted it per {others}, and the two are never mixed.',
    line: '{group}: {events} {happened}. That is {middle} of 100, probably between {low} and {high}.',
    'line-none': '{group}: none {happened}. The true figure could still be as high as {high} of 100.',
    'line-all': '{group}: all {events} {happened}. The true figure could still be as low as {low} of 100.',
    'was-followed-by': 'was followed by {what}',
    'were-followed-by': 'were followed by {what}',
    'met-with': 'met with {what}',
    or: ' or ',
    about: 'about {number}',
    'fewer-than-one': 'fewer than 1',
    'more-than-99': 'more than 99',
    followed: 'Time looked at: {followed}.',
    'follow-up-not-stated': 'What we read of the study does not say how long they were looked at.',
    'both-ears-of-one-animal':
      'Some {animals} had both ears done, and two ears of one animal are alike. The true range is a little wider.',
  },
  groups: {
    animal: { one: '{total} {animal}', many: '{total} {animals}' },
    ear: { one: '{total} operated ear of a {animal}', many: '{total} operated ears of {animals}' },
    procedure: { one: '{total} operation on a {animal}', many: '{total} operations on {animals}' },
  },
  units: { animal: 'animal', ear: 'operated ear', procedure: 'operation' },
  animals: { dog: { one: 'dog', many: 'dogs' }, cat: { one: 'cat', many: 'cats' } },
  procedures: {
    'teca-lbo': 'removal of the ear canal with opening of the middle ear from the side',
    'ventral-bulla-osteotomy': 'opening of the middle ear from below',
    traction: 'pulling out a polyp',
    'lateral-wall-resection': 'opening the upper ear canal to the side',
    'vertical-canal-ablation': 'removal of the upright part of the ear canal',
    'subtotal-ablation': 'removal of all but the outermost part of the ear canal',
    'teca-vbo': 'removal of the ear canal with opening of the middle ear from below',
    'teca-alone': 'removal of the ear canal without opening of the middle ear',
    'teca-lbo-and-vbo': 'opening of the middle ear from the side or from below',
    'teca-lbo-experimental': 'removal of a healthy ear canal in an experiment',
    'vbo-experimental': 'opening of a healthy middle ear in an experiment',
    'vbo-after-teca-lbo': 'a second operation from below for an infection that came back',
    'antibiotics-after-teca-lbo': 'antibiotics alone for an infection that came back',
    'cholesteatoma-surgery': 'surgery for a skin cyst of the middle ear',
    'cholesteatoma-endoscopic-clearing': 'clearing a skin cyst of the middle ear through the canal, without surgery',
    'lateral-resection-or-excision': 'cutting out a small lump of the ear canal',
    'lateral-resection-for-tumour': 'opening the upper ear canal to the side for a tumour',
    'traction-endoscopic': 'pulling out a polyp through the ear drum with a camera',
    'traction-lateral': 'pulling out a polyp through a small opening at the side',
  },
  outcomes: outcomeDefinitions,
  followed: {},
} as const satisfies OddsWording

/** Why a row is shown beside the figure but not counted, for the surgeon. */
export const asideReasonsInEnglish = {
  subgroup: 'part of a row that is already counted',
  'mixed-species': 'dogs and cats counted together',
  'mixed-procedures': 'different operations counted together',
  'other-procedure': 'another operation, or operated for another reason',
  'other-unit': 'counted in another unit (ears, animals and operations are never added)',
  overlap: 'may hold the same animals as another study that is counted',
  remembered: 'remembered, not read',
  'second-hand': 'read only where somebody else quotes it',
  'two-readings': 'the printed sentence can be read in more than one way',
  interpreted: 'rests on our interpretation of a word of the authors',
  reconstructed: 'the number of animals had to be inferred',
  'percent-only': 'a percentage without its count',
  experimental: 'an experiment on healthy ears',
  'chosen-cases': 'only some of the cases were counted',
} as const satisfies Record<AsideReason, string>

/** How a count was obtained, for the surgeon. */
export const countBasisInEnglish = {
  stated: 'printed as a count',
  'from-percent': 'rebuilt from a printed percentage',
  derived: 'sum or difference of printed counts',
  reconstructed: 'rebuilt; the base had to be inferred',
  interpreted: 'read with an interpretation',
  'percent-only': 'a percentage only',
  memory: 'remembered',
} as const satisfies Record<CountBasis, string>
