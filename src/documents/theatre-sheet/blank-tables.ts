import { papersInEnglish } from '#content/wording/papers.ts'
import { theatreSheetWords as words } from '#content/wording/papers-theatre.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import type { Side } from '#core/animal/species.ts'
import { sides } from '#core/animal/species.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Checkpoint, Procedure } from '#core/procedures/procedure.ts'
import type { Awaited } from '#core/theatre/recovery.ts'
import type { SpokenPause } from '#core/theatre/spoken-pause.ts'
import { stampOrder } from '#core/theatre/stamps.ts'
import { drugName } from '../case/drug-name.ts'
import { sayUnit } from '../case/say-quantity.ts'
import { small, type Table, text, type Words } from '../render/model.ts'

/** Empty cells to be written in by hand; the height of a line comes with the time that stands ready. */
const blank = ''
const rows = (count: number, cells: readonly Words[]) => Array.from({ length: count }, () => cells)
const left = (head: string, share: number) => ({ head, align: 'left', share }) as const

/** A spoken pause: every item with its three answers. */
export function pauseTable({ items }: SpokenPause): Table {
  const { item, answer, because } = words.pauseColumns
  return {
    kind: 'table',
    caption: words.pauseCaption,
    rowHeader: true,
    columns: [left(item, 5), left(answer, 2.6), left(because, 3)],
    rows: items.map(({ states }) => [states, words.answers, blank]),
  }
}

/** Marks of the clock and checkpoints in the order of the operation, with the answers each can have. */
export function pointTable({ checkpoints }: Procedure, marks: Readonly<Record<string, string>>): Table {
  const { time, point, answers, because } = words.pointColumns
  return {
    kind: 'table',
    caption: words.pointsCaption,
    rowHeader: false,
    columns: [left(time, 1.5), left(point, 2.6), left(answers, 5), left(because, 2.2)],
    rows: stampOrder(checkpoints).map(({ mark, checkpoint }) => {
      const title = checkpoint?.title ?? (mark === null ? '' : (marks[mark] ?? mark))
      const asks = checkpoint ? answersOf(checkpoint) : mark === 'skin-mark' ? sides.join(' · ') : blank
      return [words.time, title, asks, blank]
    }),
  }
}

function answersOf({ details }: Checkpoint): Words {
  const said = details.map((detail) =>
    detail.kind === 'coded'
      ? fill(words.detail, {
          asks: detail.asks,
          answers: Object.keys(detail.answers)
            .map((one) => one.replaceAll('-', ' '))
            .join(' · '),
        })
      : fill(words.line, { asks: detail.asks }),
  )
  return [small(said.join('; '))]
}

/** The planned lines with room for what was really given, then free lines. */
export function drugTable(planned: readonly Line<BodyOf<'planned-line'>>[]): Table {
  const { planned: head, time, given, ampoule } = words.drugColumns
  return {
    kind: 'table',
    caption: words.drugsCaption,
    rowHeader: true,
    columns: [left(head, 4), left(time, 1.5), left(given, 2.6), left(ampoule, 2)],
    rows: [
      ...planned.map(({ body }) => [
        fill(words.planned, {
          drug: drugName(body.drug),
          dose: sayUnit(body.amount ?? body.dose),
          route: body.route ?? papersInEnglish.notRecorded,
        }),
        words.time,
        blank,
        blank,
      ]),
      ...rows(6, [blank, words.time, blank, blank]),
    ],
  }
}

const watched = Object.values(words.observed)

/** Two hours at five minutes; a second sheet is printed for more. */
export function observationTable(): Table {
  return {
    kind: 'table',
    caption: words.observationCaption,
    rowHeader: false,
    columns: [
      left(words.observationTime, 1.9),
      ...watched.map((head) => left(head, 1.35)),
      left(words.observationNote, 2.4),
    ],
    rows: rows(24, [words.time, ...watched.map(() => words.free), blank]),
  }
}

export function lossTable(): Table {
  const { time, jar, in: lavage, inJar, swabs } = words.lossColumns
  return {
    kind: 'table',
    caption: words.lossCaption,
    rowHeader: false,
    columns: [left(time, 1.5), left(jar, 1.4), left(lavage, 1.8), left(inJar, 2.2), left(swabs, 4)],
    rows: rows(4, [words.time, words.free, words.free, words.free, blank]),
  }
}

export function countTable(): Table {
  const { when, found, pack, who } = words.countColumns
  return {
    kind: 'table',
    caption: words.countCaption,
    rowHeader: true,
    columns: [left(when, 2), left(found, 5), left(pack, 2.2), left(who, 2.4)],
    rows: Object.values(reportInEnglish.counts).map((count) => [count, blank, words.pack, blank]),
  }
}

export function recoveryTable(events: Readonly<Record<Awaited, string>>, side: Side): Table {
  const { what, time, who } = words.recoveryColumns
  return {
    kind: 'table',
    caption: words.recoveryCaption,
    rowHeader: true,
    columns: [left(what, 5), left(time, 2), left(who, 3)],
    rows: [
      [reportInEnglish.clockMarks['tube-out'], words.time, blank],
      ...Object.values(events).map((one) => [[text(fill(one, { side }))], words.time, blank]),
    ],
  }
}
