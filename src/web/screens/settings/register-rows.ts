import { call } from '../../journal/api.ts'
import { refreshHouse } from '../../journal/cases.ts'
import type { Bodies, Register } from './standing.ts'

/** Writes a row, or takes it away with null, and reads the house again. */
export async function putRow<Name extends Register>(
  register: Name,
  id: string,
  body: Bodies[Name] | null,
): Promise<void> {
  await call('put-row', { register, id, body })
  refreshHouse()
}
