import type { Finding, Level } from '#core/outcome/finding.ts'

/** What a controlled-drug register shows of itself; content/wording says each, and what would settle it. */
export const registerCodes = [
  'no-opening',
  'other-unit',
  'below-nothing',
  'count-differs',
  'ampoule-missing',
  'ampoule-elsewhere',
  'draw-differs',
  'draw-not-added',
  'given-without-ampoule',
  'given-not-drawn',
  'wasted-not-drawn',
  'witness-missing',
  'said-twice',
  'wasted-twice',
  'order-uncertain',
  'not-marked',
] as const
export type RegisterCode = (typeof registerCodes)[number]
/** `entry`: the line it is about; null: the register as a whole. */
export type RegisterFinding = Finding<RegisterCode> & { readonly entry: string | null }

export function seen(
  level: Level,
  code: RegisterCode,
  about: Readonly<Record<string, string>> = {},
  entry: string | null = null,
): RegisterFinding {
  return { code, level, about, entry, sources: [] }
}
