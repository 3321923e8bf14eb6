import type { z } from 'zod'
import type { backupNow } from '#actions/machine/backup-now.ts'
import { backupInEnglish as words } from '#content/wording/app-settings.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayWhen } from '../../design/say-when.ts'
import { call } from '../../journal/api.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'

type Made = z.output<(typeof backupNow)['output']>

/** A copy of everything, made by the server now. */
export function BackupScreen() {
  const refusal = useRefusal(['manager'], true)
  const { pen } = useWho()
  const { doing, run, working } = useDoing()
  const now = () =>
    run(async () => {
      const { folder, at, bytes, entries } = await call<Made>('backup-now', {})
      const when = sayWhen(at, pen.zone)
      return fill(words.done, { folder, when, bytes: String(bytes), entries: String(entries) })
    }, words.noAnswer)
  return (
    <SettingsPage part="backup">
      <p>{words.help}</p>
      {refusal && <p className="soft">{refusal}</p>}
      <p>
        <button type="button" data-weight="main" disabled={refusal !== null || working} onClick={() => void now()}>
          {working ? words.working : words.now}
        </button>
      </p>
      <DoingNote doing={doing} />
    </SettingsPage>
  )
}
