import type { FormWords } from '#core/forms/words.ts'
import { findingWords } from '../letter.ts'
import { plateInEnglish } from '../plate.ts'

export const earFindings = {
  kind: 'ear-findings',
  purpose: 'One ear, felt and seen. Look at both ears, also when only one is ill.',
  sections: { look: 'Examined', feel: 'Felt', see: 'Seen', 'otis-3': 'OTIS-3', words: 'Anything else' },
  fields: {
    examined: {
      label: 'The animal was',
      options: { awake: 'awake', sedated: 'sedated', anaesthetised: 'anaesthetised' },
    },
    flapCarriage: { label: 'Ear flap', options: { erect: 'stands up', drop: 'hangs' } },
    canalFeel: {
      label: findingWords.signs.canalFeel,
      options: { soft: 'soft', thick: 'thick', 'bone-hard': 'hard as bone' },
    },
    painOnPressing: { label: findingWords.signs.painOnPressing },
    painOnJawOpening: {
      label: findingWords.signs.painOnJawOpening,
      help: 'Points to the bulla or the joint of the jaw.',
    },
    swelling: { label: 'Swelling below or behind the ear' },
    drainingTract: { label: findingWords.signs.drainingTract },
    discharge: {
      label: findingWords.signs.discharge,
      options: { none: 'none', waxy: 'waxy', purulent: 'purulent', bloody: 'bloody' },
    },
    stenosis: {
      label: findingWords.signs.stenosis,
      options: {
        none: 'none',
        mild: 'mild',
        moderate: 'moderate',
        severe: 'severe',
        closed: 'closed',
        'could-not-see': 'could not be seen',
      },
    },
    drum: {
      label: findingWords.signs.drum,
      help: 'Not seen is an answer. Never intact unless it was seen.',
      options: { intact: 'intact', ruptured: 'ruptured', 'could-not-see': 'could not be seen' },
    },
    mass: { label: findingWords.signs.mass },
    massPlace: { label: 'Place of the mass', options: plateInEnglish.massPlaces },
    massSize: { label: 'Size of the mass', options: plateInEnglish.massSizes },
    otis3: { label: 'OTIS-3', help: 'Four signs of the ear canal, 0 none to 3 severe.' },
    'otis3.erythema': { label: 'Redness', none: 'not assessed' },
    'otis3.swelling': { label: 'Swelling of the lining', none: 'not assessed' },
    'otis3.erosion': { label: 'Erosion or ulcers', none: 'not assessed' },
    'otis3.exudate': { label: 'Exudate', none: 'not assessed' },
    text: { label: 'Anything else' },
  },
} as const satisfies FormWords
