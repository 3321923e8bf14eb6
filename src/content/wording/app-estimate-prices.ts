/** Lines of an estimate from the clinic's own price list. */
export const estimatePricesInEnglish = {
  title: 'From our own price list',
  price: 'Price for a line',
  choose: 'Choose a price',
  help: 'It is written as a line from low to high; type over it where this animal needs something else.',
  row: '{label}: {low} to {high} {currency}',
  add: 'Take it as a line',
  added: 'Taken as a line: {label}. Say which part it is.',
  none: 'The price list is empty: add prices in Settings, or type the lines.',
  toPrices: 'Prices in Settings',
} as const
