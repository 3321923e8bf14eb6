import type { FormWords } from '#core/forms/words.ts'
import { plateInEnglish } from '../plate.ts'

export const imaging = {
  kind: 'imaging',
  purpose: 'A scan or radiograph, as its report says it, per ear.',
  sections: { study: 'The study', ears: 'What the report says', words: 'The report in short' },
  fields: {
    modality: { label: 'Study', options: { CT: 'CT', MRI: 'MRI', radiographs: 'radiographs' } },
    study: { label: 'Number of the study', help: 'As the images carry it. Leave empty when there is none.' },
    reportedBy: { label: 'Reported by' },
    side: { label: 'Does the report speak of this ear?', none: 'not mentioned', open: 'described' },
    'side.bulla': { label: 'Bulla', options: { air: 'air', filled: 'filled' } },
    'side.bullaWall': {
      label: 'Wall of the bulla',
      options: { normal: 'normal', thick: 'thick', 'eaten-away': 'eaten away' },
    },
    'side.canalMineral': { label: 'Mineral in the canal' },
    'side.mass': { label: 'Mass' },
    'side.massPlace': { label: 'Place of the mass', options: plateInEnglish.massPlaces },
    'side.massSize': { label: 'Size of the mass', options: plateInEnglish.massSizes },
    text: {
      label: 'The report in short',
      help: 'If the report names another side than the examination, write it as it stands. The conflict is shown until a person settles it.',
    },
  },
} as const satisfies FormWords
