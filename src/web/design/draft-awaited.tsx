import { useEffect, useState } from 'react'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { Notice } from './notice.tsx'

/** Longer than any disk needs: another page of the app may be holding it. */
const tooLong = 4_000

/** Stands in place of a form until this device was asked for what was typed there before; never an empty page. */
export function DraftAwaited() {
  const [late, setLate] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), tooLong)
    return () => clearTimeout(timer)
  }, [])
  if (!late) return <p role="status">{words.draftAwaited}</p>
  return (
    <Notice tone="warn" title={words.draftLate} live>
      <p>{words.draftLateHelp}</p>
      <p>
        <button type="button" onClick={() => location.reload()}>
          {words.fault.reload}
        </button>
      </p>
    </Notice>
  )
}
