/** What the list of owed work says of a case file whose lists could not be made. */
export const unprojectedInEnglish = {
  what: 'The lists of this file are out of date: have the program looked at, then rebuild',
  why: 'Every entry is kept, but the program could not make the lists from them ({fault}).',
} as const
