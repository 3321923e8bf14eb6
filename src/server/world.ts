import type { HttpBindings } from '@hono/node-server'
import type { Context } from 'hono'
import { deleteCookie, getCookie, setCookie } from 'hono/cookie'
import type { Action, Door, World } from '#actions/action.ts'
import { callerOf } from '#actions/people/caller.ts'

/**
 * Browsers keep one jar for both ports of a host, and let no plain page replace a secure cookie: the two doors need two
 * names, or nobody who was here encrypted could ever sign in without.
 */
const cookieNames = { tls: '__Host-quiet-ear-session', plain: 'quiet-ear-session' } as const

/** For the request of an action, or of anything else for people who are signed in. */
export type MakeWorld = (c: Context, action?: Pick<Action, 'may' | 'ofDevice'>) => Promise<World>

/** What every request finds plugged in. */
export type WorldParts = Pick<
  World,
  | 'backUp'
  | 'store'
  | 'accounts'
  | 'ownerLinks'
  | 'vetLinks'
  | 'clock'
  | 'secrets'
  | 'firstCode'
  | 'invented'
  | 'version'
>

/** Makes the world of one request: who asks, through which door, and everything an action may touch. */
export function worldMaker(parts: WorldParts): MakeWorld {
  const { store, accounts, clock } = parts
  return async (c, { may, ofDevice } = { may: 'signed-in' }) => {
    const door = doorOf(c)
    const named = may === 'anyone' || ofDevice ? undefined : c.req.header('x-quiet-ear-person')
    const who = await callerOf({ store, accounts, clock }, door.token, named)
    const clinic = who ? who.clinic : await onlyOf(await store.clinics())
    return { ...parts, door, clinic, caller: who?.caller ?? null }
  }
}

function onlyOf(clinics: readonly string[]): string | null {
  return clinics.length === 1 ? (clinics[0] ?? null) : null
}

function doorOf(c: Context): Door {
  const connection = connectionOf(c)
  const cookieName = cookieNames[connection === 'tls' ? 'tls' : 'plain']
  const about = { httpOnly: true, sameSite: 'Strict', path: '/', secure: connection === 'tls' } as const
  return {
    connection,
    address: socketOf(c)?.remoteAddress ?? '',
    token: getCookie(c, cookieName) ?? null,
    handOut: (token, expiresAt) => setCookie(c, cookieName, token, { ...about, expires: new Date(expiresAt) }),
    takeBack: () => {
      deleteCookie(c, cookieName, about)
    },
  }
}

function socketOf(c: Context) {
  return (c.env as Partial<HttpBindings> | undefined)?.incoming?.socket
}

/**
 * How the other side is connected, as the front door says it. `this-machine` is what browsers call secure without
 * encryption: from here, and under a name that always means here.
 */
export function connectionOf(c: Context): Door['connection'] {
  const socket = socketOf(c)
  if (socket && 'encrypted' in socket && socket.encrypted === true) return 'tls'
  const from = socket?.remoteAddress ?? ''
  const under = (c.req.header('host') ?? '').replace(/:\d+$/, '')
  return isLoopback(from) && (under === 'localhost' || isLoopback(under)) ? 'this-machine' : 'plain'
}

function isLoopback(address: string): boolean {
  return /^(::1|\[::1\]|(::ffff:)?127\.[\d.]+)$/.test(address)
}
