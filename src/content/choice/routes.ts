import type { ChoiceRoute } from '#core/choice/choice-rule.ts'
import { commonPractice } from '../follow-up/provenance.ts'
import {
  banks,
  coleman,
  hardie,
  house,
  imai,
  manual78,
  nerveNotes,
  smeak,
  smeakAndManual78,
  tumourPages,
  wainberg,
} from './provenance.ts'

/** What takes its own way before any option is weighed. */
export const routes = [
  {
    id: 'mass',
    anyOf: [[{ fact: 'mass', is: 'yes' }], [{ fact: 'odd-cells', is: 'yes' }]],
    because: {
      value: 'A mass, or cells that belong in no ear: what it is and how far it reaches comes before the choice.',
      ...tumourPages,
    },
    steps: [
      { id: 'tissue', settled: 'tissue-result', text: { value: 'A tissue result of the mass.', ...commonPractice } },
      {
        id: 'node',
        settled: 'node-result',
        text: { value: 'The lymph nodes of that side felt and sampled.', ...commonPractice },
      },
      {
        id: 'chest',
        settled: null,
        text: {
          value: 'Images of the chest: no entry says which part was imaged, so a person looks.',
          ...commonPractice,
        },
      },
      {
        id: 'extent',
        settled: 'advanced-imaging',
        text: { value: 'CT or MRI for how far it reaches and whether the bulla is eaten away.', ...commonPractice },
      },
      {
        id: 'margins',
        settled: null,
        text: {
          value: 'Margins agreed: how much is taken out, and the specimen whole and marked for the laboratory.',
          ...commonPractice,
        },
      },
      {
        id: 'after',
        settled: null,
        text: {
          value: 'What follows if margins are not clean: radiotherapy is described; ask before the operation.',
          ...tumourPages,
        },
      },
    ],
  },
  {
    id: 'cholesteatoma',
    anyOf: [
      [
        { fact: 'cat', is: 'no' },
        { fact: 'bulla-wall-eaten', is: 'yes' },
      ],
      [
        { fact: 'cat', is: 'no' },
        { fact: 'bulla-filled', is: 'yes' },
        { fact: 'jaw-pain', is: 'yes' },
      ],
    ],
    because: {
      value:
        'In a dog a bulla that is eaten away, or filled with a mouth that hurts to open, may hold a cholesteatoma.',
      ...hardie,
    },
    steps: [
      {
        id: 'scan',
        settled: 'advanced-imaging',
        text: { value: 'CT: growth and loss of bone of the bulla and of the temporal bone.', ...hardie },
      },
      {
        id: 'jaw',
        settled: 'jaw-pain',
        text: { value: 'Whether the mouth opens: a mouth that does not is a sign of coming back.', ...hardie },
      },
      {
        id: 'nerves',
        settled: 'nerve-signs',
        text: { value: 'Nerve signs looked for before any sedative: they too go with coming back.', ...hardie },
      },
      {
        id: 'lining',
        settled: null,
        text: {
          value: 'The owner knows that it may persist or come back even when everything visible is taken out.',
          ...hardie,
        },
      },
      {
        id: 'other-way',
        settled: null,
        text: { value: 'Removal through an endoscope with lifelong flushing is described as another way.', ...imai },
      },
    ],
  },
  {
    id: 'abscess',
    anyOf: [[{ fact: 'swelling-or-tract', is: 'yes' }]],
    because: { value: 'A swelling, abscess or draining tract beside the ear.', ...smeak },
    steps: [
      {
        id: 'scan',
        settled: 'advanced-imaging',
        text: { value: 'CT: where it comes from, and what is left in the bulla.', ...commonPractice },
      },
      {
        id: 'culture',
        settled: 'culture-result',
        text: { value: 'Culture of deep tissue, away from antibiotics where that is safe.', ...commonPractice },
      },
      {
        id: 'history',
        settled: 'history-taken',
        text: { value: 'Whether this ear was operated before, and how.', ...commonPractice },
      },
      {
        id: 'alone',
        settled: null,
        text: {
          value: 'Antibiotics alone failed in nearly all dogs of one series; the owner hears that before a trial.',
          ...smeak,
        },
      },
    ],
  },
  {
    id: 're-operation',
    anyOf: [[{ fact: 'operated-before', is: 'yes' }]],
    because: { value: 'This ear was operated before, or the history has an entry about it.', ...smeak },
    steps: [
      {
        id: 'report',
        settled: null,
        text: { value: 'The report of that operation: what was taken out, what was left.', ...commonPractice },
      },
      {
        id: 'scan',
        settled: 'advanced-imaging',
        text: { value: 'CT: what is left of canal and bulla.', ...commonPractice },
      },
      { id: 'culture', settled: 'culture-result', text: { value: 'Culture of deep tissue.', ...commonPractice } },
      {
        id: 'nerves',
        settled: 'nerve-signs',
        text: { value: 'Face, eye and balance before a second operation: scar hides the nerve.', ...commonPractice },
      },
      {
        id: 'approach',
        settled: null,
        text: {
          value: 'From the side when canal lining is left, from below when the bulla was not cleared.',
          ...smeakAndManual78,
        },
      },
    ],
  },
  {
    id: 'injury',
    anyOf: [[{ fact: 'injured', is: 'yes' }]],
    because: { value: 'An injury of the ear: other injuries come first.', ...house },
    steps: [
      {
        id: 'whole-animal',
        settled: null,
        text: { value: 'The whole animal: breathing, blood, head, jaw.', ...commonPractice },
      },
      {
        id: 'scan',
        settled: 'advanced-imaging',
        text: { value: 'CT: where the canal is torn and whether the bulla is filled.', ...commonPractice },
      },
      {
        id: 'nerves',
        settled: 'nerve-signs',
        text: { value: 'Face, eye and balance before any operation.', ...commonPractice },
      },
      {
        id: 'canal',
        settled: null,
        text: { value: 'Whether the canal can still drain: one that cannot is removed.', ...house },
      },
    ],
  },
  {
    id: 'nerve-signs',
    anyOf: [[{ fact: 'nerve-signs', is: 'yes' }]],
    because: { value: 'Nerve signs before surgery: images come first.', ...nerveNotes },
    steps: [
      { id: 'scan', settled: 'advanced-imaging', text: { value: 'CT or MRI.', ...nerveNotes } },
      {
        id: 'baseline',
        settled: 'nerve-signs',
        text: {
          value: 'Face, eye and balance written down for both sides, so that a later sign can be told from an old one.',
          ...commonPractice,
        },
      },
      {
        id: 'short-face',
        settled: null,
        when: { fact: 'flat-face', is: 'yes' },
        text: { value: 'Short-faced dogs more often had such signs before the operation.', ...banks },
      },
      {
        id: 'owner',
        settled: null,
        text: { value: 'The owner knows that a sign that is there may stay.', ...commonPractice },
      },
    ],
  },
  {
    id: 'both-ears',
    anyOf: [[{ fact: 'both-ears-ill', is: 'yes' }]],
    because: { value: 'Both ears are ill: one session or two is a choice of its own.', ...coleman },
    steps: [
      {
        id: 'session',
        settled: 'session-decided',
        text: { value: 'One session, two, or one ear only: written in the choice.', ...commonPractice },
      },
      {
        id: 'airway',
        settled: null,
        text: { value: 'Mouth and airway judged: both sides of the throat can swell.', ...manual78 },
      },
      {
        id: 'windpipe',
        settled: null,
        text: { value: 'Ready to open the windpipe when both sides are done at once.', ...manual78 },
      },
      {
        id: 'cats',
        settled: null,
        when: { fact: 'cat', is: 'yes' },
        text: { value: 'Cats: one side at a time when bullae are opened from below.', ...wainberg },
      },
    ],
  },
  {
    id: 'skin',
    anyOf: [[{ fact: 'skin-disease', is: 'yes' }]],
    because: { value: 'There is skin disease: it is treated beside every option.', ...commonPractice },
    steps: [
      {
        id: 'measures',
        settled: 'skin-treated',
        text: { value: 'A plan with measures, by whom, and a day to look again.', ...commonPractice },
      },
      {
        id: 'other-ear',
        settled: null,
        text: { value: 'The other ear has the same skin: its care goes on.', ...commonPractice },
      },
    ],
  },
] as const satisfies readonly ChoiceRoute[]
