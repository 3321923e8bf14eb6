import type { LateSignRules } from '#core/late/late-signs.ts'
import { commonPractice, houseJudgementOnly } from './provenance.ts'

const complaint = {
  ...commonPractice,
  where: 'what owners and vets say when a deep infection of an operated ear comes back; the words are the house’s',
  checked: '2026-11-30',
} as const

/**
 * Which complaints count as a late sign of an ear that was operated, and how people say them. There is no end to the
 * time in which they count: a tract may show itself years after the operation. What is heard is only asked about.
 */
export const lateSignRules: LateSignRules = {
  signs: {
    'draining-tract': {
      value: {
        words: [
          'tract',
          'tracts',
          'sinus tract',
          'fistula',
          'fistulas',
          'draining',
          'drains',
          'drain',
          'hole',
          'weeps',
          'weeping',
          'leaks',
          'leaking',
          'ooze',
          'oozes',
          'oozing',
          'discharge',
          'discharging',
          'smelly',
          'stinks',
          'secreción',
          'opened up',
          'broke open',
          'burst',
          'supura',
          'fístula',
          'agujero',
        ],
        flags: [],
        answers: ['discharge:yes', 'discharge:yes-gone'],
      },
      ...complaint,
    },
    abscess: {
      value: { words: ['abscess', 'abscesses', 'pus', 'boil', 'absceso'], flags: [], answers: [] },
      ...complaint,
    },
    swelling: {
      value: {
        words: [
          'swelling',
          'swellings',
          'swollen',
          'swells',
          'swelled',
          'lump',
          'lumps',
          'bulge',
          'puffy',
          'bump',
          'bumps',
          'bulto',
          'hinchazón',
          'hinchado',
          'hinchada',
        ],
        flags: ['swelling-under-ear'],
        answers: ['swelling:yes', 'swelling:yes-gone'],
      },
      ...complaint,
    },
    'jaw-pain': {
      value: {
        words: ['jaw', 'chewing', 'chew', 'yawning', 'yawns', 'open her mouth', 'open his mouth', 'opening the mouth'],
        flags: ['mouth-will-not-open'],
        answers: ['mouth:yes'],
      },
      ...complaint,
    },
    'ear-pain': {
      value: {
        words: ['pain', 'pains', 'painful', 'sore', 'hurts', 'hurting', 'tender', 'cries', 'yelps', 'dolor', 'duele'],
        flags: ['severe-pain'],
        answers: ['touch:often'],
      },
      ...complaint,
    },
    complaint: {
      value: { words: [], flags: [], answers: [] },
      ...complaint,
      where:
        'whatever else an animal with an operated ear is brought for; asked about because no list of words is whole',
    },
  },
  lateFrom: {
    value: { count: 30, unit: 'days' },
    ...houseJudgementOnly,
    where: 'the same day from which on a sign no longer counts as following the operation',
    checked: '2026-11-30',
  },
}

/** Within so long a late sign is put to an ear, and an ear with a late event is looked at and decided on. */
export const lateEventWithin = { value: { count: 2, unit: 'days' }, ...houseJudgementOnly } as const
