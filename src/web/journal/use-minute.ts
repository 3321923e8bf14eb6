import { useServerNow } from './use-server-now.ts'

/** The present instant by the server's clock, anew every minute, so that "late" becomes true on a screen that nobody touches. */
export function useMinute(): string {
  return useServerNow(60_000)
}
