import { offlineInEnglish } from '#content/wording/app-offline.ts'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { Notice } from '../../../design/notice.tsx'
import { useAwake } from './use-awake.ts'
import { useLastingStorage } from './use-lasting-storage.ts'

const { insecure } = offlineInEnglish

/** What this device or its connection cannot do for a theatre record, said once each, with what helps. */
export function DeviceNotices() {
  const darkens = useAwake()
  const fleeting = useLastingStorage()
  // There one thing is the reason of all: no worker that opens the app, no promise of the storage, no lock of the screen.
  if (!window.isSecureContext) {
    return (
      <Notice tone="warn" title={insecure.title}>
        <p>{insecure.help}</p>
        <p>
          <a href="/connect">{insecure.connect}</a>
        </p>
      </Notice>
    )
  }
  return (
    <>
      {fleeting && <Notice tone="warn" title={words.notOnDisk} />}
      {darkens && <p className="soft">{words.noWakeLock}</p>}
    </>
  )
}
