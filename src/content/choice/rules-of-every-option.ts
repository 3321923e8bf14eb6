import type { ChoiceRule } from '#core/choice/choice-rule.ts'
import { commonPractice, lookedForNotFound } from '../follow-up/provenance.ts'
import { coleman, houseAndTumours, manual78, nerveNotes, wainberg } from './provenance.ts'

/** What holds whatever is chosen: nerve signs first, tissue of a mass, skin disease in every branch, and one session or two. */
export const rulesOfEveryOption = [
  {
    id: 'nerves-first',
    options: [
      'deep-flush',
      'lateral-wall-resection',
      'vertical-canal-ablation',
      'teca-lbo',
      'subtotal-ablation',
      'ventral-bulla-osteotomy',
      'traction',
    ],
    when: [
      { fact: 'nerve-signs', is: 'yes' },
      { fact: 'advanced-imaging', is: 'no' },
    ],
    says: 'against',
    text: { value: 'Nerve signs before surgery: a CT or MRI comes first.', ...nerveNotes },
  },
  {
    id: 'tissue-first',
    options: [
      'medical-control',
      'lateral-wall-resection',
      'vertical-canal-ablation',
      'teca-lbo',
      'subtotal-ablation',
      'ventral-bulla-osteotomy',
      'no-treatment',
    ],
    when: [
      { fact: 'mass', is: 'yes' },
      { fact: 'tissue-result', is: 'no' },
    ],
    says: 'missing',
    text: {
      value: 'What the mass is: no tissue result is on record. It decides how much is taken out.',
      ...houseAndTumours,
    },
  },
  {
    id: 'skin-goes-on',
    options: [
      'medical-control',
      'deep-flush',
      'lateral-wall-resection',
      'vertical-canal-ablation',
      'teca-lbo',
      'subtotal-ablation',
      'ventral-bulla-osteotomy',
      'traction',
      'no-treatment',
    ],
    when: [
      { fact: 'skin-disease', is: 'yes' },
      { fact: 'skin-treated', is: 'no' },
    ],
    says: 'against',
    text: {
      value: 'Skin disease without a plan goes on whatever is done to the ear; it is treated beside every option.',
      ...commonPractice,
    },
  },
  {
    id: 'one-session-dog',
    options: ['both-in-one-session'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'cat', is: 'no' },
      { fact: 'mass', is: 'no' },
    ],
    says: 'for',
    text: {
      value:
        'Dogs that were well otherwise, without a tumour: no difference in complications was found between one session and one side.',
      ...coleman,
    },
  },
  {
    id: 'one-session-throat',
    options: ['both-in-one-session'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'cat', is: 'no' },
    ],
    says: 'against',
    text: {
      value: 'Swelling of both sides of the throat can obstruct breathing and may need a tube in the windpipe.',
      ...manual78,
    },
  },
  {
    id: 'one-session-cat',
    options: ['both-in-one-session'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'cat', is: 'yes' },
    ],
    says: 'against',
    text: {
      value: 'Cats: opening both bullae from below in one session brought far more breathing trouble and death.',
      ...wainberg,
    },
  },
  {
    id: 'one-session-flat',
    options: ['both-in-one-session'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'flat-face', is: 'yes' },
    ],
    says: 'against',
    text: {
      value: 'A short face: no study compared one session with two in such animals, and the airway is the danger.',
      ...lookedForNotFound,
    },
  },
  {
    id: 'one-session-mass',
    options: ['both-in-one-session'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'mass', is: 'yes' },
    ],
    says: 'against',
    text: { value: 'The study behind one session left tumours out.', ...coleman },
  },
  {
    id: 'staged-cat',
    options: ['staged'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'cat', is: 'yes' },
    ],
    says: 'for',
    text: {
      value: 'Cats: breathing trouble and death were far less frequent when one bulla was opened at a time.',
      ...wainberg,
    },
  },
  {
    id: 'staged-flat',
    options: ['staged'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'flat-face', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'A short face: one side of the throat heals before the other is touched.', ...commonPractice },
  },
  {
    id: 'staged-mass',
    options: ['staged'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'mass', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'What the tissue of the first ear says can change the plan for the second.', ...commonPractice },
  },
  {
    id: 'staged-dog',
    options: ['staged'],
    when: [
      { fact: 'both-ears-ill', is: 'yes' },
      { fact: 'cat', is: 'no' },
    ],
    says: 'against',
    text: { value: 'Two anaesthetics and two times of healing.', ...commonPractice },
  },
] as const satisfies readonly ChoiceRule[]
