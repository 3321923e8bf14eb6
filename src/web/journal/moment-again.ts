import type { Line } from '#core/journal/fold.ts'
import type { Moment } from '#core/time/moment.ts'
import { asHere, deviceId } from './device.ts'

/**
 * The moment of an entry, for another one that is written here instead of it. What a clock said stands corrected in the
 * case; it is told in the time of this device, which will be corrected in turn. Only a moment of this device that was
 * never measured is still in its time.
 */
export function momentAgain({ header, orderCertain }: Pick<Line, 'header' | 'orderCertain'>): Moment {
  const { happenedAt, device } = header
  if (happenedAt.by === 'person' || (!orderCertain && device.id === deviceId)) return happenedAt
  return { ...happenedAt, at: asHere(happenedAt.at) }
}
