import type { Subject } from '#core/journal/entry.ts'
import type { Chart } from './chart.ts'

/** One checkpoint stamped as done. */
export function stamp(
  chart: Chart,
  operation: Subject,
  by: string,
  at: string,
  checkpoint: string,
  detail: Record<string, string> = {},
  text: string | null = null,
): void {
  chart.write('theatre-stamp', { at, by, subject: operation }, { checkpoint, answer: 'done', detail, text })
}
