import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { fill } from '#core/outcome/finding.ts'
import type { PauseSpan } from '#core/theatre/pause-run.ts'

/** How long a pause lasted: `2 min 15 s`. */
export function saySpan({ seconds, fine }: PauseSpan): string {
  if (fine === 'minute') return fill(words.span.minutes, { minutes: String(Math.round(seconds / 60)) })
  const about = { minutes: String(Math.floor(seconds / 60)), seconds: String(seconds % 60) }
  return fill(seconds < 60 ? words.span.seconds : words.span.both, about)
}
