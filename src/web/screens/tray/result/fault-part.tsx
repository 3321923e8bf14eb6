import { takeInResultInEnglish as words } from '#content/wording/app-take-in-result.ts'
import type { Fault } from '#core/laboratory/fault.ts'
import { fill } from '#core/outcome/finding.ts'
import { Notice } from '../../../design/notice.tsx'

/** Why something cannot be read, in which line and field, and that nothing of it was taken. */
export function FaultPart({ line, fault }: { readonly line: number | null; readonly fault: Fault }) {
  const { code, found, place } = fault
  const title = line === null ? words.faultTitle : fill(words.messageFault, { line: String(line) })
  const about = { line: String(place.line), field: place.field ?? '' }
  return (
    <Notice tone="warn" title={title} live>
      <p>{fill(words.faults[code], { found })}</p>
      <p className="soft">
        {fill(place.field === null ? words.at.line : words.at.field, about)} {words.nothingTaken}
      </p>
    </Notice>
  )
}
