/**
 * The theatre record without the network, in a real Chromium against the real server on both stores: from a tap to
 * "kept here", and from the return of the network until the server has 500 entries. Used by scripts/bench.mjs; alone:
 * `node scripts/bench-offline.mjs [ENTRIES]`.
 */
import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { chromium } from '@playwright/test'
import { buildEntry } from './build-entry.mjs'
import { ensureDebian } from './ensure-debian.mjs'
import { ready } from './ready.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const places = [process.env.CHROME ?? '', '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']
const room = '/case/juniper/room/operation-juniper'

/** The program as it is started by hand; resolves with its address and its one-time code. */
async function start(folder, databaseUrl) {
  const child = spawn(process.execPath, [join(root, 'dist/cli.js'), 'start', '--data', folder, '--port', '0'], {
    env: { ...process.env, DATABASE_URL: databaseUrl, QUIET_EAR_DATA: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let said = ''
  const [url, code] = await new Promise((resolve, reject) => {
    child.stderr.resume()
    child.stdout.setEncoding('utf8').on('data', (chunk) => {
      said += chunk
      const port = /http:\/\/(?:127\.0\.0\.1|localhost):(\d+)/.exec(said)?.[1]
      const found = /code[^\n]*?([A-Z0-9]{3,}(?:-[A-Z0-9]{3,})+)/i.exec(said)?.[1]
      if (port && found) resolve([`http://127.0.0.1:${port}`, found])
    })
    child.once('exit', (status) => reject(new Error(`The program ended with ${status}: ${said}`)))
  })
  for (let tries = 0; tries < 150 && !(await fetch(`${url}/api/health`).catch(() => null))?.ok; tries += 1) {
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  const stop = () => {
    child.removeAllListeners('exit')
    const ended = new Promise((resolve) => child.once('exit', resolve))
    child.kill('SIGTERM')
    return ended
  }
  return { url, code, stop }
}

async function act(context, url, action, data) {
  const response = await context.request.post(`${url}/api/actions/${action}`, { data })
  if (!response.ok()) throw new Error(`${action}: ${await response.text()}`)
  return response.json()
}

/**
 * In the page: taps "done" and "take back" in turn until so many entries are kept; answers with the milliseconds from
 * each "done" until the words stood in a frame that was drawn.
 */
const taps = (entries) => `(async () => {
  const frame = () => new Promise((resolve) => requestAnimationFrame(resolve))
  const until = async (found) => {
    for (;;) {
      const one = found()
      if (one) return one
      await frame()
    }
  }
  const button = (start) => () => document.querySelector('button[aria-label^="' + start + '"]')
  const kept = () => [...document.querySelectorAll('main li span')].find(({ textContent }) => textContent === 'kept here')
  const times = []
  for (let at = 0; at < ${entries}; at += 2) {
    const done = await until(button('Done now: Skin'))
    const began = performance.now()
    done.click()
    await until(kept)
    await frame()
    times.push(performance.now() - began)
    const back = await until(button('Take back: Skin'))
    back.click()
    await until(() => !kept())
  }
  return times
})()`

/** In the page: the milliseconds until nothing waits on this device any more. */
const untilSent = `new Promise((resolve) => {
  const began = performance.now()
  const look = () =>
    [...document.querySelectorAll('a')].some(({ textContent }) => /on this device$/.test(textContent))
      ? requestAnimationFrame(look)
      : resolve(performance.now() - began)
  look()
})`

async function figures(browser, entries, databaseUrl = '') {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-bench-'))
  const server = await start(folder, databaseUrl)
  const context = await browser.newContext({ viewport: { width: 1180, height: 820 } })
  try {
    const { url } = server
    await context.addInitScript(`localStorage.setItem('device', 'device-of-the-bench')`)
    await act(context, url, 'open-clinic', {
      code: server.code,
      choice: 'invented-practice',
      clinic: null,
      person: { name: 'Runa Falk', role: 'surgeon', letters: null },
      login: 'runa.falk',
      password: 'a long word and a longer one',
      device: { id: 'device-of-the-bench', name: 'bench' },
    })
    const entriesOf = async () =>
      (await act(context, url, 'read-case', { stream: 'case:juniper', after: null })).entries.length
    const before = await entriesOf()
    const page = await context.newPage()
    await page.goto(url + room)
    await page.locator('[data-line="live"]').waitFor({ state: 'attached' })
    await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
    await page.waitForTimeout(3_000)
    await context.setOffline(true)
    const times = (await page.evaluate(taps(entries))).sort((a, b) => a - b)
    const share = (part) => times[Math.min(times.length - 1, Math.ceil(times.length * part) - 1)]
    await context.setOffline(false)
    const sent = await page.evaluate(untilSent)
    const arrived = (await entriesOf()) - before
    if (arrived !== entries) throw new Error(`${arrived} of ${entries} entries arrived.`)
    return { median: share(0.5), p95: share(0.95), most: share(1), sent }
  } finally {
    await context.close()
    await server.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}

export async function benchOffline(entries = 500) {
  ensureDebian(['chromium'])
  const executablePath = places.find((place) => place !== '' && existsSync(place))
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] })
  const say = (store, { median, p95, most, sent }) =>
    console.log(
      `without the network, ${store}: a tap is kept here, half within ${median.toFixed(0)} ms, 95 % within ${p95.toFixed(0)} ms (most ${most.toFixed(0)}); ${entries} entries sent ${(sent / 1000).toFixed(2)} s after the network returns`,
    )
  try {
    say('sqlite', await figures(browser, entries))
    const file = await buildEntry('src/storage/postgres/for-tests.ts', 'bench-postgres')
    const { skipPostgres, startPostgres } = await import(pathToFileURL(file).href)
    if (skipPostgres) {
      console.log('without the network, postgres: skipped')
      return
    }
    const postgres = await startPostgres()
    try {
      say('postgres', await figures(browser, entries, await postgres.newDatabase()))
    } finally {
      await postgres.stop()
    }
  } finally {
    await browser.close()
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await ready()
  await benchOffline(Number(process.argv[2] ?? 500))
}
