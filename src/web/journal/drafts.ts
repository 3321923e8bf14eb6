import { useCallback, useEffect, useRef, useState } from 'react'
import { database } from './database.ts'

let open: { readonly page: string; readonly place: string } | null = null

/** The draft that was last opened on the page that stands here; null where none was. */
export function draftOnThisPage(): string | null {
  return open?.page === location.pathname ? open.place : null
}

/** Every draft begun on this device, of whomever; not those that were set aside. */
export async function countDrafts(): Promise<number> {
  const places = await (await database()).getAllKeys('drafts')
  return places.filter((place) => !place.startsWith(aside)).length
}

/** Before the place of whatever was set aside among the drafts. */
export const aside = 'aside '

/** A draft that its page cannot show any more is kept under another name; its text is for the person who typed it. */
export async function setDraftAside(place: string): Promise<string> {
  const db = await database()
  const kept = await db.get('drafts', place)
  if (!kept) return ''
  await db.put('drafts', kept, `${aside}${kept.at} ${place}`)
  await db.delete('drafts', place)
  return JSON.stringify(kept.draft, null, 2)
}

/**
 * What somebody is typing, on this device's disk at every change: a reload, a crash or a dead server loses none of it.
 * `ready` is false until the former draft was looked for. `clear` when the entry was kept or the form was given up.
 */
export function useDraft<Draft>(key: string, person: string, empty: () => Draft) {
  const [draft, setDraft] = useState<Draft>(empty)
  const [ready, setReady] = useState(false)
  const [found, setFound] = useState<string | null>(null)
  const [fault, setFault] = useState<unknown>(null)
  const writing = useRef<Promise<unknown>>(Promise.resolve())
  const place = `${person} ${key}`

  useEffect(() => {
    let gone = false
    open = { page: location.pathname, place }
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
      .catch((error: unknown) => gone || setFault(error))
    return () => {
      gone = true
    }
  }, [place])

  const change = useCallback(
    (next: Draft) => {
      setDraft(next)
      const at = new Date().toISOString()
      writing.current = writing.current.then(async () => {
        const tx = (await database()).transaction('drafts', 'readwrite')
        const put = tx.store.put({ draft: next, at, person }, place)
        // Not when the answer comes back: a page that is loaded anew in between would take the writing with it.
        tx.commit()
        await Promise.all([put, tx.done])
      })
    },
    [place, person],
  )

  const clear = useCallback(async () => {
    await writing.current
    await (await database()).delete('drafts', place)
    setFound(null)
  }, [place])

  // Without the device's disk nothing typed would be safe: the page says so, and never stays empty instead.
  if (fault !== null) throw fault
  return { draft, change, clear, ready, found }
}
