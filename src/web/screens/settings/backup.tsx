import { backupInEnglish as words } from '#content/wording/app-settings.ts'
import { fill } from '#core/outcome/finding.ts'
import { call } from '../../journal/api.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'

type Made = { readonly name: string; readonly bytes: number }

/** A copy of everything, made by the server now. */
export function BackupScreen() {
  const refusal = useRefusal(['manager'], true)
  const { doing, run, working } = useDoing()
  const now = () =>
    run(async () => {
      const { name, bytes } = await call<Made>('backup-now', {})
      return `${fill(words.done, { name })} (${fill(words.bytes, { count: String(bytes) })})`
    })
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
