import { Link, Redirect, useParams, useSearchParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { type BodyOf, type KindName, kindNamed, type Line, lineOfOne } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { Page } from '../../../design/page.tsx'
import { entryKind } from '../../../forms/forms.ts'
import { outbox } from '../../../journal/outbox.ts'
import { useSignal } from '../../../journal/signal.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, planLineHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { library, useCaseView } from '../case-view.ts'
import { kindName } from '../entry.tsx'
import { MayNotWrite } from '../may-correct.tsx'
import { WithCase } from '../with-case.tsx'
import { Writing } from './writing.tsx'
import { WritingBothEars } from './writing-both-ears.tsx'

const words = caseInEnglish.write

/** One entry is written, corrected or settled on a page of its own. */
export default function WriteScreen() {
  return (
    <WithCase>
      <Write />
    </WithCase>
  )
}

function Write() {
  const { kind = '' } = useParams()
  const [query] = useSearchParams()
  const { file } = useCaseView()
  const { me } = useWho()
  const waiting = useSignal(outbox)
  if (!kindNamed(kind) || entryKind(kind as KindName).place !== 'case') {
    return <NotHere said={fill(words.notHere, { kind: kindName(kind) })} />
  }
  const name = kind as KindName
  const base = query.get('amend')
  const refused = waiting.find(({ entry, state }) => entry.id === base && state === 'refused') ?? null
  const amended = base === null ? null : ((refused ? lineOfOne(refused.entry) : file.theCase.line(base)) ?? null)
  if (base !== null && !isReadable(amended, kind)) return <NotHere said={words.entryNotHere} />
  if (amended && !entryKind(name).amendable) return <NotHere said={words.notAmendable} />
  if (!writersOf(name).includes(me.role)) return <MayNot kind={name} />
  if (name === 'planned-line' && !refused && query.get('settle') === null) {
    return <ToDosePlan amended={amended} operation={query.get('operation')} />
  }
  if (query.get('side') === 'BOTH' && entryKind(name).subjects.includes('ear')) return <WritingBothEars kind={name} />
  return <Writing key={query.toString()} kind={name} amended={amended} refused={refused} query={query} />
}

/** A planned line is worked out while it is typed: it is written and changed on the pages of its plan. */
function ToDosePlan({ amended, operation }: { readonly amended: Line | null; readonly operation: string | null }) {
  const { id, operations, file } = useCaseView()
  const subject = amended?.header.subject
  const line = amended === null ? null : (amended as Line<BodyOf<'planned-line'>>).body.line
  const of = subject?.kind === 'operation' ? subject.operation : operation
  if (of !== null) return <Redirect to={planLineHref(id, of, line)} replace />
  return (
    <Page title={fill(words.title, { kind: kindsInEnglish['planned-line'] })} whose={<CaseLine about={null} />}>
      <p>{operations.length === 0 ? dosePlanInEnglish.needsOperation : dosePlanInEnglish.whichOperation}</p>
      <ul>
        {operations.map((one) => (
          <li key={one.id}>
            <Link href={planLineHref(id, one.id, null)}>
              {saySubject({ kind: 'operation', animal: '', operation: one.id }, file, library)}
            </Link>
          </li>
        ))}
      </ul>
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function isReadable(line: Line | null, kind: string): line is Line {
  return line !== null && line.header.kind === kind && line.known && !line.erased
}

function NotHere({ said }: { readonly said: string }) {
  const { id } = useCaseView()
  return (
    <Page title={caseInEnglish.chapter.write}>
      <p>{said}</p>
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

/** Whose role may not write this is told who may, and how to keep what they know. */
function MayNot({ kind }: { readonly kind: KindName }) {
  const { id } = useCaseView()
  const { me } = useWho()
  return (
    <Page title={fill(words.title, { kind: kindsInEnglish[kind] })}>
      <MayNotWrite kind={kind}>
        <p>{words.mayNotHelp}</p>
      </MayNotWrite>
      {writersOf('note').includes(me.role) && (
        <p>
          <Link href={writeHref(id, 'note')}>{words.writeNote}</Link>
        </p>
      )}
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}
