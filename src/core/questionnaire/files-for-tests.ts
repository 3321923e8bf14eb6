import type { Side } from '#core/animal/species.ts'
import type { MakeEntry, WantedEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'

/** An ear operated on a day, for tests: the skin cut at 09:00 UTC. */
export function operatedEar(make: MakeEntry, side: Side, day: string, operation = `operation-${side}`): Entry {
  const at = `${day}T09:00:00.000Z`
  const incisionAt = { at, zone: 'Europe/London', precision: 'minute', by: 'person' } as const
  return make({
    kind: 'operation-summary',
    at,
    subject: { kind: 'operation', animal: 'animal-1', operation },
    body: { ...operationSummary.example, side, procedure: 'teca-lbo', incisionAt },
  })
}

/** Answers of an owner through the link, for tests: `swelling.LEFT` and `head` name what is answered. */
export function answered(
  make: MakeEntry,
  at: string,
  marked: Readonly<Record<string, string>>,
  more: Partial<BodyOf<'owner-answer'>> & { readonly entry?: Partial<WantedEntry> } = {},
): Entry {
  const { entry = {}, ...body } = more
  return make({
    kind: 'owner-answer',
    at,
    author: { kind: 'owner-link', contact: 'contact-1' },
    ...(entry as object),
    body: {
      questionnaire: 'twelve-months',
      edition: '1',
      occasion: 'month-12',
      ears: [
        { side: 'LEFT', operation: 'operation-LEFT' },
        { side: 'RIGHT', operation: 'operation-RIGHT' },
      ],
      by: 'owner-link',
      contact: 'contact-1',
      language: 'en',
      finished: true,
      answers: Object.entries(marked).map(([field, answer]) => {
        const [question = '', side] = field.split('.')
        return { question, side: side === 'LEFT' || side === 'RIGHT' ? side : null, answer, asked: null, said: null }
      }),
      ...body,
    },
  })
}
