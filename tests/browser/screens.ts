/** Widths at which every screen is looked at and measured, smallest last. */
export const sizes = [
  ['desktop', 1280, 900],
  ['tablet', 820, 1180],
  ['phone', 320, 700],
] as const

/** Every screen of the app by name and path, in the invented practice. */
export const screens = [
  ['owed', '/'],
  ['find', '/find'],
  ['kept', '/kept'],
  ['new-referral', '/new'],
  ['theatre-list', '/theatre'],
  ['tray', '/tray'],
  ['case-dog', '/case/tansy'],
  ['case-cat', '/case/moss'],
  ['write-weight', '/case/tansy/write/weight'],
  ['write-ear-findings', '/case/tansy/write/ear-findings'],
  ['write-baseline', '/case/tansy/write/baseline'],
  ['plate', '/case/tansy/plate/LEFT'],
  ['sources', '/sources'],
  ['formulary', '/sources/formulary/bupivacaine'],
  ['settings', '/settings'],
  ['not-there', '/nowhere'],
] as const
