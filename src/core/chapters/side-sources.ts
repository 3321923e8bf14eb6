import { type Side, sides } from '#core/animal/species.ts'
import type { Author } from '#core/journal/entry.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import type { Moment } from '#core/time/moment.ts'
import { isOperation } from './ears.ts'

export const sideSourceCodes = [
  'referral-reported',
  'findings',
  'imaging',
  'choice',
  'agreement',
  'settled',
  'booking',
  'pause',
  'stamp',
  'block-site',
  'specimen',
  'photograph-filed',
  'photograph-shows',
  'paper-filed',
  'paper-says',
  'summary',
  'late-event',
] as const
export type SideSourceCode = (typeof sideSourceCodes)[number]

/** One place that says a side, with who wrote it and when. `says` is null where it names none. */
export type SideSource = {
  readonly from: SideSourceCode
  readonly says: Side | 'BOTH' | null
  readonly line: string
  readonly author: Author
  readonly when: Moment
  readonly operation: string | null
  /** Only for a pause: a "no" or "unknown" to the side is a disagreement by itself. */
  readonly answer: 'yes' | 'no' | 'unknown' | null
}

type Said = Partial<Pick<SideSource, 'operation' | 'answer'>>

/**
 * Every place of the case that says a side, in the order it happened: as reported, as found, as agreed, as done.
 *
 * @example sideSourcesOf(theCase).map(({ from, says }) => `${from}: ${says}`) // ['referral-reported: LEFT', …]
 */
export function sideSourcesOf(theCase: Case): SideSource[] {
  const found = [
    ...theCase.live('referral').map((line) => say(line, 'referral-reported', reported(line.body.reportedSide))),
    ...theCase.live('ear-findings').map((line) => say(line, 'findings', isDiseased(line.body) ? earOf(line) : null)),
    ...theCase.live('imaging').map((line) => say(line, 'imaging', together(diseasedOn(line.body)))),
    ...theCase.live('choice').map((line) => say(line, 'choice', choosesOperation(line.body) ? earOf(line) : null)),
    ...theCase
      .live('agreement')
      .map((line) => say(line, 'agreement', together(line.body.plan.ears.map(({ side }) => side)))),
    ...theCase.live('side-settled').map((line) => say(line, 'settled', line.body.side, of(line))),
    ...theCase.live('booking').map((line) => say(line, 'booking', line.body.side, of(line))),
    ...theCase.live('operation-summary').map((line) => say(line, 'summary', line.body.side, of(line))),
    ...theCase
      .live('late-event')
      .map((line) => say(line, 'late-event', earOf(line), { operation: line.body.operation })),
    ...inTheatre(theCase),
    ...theCase.live('photograph').flatMap(photographed),
    ...theCase.live('paper').flatMap(onPaper),
  ]
  return found.sort((a, b) => order(a, theCase) - order(b, theCase))
}

function order(source: SideSource, theCase: Case): number {
  return theCase.lines.findIndex(({ header }) => header.id === source.line)
}

function say(line: Line<unknown>, from: SideSourceCode, says: SideSource['says'], said: Said = {}): SideSource {
  const { id, author, happenedAt } = line.header
  return { from, says, line: id, author, when: happenedAt, operation: null, answer: null, ...said }
}

function of(line: Line<unknown>): Said {
  const { subject } = line.header
  return { operation: subject.kind === 'operation' ? subject.operation : null }
}

function earOf(line: Line<unknown>): Side | null {
  const { subject } = line.header
  return subject.kind === 'ear' ? subject.side : null
}

function reported(side: BodyOf<'referral'>['reportedSide']): SideSource['says'] {
  return side === 'unknown' ? null : side
}

/** One side, both, or none. */
export function together(some: readonly Side[]): SideSource['says'] {
  const known = sides.filter((side) => some.includes(side))
  return known.length === 2 ? 'BOTH' : (known[0] ?? null)
}

/** Something that one operates for, not just a red canal: what a wrong side would show on the other ear. */
function isDiseased(body: BodyOf<'ear-findings'>): boolean {
  return (
    body.canalFeel === 'bone-hard' ||
    body.discharge === 'purulent' ||
    body.discharge === 'bloody' ||
    body.stenosis === 'severe' ||
    body.stenosis === 'closed' ||
    body.drum === 'ruptured' ||
    [body.mass, body.swelling, body.drainingTract, body.painOnPressing].includes('yes')
  )
}

function diseasedOn(body: BodyOf<'imaging'>): Side[] {
  return sides.filter((side) => {
    const ear = body[side]
    return (
      ear !== null &&
      (ear.bulla === 'filled' ||
        ear.bullaWall === 'thick' ||
        ear.bullaWall === 'eaten-away' ||
        ear.canalMineral === 'yes' ||
        ear.mass === 'yes')
    )
  })
}

function choosesOperation(body: BodyOf<'choice'>): boolean {
  return body.options.some(({ option, answer }) => answer === 'chosen' && isOperation(option))
}

/** What was said and done at the table: pauses, stamps, blocks and samples. */
function inTheatre(theCase: Case): SideSource[] {
  const booked = (operation: string | null) =>
    theCase.live('booking').findLast((line) => of(line).operation === operation)?.body.side ?? null
  return [
    ...theCase
      .live('pause-item')
      .filter(({ body }) => isAboutSide(body.item))
      .map((line) => {
        const { answer } = line.body
        const operation = of(line).operation ?? null
        return say(line, 'pause', answer === 'yes' ? booked(operation) : null, { operation, answer })
      }),
    ...theCase
      .live('theatre-stamp')
      .filter(({ body }) => body.detail.side !== undefined)
      .map((line) => say(line, 'stamp', sideWord(line.body.detail.side ?? ''), of(line))),
    ...theCase
      .live('drug-given')
      .filter(({ body }) => body.use === 'local_block' && sideWord(body.site ?? '') !== null)
      .map((line) => say(line, 'block-site', sideWord(line.body.site ?? ''), of(line))),
    ...theCase
      .live('specimen')
      .filter(({ body }) => body.operation !== null)
      .map((line) => say(line, 'specimen', earOf(line), { operation: line.body.operation })),
  ]
}

/** Whether an item of a spoken pause confirms the side. Example: `isAboutSide('side-spoken-in-full') // true`. */
export function isAboutSide(item: string): boolean {
  return /(^|-)side(-|$)/.test(item)
}

/** The one side a free text names; null when it names none or both. */
function sideWord(text: string): Side | null {
  const left = /\bleft\b/i.test(text)
  const right = /\bright\b/i.test(text)
  return left === right ? null : left ? 'LEFT' : 'RIGHT'
}

function photographed(line: Line<BodyOf<'photograph'>>): SideSource[] {
  const { sideInPicture } = line.body
  const filed = earOf(line)
  if (filed === null || sideInPicture === 'none') return []
  return [say(line, 'photograph-filed', filed), say(line, 'photograph-shows', sideInPicture)]
}

function onPaper(line: Line<BodyOf<'paper'>>): SideSource[] {
  const { sideOnPaper } = line.body
  const filed = earOf(line)
  if (filed === null || sideOnPaper === 'not-stated') return []
  return [say(line, 'paper-filed', filed), say(line, 'paper-says', sideOnPaper)]
}
