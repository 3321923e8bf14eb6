import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { WithReason } from '../../design/with-reason.tsx'
import { makeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'

/** Takes entries of the house back, once, with a reason. They stay readable in the history. */
export function TakeBack(props: {
  readonly ids: readonly string[]
  readonly title: string
  readonly help: string
  readonly because: string
  readonly verb: string
  readonly onClose: () => void
}) {
  const { ids, ...said } = props
  const { pen } = useWho()
  const withdrawals = (reason: string) =>
    ids.map((withdraws) =>
      makeEntry(pen, {
        kind: 'withdrawal',
        stream: 'clinic',
        subject: { kind: 'clinic' },
        body: { because: 'other' },
        withdraws,
        reason,
      }),
    )
  return <WithReason {...said} close={settingsInEnglish.cancel} entries={withdrawals} />
}
