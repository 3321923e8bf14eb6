import type { ChoiceRule } from '#core/choice/choice-rule.ts'
import { commonPractice } from '../follow-up/provenance.ts'
import { house, smeak } from './provenance.ts'

/** Going on with medicine, a deep flush, no treatment, euthanasia. */
export const rulesWithoutRemoval = [
  {
    id: 'medical-reaches',
    options: ['medical-control'],
    when: [
      { fact: 'stenosis-marked', is: 'no' },
      { fact: 'canal-mineral', is: 'no' },
    ],
    says: 'for',
    text: { value: 'The canal is open enough for what is put into it to reach the skin.', ...commonPractice },
  },
  {
    id: 'medical-helped',
    options: ['medical-control'],
    when: [{ fact: 'medicine-failed', is: 'no' }],
    says: 'for',
    text: { value: 'Treatment on record made it better, and none failed.', ...commonPractice },
  },
  {
    id: 'medical-mineral',
    options: ['medical-control'],
    when: [
      { fact: 'canal-mineral', is: 'yes' },
      { fact: 'medicine-failed', is: 'yes' },
    ],
    says: 'against',
    text: { value: 'The canal is turned to bone and medicine has failed: reasons to remove the canal.', ...house },
  },
  {
    id: 'medical-narrow',
    options: ['medical-control'],
    when: [
      { fact: 'stenosis-marked', is: 'yes' },
      { fact: 'medicine-failed', is: 'yes' },
    ],
    says: 'against',
    text: { value: 'The canal is narrowed for good and medicine has failed: reasons to remove the canal.', ...house },
  },
  {
    id: 'medical-steroid',
    options: ['medical-control'],
    when: [
      { fact: 'stenosis-marked', is: 'yes' },
      { fact: 'steroid-failed', is: 'yes' },
    ],
    says: 'against',
    text: { value: 'The narrowing did not open under a steroid.', ...house },
  },
  {
    id: 'medical-bulla',
    options: ['medical-control'],
    when: [{ fact: 'bulla-wall-changed', is: 'yes' }],
    says: 'against',
    text: {
      value: 'The wall of the bulla is changed: nothing that is put into the canal clears it.',
      ...commonPractice,
    },
  },
  {
    id: 'medical-mass',
    options: ['medical-control'],
    when: [{ fact: 'mass', is: 'yes' }],
    says: 'against',
    text: { value: 'No drop treats a mass; what it is must be known first.', ...commonPractice },
  },
  {
    id: 'medical-abscess',
    options: ['medical-control'],
    when: [{ fact: 'swelling-or-tract', is: 'yes' }],
    says: 'against',
    text: {
      value:
        'Antibiotics alone failed in nearly all dogs with a deep infection that came back after removal of the canal.',
      ...smeak,
    },
  },
  {
    id: 'medical-culture',
    options: ['medical-control'],
    when: [{ fact: 'culture-result', is: 'no' }],
    says: 'missing',
    text: {
      value: 'What grows in this ear and what reaches it: no culture of this ear is on record.',
      ...commonPractice,
    },
  },
  {
    id: 'medical-smear',
    options: ['medical-control'],
    when: [{ fact: 'cytology-read', is: 'no' }],
    says: 'missing',
    text: { value: 'What is in the canal now: no smear of this ear is on record.', ...commonPractice },
  },
  {
    id: 'flush-filled',
    options: ['deep-flush'],
    when: [
      { fact: 'bulla-filled', is: 'yes' },
      { fact: 'stenosis-marked', is: 'no' },
    ],
    says: 'for',
    text: {
      value: 'The bulla is filled and the canal lets a catheter through: it can be washed, sampled and looked into.',
      ...commonPractice,
    },
  },
  {
    id: 'flush-look',
    options: ['deep-flush'],
    when: [
      { fact: 'stenosis-marked', is: 'no' },
      { fact: 'canal-mineral', is: 'no' },
    ],
    says: 'for',
    text: { value: 'The canal is open: a wash under anaesthesia lets canal and drum be judged.', ...commonPractice },
  },
  {
    id: 'flush-closed',
    options: ['deep-flush'],
    when: [{ fact: 'stenosis-marked', is: 'yes' }],
    says: 'against',
    text: { value: 'Nothing passes a canal that is closed or very narrow.', ...commonPractice },
  },
  {
    id: 'flush-wall',
    options: ['deep-flush'],
    when: [{ fact: 'bulla-wall-changed', is: 'yes' }],
    says: 'against',
    text: { value: 'The wall of the bulla is changed: a wash does not take out diseased lining.', ...commonPractice },
  },
  {
    id: 'flush-cat',
    options: ['deep-flush'],
    when: [{ fact: 'cat', is: 'yes' }],
    says: 'against',
    text: { value: 'In a cat balance and the nerves of the eye are easily upset by a wash.', ...commonPractice },
  },
  {
    id: 'nothing-calm',
    options: ['no-treatment'],
    when: [
      { fact: 'pain', is: 'no' },
      { fact: 'swelling-or-tract', is: 'no' },
      { fact: 'mass', is: 'no' },
      { fact: 'nerve-signs', is: 'no' },
    ],
    says: 'for',
    text: { value: 'No pain on pressing, swelling, mass or nerve sign was found.', ...commonPractice },
  },
  {
    id: 'nothing-pain',
    options: ['no-treatment'],
    when: [{ fact: 'pain', is: 'yes' }],
    says: 'against',
    text: { value: 'The ear hurts when pressed: at least the pain is treated.', ...commonPractice },
  },
  {
    id: 'nothing-mass',
    options: ['no-treatment'],
    when: [{ fact: 'mass', is: 'yes' }],
    says: 'against',
    text: { value: 'A mass that nobody looked into may be malignant and grow.', ...commonPractice },
  },
  {
    id: 'nothing-abscess',
    options: ['no-treatment'],
    when: [{ fact: 'swelling-or-tract', is: 'yes' }],
    says: 'against',
    text: { value: 'A swelling or a draining tract beside the ear is infection that goes deeper.', ...commonPractice },
  },
  {
    id: 'nothing-nerves',
    options: ['no-treatment'],
    when: [{ fact: 'nerve-signs', is: 'yes' }],
    says: 'against',
    text: { value: 'Nerve signs say that disease has left the canal.', ...commonPractice },
  },
  {
    id: 'euthanasia-pain',
    options: ['euthanasia'],
    when: [],
    says: 'missing',
    text: {
      value:
        'Whether pain can be ended in another way, and how the days are now: asked of the people who live with the animal.',
      ...commonPractice,
    },
  },
  {
    id: 'euthanasia-means',
    options: ['euthanasia'],
    when: [],
    says: 'missing',
    text: {
      value: 'What the household wants and can carry: asked without pressure, never read from findings.',
      ...commonPractice,
    },
  },
] as const satisfies readonly ChoiceRule[]
