import type { ToldWording } from '#core/evidence/say-told.ts'

/** What is said of studies joined with our own results, in English. One denominator throughout: 100. */
export const toldInEnglish = {
  sentences: {
    framing: 'The other way round: {rest} of 100 {not}.',
    expected:
      'Of 100 {group}, {middle} {happened}, and {rest} {not}. {number} studies with {total} {group} found between {lowest} and {highest} of 100. Where nobody has counted yet, it may lie anywhere between {low} and {high}.',
    updated:
      'Of 100 {group}, {middle} {happened}, and {rest} {not}. Here the true figure probably lies between {low} and {high}. This joins {studies} with {total} {group} and {own} of our own.',
    'one-study': '1 study',
    studies: '{number} studies',
    'own-shown':
      'Of our own {total} {group}, {events} {happened}. That is {middle} of 100 by itself, probably between {low} and {high}.',
    'own-none': 'Of our own {total} {group}, none {happened}. By itself that could still mean up to {high} of 100.',
    'own-withheld':
      'We have counted {total} {group} of our own. That is too few to give a figure by itself; we do so from {from} on.',
    'own-lost': 'Of {lost} more of ours it is not known.',
    'own-alone':
      'We only have our own count: of {total} {group}, {events} {happened}. That is {middle} of 100, probably between {low} and {high}.',
    'own-alone-none':
      'We only have our own count: of {total} {group}, none {happened}. That does not mean never: it could still be up to {high} of 100.',
    'own-too-few':
      'We have counted {total} {group} of our own. That is too few to give a figure; we do so from {from} on.',
    'own-untrusted':
      'Our own results lie so far from the studies that we do not join them. Please ask us what we think of that.',
  },
  groups: {
    animal: '{animals}',
    ear: 'operated ears of {animals}',
    procedure: 'operations on {animals}',
  },
  quoted: {
    beside: '{name} (reviews quote {spans} of 100 and do not say who was counted)',
    sentence: 'Reviews quote {spans} of 100 and do not say who was counted. We make no figure of that.',
    span: '{low} to {high}',
    alone: '{low}',
    or: ' or ',
  },
  not: { animals: 'did not', operated: 'were not', during: 'did not' },
} as const satisfies ToldWording
