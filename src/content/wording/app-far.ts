/** What stands over the clocks beside the operating table and is read from two metres, in English. */
export const farInEnglish = {
  firstOpen: 'First not stamped yet',
  operation: 'This operation',
} as const
