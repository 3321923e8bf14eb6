import { createHash, randomBytes, scrypt, timingSafeEqual } from 'node:crypto'
import { hash, verify } from '@node-rs/argon2'
import type { FirstCode, Secrets } from '#actions/action.ts'
import type { Accounts } from '#actions/people/accounts.ts'
import { hashOf } from '#actions/people/caller.ts'
import { plainCode } from '#actions/people/drawn-code.ts'

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

/** The one-time code of the first run, compared with the hash that every process on the database shares. */
export class FirstRunCode implements FirstCode {
  readonly #accounts: Pick<Accounts, 'firstCode'>
  #busy = false

  constructor(accounts: Pick<Accounts, 'firstCode'>) {
    this.#accounts = accounts
  }

  async use<Result>(code: string, opening: () => Promise<Result>): Promise<Result | false> {
    const made = await this.#accounts.firstCode()
    if (this.#busy || !made || !sameText(hashOf(plainCode(code)), made.hash)) return false
    this.#busy = true
    try {
      return await opening()
    } finally {
      this.#busy = false
    }
  }
}

/** Compares hashes, so that the time it takes says nothing of where two texts differ, or of their length. */
function sameText(a: string, b: string): boolean {
  const hashed = (text: string) => createHash('sha256').update(text).digest()
  return timingSafeEqual(hashed(a), hashed(b))
}
