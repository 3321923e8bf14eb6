import { createHash, randomBytes, scrypt, timingSafeEqual } from 'node:crypto'
import { hash, verify } from '@node-rs/argon2'
import type { FirstCode, Secrets } from '#actions/action.ts'

/** Argon2id with 64 MiB and three passes; why, stands in docs/decisions/0015-accounts-and-sessions.md. */
const passwordCost = { algorithm: 2, memoryCost: 65_536, timeCost: 3, parallelism: 1, outputLen: 32 } as const

/** Hashes waiting take no memory; two at a time leave the machine to the others. */
const atOnce = 2

export function secretsOfThisMachine(): Secrets {
  const inTurn = turns(atOnce)
  let decoy: Promise<string> | undefined
  return {
    bytes: (count) => new Uint8Array(randomBytes(count)),
    hashPassword: (password) => inTurn(() => hash(password, passwordCost)),
    passwordFits: async (hashed, password) => {
      decoy ??= inTurn(() => hash(randomBytes(32), passwordCost))
      const against = hashed ?? (await decoy)
      return (await inTurn(() => verify(against, password))) && hashed !== null
    },
    pinHash: (pin, salt, cost) =>
      new Promise((resolve, reject) => {
        const like = { N: cost, r: 8, p: 1, maxmem: 256 * cost * 8 }
        scrypt(pin, Buffer.from(salt, 'hex'), 32, like, (error, made) => {
          if (error) reject(error)
          else resolve(made.toString('hex'))
        })
      }),
  }
}

/** Lets so many run at once; the others wait in line. */
function turns(most: number): <Result>(doing: () => Promise<Result>) => Promise<Result> {
  let running = 0
  const waiting: (() => void)[] = []
  return async (doing) => {
    if (running >= most) await new Promise<void>((resolve) => waiting.push(resolve))
    else running += 1
    try {
      return await doing()
    } finally {
      const next = waiting.shift()
      if (next) next()
      else running -= 1
    }
  }
}

/** Letters and digits that nobody takes for another when reading them off a screen; 32, so that a byte favours none. */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789'

/** The one-time code of the first run: twelve letters, 60 bits, made anew at every start. */
export class FirstRunCode implements FirstCode {
  readonly text: string
  #busy = false

  constructor() {
    this.text = [4, 4, 4].map((count) => Array.from({ length: count }, letter).join('')).join('-')
  }

  async use<Result>(code: string, opening: () => Promise<Result>): Promise<Result | false> {
    if (this.#busy || !sameText(plain(code), plain(this.text))) return false
    this.#busy = true
    try {
      return await opening()
    } finally {
      this.#busy = false
    }
  }
}

function letter(): string {
  return letters[(randomBytes(1)[0] ?? 0) % letters.length] ?? ''
}

function plain(code: string): string {
  return code.toUpperCase().replaceAll(/[^A-Z0-9]/g, '')
}

/** Compares hashes, so that the time it takes says nothing of where two texts differ, or of their length. */
function sameText(a: string, b: string): boolean {
  const hashed = (text: string) => createHash('sha256').update(text).digest()
  return timingSafeEqual(hashed(a), hashed(b))
}
