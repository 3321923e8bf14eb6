import type { Side } from '../animal/species.ts'
import type { BodyOf, Case, Line } from '../journal/fold.ts'
import { fill } from '../outcome/finding.ts'
import { never } from '../outcome/outcome.ts'
import type { DateWords } from '../time/date-words.ts'
import { sayMoment } from '../time/moment.ts'
import { plateVersion } from './parameters.ts'

/** A drawing that counts, and whether it can be shown as it was drawn. */
export type KeptDrawing = {
  readonly line: Line<BodyOf<'plate-drawing'>>
  /** `other-side`: drawn on one ear and filed to the other. `other-plate`: drawn on an older or newer plate. */
  readonly doubts: readonly ('other-side' | 'other-plate')[]
}

/**
 * The drawings of one ear in the order they were made. A doubt is said beside the drawing and hides nothing.
 *
 * @example drawingsOf(theCase, 'LEFT').at(-1)?.line.body.strokes
 */
export function drawingsOf(theCase: Case, side: Side): KeptDrawing[] {
  return theCase.live('plate-drawing').flatMap((line): KeptDrawing[] => {
    const { subject } = line.header
    if (subject.kind !== 'ear' || subject.side !== side) return []
    const { parameters, plate } = line.body
    return [
      {
        line,
        doubts: [
          ...(parameters.side === side ? [] : ['other-side' as const]),
          ...(plate === plateVersion ? [] : ['other-plate' as const]),
        ],
      },
    ]
  })
}

/** The words beside a kept drawing. */
export type DrawingWords = {
  /** Holds {title}, {side}, {person}, {date} and {drawnFor}. */
  readonly caption: string
  readonly untitled: string
  /** Holds {people}. */
  readonly watched: string
  readonly sides: Readonly<Record<Side, string>>
  readonly dates: DateWords
  readonly for: Readonly<Record<BodyOf<'plate-drawing'>['drawnFor'], string>>
  /** Hold {drawn} with {filed} or {shown}. */
  readonly doubts: Readonly<Record<KeptDrawing['doubts'][number], string>>
}

/**
 * Who drew it, when, for whom and who watched; and each doubt as a sentence.
 *
 * @example sayDrawing(drawing, words, nameOf).caption
 */
export function sayDrawing(
  { line, doubts }: KeptDrawing,
  words: DrawingWords,
  nameOf: (id: string) => string,
): { readonly caption: string; readonly doubts: readonly string[] } {
  const { header, body } = line
  const { author, subject } = header
  const filed = subject.kind === 'ear' ? subject.side : body.parameters.side
  const caption = fill(words.caption, {
    title: body.title ?? words.untitled,
    side: words.sides[body.parameters.side],
    person: nameOf('person' in author ? author.person : 'contact' in author ? author.contact : author.from),
    date: sayMoment(header.happenedAt, words.dates),
    drawnFor: words.for[body.drawnFor],
  })
  const people = body.watchedBy.map(nameOf).join(', ')
  return {
    caption: people === '' ? caption : `${caption} ${fill(words.watched, { people })}`,
    doubts: doubts.map((doubt) => {
      switch (doubt) {
        case 'other-side':
          return fill(words.doubts[doubt], { drawn: words.sides[body.parameters.side], filed: words.sides[filed] })
        case 'other-plate':
          return fill(words.doubts[doubt], { drawn: String(body.plate), shown: String(plateVersion) })
        default:
          return never(doubt)
      }
    }),
  }
}
