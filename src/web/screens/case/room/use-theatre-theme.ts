import { useEffect } from 'react'

/** Dark, large and without the colours of monitors, as long as the page is open. */
export function useTheatreTheme(): void {
  useEffect(() => {
    const { dataset } = document.documentElement
    dataset.theme = 'theatre'
    return () => {
      delete dataset.theme
    }
  }, [])
}
