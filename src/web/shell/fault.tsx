import { Component, type ReactNode, useEffect, useState } from 'react'
import { shellInEnglish } from '#content/wording/app-shell.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { Notice } from '../design/notice.tsx'
import { Page } from '../design/page.tsx'
import { saveText } from '../design/save-text.ts'
import { countDrafts, draftOnThisPage, setDraftAside } from '../journal/drafts.ts'
import { outbox, waitingRows } from '../journal/outbox.ts'
import { useSignal } from '../journal/signal.ts'
import { PartNotLoaded } from '../part-not-loaded.ts'

const words = shellInEnglish.fault

type State = { readonly error: unknown; readonly failed: boolean }

type Props = {
  /** It stands around a whole page, whose heading it then needs. */
  readonly page?: boolean
  /** Only a link that goes missing; what stands beside it says the rest. */
  readonly quiet?: boolean
  /** Said instead of all else, where what stands beside it is whole and says the rest. */
  readonly instead?: string
  readonly children: ReactNode
}

/** What fails does not take the rest of the page with it: it says what happened, what is kept, and how to go on. */
export class Fault extends Component<Props, State> {
  override state: State = { error: null, failed: false }

  static getDerivedStateFromError(error: unknown): State {
    return { error, failed: true }
  }

  override render(): ReactNode {
    const { error, failed } = this.state
    if (!failed) return this.props.children
    if (this.props.quiet) return null
    const { instead } = this.props
    if (instead !== undefined && !(error instanceof PartNotLoaded)) return <p>{instead}</p>
    const again = () => {
      if (error instanceof PartNotLoaded) error.forget()
      this.setState({ error: null, failed: false })
    }
    const missing = error instanceof PartNotLoaded
    const title = missing ? words.part : words.title
    const said = (
      <div className="stack">
        {missing ? <PartMissing again={again} /> : <Failed />}
        <WhatIsKept />
        <details>
          <summary>{words.said}</summary>
          <p className="soft">{error instanceof Error ? error.message : String(error)}</p>
        </details>
        <p>
          <a href="/">{words.home}</a>
        </p>
      </div>
    )
    if (this.props.page) return <Page title={title}>{said}</Page>
    return (
      <section className="stack">
        <p>
          <strong>{title}</strong>
        </p>
        {said}
      </section>
    )
  }
}

/** Loading the page again where no server answers would leave nothing on the screen at all: the server is asked first. */
function PartMissing({ again }: { readonly again: () => void }) {
  const [answers, setAnswers] = useState<boolean | null>(null)
  useEffect(() => {
    void serverAnswers().then(setAnswers)
  }, [])
  // A browser may remember that a file could not be had, and then never asks for it again on this page.
  const tryAgain = async () => ((await serverAnswers()) ? location.reload() : again())
  if (answers === null) return <p role="status">{shellInEnglish.loading}</p>
  return (
    <Notice tone="warn" live>
      <p>{answers ? words.partChanged : words.partAway}</p>
      <p>
        <button type="button" data-weight="main" onClick={answers ? () => location.reload() : () => void tryAgain()}>
          {answers ? words.loadNew : words.tryAgain}
        </button>
      </p>
    </Notice>
  )
}

async function serverAnswers(): Promise<boolean> {
  try {
    return (await fetch('/api/health', { cache: 'no-store' })).ok
  } catch {
    return false
  }
}

function Failed() {
  const draft = draftOnThisPage()
  const begin = async (place: string) => {
    saveText(words.typed, await setDraftAside(place))
    location.reload()
  }
  return (
    <Notice tone="warn" live>
      <p>{words.help}</p>
      <p>
        <button type="button" data-weight="main" onClick={() => location.reload()}>
          {words.reload}
        </button>
      </p>
      {draft !== null && (
        <>
          <p>{words.setAsideHelp}</p>
          <p>
            <button type="button" onClick={() => void begin(draft)}>
              {words.setAside}
            </button>
          </p>
        </>
      )}
    </Notice>
  )
}

function WhatIsKept() {
  const unsent = useSignal(outbox).length + useSignal(waitingRows).length
  const [drafts, setDrafts] = useState<number | null>(0)
  useEffect(() => {
    countDrafts().then(setDrafts, () => setDrafts(null))
  }, [])
  return (
    <>
      <p>{words.kept}</p>
      <ul>
        {drafts === null && <li>{words.notCounted}</li>}
        {drafts !== null && drafts > 0 && <li>{sayCount(words.drafts, drafts)}</li>}
        {unsent > 0 && <li>{sayCount(words.unsent, unsent)}</li>}
        {drafts === 0 && unsent === 0 && <li>{words.nothingHere}</li>}
      </ul>
    </>
  )
}
