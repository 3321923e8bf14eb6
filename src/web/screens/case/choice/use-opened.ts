import { useEffect, useRef, useState } from 'react'
import { useSearchParams } from 'wouter'
import type { ToldId } from '#core/choice/option.ts'
import { toldIds } from '#core/choice/told-ids.ts'

/** How many options can be read facing each other. */
const facing = 2

/**
 * The options that stand opened, from the address, so that a page that is shared, printed or read again shows the same.
 * A third takes the place of the one that was opened first; `closed` says so.
 */
export function useOpened() {
  const [query, setQuery] = useSearchParams()
  const [closed, setClosed] = useState<ToldId | null>(null)
  const [last, setLast] = useState<ToldId | null>(null)
  const wanted = query.get('open')?.split(',') ?? []
  const opened = toldIds.filter((id) => wanted.includes(id)).slice(0, facing)
  const order = wanted.filter((id): id is ToldId => opened.some((one) => one === id))
  const put = (ids: readonly ToldId[]) =>
    setQuery(
      (before) => {
        const next = new URLSearchParams(before)
        if (ids.length > 0) next.set('open', ids.join(','))
        else next.delete('open')
        return next
      },
      { replace: true },
    )
  return {
    opened: order,
    /** The option that went when a third was opened. */
    closed,
    /** The option opened last, whose heading takes the focus. */
    last,
    open: (id: ToldId) => {
      setLast(id)
      setClosed(order.length === facing ? (order[0] ?? null) : null)
      put([...order, id].slice(-facing))
    },
    close: (id: ToldId) => {
      setLast(null)
      setClosed(null)
      put(order.filter((one) => one !== id))
    },
  }
}

/** Takes the focus and brings into sight what was just opened. */
export function useFocusWhen(is: boolean) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    if (!is) return
    heading.current?.focus({ preventScroll: true })
    heading.current?.scrollIntoView({ block: 'nearest' })
  }, [is])
  return heading
}
