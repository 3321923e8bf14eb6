import { useNow } from './use-now.ts'

/** The present instant, anew every minute, so that "late" becomes true on a screen that nobody touches. */
export function useMinute(): string {
  return useNow(60_000)
}
