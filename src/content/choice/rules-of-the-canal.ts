import type { ChoiceRule } from '#core/choice/choice-rule.ts'
import { commonPractice } from '../follow-up/provenance.ts'
import {
  bacon,
  brockman,
  cockerFailure,
  house,
  houseAndTumours,
  manual77,
  mathews,
  smallMasses,
  tumourPages,
} from './provenance.ts'

/** Lateral, vertical, subtotal and total removal of the canal. */
export const rulesOfTheCanal = [
  {
    id: 'lateral-open',
    options: ['lateral-wall-resection'],
    when: [
      { fact: 'horizontal-open', is: 'yes' },
      { fact: 'bulla-filled', is: 'no' },
      { fact: 'canal-mineral', is: 'no' },
    ],
    says: 'for',
    text: {
      value: 'The horizontal canal is open, the middle ear is not filled; the owner must go on treating the cause.',
      ...brockman,
    },
  },
  {
    id: 'lateral-mass',
    options: ['lateral-wall-resection'],
    when: [
      { fact: 'mass', is: 'yes' },
      { fact: 'mass-outer', is: 'yes' },
      { fact: 'mass-small', is: 'yes' },
    ],
    says: 'for',
    text: {
      value: 'A small mass of the outer canal was removed with the wall in general practice; what it is decides.',
      ...smallMasses,
    },
  },
  {
    id: 'lateral-horizontal',
    options: ['lateral-wall-resection'],
    when: [{ fact: 'horizontal-open', is: 'no' }],
    says: 'against',
    text: { value: 'The horizontal canal is narrow or blocked.', ...brockman },
  },
  {
    id: 'lateral-mineral',
    options: ['lateral-wall-resection'],
    when: [{ fact: 'canal-mineral', is: 'yes' }],
    says: 'against',
    text: { value: 'Marked overgrowth or mineral of the canal.', ...brockman },
  },
  {
    id: 'lateral-bulla',
    options: ['lateral-wall-resection'],
    when: [{ fact: 'bulla-filled', is: 'yes' }],
    says: 'against',
    text: { value: 'Disease of the middle ear is not reached by opening the canal.', ...brockman },
  },
  {
    id: 'lateral-skin',
    options: ['lateral-wall-resection'],
    when: [
      { fact: 'skin-disease', is: 'yes' },
      { fact: 'skin-treated', is: 'no' },
    ],
    says: 'against',
    text: { value: 'Skin or hormone disease that is not under control.', ...brockman },
  },
  {
    id: 'lateral-cocker',
    options: ['lateral-wall-resection'],
    when: [{ fact: 'cocker', is: 'yes' }],
    says: 'against',
    text: { value: 'Cocker Spaniels: usually unsuccessful even when done early.', ...cockerFailure },
  },
  {
    id: 'lateral-malignant',
    options: ['lateral-wall-resection'],
    when: [{ fact: 'mass', is: 'yes' }],
    says: 'against',
    text: {
      value: 'A malignant mass came back far more often after lateral resection than after full removal.',
      ...tumourPages,
    },
  },
  {
    id: 'lateral-again',
    options: ['lateral-wall-resection'],
    when: [{ fact: 'operated-before', is: 'yes' }],
    says: 'against',
    text: { value: 'An earlier operation on this ear failed: full removal is the way that is described.', ...house },
  },
  {
    id: 'vertical-mass',
    options: ['vertical-canal-ablation'],
    when: [
      { fact: 'mass', is: 'yes' },
      { fact: 'mass-outer', is: 'yes' },
      { fact: 'horizontal-open', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'The vertical canal carries a mass and the horizontal canal is open.', ...manual77 },
  },
  {
    id: 'vertical-ill',
    options: ['vertical-canal-ablation'],
    when: [
      { fact: 'horizontal-open', is: 'yes' },
      { fact: 'bulla-filled', is: 'no' },
      { fact: 'medicine-failed', is: 'yes' },
    ],
    says: 'for',
    text: {
      value:
        'Medicine has failed while the horizontal canal is open and the bulla not filled: the disease may end with the vertical canal.',
      ...manual77,
    },
  },
  {
    id: 'vertical-horizontal',
    options: ['vertical-canal-ablation'],
    when: [{ fact: 'horizontal-open', is: 'no' }],
    says: 'against',
    text: { value: 'Disease reaches the horizontal canal.', ...house },
  },
  {
    id: 'vertical-bulla',
    options: ['vertical-canal-ablation'],
    when: [{ fact: 'bulla-filled', is: 'yes' }],
    says: 'against',
    text: { value: 'Disease reaches the bulla.', ...house },
  },
  {
    id: 'vertical-deep',
    options: ['vertical-canal-ablation'],
    when: [
      { fact: 'mass', is: 'yes' },
      { fact: 'mass-deep', is: 'yes' },
    ],
    says: 'against',
    text: { value: 'The mass lies deeper than the vertical canal.', ...house },
  },
  {
    id: 'teca-narrow',
    options: ['teca-lbo'],
    when: [
      { fact: 'stenosis-marked', is: 'yes' },
      { fact: 'medicine-failed', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'The canal is narrowed for good and medicine has failed.', ...house },
  },
  {
    id: 'teca-mineral',
    options: ['teca-lbo'],
    when: [
      { fact: 'canal-mineral', is: 'yes' },
      { fact: 'medicine-failed', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'The canal is turned to bone and medicine has failed.', ...house },
  },
  {
    id: 'teca-steroid',
    options: ['teca-lbo'],
    when: [
      { fact: 'stenosis-marked', is: 'yes' },
      { fact: 'steroid-failed', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'The narrowing did not open under a steroid.', ...house },
  },
  {
    id: 'teca-drum',
    options: ['teca-lbo'],
    when: [
      { fact: 'drum-lost', is: 'yes' },
      { fact: 'bulla-filled', is: 'yes' },
    ],
    says: 'for',
    text: { value: 'The drum is lost and the bulla is filled; that both stay so speaks for removal.', ...house },
  },
  {
    id: 'teca-again',
    options: ['teca-lbo'],
    when: [
      { fact: 'operated-before', is: 'yes' },
      { fact: 'canal-removed', is: 'no' },
    ],
    says: 'for',
    text: { value: 'An earlier operation on this ear failed and the canal is still there.', ...house },
  },
  {
    id: 'teca-mass',
    options: ['teca-lbo'],
    when: [
      { fact: 'mass', is: 'yes' },
      { fact: 'canal-removed', is: 'no' },
    ],
    says: 'for',
    text: { value: 'A malignant tumour of the canal is taken out with the whole canal.', ...houseAndTumours },
  },
  {
    id: 'teca-injury',
    options: ['teca-lbo'],
    when: [
      { fact: 'injured', is: 'yes' },
      { fact: 'canal-removed', is: 'no' },
    ],
    says: 'for',
    text: { value: 'A canal that is torn off or crushed.', ...house },
  },
  {
    id: 'teca-birth',
    options: ['teca-lbo'],
    when: [
      { fact: 'closed-from-birth', is: 'yes' },
      { fact: 'canal-removed', is: 'no' },
    ],
    says: 'for',
    text: { value: 'A canal closed from birth.', ...house },
  },
  {
    id: 'teca-out',
    options: ['teca-lbo'],
    when: [{ fact: 'canal-removed', is: 'yes' }],
    says: 'against',
    text: { value: 'The canal of this ear is already out.', ...commonPractice },
  },
  {
    id: 'teca-no-reason',
    options: ['teca-lbo'],
    when: [
      { fact: 'stenosis-marked', is: 'no' },
      { fact: 'canal-mineral', is: 'no' },
      { fact: 'bulla-filled', is: 'no' },
      { fact: 'mass', is: 'no' },
    ],
    says: 'against',
    text: { value: 'The canal is open and not mineral, the bulla holds air, no mass was found.', ...commonPractice },
  },
  {
    id: 'teca-untried',
    options: ['teca-lbo'],
    when: [{ fact: 'medicine-failed', is: 'no' }],
    says: 'against',
    text: {
      value: 'A narrowing may still open under treatment that was never properly tried: what is on record helped.',
      ...commonPractice,
    },
  },
  {
    id: 'teca-cat',
    options: ['teca-lbo'],
    when: [{ fact: 'cat', is: 'yes' }],
    says: 'against',
    text: { value: 'In cats the nerves of face and eye suffer much more often than in dogs.', ...bacon },
  },
  {
    id: 'teca-history',
    options: ['teca-lbo'],
    when: [{ fact: 'history-taken', is: 'yes' }],
    says: 'missing',
    text: {
      value: 'How long and how well the ear was treated: a person judges it from the history on record.',
      ...commonPractice,
    },
  },
  {
    id: 'subtotal-erect',
    options: ['subtotal-ablation'],
    when: [
      { fact: 'erect-ear', is: 'yes' },
      { fact: 'bulla-filled', is: 'no' },
      { fact: 'canal-removed', is: 'no' },
    ],
    says: 'for',
    text: {
      value:
        'An ear that stands up keeps its carriage; for disease confined to the deep canal with a healthy middle ear.',
      ...mathews,
    },
  },
  {
    id: 'subtotal-drop',
    options: ['subtotal-ablation'],
    when: [{ fact: 'erect-ear', is: 'no' }],
    says: 'against',
    text: {
      value: 'The flap hangs: its carriage, the gain of this operation, changes little in any case.',
      ...commonPractice,
    },
  },
  {
    id: 'subtotal-bulla',
    options: ['subtotal-ablation'],
    when: [{ fact: 'bulla-filled', is: 'yes' }],
    says: 'against',
    text: { value: 'The middle ear is filled and would stay as it is.', ...commonPractice },
  },
  {
    id: 'subtotal-skin',
    options: ['subtotal-ablation'],
    when: [{ fact: 'skin-disease', is: 'yes' }],
    says: 'against',
    text: { value: 'Skin disease of the part that stays often went on.', ...mathews },
  },
  {
    id: 'subtotal-mass',
    options: ['subtotal-ablation'],
    when: [{ fact: 'mass', is: 'yes' }],
    says: 'against',
    text: { value: 'A mass is taken out with the whole canal when it is malignant.', ...tumourPages },
  },
] as const satisfies readonly ChoiceRule[]
