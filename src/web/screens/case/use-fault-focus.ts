import { type RefObject, useEffect, useRef } from 'react'

/**
 * Takes the focus to the first answer that is missing or wrong, after each try to keep a form that failed. `tries`
 * counts them; `skip` leaves the focus to a summary of the form itself.
 */
export function useFaultFocus(tries: number, skip = false): RefObject<HTMLFormElement | null> {
  const form = useRef<HTMLFormElement>(null)
  const skips = useRef(skip)
  skips.current = skip
  useEffect(() => {
    if (tries === 0 || skips.current) return
    const bad = form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')
    const control = bad instanceof HTMLFieldSetElement ? bad.querySelector<HTMLElement>('input') : bad
    control?.focus()
  }, [tries])
  return form
}
