import { calendarInEnglish } from '../owed-calendar.ts'

/** The calendar of a family in Spanish: no diagnosis, no drug, only the name and what kind of thing it is. */
export const calendarInSpanish = {
  unnamed: 'Su animal',
  private: {
    visit: '{name}: visita',
    toBook: '{name}: pedir hora para una visita',
    call: '{name}: llama la clínica',
    meal: '{name}: última comida',
    medicine: '{name}: medicina',
  },
  phone: '{practice}, {phone}',
  toBookPhone: 'Todavía no hay día fijado. Llame para pedir uno: {practice}, {phone}',
  goesOn: 'El último aviso no es la última dosis. Siga hasta que le avisemos: {practice}, {phone}',
  alarms: calendarInEnglish.alarms,
} as const
