import { useEffect, useState } from 'react'

/** The present instant, anew every minute, so that "late" becomes true on a screen that nobody touches. */
export function useMinute(): string {
  const [now, setNow] = useState(() => new Date().toISOString())
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date().toISOString()), 60_000)
    return () => clearInterval(timer)
  }, [])
  return now
}
