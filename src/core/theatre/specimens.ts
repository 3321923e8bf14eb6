import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { rootOf } from '#core/owed/operations.ts'
import type { Stamp } from './stamps.ts'

type Specimen = Line<BodyOf<'specimen'>>
export type SpecimenSite = BodyOf<'specimen'>['site']

/** One pot of an operation, and whether a person said that its label is on it. */
export type Pot = {
  readonly specimen: Specimen
  readonly side: Side | null
  /** What the tap is stamped with: it stays the same when the entry is corrected. */
  readonly checkpoint: string
  /** What the label must say, as it stands in the tap. */
  readonly says: Readonly<Record<string, string>>
  /** The tap for exactly this label, place and side. */
  readonly labelled: Stamp | null
  /** Every live tap of this pot, also for what it was called before. */
  readonly taps: readonly Stamp[]
}

/** Before the first version of the specimen's entry. */
const labelTap = 'labelled-'

/** Whether a checkpoint is the tap for a label. Example: `isLabelTap('labelled-0190a7c2-…') // true`. */
export function isLabelTap(checkpoint: string): boolean {
  return checkpoint.startsWith(labelTap)
}

/**
 * The pots of one operation, oldest first. A tap counts only for the label, place and side that it was made for: after
 * a correction the pot says something else than the entry, and somebody looks again.
 *
 * @example potsOf(theCase, operation.id).filter(({ labelled }) => labelled === null).length // 1
 */
export function potsOf(theCase: Case, operation: string): Pot[] {
  const stamps = linesAbout(theCase, 'theatre-stamp', operation)
  return theCase
    .live('specimen')
    .filter(({ body }) => body.operation === operation)
    .map((specimen) => {
      const { subject } = specimen.header
      const side = subject.kind === 'ear' ? subject.side : null
      const says = { label: specimen.body.label.slice(0, 200), site: specimen.body.site, side: side ?? 'none' }
      const checkpoint = `${labelTap}${rootOf(theCase, specimen.header.id)}`
      const taps = stamps.filter(({ body }) => body.checkpoint === checkpoint && body.answer === 'done')
      const labelled =
        taps.find(({ body }) => Object.entries(says).every(([key, value]) => body.detail[key] === value)) ?? null
      return { specimen, side, checkpoint, says, labelled, taps }
    })
}

/**
 * A label that no pot of this case ever had: a letter and a number. Labels of entries that were corrected or taken back
 * are never given again, because the paper may still lie there.
 *
 * @example nextLabel(theCase) // 'T-4'
 */
export function nextLabel(theCase: Case): string {
  const letter = (theCase.latest('identity')?.body.name ?? '').match(/\p{L}/u)?.[0]?.toUpperCase() ?? 'S'
  const numbers = theCase.lines.flatMap(({ header, body }) => {
    if (header.kind !== 'specimen' || typeof body !== 'object' || body === null || !('label' in body)) return []
    const number = /-(\d{1,6})$/.exec(String(body.label))?.[1]
    return number === undefined ? [] : [Number(number)]
  })
  return `${letter}-${Math.max(0, ...numbers) + 1}`
}

/** Places from which something is wanted in this operation and nothing has been taken yet. */
export function stillToTake(pots: readonly Pot[], wanted: readonly SpecimenSite[]): SpecimenSite[] {
  return wanted.filter((site) => !pots.some(({ specimen }) => specimen.body.site === site))
}
