import { useEffect, useState } from 'react'

/** Asks the browser never to throw away what is kept here; true when it refuses, or cannot say. */
export function useLastingStorage(): boolean {
  const [fails, setFails] = useState(false)
  useEffect(() => {
    // Without a secure context there is no storage manager to ask.
    const asked = navigator.storage?.persist?.() ?? Promise.resolve(false)
    void asked.then((granted) => setFails(!granted)).catch(() => setFails(true))
  }, [])
  return fails
}
