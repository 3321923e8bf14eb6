import { useEffect, useState } from 'react'

/** The present instant, anew every five seconds: a clock that is read from two metres away. */
export function useNow(): string {
  const [now, setNow] = useState(() => new Date().toISOString())
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date().toISOString()), 5_000)
    return () => clearInterval(timer)
  }, [])
  return now
}
