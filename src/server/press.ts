import { type ChildProcess, spawn } from 'node:child_process'
import { createRequire } from 'node:module'
import { Refused } from '#actions/refused.ts'
import type { Paper } from '#documents/render/model.ts'
import { type Typeset, typesetOf } from '#documents/render/pdf.ts'

export type PressOptions = {
  /** Read when somebody prints, not at every start. */
  readonly fonts: () => Uint8Array[]
  /** How long one paper may take to set; the longest of an ordinary case takes a second. */
  readonly milliseconds?: number
  /** How many papers may wait behind the one that is being set. */
  readonly waiting?: number
}

type Job = {
  readonly paper: Typeset
  readonly done: (bytes: Uint8Array) => void
  readonly failed: (error: Error) => void
}
type Answer = { readonly bytes: Uint8Array } | { readonly trouble: string }

/**
 * Sets papers as PDF in a process of its own, one after the other: a long one takes seconds, and nobody at a tablet
 * waits for it. A bounded number waits; one that takes too long is given up with its process, and the next gets a new
 * one. A thread would not do: the typesetter cannot be stopped inside a paper, and while it is at one in any thread of a
 * process it sets none in the others.
 */
export class Press {
  readonly #fonts: () => Uint8Array[]
  readonly #milliseconds: number
  readonly #most: number
  readonly #queue: Job[] = []
  #job: Job | undefined
  #limit: ReturnType<typeof setTimeout> | undefined
  #setter: ChildProcess | undefined

  constructor({ fonts, milliseconds = 30_000, waiting = 12 }: PressOptions) {
    this.#fonts = fonts
    this.#milliseconds = milliseconds
    this.#most = waiting
  }

  /** The paper as PDF. Refused when too many wait already, or when it takes too long; one that cannot be set is a bug. */
  set(paper: Paper): Promise<Uint8Array> {
    if (this.#queue.length >= this.#most) {
      const message = `${this.#most} papers wait to be printed already: try again in a moment.`
      return Promise.reject(new Refused(503, 'press-busy', message))
    }
    return new Promise((done, failed) => {
      this.#queue.push({ paper: typesetOf(paper), done, failed })
      this.#next()
    })
  }

  /** Whoever still waits is refused; the process ends. */
  close(): void {
    const closed = new Refused(503, 'press-closed', 'The server is stopping: print again when it is back.')
    for (const { failed } of this.#queue.splice(0)) failed(closed)
    this.#dismiss()
    this.#end((job) => job.failed(closed))
  }

  #next(): void {
    if (this.#job) return
    this.#job = this.#queue.shift()
    if (!this.#job) return
    this.#setter ??= this.#hire()
    this.#limit = setTimeout(() => this.#tooLong(), this.#milliseconds)
    this.#setter.send(this.#job.paper)
  }

  #hire(): ChildProcess {
    const compiler = createRequire(import.meta.url).resolve('@myriaddreamin/typst-ts-node-compiler')
    // Without what the server was started with: its inspector, or anything that would run before.
    const env = { ...process.env, NODE_OPTIONS: '' }
    const stdio = ['ignore', 'ignore', 'inherit', 'ipc'] as const
    const setter = spawn(process.execPath, ['-e', work, compiler], {
      stdio: [...stdio],
      serialization: 'advanced',
      env,
    })
    setter.send({ fonts: this.#fonts() })
    setter.on('message', (answer: Answer) => {
      this.#end((job) => {
        if ('bytes' in answer) return job.done(answer.bytes)
        job.failed(new Error(`The paper ${job.paper.id} cannot be set: ${answer.trouble}`))
      })
    })
    const lost = (why: string) => {
      if (this.#setter !== setter) return
      this.#setter = undefined
      this.#end((job) => job.failed(new Error(`The paper ${job.paper.id} was not set: ${why}`)))
    }
    setter.on('error', (error) => lost(error.message))
    setter.on('exit', (code, signal) => lost(`its process ended with ${code ?? signal}`))
    return setter
  }

  #tooLong(): void {
    const seconds = Math.round(this.#milliseconds / 1000)
    const message = `It was not printed within ${seconds} seconds and given up: open the page or the text instead, or try again.`
    this.#dismiss()
    this.#end((job) => job.failed(new Refused(503, 'press-too-long', message)))
  }

  #end(tell: (job: Job) => void): void {
    clearTimeout(this.#limit)
    const job = this.#job
    this.#job = undefined
    if (job) tell(job)
    this.#next()
  }

  #dismiss(): void {
    const setter = this.#setter
    this.#setter = undefined
    setter?.kill('SIGKILL')
  }
}

/** Runs by itself in the process: only the typesetter, by the place where this program has it, and the fonts as bytes. */
const work = `
const { NodeCompiler } = require(process.argv[1])
let compiler
process.on('disconnect', () => process.exit())
process.on('message', ({ fonts, source, inputs, options }) => {
  if (fonts) {
    compiler = NodeCompiler.create({ fontArgs: [{ fontBlobs: fonts.map((font) => Buffer.from(font)) }] })
    return
  }
  try {
    const compiled = compiler.compile({ mainFileContent: source, inputs })
    const trouble = compiled.takeDiagnostics()
    if (compiled.result === null) process.send({ trouble: JSON.stringify(trouble?.shortDiagnostics) })
    else process.send({ bytes: new Uint8Array(compiler.pdf(compiled.result, options)) })
  } catch (error) {
    process.send({ trouble: String(error) })
  }
  // What earlier papers left behind is kept for a few more, not for ever.
  compiler.evictCache(5)
})
`
