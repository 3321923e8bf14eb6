import { useCallback, useEffect, useRef, useState } from 'react'
import { database } from './database.ts'

/**
 * What somebody is typing, on this device's disk at every change: a reload, a crash or a dead server loses none of it.
 * `ready` is false until the former draft was looked for. `clear` when the entry was kept or the form was given up.
 */
export function useDraft<Draft>(key: string, person: string, empty: () => Draft) {
  const [draft, setDraft] = useState<Draft>(empty)
  const [ready, setReady] = useState(false)
  const [found, setFound] = useState<string | null>(null)
  const writing = useRef<Promise<unknown>>(Promise.resolve())
  const place = `${person} ${key}`

  useEffect(() => {
    let gone = false
    database()
      .then((db) => db.get('drafts', place))
      .then((kept) => {
        if (gone) return
        if (kept) {
          setDraft(kept.draft as Draft)
          setFound(kept.at)
        }
        setReady(true)
      })
    return () => {
      gone = true
    }
  }, [place])

  const change = useCallback(
    (next: Draft) => {
      setDraft(next)
      const at = new Date().toISOString()
      writing.current = writing.current.then(async () =>
        (await database()).put('drafts', { draft: next, at, person }, place),
      )
    },
    [place, person],
  )

  const clear = useCallback(async () => {
    await writing.current
    await (await database()).delete('drafts', place)
    setFound(null)
  }, [place])

  return { draft, change, clear, ready, found }
}
