import { useState } from 'react'
import { settingsInEnglish as words } from '#content/wording/app-settings.ts'
import { Notice } from '../../design/notice.tsx'
import { Refused, Unreachable } from '../../journal/api.ts'

/** What became of something a person asked of the server. */
export type Doing =
  | { readonly kind: 'idle' }
  | { readonly kind: 'working' }
  | { readonly kind: 'done'; readonly said: string }
  | { readonly kind: 'failed'; readonly because: string }

/** Runs one thing at a time and remembers how it went; a refusal of the server is its own sentence. */
export function useDoing() {
  const [doing, setDoing] = useState<Doing>({ kind: 'idle' })
  const run = async (work: () => Promise<string>, noAnswer: string = words.unreachable): Promise<boolean> => {
    setDoing({ kind: 'working' })
    try {
      setDoing({ kind: 'done', said: await work() })
      return true
    } catch (error) {
      if (error instanceof Unreachable) setDoing({ kind: 'failed', because: noAnswer })
      else if (error instanceof Refused) setDoing({ kind: 'failed', because: error.message })
      else throw error
      return false
    }
  }
  const fail = (because: string) => setDoing({ kind: 'failed', because })
  return { doing, run, fail, working: doing.kind === 'working' }
}

export function DoingNote({ doing }: { readonly doing: Doing }) {
  if (doing.kind === 'failed') {
    return (
      <Notice tone="warn" live>
        {doing.because}
      </Notice>
    )
  }
  return <p role="status">{doing.kind === 'done' ? doing.said : ''}</p>
}
