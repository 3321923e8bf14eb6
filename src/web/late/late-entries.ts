import { lateInEnglish as words } from '#content/wording/app-late.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { type LateAnswer, lateEventAt, lateSignSaid, standingAnswer, whatOfSigns } from '#core/late/late-answer.ts'
import type { LateSign } from '#core/late/late-sign-names.ts'
import { fill } from '#core/outcome/finding.ts'
import { makeEntry, type Pen } from '../journal/write-entry.ts'
import { offeredEar } from './say-ear.ts'
import type { IndexEars } from './use-index-ears.ts'

/** A late sign as somebody told it, and the file it was told in. */
export type Telling = {
  readonly stream: string
  readonly subject: Subject
  /** The entry it was told in. */
  readonly told: string
  readonly at: string
  readonly signs: readonly LateSign[]
  readonly daysOfSigns: number | null
  readonly seenBy: BodyOf<'late-event'>['seenBy']
  /** Of whom it was told, and how it was said. */
  readonly name: string
  readonly owner: string
  readonly said: string
  /** The answer that this one takes the place of. */
  readonly before: string | null
}

/**
 * What a person said of a late sign, as entries: in the file it was told in where it belongs, and at the ear that was
 * chosen the late event, wherever that ear's file is. Nothing is joined. None where nobody said anything.
 */
export function lateEntries(pen: Pen, telling: Telling, ears: IndexEars, answer: LateAnswer): Entry[] {
  const { stream, subject, told, signs } = telling
  const sign = (body: BodyOf<'late-sign'>) =>
    makeEntry(pen, {
      kind: 'late-sign',
      stream,
      subject,
      body,
      supersedes: telling.before === null ? [] : [telling.before],
      reason: telling.before === null ? null : answer.because.trim() || words.saidAnew,
    })
  if (ears.kind === 'away') return [sign(lateSignSaid(told, signs, { kind: 'not-looked' }))]
  if (ears.kind !== 'found') return []
  const offered = ears.ears.map(offeredEar)
  const standing = standingAnswer(answer, offered)
  if (standing.belongs === null) return []
  const ear = offered.find(({ operation }) => operation === standing.operation)
  const event =
    standing.belongs === 'operated-ear' && ear
      ? makeEntry(pen, {
          kind: 'late-event',
          stream: ear.stream,
          subject: { kind: 'ear', animal: ear.animal, side: ear.side },
          body: lateEventAt(ear, standing.what ?? whatOfSigns(signs), {
            at: telling.at,
            zone: pen.zone,
            daysOfSigns: telling.daysOfSigns,
            seenBy: telling.seenBy,
            text: fill(words.event, { name: telling.name, owner: telling.owner, said: telling.said }),
          }),
        })
      : null
  const said = { kind: 'answered', answer: standing, ears: offered, event: event?.id ?? null } as const
  return [sign(lateSignSaid(told, signs, said)), ...(event ? [event] : [])]
}
