/**
 * One process at a time for what must not be done twice at once in this folder. The lock is a listening socket, so it
 * lives exactly as long as its process: one that was killed leaves no lock behind.
 */
import { createHash } from 'node:crypto'
import { mkdirSync, realpathSync, unlinkSync } from 'node:fs'
import { connect, createServer } from 'node:net'
import { join } from 'node:path'

const lookAgain = 500

/** Does it when nobody else in this folder is at it; `waiting` is called once when somebody is. */
export async function oneAtATime(folder, waiting, doing) {
  const real = realpathSync(folder)
  const address = addressFor(real)
  let said = false
  let server = await listenOn(address)
  while (!server) {
    if (!said) waiting()
    said = true
    await new Promise((resolve) => setTimeout(resolve, lookAgain))
    server = await listenOn(address)
  }
  try {
    return await doing()
  } finally {
    await new Promise((resolve) => server.close(resolve))
  }
}

/** Linux and Windows have addresses without a file; elsewhere it is a socket file. */
function addressFor(real) {
  const name = `quiet-ear-ready-${createHash('sha256').update(real).digest('hex').slice(0, 40)}`
  if (process.platform === 'linux' || process.platform === 'android') return `\0${name}`
  if (process.platform === 'win32') return `\\\\.\\pipe\\${name}`
  mkdirSync(join(real, '.cache'), { recursive: true })
  return join(real, '.cache/ready')
}

/** The listening server, or undefined while another process has it. */
async function listenOn(address) {
  try {
    return await new Promise((resolve, reject) => {
      const server = createServer((socket) => socket.destroy())
      server.once('error', reject)
      server.listen(address, () => resolve(server))
    })
  } catch (error) {
    if (error.code !== 'EADDRINUSE' && error.code !== 'EACCES') throw error
    // The file of a killed process stays; it is in use only when somebody answers.
    if (address.startsWith('/') && !(await answers(address))) unlinkSync(address)
    return undefined
  }
}

function answers(address) {
  return new Promise((resolve) => {
    const socket = connect(address)
    socket.once('connect', () => resolve(true))
    socket.once('error', () => resolve(false))
    socket.once('close', () => socket.destroy())
  })
}
