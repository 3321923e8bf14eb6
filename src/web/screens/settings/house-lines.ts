import type { Case, Line } from '#core/journal/fold.ts'

/** The ids that a new version of a line replaces: itself, and whatever stands in conflict with it. */
export function replacedBy(house: Case, line: Pick<Line, 'header'> | null): string[] {
  if (!line) return []
  const { id } = line.header
  const conflict = house.conflicts.find(({ between }) => between.includes(id))
  return [...new Set([id, ...(conflict?.between ?? [])])]
}

/** Whether two live entries say different things of one product, plan or policy. */
export function inConflict(house: Case, line: Pick<Line, 'header'>): boolean {
  return house.conflicts.some(({ between }) => between.includes(line.header.id))
}

/** A part of an address as it was typed; a percent sign that means itself is no fault. */
export function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}
