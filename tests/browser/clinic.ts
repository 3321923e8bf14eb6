import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type BrowserContext, test as base, expect, type Page } from '@playwright/test'
import { entryMaker, type WantedEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'

const cli = fileURLToPath(new URL('../../dist/cli.js', import.meta.url))

/** The program as it is started by hand, over a data folder of its own. */
export class Program {
  readonly folder = mkdtempSync(join(tmpdir(), 'quiet-ear-browser-'))
  #process: ChildProcess | undefined
  #port = 0
  /** Printed at the first start only. */
  code = ''
  readonly #cli: string

  constructor(bundle = cli) {
    this.#cli = bundle
  }

  get url(): string {
    return `http://127.0.0.1:${this.#port}`
  }

  /** Starts, or starts again at the same address. */
  async start(): Promise<void> {
    const child = spawn(process.execPath, [this.#cli, 'start', '--data', this.folder, '--port', String(this.#port)], {
      env: { ...process.env, DATABASE_URL: '', QUIET_EAR_DATA: '' },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    this.#process = child
    let said = ''
    await new Promise<void>((resolve, reject) => {
      const hear = (chunk: string) => {
        said += chunk
        const port = /http:\/\/(?:127\.0\.0\.1|localhost):(\d+)/.exec(said)?.[1]
        if (!port || !said.includes('\n')) return
        this.#port = Number(port)
        this.code = /code[^\n]*?([A-Z0-9]{3,}(?:-[A-Z0-9]{3,})+)/i.exec(said)?.[1] ?? this.code
        resolve()
      }
      child.stdout?.setEncoding('utf8').on('data', hear)
      child.stderr?.setEncoding('utf8').on('data', (chunk: string) => {
        said += chunk
      })
      child.once('exit', (status) => reject(new Error(`The program ended with ${status}: ${said}`)))
    })
    await expect.poll(() => this.#answers(), { timeout: 15_000 }).toBe(true)
  }

  async #answers(): Promise<boolean> {
    try {
      return (await fetch(`${this.url}/api/health`)).ok
    } catch {
      return false
    }
  }

  /** Runs another command of the program to its end. */
  run(...args: readonly string[]): void {
    execFileSync(process.execPath, [cli, ...args], { stdio: 'ignore' })
  }

  /** Ends it at once, as a power cut would. */
  async kill(): Promise<void> {
    await this.#end('SIGKILL')
  }

  async stop(): Promise<void> {
    await this.#end('SIGTERM')
    rmSync(this.folder, { recursive: true, force: true })
  }

  async #end(signal: 'SIGKILL' | 'SIGTERM'): Promise<void> {
    const child = this.#process
    if (!child || child.exitCode !== null || child.signalCode !== null) return
    child.removeAllListeners('exit')
    await new Promise((resolve) => {
      child.once('exit', resolve)
      child.kill(signal)
    })
  }
}

export const password = 'a long word and a longer one'

/** A person of the tests: how they sign in. */
export type Person = { readonly name: string; readonly role: string; readonly login: string }
export const surgeon: Person = { name: 'Runa Falk', role: 'surgeon', login: 'runa.falk' }
export const nurse: Person = { name: 'Basil Ode', role: 'nurse', login: 'basil.ode' }

/** A connection that lay idle may be closed by the server just as it is used again: what only reads is asked again. */
export const askedAgain = { maxRetries: 2 } as const

export async function act<Answer>(
  context: BrowserContext,
  url: string,
  action: string,
  input: unknown,
): Promise<Answer> {
  const response = await context.request.post(`${url}/api/actions/${action}`, {
    data: input,
    ...(/^(read|who|list)-/.test(action) && askedAgain),
  })
  expect(response.ok(), `${action}: ${await response.text()}`).toBe(true)
  return (await response.json()) as Answer
}

/** One browser is one device: the id that its page keeps and its session belong together. */
async function beDevice(context: BrowserContext, device: string): Promise<{ id: string; name: string }> {
  await context.addInitScript(`localStorage.setItem('device', '${device}')`)
  return { id: device, name: 'tests' }
}

/** Opens the clinic without the screens, for journeys that begin later; the browser's context is then signed in. */
export async function openInvented(program: Program, page: Page): Promise<void> {
  await act(page.context(), program.url, 'open-clinic', {
    code: program.code,
    choice: 'invented-practice',
    clinic: null,
    person: { name: surgeon.name, role: surgeon.role, letters: null },
    login: surgeon.login,
    password,
    device: await beDevice(page.context(), 'device-of-the-tests'),
  })
}

/** Opens an empty clinic of that name without the screens. */
export async function openEmpty(program: Program, page: Page, name: string): Promise<void> {
  await act(page.context(), program.url, 'open-clinic', {
    code: program.code,
    choice: 'empty-clinic',
    clinic: {
      name,
      address: [],
      phone: '01632 960200',
      outOfHoursPhone: null,
      email: null,
      zone: 'Europe/London',
      language: 'en',
      decimalMark: '.',
      currency: 'GBP',
      closedWeekdays: [7],
    },
    person: { name: surgeon.name, role: surgeon.role, letters: null },
    login: surgeon.login,
    password,
    device: await beDevice(page.context(), 'device-of-the-tests'),
  })
}

/** Gives a person an account. */
export async function hire({ url }: Program, keeper: Page, { name, role, login }: Person): Promise<string> {
  const body = { name, role, letters: null }
  const { id } = await act<{ id: string }>(keeper.context(), url, 'put-person', { id: null, body })
  await act(keeper.context(), url, 'put-account', { person: id, login, password, active: true })
  return id
}

/** Gives a person an account and a PIN, and signs them in beside whoever is signed in at that browser. */
export async function enrol(program: Program, keeper: Page, person: Person, pin: string, at: Page): Promise<string> {
  const { url } = program
  const id = await hire(program, keeper, person)
  const device = await beDevice(at.context(), at === keeper ? 'device-of-the-tests' : 'device-of-the-second')
  await act(at.context(), url, 'sign-in', { login: person.login, password, device })
  await act(at.context(), url, 'set-pin', { pin })
  return id
}

/** Signs a person in at a browser that is that device, beside whoever is signed in there. */
export async function signIn(program: Program, page: Page, person: Person, device: string): Promise<void> {
  const name = await beDevice(page.context(), device)
  await act(page.context(), program.url, 'sign-in', { login: person.login, password, device: name })
}

/** Sends entries that the server once gave out, as their author's of now. */
export async function sendEntries(program: Program, page: Page, lines: readonly StoredLine[]): Promise<void> {
  const me = await act<{ clinic: { id: string }; active: string }>(page.context(), program.url, 'who-am-i', {})
  const entries = lines.map(({ header, body }) => ({ ...header, body, author: { kind: 'person', person: me.active } }))
  await act(page.context(), program.url, 'accept-entries', { clinic: me.clinic.id, entries })
}

/** What a test wants written into a case, that many minutes ago. */
type Wanted = WantedEntry & { readonly minutesAgo?: number }

/** Writes entries into a case as whoever is signed in, without the screens: what went before the journey. `fresh` is the animal of a new case. */
export async function writeNow(
  program: Program,
  page: Page,
  stream: string,
  wanted: readonly Wanted[],
  fresh = 'animal-1',
): Promise<readonly Entry[]> {
  const { url } = program
  const me = await act<{ clinic: { id: string }; active: string }>(page.context(), url, 'who-am-i', {})
  const known = await entriesOf(program, page, stream)
  const animal = known.flatMap(({ header: { subject } }) => subject.animal ?? [])[0] ?? fresh
  writers += 1
  const make = entryMaker(
    { clinic: me.clinic.id, stream, author: { kind: 'person', person: me.active } },
    0x7000 + writers,
  )
  const entries = wanted.map(({ minutesAgo = 0, ...rest }) => {
    const at = new Date(Date.now() - minutesAgo * 60_000).toISOString()
    const entry = make({ ...rest, at })
    const subject = 'animal' in entry.subject ? { ...entry.subject, animal } : entry.subject
    return { ...entry, subject }
  })
  await act(page.context(), url, 'accept-entries', { clinic: me.clinic.id, entries })
  return entries
}
let writers = 0

/** A moment as people type it at the practice, that many minutes from now. */
export function typedWhen(minutes: number): string {
  const said = new Intl.DateTimeFormat('en-GB', {
    timeZone: 'Europe/London',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  }).format(Date.now() + minutes * 60_000)
  return said.replace(' at ', ', ')
}

/**
 * What the server has of a case. A screen shows what it has kept before the server has it: the server is asked when nothing
 * waits on that page any more, or after five seconds, where there is no network.
 */
export async function entriesOf(program: Program, page: Page, stream: string): Promise<readonly StoredLine[]> {
  const until = Date.now() + 5_000
  while (Date.now() < until && (await waitingOn(page)) > 0) await page.waitForTimeout(50)
  const read = await act<{ entries: readonly StoredLine[] }>(page.context(), program.url, 'read-case', {
    stream,
    after: null,
  })
  return read.entries
}

/** How many entries a page has kept and not sent; what was refused waits for a person and not for the network. */
async function waitingOn(page: Page): Promise<number> {
  if (!page.url().startsWith('http')) return 0
  return (await keptHere(page)).filter((one) => one?.state !== 'refused').length
}

type Kept = {
  readonly state: string
  readonly entry: { readonly id: string; readonly clinic: string; readonly body: object }
}

/** What the page's own database holds of what was not accepted yet. */
export async function keptHere(page: Page): Promise<readonly Kept[]> {
  // Opening a database that is not there would make an empty one.
  return await page.evaluate(`indexedDB.databases().then((all) => !all.some(({ name }) => name === 'quiet-ear') ? [] : new Promise((done) => {
    const open = indexedDB.open('quiet-ear')
    open.onsuccess = () => {
      const all = open.result.transaction('outbox').objectStore('outbox').getAll()
      all.onsuccess = () => { open.result.close(); done(all.result) }
    }
  }))`)
}

type StoredLine = {
  readonly header: {
    readonly id: string
    readonly kind: string
    readonly subject: { readonly kind: string; readonly side?: string; readonly animal?: string }
    readonly author: { readonly person?: string }
    readonly supersedes: readonly string[]
    readonly reason: string | null
    readonly happenedAt: { readonly at: string }
    readonly device: { readonly id: string; readonly offset: { readonly ms: number } | null }
  }
  readonly body: Readonly<Record<string, unknown>>
  readonly envelope: { readonly correctedAt: string; readonly orderCertain: boolean; readonly late: string | null }
}

export const test = base.extend<{ program: Program }>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner reads the names of this first argument
  program: async ({}, use) => {
    const program = new Program()
    await program.start()
    await use(program)
    await program.stop()
  },
})
export { expect }
