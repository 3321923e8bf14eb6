import { clockFace, type Shout } from '#core/theatre/shouts.ts'
import { asServer, deviceId } from '../../../../journal/device.ts'

/**
 * The time since an emergency was tapped. A tap on this device is counted on this device's clock, so that a clock that
 * is wrong, with or without the server, makes no minute more or less.
 */
export function sayClock({ begun, ended }: Shout, now: string): string {
  if (ended) return clockFace(begun.at, ended.at)
  return begun.header.device.id === deviceId
    ? clockFace(begun.header.happenedAt.at, now)
    : clockFace(begun.at, asServer(now))
}
