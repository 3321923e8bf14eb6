import type { Side } from '#core/animal/species.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import type { Case } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fill, type Level } from '#core/outcome/finding.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import { type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { sayMoment } from '#core/time/moment.ts'
import { type SideSource, type SideSourceCode, sideSourcesOf, together } from './side-sources.ts'

/**
 * Sources that name different sides, side by side. `block`: nothing is cut until a person settles it. `confirm`: only
 * the caller's word, or a picture, stands against the others.
 */
export type SideDisagreement = {
  readonly level: Exclude<Level, 'note'>
  /** The operation it is about; null while none is booked. */
  readonly operation: string | null
  readonly LEFT: readonly SideSource[]
  readonly RIGHT: readonly SideSource[]
  /** A pause at which the side was not confirmed. */
  readonly notConfirmed: readonly SideSource[]
}

export type Sides = { readonly sources: readonly SideSource[]; readonly disagreements: readonly SideDisagreement[] }

/**
 * All sources of side, and where they disagree: for each operation that is booked or done, before one is booked for
 * the case, and for a picture filed to the ear it does not show.
 *
 * @example sidesOf(file.theCase).disagreements[0]?.level // 'block'
 * Reference: the wrong-side row of the list of mistakes; every source is shown, nobody's word wins by itself.
 */
export function sidesOf(theCase: Case): Sides {
  const sources = sideSourcesOf(theCase)
  const operations = operationsOf({ theCase })
  const disagreements =
    operations.length === 0
      ? [about(null, claims(sources, around))]
      : operations.map((operation) =>
          ofOperation(operation, operations, theCase, sources.filter(isNotOverruled(theCase, operation.id))),
        )
  return { sources, disagreements: [...disagreements.flatMap((one) => one ?? []), ...ofPictures(sources)] }
}

function sidesIn(some: readonly SideSource[]): Side[] {
  return some.flatMap(({ says }) => (says === 'LEFT' || says === 'RIGHT' ? [says] : []))
}

const around: readonly SideSourceCode[] = ['referral-reported', 'findings', 'imaging', 'choice', 'agreement']

/** What kinds of source claim one side alone: a kind that names both ears over its entries disagrees with nobody. */
function claims(sources: readonly SideSource[], codes: readonly SideSourceCode[]): SideSource[] {
  return codes.flatMap((code) => {
    const some = sources.filter(({ from, says }) => from === code && says !== null)
    const named = some.flatMap(({ says }) => (says === 'BOTH' ? (['LEFT', 'RIGHT'] as const) : (says ?? [])))
    return together(named) === 'BOTH' ? [] : some
  })
}

function ofOperation(
  operation: OperationOnFile,
  all: readonly OperationOnFile[],
  theCase: Case,
  sources: readonly SideSource[],
): SideDisagreement | null {
  const bound = sources.filter((source) => source.operation === operation.id && source.from !== 'late-event')
  // What points to the other ear may mean the case's other operation, on that ear.
  const explained = all.some(({ id, side }) => id !== operation.id && side !== operation.side)
  const agreed = operation.booking?.body.agreement ?? null
  const claimed = claims(sources, ['referral-reported', 'findings', 'imaging', 'choice'])
  // Both ears on the list of one morning do not explain an examination that found the one and a scan that found the other.
  const atOnce = oneAnaesthetic(operation, all, theCase) !== null && together(sidesIn(claimed)) === 'BOTH'
  const general = explained && !atOnce ? [] : claimed
  const agreement = sources.filter(({ from, line, says }) => from === 'agreement' && line === agreed && says !== 'BOTH')
  return about(operation.id, [...general, ...agreement, ...bound])
}

/** What somebody saw, heard or filed may be wrong and stay on record; a decision that is wrong is amended instead. */
const overrulable: ReadonlySet<SideSourceCode> = new Set([
  'referral-reported',
  'findings',
  'imaging',
  'photograph-filed',
  'photograph-shows',
  'paper-filed',
  'paper-says',
])

/** Leaves out the sources that a named person overruled for this operation; anything written later counts. */
function isNotOverruled(theCase: Case, operation: string): (source: SideSource) => boolean {
  const settled = linesAbout(theCase, 'side-settled', operation).at(-1)?.body
  const overruled = new Set(settled?.overruled ?? [])
  return ({ line, from, says }) => !(overrulable.has(from) && overruled.has(line) && says !== settled?.side)
}

const weak: ReadonlySet<SideSourceCode> = new Set([
  'referral-reported',
  'photograph-filed',
  'photograph-shows',
  'paper-filed',
  'paper-says',
])

function about(operation: string | null, claimed: readonly SideSource[]): SideDisagreement | null {
  const saying = (side: Side) => claimed.filter(({ says }) => says === side)
  const [LEFT, RIGHT] = [saying('LEFT'), saying('RIGHT')]
  const notConfirmed = claimed.filter(({ answer }) => answer === 'no' || answer === 'unknown')
  if ((LEFT.length === 0 || RIGHT.length === 0) && notConfirmed.length === 0) return null
  const onlyWeak = (some: readonly SideSource[]) => some.every(({ from }) => weak.has(from))
  const level = notConfirmed.length === 0 && (onlyWeak(LEFT) || onlyWeak(RIGHT)) ? 'confirm' : 'block'
  return { level, operation, LEFT, RIGHT, notConfirmed }
}

function ofPictures(sources: readonly SideSource[]): SideDisagreement[] {
  return sources
    .filter(({ from }) => from === 'photograph-filed' || from === 'paper-filed')
    .flatMap((filed) => {
      const both = sources.filter(({ line }) => line === filed.line)
      return about(null, both) ?? []
    })
}

/** Of a disagreement what a person who says "it is this ear" overrules, and what must be amended instead. */
export function againstSide(
  { LEFT, RIGHT, notConfirmed }: SideDisagreement,
  side: Side,
): { readonly overrules: readonly SideSource[]; readonly amends: readonly SideSource[] } {
  const against = side === 'LEFT' ? RIGHT : LEFT
  const amends = against.filter(({ from }) => !overrulable.has(from))
  return { overrules: against.filter(({ from }) => overrulable.has(from)), amends: [...amends, ...notConfirmed] }
}

export type SidesWording = {
  readonly sources: Readonly<Record<SideSourceCode, string>>
  readonly says: Readonly<Record<Side | 'BOTH', string>>
  readonly source: string
  readonly sideSays: string
  readonly notConfirmed: string
  readonly settle: Readonly<Record<'block' | 'confirm', string>>
}

/** One source in words: "booking, by Hana Moretti, 25 February 2025, 16:00". */
export function saySource(source: SideSource, file: CaseFile, wording: SidesWording): string {
  return fill(wording.source, {
    what: wording.sources[source.from],
    who: authorNamed(file, source.author),
    when: sayMoment(source.when),
  })
}

/** A disagreement as it is read: who says which side, one source a line, and what to do. */
export type SaidDisagreement = {
  readonly parts: readonly { readonly said: string; readonly sources: readonly string[] }[]
  readonly settle: string
}

/**
 * The disagreement in words, each side with everybody who says it, and what to do.
 *
 * @example sayDisagreement(disagreement, file, sidesInEnglish).parts[0]?.said // 'LEFT is said by'
 */
export function sayDisagreement(found: SideDisagreement, file: CaseFile, wording: SidesWording): SaidDisagreement {
  const part = (said: string, some: readonly SideSource[]) =>
    some.length === 0 ? [] : [{ said, sources: some.map((source) => saySource(source, file, wording)) }]
  return {
    parts: [
      ...part(fill(wording.sideSays, { side: wording.says.LEFT }), found.LEFT),
      ...part(fill(wording.sideSays, { side: wording.says.RIGHT }), found.RIGHT),
      ...part(wording.notConfirmed, found.notConfirmed),
    ],
    settle: wording.settle[found.level],
  }
}
