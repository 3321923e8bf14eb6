import { useEffect, useState } from 'react'

/**
 * Keeps the screen awake while the page is open, where the device can; true when it cannot. A page that comes back to
 * the front asks again, because the browser lets go of the lock when it is hidden.
 */
export function useAwake(): boolean {
  const [fails, setFails] = useState(false)
  useEffect(() => {
    let lock: WakeLockSentinel | null = null
    let over = false
    const ask = async () => {
      if (document.visibilityState !== 'visible') return
      try {
        const asked = await navigator.wakeLock.request('screen')
        if (over) await asked.release()
        else lock = asked
        setFails(false)
      } catch {
        setFails(true)
      }
    }
    const again = () => void ask()
    document.addEventListener('visibilitychange', again)
    void ask()
    return () => {
      over = true
      document.removeEventListener('visibilitychange', again)
      void lock?.release()
    }
  }, [])
  return fails
}
