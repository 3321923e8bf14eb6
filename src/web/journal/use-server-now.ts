import { asServer } from './device.ts'
import { useNow } from './use-now.ts'

/** The present instant by the server's clock as it was measured, for whatever is compared with what entries say. */
export function useServerNow(every?: number): string {
  return asServer(useNow(every))
}
