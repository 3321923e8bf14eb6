/** The calendar of a family is seen by many: no diagnosis, no drug, only the name and what kind of thing it is. */
export const calendarInEnglish = {
  unnamed: 'Your animal',
  private: {
    visit: '{name}: visit',
    /** While no day is booked: the event holds the days on which it may be. */
    toBook: '{name}: book a visit',
    call: '{name}: the practice calls',
    meal: '{name}: last meal',
    medicine: '{name}: medicine',
  },
  phone: '{practice}, {phone}',
  toBookPhone: 'No day is booked yet. Phone us for one: {practice}, {phone}',
  /** Of a medicine that goes on until we say so. */
  goesOn: 'The last reminder is not the last dose. Go on until we say stop: {practice}, {phone}',
  /** How long before the start an alarm rings; whole days begin at midnight, so 15 hours before is 09:00 the day before. */
  alarms: { visit: '-PT15H', call: null, meal: '-PT1H' },
} as const
