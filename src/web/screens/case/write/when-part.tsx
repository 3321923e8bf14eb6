import { caseInEnglish } from '#content/wording/app-case.ts'
import type { KindName } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Moment, readMoment, sayMoment } from '#core/time/moment.ts'
import { Choices } from '../../../design/choices.tsx'
import { TextField } from '../../../design/text-field.tsx'

const words = caseInEnglish.write

/** How somebody says when it happened. `kept`: as the entry that is corrected says it. */
export type When = { readonly how: 'now' | 'kept' | 'other'; readonly text: string }

/** Now, as before, or as somebody types it, as finely as they know it. */
export function WhenPart(props: {
  /** What the moment is called for this kind of entry. */
  readonly legend: string
  readonly when: When
  readonly before: Moment | null
  readonly error: string | null
  readonly onWhen: (when: When) => void
}) {
  const { legend, when, before, error, onWhen } = props
  const options = [...(before ? (['kept'] as const) : []), 'now', 'other'] as const
  const say = { now: words.whenNow, other: words.whenOther, kept: before ? sayMoment(before) : '' }
  return (
    <div className="stack">
      <Choices
        legend={legend}
        value={when.how}
        options={options}
        say={(how) => say[how]}
        onChoose={(how) => onWhen({ ...when, how })}
      />
      {when.how === 'other' && (
        <TextField
          label={words.whenText}
          help={words.whenHelp}
          error={error}
          autoComplete="off"
          value={when.text}
          onText={(text) => onWhen({ ...when, text })}
        />
      )}
    </div>
  )
}

/** What the moment of an entry is called: an agreement is agreed, an operation is booked. */
export function whenOf(kind: KindName): string {
  const own: Partial<Record<KindName, string>> = words.whenOf
  return own[kind] ?? words.when
}

/** The moment that was meant: null for now; or the sentence that says why it cannot be read. */
export function readWhen(
  { how, text }: When,
  about: { readonly before: Moment | null; readonly zone: string; readonly now: string },
): { readonly moment: Moment | null } | { readonly error: string } {
  if (how === 'now') return { moment: null }
  if (how === 'kept') return { moment: about.before }
  const read = readMoment(text, about.zone)
  if ('because' in read) {
    const readings = 'readings' in read ? read.readings.join(', ') : ''
    return { error: fill(words.whenRefused[read.because], { given: read.given, readings }) }
  }
  return read.at > about.now ? { error: words.inTheFuture } : { moment: read }
}
