import type { Edition } from '#core/culture/breakpoint.ts'

const standards = ['CLSI VET01S', 'CLSI VET08', 'VetCAST', 'CLSI M100', 'EUCAST', 'CLSI M45']

/** What is made for animals first, then for people, then information; within a standard the newest first. */
export function byStandard(one: Edition, other: Edition): number {
  return one.standard === other.standard ? other.year - one.year : place(one) - place(other)
}

function place({ standard }: Edition): number {
  const at = standards.indexOf(standard)
  return at === -1 ? standards.length : at
}
