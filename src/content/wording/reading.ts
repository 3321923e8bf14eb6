/** How easy a paper of the owner is to read, in its small print; the counts and values come from the formulas. */
export const readingInEnglish = {
  said: 'Counted on this paper: {words} words in {sentences} sentences. Reading level: {measures}. Our aim: {aim}.',
  measures: {
    'flesch-kincaid': 'grade {value} (Flesch–Kincaid 1975)',
    smog: 'grade {value} (SMOG 1969)',
    'fernandez-huerta': 'ease {value} of 100 (Fernández Huerta 1959)',
    'szigriszt-pazos': 'ease {value} of 100 (Szigriszt Pazos 1993, INFLESZ scale)',
  },
  aims: {
    'flesch-kincaid': 'grade {bound} or lower by Flesch–Kincaid',
    'szigriszt-pazos': '{bound} or more on the INFLESZ scale, “fairly easy”',
  },
} as const
