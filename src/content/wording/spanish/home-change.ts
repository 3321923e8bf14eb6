/** What a home page says when it takes the place of an older one, in Spanish. */
export const homeChangeInSpanish = {
  replaces: 'Esta es la hoja {number}, del {date}. Sustituye a la hoja del {before}. Por favor, tire la hoja vieja.',
  calendar: 'Si lleva nuestras horas en su teléfono, pídanos las nuevas.',
  changed: 'Las medicinas han cambiado',
  stop: 'Deje de dar: {medicine}. No dé más desde el {date} a las {time}.',
  left: 'Si dio todas las dosis hasta entonces, sobrará esto: {amount}. Tráigalo a la clínica.',
  start: 'Nueva: {medicine}. Primera dosis: {first}.',
  noneLeft: 'Ya no queda ninguna medicina que dar.',
} as const
