import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { emptyLook } from '#core/theatre/empty-look.ts'
import { marked, type Observation, togetherWith } from '#core/theatre/ledger.ts'
import type { Awaited } from '#core/theatre/recovery.ts'
import type { Moment } from '#core/time/moment.ts'
import { momentAgain } from '../../../../journal/moment-again.ts'
import { writeEntry } from '../../../../journal/write-entry.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import { useOperationPen } from '../use-operation-pen.ts'

type Body = BodyOf<'observation'>

/** What the ledger writes: a look of now, a first event, a mark on a value that stands, and taking an event back. */
export function useObserving(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const write = useOperationPen(operation)
  const ids = togetherWith(file.theCase, operation.id).map(({ id }) => id)
  const where = marked(file.theCase, ids, 'tube-out').length === 0 ? 'theatre' : 'recovery'
  const empty: Body = { ...emptyLook, where }
  return {
    /** Typed earlier and kept now, it has the moment at which it was typed. */
    keep: (said: Partial<Body>, then: Moment | null = null) =>
      write({ kind: 'observation', body: { ...empty, ...said }, happenedAt: then }),
    first: (first: Awaited, side: Side | null) =>
      write({ kind: 'observation', body: { ...empty, where: 'recovery', first, side } }),
    /** The digits and the moment stay; only the mark changes. */
    mark: (stands: Observation, index: number) => {
      const { header, body } = stands
      const values = body.values.map((value, at) => (at === index ? { ...value, artefact: !value.artefact } : value))
      return writeEntry(pen, {
        kind: 'observation',
        stream: file.stream,
        subject: header.subject,
        body: { ...body, values },
        happenedAt: momentAgain(stands),
        supersedes: [header.id],
        reason: values[index]?.artefact ? words.marked : words.unmarked,
      })
    },
    takeBack: ({ header }: Pick<Line, 'header'>) =>
      writeEntry(pen, {
        kind: 'withdrawal',
        stream: file.stream,
        subject: header.subject,
        body: { because: 'wrong' },
        withdraws: header.id,
        reason: words.takenBecause,
      }),
  }
}
