import { clockFace, type Shout } from '#core/theatre/shouts.ts'
import { asServer, deviceId } from '../../../../journal/device.ts'

/**
 * The time since an emergency was tapped, both by the server's clock. A tap on this device before its clock was ever
 * measured is counted on this device's clock, so that a clock that is wrong makes no minute more or less.
 */
export function sayClock({ begun, ended }: Shout, now: string): string {
  if (ended) return clockFace(begun.at, ended.at)
  const isOfThisClock = !begun.orderCertain && begun.header.device.id === deviceId
  return clockFace(begun.at, isOfThisClock ? now : asServer(now))
}
