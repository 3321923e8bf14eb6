/**
 * The recomputing of a dose plan and of all odds of a case in a real Chromium, from a bundle made as the app is made. Used by scripts/bench.mjs;
 * alone: `node scripts/bench-browser.mjs [ROUNDS]`.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { chromium } from '@playwright/test'
import { build } from 'vite'
import { ensureDebian } from './ensure-debian.mjs'
import { ready } from './ready.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const places = [process.env.CHROME ?? '', '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** One module for the browser, minified like the app's own. */
async function bundle(entry) {
  const outDir = join(root, '.cache', 'bench-browser')
  const lib = { entry, formats: ['es'], fileName: () => 'main.js' }
  await build({ root, logLevel: 'warn', configFile: false, build: { lib, outDir, emptyOutDir: true, minify: true } })
  return readFileSync(join(outDir, 'main.js'), 'utf8')
}

export async function benchInBrowser(say, rounds = 200) {
  const modules = {
    'main.js': await bundle('tests/bench/dose-plan.ts'),
    'odds.js': await bundle('tests/bench/odds.ts'),
  }
  ensureDebian(['chromium'])
  const executablePath = places.find((place) => place !== '' && existsSync(place))
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] })
  try {
    const page = await browser.newPage()
    await page.route('http://bench.test/**', (route) =>
      route.request().url().endsWith('.js')
        ? route.fulfill({ contentType: 'text/javascript', body: modules[route.request().url().split('/').at(-1)] })
        : route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>bench</title>' }),
    )
    await page.goto('http://bench.test/')
    const found = await page.evaluate(
      `import('/main.js').then((made) => ({ lines: made.benchDosePlan(25, ${rounds}), plan: made.benchPlanNow(25, ${rounds}) }))`,
    )
    console.log(`Chromium ${browser.version()}, plan of ${found.lines.size} lines: ${say(found.lines)}`)
    console.log(
      `Chromium ${browser.version()}, plan of ${found.plan.size} lines in a case, as its page recomputes it: ${say(found.plan)}`,
    )
    await benchOddsIn(browser, page)
    return found
  } finally {
    await browser.close()
  }
}

/** In a fresh page each time: nothing is worked out before, and nothing of the program is warm. */
async function benchOddsIn(browser, page, rounds = 20) {
  const first = []
  const later = []
  let size = 0
  for (let round = 0; round < rounds; round += 1) {
    await page.goto('http://bench.test/')
    const found = await page.evaluate(`import('/odds.js').then((made) => made.benchOdds())`)
    size = found.size
    first.push(found.first)
    later.push(...found.later)
  }
  const said = (times) => {
    times.sort((a, b) => a - b)
    const ms = (part) => `${(times[Math.floor(part * (times.length - 1))] ?? 0).toFixed(1)} ms`
    return `half within ${ms(0.5)}, 95 % within ${ms(0.95)}`
  }
  console.log(
    `Chromium ${browser.version()}, all odds of a case (${size}): ${said(later)} (target 50 ms); the first time in a fresh page ${said(first)}`,
  )
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await ready()
  await benchInBrowser(
    ({ half, most }) => `half within ${half.toFixed(1)} ms, 95 % within ${most.toFixed(1)} ms`,
    Number(process.argv[2] ?? 200),
  )
}
