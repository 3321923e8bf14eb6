import { useSyncExternalStore } from 'react'
import type { Theme } from '#core/plate/theme.ts'

const asked = {
  print: matchMedia('print'),
  forced: matchMedia('(forced-colors: active)'),
  dark: matchMedia('(prefers-color-scheme: dark)'),
}

function listen(changed: () => void): () => void {
  for (const media of Object.values(asked)) media.addEventListener('change', changed)
  return () => {
    for (const media of Object.values(asked)) media.removeEventListener('change', changed)
  }
}

function now(): Theme {
  if (asked.print.matches) return 'print'
  if (asked.forced.matches) return 'forced'
  return asked.dark.matches ? 'dark' : 'light'
}

/** The theme that paper, machine and reader ask for at this moment. */
export function useTheme(): Theme {
  return useSyncExternalStore(listen, now)
}
