import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { type SaidAgreement, sayAgreement } from '#core/agreement/say-agreement.ts'
import { toldToday } from '#documents/agreement/consent-today.ts'
import { Notice } from '../../../design/notice.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { useCaseView } from '../case-view.ts'

/** How the newest agreement of this case stands today. */
export function useSaidAgreement(): SaidAgreement {
  const { file } = useCaseView()
  return sayAgreement(file, toldToday, words)
}

/** Agreed when and by whom, and whether it holds; a broken one stands out. */
export function StateLines() {
  const { standing, lines } = useSaidAgreement()
  return (
    <Notice tone={standing === 'asks' ? 'warn' : 'plain'}>
      {lines.map((line, place) => (
        <p key={line}>
          {place === 0 ? (
            <strong>
              <WithSides text={line} />
            </strong>
          ) : (
            <WithSides text={line} />
          )}
        </p>
      ))}
    </Notice>
  )
}
