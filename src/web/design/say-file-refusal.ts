import { trayInEnglish } from '#content/wording/app-tray.ts'
import { attachmentRefusals } from '#content/wording/attachments.ts'
import { fill } from '#core/outcome/finding.ts'
import type { FileRefusal } from '../journal/take-in.ts'

/** Why a file was not taken in, in a sentence. */
export function sayFileRefusal({ because, mediaType }: FileRefusal): string {
  const { tooLarge, empty } = trayInEnglish.takeIn
  if (because === 'too-large') return tooLarge
  if (because === 'empty') return empty
  return fill(attachmentRefusals[because], { mediaType })
}
