/** A picture or paper on the screen, in English. */
export const attachmentsInEnglish = {
  open: 'Open {name}',
  pdf: 'PDF',
  text: 'Text',
  notHere: 'Not here yet: it may still be on the device that took it in.',
  looking: 'Looking for {name} …',
} as const
