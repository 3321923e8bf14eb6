import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Role } from '#actions/action.ts'
import type { Who } from '#actions/people/signing-in.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { ClinicRow } from '#core/journal/registers.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { type ServeOptions, type Serving, serve } from './serve.ts'

export const clinicForTests: ClinicRow = {
  name: 'Invented clinic',
  address: ['1 Invented Lane'],
  phone: '0',
  outOfHoursPhone: null,
  email: null,
  zone: 'Europe/London',
  language: 'en',
  decimalMark: '.',
  currency: 'GBP',
  closedWeekdays: [7],
}

type Problem = { readonly code: string; readonly path: string; readonly message: string; readonly again?: string }
// biome-ignore lint/suspicious/noExplicitAny: the tests look into answers of every action
type Body = any
export type Answered = {
  readonly status: number
  readonly body: Body
  readonly error: Problem
  readonly headers: Headers
}

/** One browser: it keeps its cookie and sends what it is told. */
export class Browser {
  cookie: string | null = null
  as: string | null = null
  readonly id: string
  readonly #url: string

  constructor(url: string, id: string) {
    this.#url = url
    this.id = id
  }

  async act(action: string, input: unknown, headers: Record<string, string> = {}): Promise<Answered> {
    const response = await fetch(`${this.#url}/api/actions/${action}`, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        ...(this.cookie !== null && { cookie: this.cookie }),
        ...(this.as !== null && { 'x-quiet-ear-person': this.as }),
        ...headers,
      },
      body: typeof input === 'string' ? input : JSON.stringify(input),
    })
    const set = response.headers.get('set-cookie')
    if (set !== null) this.cookie = /^[^=]+=;/.test(set) ? null : (set.split(';')[0] ?? null)
    const body: Body = await response.json()
    return { status: response.status, body, error: body.error, headers: response.headers }
  }

  signIn(login: string, password = passwordFor(login)): Promise<Answered> {
    return this.act('sign-in', { login, password, device: { id: this.id, name: this.id } })
  }

  send(entries: readonly unknown[], clinic: string): Promise<Answered> {
    return this.act('accept-entries', { clinic, entries })
  }
}

export function passwordFor(login: string): string {
  return `the password of ${login}`
}

/** A real server on a real data folder with a clinic in it, opened by its manager with the one-time code. */
export class House {
  readonly log: string[] = []
  readonly folder: string
  readonly #options: Partial<ServeOptions>
  serving!: Serving
  manager!: Browser
  managerId = ''
  clinic = ''

  private constructor(options: Partial<ServeOptions>) {
    this.folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
    this.#options = options
  }

  /** A server whose clinic is still to be opened. */
  static async closed(options: Partial<ServeOptions> = {}): Promise<House> {
    const house = new House(options)
    await house.start()
    return house
  }

  static async open(options: Partial<ServeOptions> = {}): Promise<House> {
    const house = await House.closed(options)
    house.manager = house.browser('office')
    const { body } = await house.manager.act('open-clinic', house.opening())
    const who = body as Who
    house.managerId = who.active
    house.clinic = who.clinic.id
    return house
  }

  async start(): Promise<void> {
    const log = (line: string) => this.log.push(line)
    this.serving = await serve({ dataDir: this.folder, port: 0, project: projectForTests, log, ...this.#options })
  }

  opening() {
    return {
      code: this.serving.firstCode ?? 'NONE',
      choice: 'empty-clinic',
      clinic: clinicForTests,
      person: { name: 'Mara Manager', role: 'manager', letters: null },
      login: 'mara',
      password: passwordFor('mara'),
      device: { id: 'office', name: 'Office' },
    }
  }

  browser(id: string): Browser {
    return new Browser(this.serving.url, id)
  }

  /** Gives a new person of that role an account, with `login`. Returns the person's id. */
  async hire(login: string, role: Role): Promise<string> {
    const body = { name: `Person ${login}`, role, letters: null }
    const { id } = (await this.manager.act('put-person', { id: null, body })).body
    await this.manager.act('put-account', { person: id, login, password: passwordFor(login) })
    return id
  }

  /** A browser of its own at which a new person of that role is signed in, and a maker of entries by that person. */
  async join(login: string, role: Role): Promise<{ browser: Browser; person: string; make: MakeEntry }> {
    const person = await this.hire(login, role)
    const browser = this.browser(`device of ${login}`)
    await browser.signIn(login)
    return { browser, person, make: this.maker(person) }
  }

  maker(person: string, writer = 0): MakeEntry {
    return entryMaker({ clinic: this.clinic, author: { kind: 'person', person } }, writer)
  }

  async close(): Promise<void> {
    await this.serving?.close()
    rmSync(this.folder, { recursive: true, force: true })
  }
}
