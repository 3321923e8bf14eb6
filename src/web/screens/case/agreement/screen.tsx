import { useState } from 'react'
import { Link } from 'wouter'
import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { writersOf } from '#core/people/may-write.ts'
import { Caution } from '../../../design/caution.tsx'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { MayNotWrite } from '../may-correct.tsx'
import { WithCase } from '../with-case.tsx'
import styles from './agreement.module.css'
import { EstimatePart } from './estimate-part.tsx'
import { LimitsPart } from './limits-part.tsx'
import { PlanPart } from './plan-part.tsx'
import { ReviewPart } from './review-part.tsx'
import { SignaturePart } from './signature-part.tsx'
import { StateLines, useSaidAgreement } from './state-lines.tsx'
import { TakeBackPart } from './take-back-part.tsx'
import { TaughtPart } from './taught-part.tsx'
import { useTalk } from './use-talk.ts'
import { WhoPart } from './who-part.tsx'

/** The agreement of one case on one page, in the order of the talk: costs, plan, who, wishes, said back, signature. */
export default function AgreementScreen() {
  return (
    <WithCase>
      <AgreementPage />
    </WithCase>
  )
}

function AgreementPage() {
  const { id } = useCaseView()
  const { me } = useWho()
  const [kept, setKept] = useState(0)
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine />}>
      <StateLines />
      {kept > 0 && <Notice title={words.kept} live />}
      {writersOf('agreement').includes(me.role) ? (
        <TalkParts key={kept} onKept={() => setKept(kept + 1)} />
      ) : (
        <MayNotWrite kind="agreement" />
      )}
      <TakeBackPart />
      <Caution />
      <p className="row" data-screen-only>
        <Link href={writeHref(id, 'agreement')}>{words.form}</Link>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

/** Begun anew once an agreement was kept: what was signed is not there to be signed twice. */
function TalkParts({ onKept }: { readonly onKept: () => void }) {
  const { id } = useCaseView()
  const talk = useTalk()
  const { standing } = useSaidAgreement()
  const stands = standing === 'holds' || standing === 'done'
  if (!talk.ready) return <DraftAwaited />
  if (Object.keys(talk.setting.planned).length === 0) {
    return (
      <p>
        {words.nothingPlanned} <Link href={writeHref(id, 'choice')}>{words.toChoice}</Link>
      </p>
    )
  }
  if (talk.reviewing && talk.body) return <ReviewPart talk={talk} body={talk.body} onKept={onKept} />
  return (
    <div className={styles.talk} data-stands={stands}>
      {stands && (
        <p className="soft" data-screen-only>
          {words.anew}
        </p>
      )}
      <EstimatePart talk={talk} />
      <div data-screen-only>
        <PlanPart talk={talk} />
        <WhoPart talk={talk} />
        <LimitsPart talk={talk} />
        <TaughtPart talk={talk} />
        <SignaturePart talk={talk} />
      </div>
    </div>
  )
}
