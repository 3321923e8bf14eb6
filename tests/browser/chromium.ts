import { existsSync } from 'node:fs'

const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** The browser of this machine: the one that CHROME names, or an installed one. The test set-up installs Debian's. */
export function chromium(): string {
  const found = [process.env.CHROME ?? '', ...places].find((place) => place !== '' && existsSync(place))
  if (found) return found
  throw new Error('No Chromium was found: install Debian’s package chromium, or name a browser in CHROME.')
}
