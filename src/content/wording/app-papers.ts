/** The papers of a case on its page, in English. */
export const papersScreen = {
  title: 'Papers',
  open: 'Show the papers of this case',
  dated: 'As they would be printed now, dated {when}. They change with the case; what was handed over is on paper.',
  unsent: 'Entries that only this device has are not in them yet.',
  away: 'Papers are made by the server. The clinic’s server does not answer; they can be opened again when it does.',
  ready: 'Ready',
  notYet: 'Not yet',
  waits: '{paper}: {because}.',
  forms: { pdf: 'PDF', html: 'page', txt: 'plain text' },
  formOf: '{paper}, {form}',
  formOfEar: '{paper}, {side} ear, {form}',
  data: 'For other programs',
} as const
