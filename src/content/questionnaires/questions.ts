import type { Question } from '#core/questionnaire/questionnaire.ts'

const every = { species: ['dog', 'cat'], reports: {}, asksForCall: [], informs: [] } as const
const ofEar = { ...every, about: 'ear' } as const
const ofAnimal = { ...every, about: 'animal' } as const

/**
 * The questions, in our own words. What stands in an edition that was given out is never changed: another question is
 * another id, and another edition asks it.
 */
export const questions = {
  earNow: {
    ...ofEar,
    id: 'ear-now',
    choices: ['no-trouble', 'better', 'same', 'worse', 'cannot-tell'],
    reports: { worse: 'ear-worse' },
    informs: ['resolution_or_improved'],
  },
  swelling: {
    ...ofEar,
    id: 'swelling',
    choices: ['no', 'yes', 'yes-gone', 'cannot-tell'],
    reports: { yes: 'swelling', 'yes-gone': 'swelling-gone' },
    informs: ['deep_recurrence'],
  },
  discharge: {
    ...ofEar,
    id: 'discharge',
    choices: ['no', 'yes', 'yes-gone', 'cannot-tell'],
    reports: { yes: 'discharge', 'yes-gone': 'discharge-gone' },
    informs: ['deep_recurrence', 'wound_infection_or_dehiscence'],
  },
  wound: {
    ...ofEar,
    id: 'wound',
    choices: ['no', 'yes', 'cannot-tell'],
    reports: { yes: 'wound-open' },
    informs: ['wound_infection_or_dehiscence'],
  },
  touch: {
    ...ofEar,
    id: 'touch',
    choices: ['no', 'sometimes', 'often', 'cannot-tell'],
    reports: { often: 'touch-hurts' },
    informs: ['deep_recurrence'],
  },
  mouth: {
    ...ofAnimal,
    id: 'mouth',
    choices: ['no', 'yes', 'cannot-tell'],
    reports: { yes: 'mouth-hurts' },
    informs: ['deep_recurrence'],
  },
  face: {
    ...ofEar,
    id: 'face',
    choices: ['no', 'a-little', 'a-lot', 'cannot-tell'],
    informs: ['facial_nerve_deficit_any', 'facial_nerve_deficit_permanent'],
  },
  eye: {
    ...ofEar,
    id: 'eye',
    choices: ['yes', 'no', 'cannot-tell'],
    reports: { no: 'eye-open' },
    informs: ['facial_nerve_deficit_any', 'facial_nerve_deficit_permanent'],
  },
  eyeSore: {
    ...ofEar,
    id: 'eye-sore',
    choices: ['no', 'yes', 'cannot-tell'],
    reports: { yes: 'eye-sore' },
    informs: ['corneal_ulcer'],
  },
  thirdLid: {
    ...ofEar,
    species: ['cat'],
    id: 'third-lid',
    choices: ['no', 'yes', 'cannot-tell'],
    informs: ['horner_any', 'horner_permanent'],
  },
  head: {
    ...ofAnimal,
    id: 'head',
    choices: ['no', 'yes-as-before', 'yes-worse', 'cannot-tell'],
    reports: { 'yes-worse': 'head-tilt' },
    informs: ['vestibular_any', 'vestibular_permanent'],
  },
  eating: {
    ...ofAnimal,
    id: 'eating',
    choices: ['yes', 'less', 'no', 'cannot-tell'],
    reports: { no: 'not-eating' },
  },
  medicines: {
    ...ofAnimal,
    id: 'medicines',
    choices: ['yes', 'no', 'none-left', 'cannot-tell'],
    reports: { no: 'medicines-missed' },
  },
  hearing: { ...ofAnimal, id: 'hearing', choices: ['as-before', 'less', 'no', 'cannot-tell'] },
  elsewhere: {
    ...ofEar,
    id: 'treated-elsewhere',
    choices: ['no', 'yes', 'cannot-tell'],
    reports: { yes: 'treated-elsewhere' },
    informs: ['deep_recurrence', 'revision_surgery'],
  },
  chooseAgain: { ...ofAnimal, id: 'choose-again', choices: ['yes', 'no', 'cannot-tell'] },
  phoneMe: { ...ofAnimal, id: 'phone-me', choices: ['no', 'yes', 'cannot-tell'], asksForCall: ['yes'] },
  anythingElse: { ...ofAnimal, id: 'anything-else', choices: [] },
} as const satisfies Readonly<Record<string, Question>>

type Asked = (typeof questions)[keyof typeof questions]
/** Every question by its id, with the answers that can be chosen. */
export type ChoicesOf = { readonly [One in Asked as One['id']]: One['choices'][number] }
