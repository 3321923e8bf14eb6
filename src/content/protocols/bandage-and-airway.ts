import type { Sourced } from '#core/evidence/sourced.ts'
import type { AirwayCard } from '#core/ward/airway-card.ts'
import { commonPractice, houseJudgementOnly } from '../follow-up/provenance.ts'

const checked = '2026-11-29'
const practice = { ...commonPractice, checked } as const
const house = { ...houseJudgementOnly, checked } as const
const texts = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked,
} as const

const said = (value: string): Sourced<string> => ({ value, ...practice })

/** The card at the cage of an operated ear: who looks at what, how often, and what is done first. */
export const bandageAndAirway: AirwayCard = {
  who: {
    value: 'One nurse has this animal until it lies on its chest and is warm; from then on whoever has the ward.',
    ...practice,
    where: 'one nurse, one animal in recovery',
  },
  looks: [
    said('Bandage: two fingers slide under it, at the throat and behind the jaw.'),
    said('Throat and neck, by eye and hand: soft on both sides, no swelling that grows.'),
    said('Breathing: no noise, no effort, mouth closed at rest.'),
    said('Tongue and gums: pink.'),
  ],
  first: [
    {
      value: 'Cut the bandage through, at the first noise, effort or swelling. Then ask.',
      ...texts,
      where: 'a head bandage and a swelling throat close an airway together',
    },
    { value: 'Call for help aloud. Oxygen, neck straight, tongue forward.', ...texts },
    { value: 'Intubation set at the cage: three sizes, the smallest in hand.', ...texts },
  ],
  night: {
    value: 'An animal with a head bandage is never left where nobody hears it breathe.',
    ...house,
    where: 'a bandage and a swelling throat in a quiet kennel are what this card is for',
  },
  deaths: {
    value: 'Of deaths around anaesthesia, 47 in 100 of the dogs’ and 61 in 100 of the cats’ came after the operation.',
    sources: ['brodbelt-2008'],
    where: 'time of death, all anaesthetics and not ear surgery alone',
    known: 'read',
    strength: 'study',
    confidence: 'medium',
    checked,
  },
  watched: {
    'both-ears': {
      value: 'Both ears in one session: the throat may swell from two sides, and the bandage goes round both.',
      ...practice,
    },
    'flat-face': { value: 'A flat face: the upper airway is narrow before anything swells.', ...practice },
    cat: {
      value:
        'A cat: opening both bullae from below in one session brought trouble with breathing in 30 of 64, against 18 of 211 otherwise.',
      sources: ['wainberg-2019'],
      where: 'bulla opened from below; after removal of the canal nobody counted',
      known: 'read',
      strength: 'study',
      confidence: 'medium',
      checked,
    },
  },
}
