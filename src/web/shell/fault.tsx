import { Component, type ReactNode } from 'react'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { Notice } from '../design/notice.tsx'

/** A page that fails does not take the frame with it, and says what to do. */
export class Fault extends Component<{ readonly children: ReactNode }, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true }
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children
    return (
      <Notice tone="warn" title={words.fault} live>
        <p>{words.faultHelp}</p>
        <p>
          <button type="button" onClick={() => location.reload()}>
            {words.reload}
          </button>
        </p>
      </Notice>
    )
  }
}
