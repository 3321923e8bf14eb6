import { roomInEnglish } from '#content/wording/app-room.ts'
import { fill } from '#core/outcome/finding.ts'

/** Minutes, and hours once there are two of them: nobody divides by sixty from two metres away. */
export function sayMinutes(minutes: number): string {
  if (minutes < 120) return fill(roomInEnglish.minutes, { minutes: String(minutes) })
  const rest = String(minutes % 60).padStart(2, '0')
  return fill(roomInEnglish.hours, { hours: String(Math.floor(minutes / 60)), minutes: rest })
}
