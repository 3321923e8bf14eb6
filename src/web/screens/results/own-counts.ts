import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'

/** The counts of one operation in one species, as the server worked them out. */
export type OwnCounts = OwnFiguresAnswer['counts']
