import type { ChoiceRule } from '#core/choice/choice-rule.ts'
import { commonPractice } from '../follow-up/provenance.ts'
import { bacon, house, houseAndManual80, polypStudies, smeakAndManual78, wainberg } from './provenance.ts'

/** Opening the bulla from below, and traction of a polyp. */
export const rulesOfTheBulla = [
  {
    id: 'ventral-canal-well',
    options: ['ventral-bulla-osteotomy'],
    when: [
      { fact: 'bulla-filled', is: 'yes' },
      { fact: 'canal-healthy', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'The middle ear is ill and the canal is healthy.', ...house },
  },
  {
    id: 'ventral-polyp',
    options: ['ventral-bulla-osteotomy'],
    when: [
      { fact: 'cat', is: 'yes' },
      { fact: 'mass', is: 'yes' },
      { fact: 'bulla-filled', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'If the mass is a polyp: the bulla is filled too.', ...houseAndManual80 },
  },
  {
    id: 'ventral-after-removal',
    options: ['ventral-bulla-osteotomy'],
    when: [
      { fact: 'canal-removed', is: 'yes' },
      { fact: 'swelling-or-tract', is: 'yes' },
    ],
    says: 'for',
    text: {
      value:
        'Deep infection after removal of the canal: the bulla can be explored from below when its lining, not the canal’s, is left.',
      ...smeakAndManual78,
    },
  },
  {
    id: 'ventral-canal-ill',
    options: ['ventral-bulla-osteotomy'],
    when: [{ fact: 'canal-healthy', is: 'no' }],
    says: 'against',
    text: { value: 'A diseased canal stays behind and goes on.', ...commonPractice },
  },
  {
    id: 'ventral-air',
    options: ['ventral-bulla-osteotomy'],
    when: [{ fact: 'bulla-filled', is: 'no' }],
    says: 'against',
    text: { value: 'The bulla is reported to hold air.', ...commonPractice },
  },
  {
    id: 'ventral-cat-both',
    options: ['ventral-bulla-osteotomy'],
    when: [
      { fact: 'cat', is: 'yes' },
      { fact: 'both-ears-ill', is: 'yes' },
    ],
    says: 'against',
    text: {
      value:
        'Both sides in one session in a cat: far more breathing trouble and death than one side alone. Stage them.',
      ...wainberg,
    },
  },
  {
    id: 'traction-polyp',
    options: ['traction'],
    when: [{ fact: 'mass', is: 'yes' }],
    says: 'for',
    text: { value: 'If the mass is a polyp that can be reached through canal or throat.', ...polypStudies },
  },
  {
    id: 'traction-bulla',
    options: ['traction'],
    when: [{ fact: 'bulla-filled', is: 'yes' }],
    says: 'against',
    text: { value: 'The bulla is filled: what lies there is not pulled out with the stalk.', ...commonPractice },
  },
  {
    id: 'traction-again',
    options: ['traction'],
    when: [{ fact: 'operated-before', is: 'yes' }],
    says: 'against',
    text: { value: 'If a polyp has grown again: opening the bulla is the way that is described.', ...houseAndManual80 },
  },
  {
    id: 'traction-not-polyp',
    options: ['traction'],
    when: [
      { fact: 'mass', is: 'yes' },
      { fact: 'tissue-result', is: 'no' },
    ],
    says: 'missing',
    text: {
      value:
        'Whether the mass is a polyp: no tissue result of it is on record, and in cats a tumour is often the reason for ear surgery.',
      ...bacon,
    },
  },
] as const satisfies readonly ChoiceRule[]
