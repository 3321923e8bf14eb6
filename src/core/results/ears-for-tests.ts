import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import type { KnownOutcome } from '../evidence/own/own-outcome.ts'
import { type OwnOutcome, ownOutcomes } from '../evidence/own/own-outcome.ts'

const nothingKnown = Object.fromEntries(ownOutcomes.map((outcome) => [outcome, null])) as Record<
  OwnOutcome,
  KnownOutcome
>

/** An invented operated ear: a dog's left one, of which nothing is known but what the test says. */
export function earForTests(
  number: number,
  { known, ...more }: Partial<Omit<OperatedEar, 'known'>> & { readonly known?: Partial<OperatedEar['known']> } = {},
): OperatedEar {
  return {
    animal: `animal-${number}`,
    operation: `operation-${number}`,
    session: `operation-${number}`,
    species: 'dog',
    procedure: 'teca-lbo',
    side: 'LEFT',
    reason: 'not-recorded',
    on: '2025-01-10',
    died: null,
    stream: `case:${number}`,
    followedUntil: null,
    tractOn: null,
    blink: null,
    troubles: [],
    ofNoSide: [],
    ...more,
    known: { ...nothingKnown, ...known },
  }
}

/**
 * Forty ears of thirty-four dogs, nine of them lost, two lasting palsies among the thirty-one followed: 6.5 % (1.8 to 20.7
 * by Wilson), and between 5.0 and 27.5 % of all forty. Invented.
 */
export function fortyEars(): OperatedEar[] {
  return Array.from({ length: 40 }, (_, i) => {
    const lost = i >= 31
    const permanent = lost ? null : i < 2
    return earForTests(i, {
      // The first twelve ears are those of six dogs.
      animal: `animal-${i < 12 ? Math.floor(i / 2) : i}`,
      side: i < 12 && i % 2 === 1 ? 'RIGHT' : 'LEFT',
      followedUntil: lost ? '2025-01-20' : '2026-02-01',
      known: { facial_nerve_deficit_permanent: permanent },
    })
  })
}
