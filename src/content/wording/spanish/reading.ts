/** How easy a paper of the owner is to read, in Spanish. */
export const readingInSpanish = {
  said: 'Contado en esta hoja: {words} palabras en {sentences} frases. Facilidad de lectura: {measures}. Nuestra meta: {aim}.',
  measures: {
    'flesch-kincaid': 'grado {value} (Flesch–Kincaid 1975)',
    smog: 'grado {value} (SMOG 1969)',
    'fernandez-huerta': '{value} de 100 (Fernández Huerta 1959)',
    'szigriszt-pazos': '{value} de 100 (Szigriszt Pazos 1993, escala INFLESZ)',
  },
  aims: {
    'flesch-kincaid': 'grado {bound} o menos según Flesch–Kincaid',
    'szigriszt-pazos': '{bound} o más en la escala INFLESZ, «bastante fácil»',
  },
} as const
