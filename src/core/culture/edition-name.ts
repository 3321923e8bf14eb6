import type { Edition } from './breakpoint.ts'

/**
 * The long form, as it is printed.
 *
 * @example editionName(edition) // 'CLSI VET01S ed7 (2024)'
 */
export function editionName({ standard, edition, year }: Pick<Edition, 'standard' | 'edition' | 'year'>): string {
  return `${standard} ${edition} (${year})`
}
