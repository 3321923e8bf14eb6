import { createHash } from 'node:crypto'
import { realpathSync, unlinkSync } from 'node:fs'
import { connect, createServer, type Server } from 'node:net'
import { join } from 'node:path'
import { StoreError } from '#actions/store.ts'

/** The lock of one data folder. The operating system frees it when the process ends, however it ends. */
export type FolderLock = { readonly release: () => Promise<void> }

/**
 * Takes the data folder for this process, or refuses with one sentence when another Quiet Ear has it. It never goes
 * by age or heartbeat: the lock is a listening socket, so it lives exactly as long as its process.
 */
export async function lockFolder(folder: string): Promise<FolderLock> {
  const real = realpathSync(folder)
  const { address, file } = addressFor(real, process.platform)
  try {
    return lockOf(await listenOn(address))
  } catch (error) {
    if (!isTaken(error)) throw error
  }
  // A socket file outlives a killed process: it is in use only when somebody answers.
  if (file && !(await answers(address))) {
    unlinkSync(address)
    return lockOf(await listenOn(address))
  }
  throw new StoreError(
    'in-use',
    `Another Quiet Ear is running on the data folder ${real}: use that one, stop it first, or name another folder with --data.`,
  )
}

/** Linux: an abstract socket, Windows: a named pipe, both without a file; elsewhere a socket file in the folder. */
export function addressFor(real: string, platform: NodeJS.Platform): { address: string; file: boolean } {
  const name = `quiet-ear-${createHash('sha256').update(real).digest('hex')}`
  switch (platform) {
    case 'linux':
    case 'android':
      return { address: `\0${name}`, file: false }
    case 'win32':
      return { address: `\\\\.\\pipe\\${name}`, file: false }
    default:
      return { address: join(real, 'lock'), file: true }
  }
}

function listenOn(address: string): Promise<Server> {
  return new Promise((resolve, reject) => {
    const server = createServer((socket) => socket.destroy())
    server.once('error', reject)
    server.listen(address, () => resolve(server))
    server.unref()
  })
}

function lockOf(server: Server): FolderLock {
  return { release: () => new Promise((resolve) => server.close(() => resolve())) }
}

function isTaken(error: unknown): boolean {
  return error instanceof Error && 'code' in error && (error.code === 'EADDRINUSE' || error.code === 'EACCES')
}

function answers(address: string): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(address)
    socket.once('connect', () => resolve(true))
    socket.once('error', () => resolve(false))
    socket.setTimeout(2_000, () => resolve(true))
    socket.once('close', () => socket.destroy())
  })
}
