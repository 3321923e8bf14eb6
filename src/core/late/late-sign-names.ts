/**
 * What people complain of when a trouble deep in an operated ear shows itself late; the plainest first. `complaint` is any
 * other reason for which the animal is brought: nobody can list all the words, and an ear that is not asked about is lost.
 */
export const lateSigns = ['draining-tract', 'abscess', 'swelling', 'jaw-pain', 'ear-pain', 'complaint'] as const
export type LateSign = (typeof lateSigns)[number]
