import type { TissueDiagnosis, TissueFacts } from '#core/culture/tissue.ts'
import { bacon, hardie, imai, smallMasses, tumourPages } from '../choice/provenance.ts'
import { houseJudgementOnly, readSecondHand, readStudy } from './provenance.ts'

const london = { sources: ['london-1996'], ...readStudy, checked: '2026-11-30' } as const
const vsso = { sources: ['vsso-ear-tumours'], ...readSecondHand, checked: '2026-11-30' } as const
const merck = { sources: ['merck-ear-tumours'], ...readSecondHand, checked: '2026-11-30' } as const
const manual77 = {
  sources: ['bsava-head-neck-thoracic'],
  where: 'manual page 77',
  ...readSecondHand,
  checked: '2026-11-30',
} as const
const ours = { ...houseJudgementOnly, checked: '2026-11-30' } as const

const anyMalignant: TissueDiagnosis['said'] = [
  {
    species: 'dog',
    text: {
      value:
        'Of 81 dogs with a tumour of the ear canal 48 had a malignant one; their median survival was over 58 months, shorter when the tumour was extensive.',
      ...london,
    },
  },
  {
    species: 'dog',
    text: { value: 'Extensive tumours in dogs: median 5.3 months, against over 58 months otherwise.', ...vsso },
  },
  {
    species: 'cat',
    text: {
      value:
        'Of 64 cats with a tumour of the ear canal 56 had a malignant one; their median survival was 11.7 months, shorter with nerve signs, with a squamous or undetermined carcinoma, and with tumour in vessels.',
      ...london,
    },
  },
]

/** What a pathologist may find in an ear. Where sources disagree both sentences stand. */
export const tissueDiagnoses: readonly TissueDiagnosis[] = [
  {
    id: 'ceruminous-adenocarcinoma',
    name: 'ceruminous gland adenocarcinoma',
    behaviour: 'malignant',
    said: [
      ...anyMalignant,
      {
        species: 'cat',
        text: {
          value:
            'Cats with this tumour after TECA-LBO: median survival 50.3 months; two mitoses or fewer lived longer than three or more.',
          ...bacon,
          checked: '2026-11-30',
        },
      },
      {
        species: 'cat',
        text: {
          value:
            'A textbook says that about half of the cats with this tumour have spread; a page that quotes the 64 cats has nodes in 5 of 56 and none further away in 32.',
          ...manual77,
        },
      },
      {
        species: 'both',
        text: { value: 'Radiotherapy after excision: about 56% alive after a year.', ...merck },
      },
    ],
  },
  {
    id: 'squamous-cell-carcinoma',
    name: 'squamous cell carcinoma',
    behaviour: 'malignant',
    said: [
      ...anyMalignant,
      {
        species: 'cat',
        text: {
          value:
            '25 cats with this tumour of canal, middle or inner ear: median 168 days with surgery (11 cats), 85 without; the difference may be chance (P 0.28).',
          sources: ['jfms-2022-ear-carcinoma'],
          ...readStudy,
          checked: '2026-11-30',
        },
      },
    ],
  },
  { id: 'carcinoma-undetermined', name: 'carcinoma of uncertain origin', behaviour: 'malignant', said: anyMalignant },
  { id: 'other-malignant', name: 'another malignant tumour', behaviour: 'malignant', said: anyMalignant },
  {
    id: 'benign-tumour',
    name: 'benign tumour',
    behaviour: 'benign',
    said: [
      {
        species: 'dog',
        text: {
          value:
            'Small well-defined masses in general practice: 12 of 17 were benign; one came back in 19 dogs after a limited operation.',
          ...smallMasses,
          checked: '2026-11-30',
        },
      },
    ],
  },
  { id: 'polyp', name: 'inflammatory polyp', behaviour: 'not-a-tumour', said: [] },
  {
    id: 'cholesteatoma',
    name: 'cholesteatoma',
    behaviour: 'not-a-tumour',
    said: [
      {
        species: 'dog',
        text: {
          value: 'Of 19 dogs operated with intent to cure 9 were free of signs, in 10 it stayed or came back.',
          ...hardie,
          checked: '2026-11-30',
        },
      },
      {
        species: 'dog',
        text: {
          value:
            'Removal through an endoscope with lifelong flushing: 9 of 13 ears quiet after 27.9 months on average.',
          ...imai,
          checked: '2026-11-30',
        },
      },
    ],
  },
  { id: 'chronic-inflammation', name: 'chronic inflammation, no tumour', behaviour: 'not-a-tumour', said: [] },
  {
    id: 'not-diagnostic',
    name: 'not diagnostic',
    behaviour: 'open',
    said: [{ species: 'both', text: { value: 'The sample could not say what it is: take another.', ...ours } }],
  },
]

export const tissueFacts: TissueFacts = {
  diagnoses: tissueDiagnoses,
  margins: {
    clear: null,
    narrow: { value: 'The free edge is narrow: settle with the pathologist whether that is enough here.', ...ours },
    involved: {
      value: 'The edge is not free: ask for radiotherapy or a second operation before the scar settles.',
      ...tumourPages,
      checked: '2026-11-30',
    },
    'not-stated': { value: 'The report does not say whether the edge is free: ask the laboratory.', ...ours },
  },
  malignant: {
    before: [
      {
        chapter: 'Choice',
        text: {
          value:
            'The choice is weighed again: nodes, chest and extent come before it, and limited operations drop out.',
          ...tumourPages,
          checked: '2026-11-30',
        },
      },
    ],
    after: [
      {
        chapter: 'Year',
        text: {
          value: 'Each recheck looks for the tumour coming back and feels the nodes of that side.',
          ...ours,
        },
      },
    ],
  },
  edge: [
    {
      chapter: 'Choice',
      text: { value: 'A second operation or radiotherapy is a new choice with its own agreement.', ...ours },
    },
  ],
  notRead: {
    value: 'Nobody has said which of the known diagnoses this is, so no figure stands here; read the report itself.',
    ...ours,
  },
}
