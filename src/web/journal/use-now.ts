import { useEffect, useState } from 'react'

/** The present instant by this device's clock, anew every five seconds or as often as is asked: a clock that is read from two metres away. */
export function useNow(every = 5_000): string {
  const [now, setNow] = useState(() => new Date().toISOString())
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date().toISOString()), every)
    return () => clearInterval(timer)
  }, [every])
  return now
}
