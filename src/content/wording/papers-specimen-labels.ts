/** The sheet of labels for pots, in English. */
export const specimenLabelWords = {
  title: 'Labels for pots: {name}, {side} ear',
  howTo:
    'Cut out and put on the pot itself, never on its lid. Read the label aloud with the side; then tap “The label is on the pot” on the screen.',
  side: '{side} ear',
  who: '{name} · {household}',
  noHousehold: 'household not recorded',
  animal: '{species}, {birth}, {chip}',
  bornUnknown: 'birth date not known',
  chipUnknown: 'chip not known',
  taken: 'taken {when}',
  onBoard: 'antibiotics on board: {which}',
  noneOnBoard: 'none',
  unknownSide: 'side NOT KNOWN',
  laboratory: 'to {laboratory}',
  inHouse: 'read in the house',
} as const
