/** What a home page says when it takes the place of an older one. Plain words; grade 8 at most (tested). */
export const homeChangeInEnglish = {
  replaces:
    'This is page {number}, of {date}. It takes the place of the page of {before}. Please throw the old page away.',
  calendar: 'If you keep our times in your phone, ask us for the new ones.',
  changed: 'The medicines have changed',
  stop: 'Stop: {medicine}. Give no more from {date}, {time} on.',
  left: 'If you gave every dose until then, {amount} will be left over. Bring what is left back to us.',
  start: 'New: {medicine}. First dose {first}.',
  noneLeft: 'There is no medicine left to give.',
} as const

/** For the clinic, whatever language the household speaks. */
export const homeChangeForClinicInEnglish = {
  unmatched:
    'For the clinic: “{medicine}” was stopped on {date}, and no page of this stay names it. Find out what the animal is given.',
} as const
