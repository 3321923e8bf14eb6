import type { Side } from '#core/animal/species.ts'
import type { OfLine } from './around.ts'

/** The ear an entry is about, when it is about one. */
export function sideOf({ header: { subject } }: OfLine): Side | undefined {
  return subject.kind === 'ear' ? subject.side : undefined
}
