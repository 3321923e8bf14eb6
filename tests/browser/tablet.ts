import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { connect, createServer, type Server, type Socket } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, chromium as drive, type Page } from '@playwright/test'
import { chromium } from './chromium.ts'
import { expect, type Person, password } from './clinic.ts'

/** What lies between a tablet and the server. While it is pulled out nobody answers, neither the page nor its worker. */
export class Cable {
  readonly #server: Server
  readonly #through = new Set<Socket>()
  #in = true
  url = ''

  constructor(to: string) {
    const port = Number(new URL(to).port)
    this.#server = createServer((near) => {
      if (!this.#in) {
        near.destroy()
        return
      }
      const far = connect(port, '127.0.0.1')
      for (const [one, other] of [
        [near, far],
        [far, near],
      ] as const) {
        this.#through.add(one)
        one.on('error', () => other.destroy())
        one.on('close', () => {
          this.#through.delete(one)
          other.destroy()
        })
        one.pipe(other)
      }
    })
  }

  async lay(): Promise<void> {
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve))
    const { port } = this.#server.address() as { port: number }
    this.url = `http://127.0.0.1:${port}`
  }

  pull(): void {
    this.#in = false
    for (const socket of this.#through) socket.destroy()
  }

  plug(): void {
    this.#in = true
  }

  async remove(): Promise<void> {
    this.pull()
    await new Promise((resolve) => this.#server.close(resolve))
  }
}

/**
 * One tablet: a browser of its own over a folder of its own, whose process can be killed as a dead battery would, and
 * whose clock may be fast.
 */
export class Tablet {
  readonly cable: Cable
  readonly #folder = mkdtempSync(join(tmpdir(), 'quiet-ear-tablet-'))
  readonly #fastBy: number
  #process: ChildProcess | undefined
  #browser: Browser | undefined
  page!: Page

  constructor(server: string, fastBy = 0) {
    this.cable = new Cable(server)
    this.#fastBy = fastBy
  }

  async start(): Promise<void> {
    if (this.cable.url === '') await this.cable.lay()
    const child = spawn(
      chromium(),
      [
        '--headless=new',
        '--no-sandbox',
        '--disable-gpu',
        '--no-first-run',
        '--remote-debugging-port=0',
        '--lang=en-GB',
        '--window-size=1180,820',
        `--user-data-dir=${this.#folder}`,
        'about:blank',
      ],
      // A group of its own: the whole browser dies at one stroke.
      { env: { ...process.env, TZ: 'Europe/London' }, stdio: ['ignore', 'ignore', 'pipe'], detached: true },
    )
    this.#process = child
    const address = await new Promise<string>((resolve, reject) => {
      let said = ''
      child.stderr?.setEncoding('utf8').on('data', (chunk: string) => {
        said += chunk
        const found = /DevTools listening on (ws:\S+)/.exec(said)?.[1]
        if (found) resolve(found)
      })
      child.once('exit', (status) => reject(new Error(`The browser ended with ${status}: ${said}`)))
    })
    this.#browser = await drive.connectOverCDP(address)
    const [context] = this.#browser.contexts()
    if (!context) throw new Error('The browser has no context.')
    if (this.#fastBy !== 0) await context.addInitScript(fastClock(this.#fastBy))
    context.setDefaultTimeout(15_000)
    this.page = context.pages()[0] ?? (await context.newPage())
    await this.page.setViewportSize({ width: 1180, height: 820 })
  }

  /** Ends every process of it at once: nothing is written any more. */
  async kill(): Promise<void> {
    const child = this.#process
    if (!child?.pid || child.exitCode !== null || child.signalCode !== null) return
    child.removeAllListeners('exit')
    const ended = new Promise((resolve) => child.once('exit', resolve))
    process.kill(-child.pid, 'SIGKILL')
    await ended
    await this.#browser?.close().catch(() => undefined)
  }

  async putAway(): Promise<void> {
    await this.kill()
    await this.cable.remove()
    rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5 })
  }

  async open(path: string): Promise<void> {
    await this.page.goto(this.cable.url + path)
  }

  /** At the sign-in page, or over the page that stands. */
  async signIn({ login }: Person): Promise<void> {
    await this.page.getByLabel('Name for signing in').fill(login)
    await this.page.getByLabel('Password').fill(password)
    await this.page.getByRole('button', { name: 'Sign in', exact: true }).last().click()
  }

  /** Waits until the app's own files and parts are on the device. */
  async settle(): Promise<void> {
    await this.page.evaluate('navigator.serviceWorker.ready.then(() => null)')
    await expect(this.page.locator('[data-line="live"]')).toHaveCount(1)
    await this.page.waitForTimeout(3_000)
  }
}

/** As a page sees a clock that is fast; what counts on by itself from the start of the page is not changed by it. */
function fastClock(ms: number): string {
  return `{
    const Right = Date
    globalThis.Date = new Proxy(Right, {
      construct: (of, given, as) => Reflect.construct(of, given.length === 0 ? [Right.now() + ${ms}] : given, as),
      apply: () => new Right(Right.now() + ${ms}).toString(),
      get: (of, name) => (name === 'now' ? () => Right.now() + ${ms} : Reflect.get(of, name)),
    })
  }`
}
