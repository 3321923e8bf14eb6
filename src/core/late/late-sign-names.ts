/** What people complain of when a trouble deep in an operated ear shows itself late; the plainest first. */
export const lateSigns = ['draining-tract', 'abscess', 'swelling', 'jaw-pain', 'ear-pain'] as const
export type LateSign = (typeof lateSigns)[number]
