/** The invented practice's own price list: every number here is made up. */
export const prices = {
  'price-check': { label: 'Check of an ear', low: '48.00', high: '62.00', currency: 'GBP' },
  'price-drops': { label: 'Ear drops, one bottle', low: '24.50', high: '38.00', currency: 'GBP' },
  'price-smear-and-culture': { label: 'Smear and culture', low: '86.00', high: '118.00', currency: 'GBP' },
  'price-teca': { label: 'Removal of a canal, with anaesthetic', low: '1950.00', high: '2400.00', currency: 'GBP' },
  'price-ward-day': { label: 'Day in the ward', low: '140.00', high: '190.00', currency: 'GBP' },
  'price-laboratory': {
    label: 'Histology and culture of an operation',
    low: '240.50',
    high: '310.75',
    currency: 'GBP',
  },
  'price-recheck': { label: 'Recheck after an operation', low: '0.00', high: '45.00', currency: 'GBP' },
} as const
