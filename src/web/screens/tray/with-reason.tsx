import { trayInEnglish as words } from '#content/wording/app-tray.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Filed } from '#core/tray/tray.ts'
import { WithReason } from '../../design/with-reason.tsx'
import { useWho } from '../../session/use-who.ts'
import { type Arrived, takeBack, throwAway } from './filing.ts'

const reasonWords = { because: words.because, becauseHelp: words.becauseHelp, close: words.close } as const

export function ThrowAway({ arrived, onClose }: { readonly arrived: Arrived; readonly onClose: () => void }) {
  const { pen } = useWho()
  return (
    <WithReason
      title={fill(words.awayTitle, { what: words.seems[arrived.body.seems] })}
      help={words.awayHelp}
      {...reasonWords}
      verb={words.awayDo}
      entries={(reason) => throwAway(pen, arrived, reason)}
      onClose={onClose}
    />
  )
}

export function TakeBack(props: { readonly filed: Filed; readonly name: string; readonly onClose: () => void }) {
  const { filed, name, onClose } = props
  const { pen } = useWho()
  return (
    <WithReason
      title={words.takeBackTitle}
      help={fill(words.takeBackHelp, { name })}
      {...reasonWords}
      verb={words.takeBackDo}
      entries={(reason) => takeBack(pen, filed, reason)}
      onClose={onClose}
    />
  )
}
