import type { FormWords } from '#core/forms/words.ts'

export const photograph = {
  kind: 'photograph',
  purpose: 'A picture, named by what it shows and by the side in it.',
  sections: { picture: 'The picture' },
  fields: {
    shows: { label: 'What it shows', help: 'For example: wound on day 12.' },
    sideInPicture: { label: 'Side in the picture', options: { none: 'no side' } },
    takenBy: {
      label: 'Taken by',
      options: { us: 'us', owner: 'owner', 'referring-vet': 'referring vet', laboratory: 'laboratory' },
    },
  },
} as const satisfies FormWords
