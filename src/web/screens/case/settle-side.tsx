import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { sidesInEnglish, settleSideInEnglish as words } from '#content/wording/app-sides.ts'
import { type Side, sides } from '#core/animal/species.ts'
import type { SideSource } from '#core/chapters/side-sources.ts'
import { againstSide, type SideDisagreement, saySource } from '#core/chapters/sides.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { Choices } from '../../design/choices.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useDraft } from '../../journal/drafts.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { entryHref, historyHref, writeHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { MayNotWrite } from './may-correct.tsx'
import { useFaultFocus } from './use-fault-focus.ts'

type Draft = { readonly side: Side | null; readonly because: string }
const nothing: Draft = { side: null, because: '' }
type About = { readonly found: SideDisagreement; readonly operation: string }

/** A named person says which ear it is; what somebody decided otherwise is not overruled but amended. */
export function SettleSide({ found, operation }: About) {
  const { me } = useWho()
  const [open, setOpen] = useState(false)
  if (!writersOf('side-settled').includes(me.role)) return <MayNotWrite kind="side-settled" />
  if (open) return <Settling found={found} operation={operation} onClose={() => setOpen(false)} />
  return (
    <p data-screen-only>
      <button type="button" onClick={() => setOpen(true)}>
        {words.open}
      </button>
    </p>
  )
}

function Settling({ found, operation, onClose }: About & { readonly onClose: () => void }) {
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(`side ${operation}`, me.id, () => nothing)
  if (!ready) return null
  const { side } = draft
  const because = draft.because.trim()
  const against = side && againstSide(found, side)
  const overruled = against ? [...new Set(against.overrules.map(({ line }) => line))] : []
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (side === null || because === '' || overruled.length === 0) return
    await writeEntry(pen, {
      kind: 'side-settled',
      stream: file.stream,
      subject: aboutOperation(file, operation),
      body: { side, overruled, because },
    })
    await clear()
    onClose()
  }
  return (
    <form ref={form} className="stack" onSubmit={(event) => void keep(event)} noValidate>
      <p>{words.lead}</p>
      <Choices
        legend={words.which}
        error={tries > 0 && side === null ? words.whichMissing : null}
        value={side}
        options={sides}
        say={(one) => one}
        onChoose={(one) => change({ ...draft, side: one })}
      />
      {against && <Against found={found} operation={operation} against={against} />}
      {overruled.length > 0 && (
        <TextField
          label={words.because}
          error={tries > 0 && because === '' ? words.becauseMissing : null}
          autoComplete="off"
          value={draft.because}
          onText={(text) => change({ ...draft, because: text })}
        />
      )}
      <p className="row">
        {(side === null || overruled.length > 0) && (
          <button type="submit" data-weight="main">
            {side === null ? words.keepOpen : fill(words.keep, { side })}
          </button>
        )}
        <button type="button" data-weight="quiet" onClick={onClose}>
          {words.close}
        </button>
      </p>
    </form>
  )
}

/** Where an entry that names the wrong side is put right: a pause by answering anew, anything else by amending it. */
function Against({ operation, against }: About & { readonly against: ReturnType<typeof againstSide> }) {
  const { file, id } = useCaseView()
  const { overrules, amends } = against
  const agreed = amends.find(({ from }) => from === 'agreement' || from === 'booking')
  const subject = aboutOperation(file, operation)
  return (
    <>
      {overrules.length > 0 && (
        <>
          <p>{words.wrong}</p>
          <Sources some={overrules} />
        </>
      )}
      {amends.length > 0 && (
        <>
          <p>{words.amend}</p>
          <ul>
            {amends.map((source) => (
              <li key={`${source.from} ${source.line}`}>
                <Link href={historyHref(id, source.line)}>
                  {fill(words.amendLink, { what: saySource(source, file, sidesInEnglish) })}
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
      {agreed && (
        <p>
          <strong>{fill(words.fresh, { side: agreed.says === null ? '' : sidesInEnglish.says[agreed.says] })}</strong>{' '}
          <Link href={writeHref(id, 'agreement')}>{words.freshLink}</Link>{' '}
          <Link href={writeHref(id, 'emergency-declared', { subject })}>{words.emergencyLink}</Link>
        </p>
      )}
    </>
  )
}

function Sources({ some }: { readonly some: readonly SideSource[] }) {
  const { file, id } = useCaseView()
  return (
    <ul>
      {some.map((source) => (
        <li key={`${source.from} ${source.line}`}>
          <Link href={entryHref(id, source.line)}>{saySource(source, file, sidesInEnglish)}</Link>
        </li>
      ))}
    </ul>
  )
}
