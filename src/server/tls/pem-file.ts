import { X509Certificate } from 'node:crypto'
import { closeSync, existsSync, fsyncSync, openSync, readFileSync, renameSync, rmSync, writeSync } from 'node:fs'

/** A certificate with its private key, both as PEM; kept in one file so that they are never of two minds. */
export type KeyPair = { readonly certificate: string; readonly key: string }

export function readPair(path: string): KeyPair | undefined {
  if (!existsSync(path)) return undefined
  const text = readFileSync(path, 'utf8')
  const blocks = text.match(/-----BEGIN [^-]+-----[^-]+-----END [^-]+-----\n?/g) ?? []
  const certificate = blocks.find((block) => block.includes('CERTIFICATE'))
  const key = blocks.find((block) => block.includes('KEY'))
  return certificate && key ? { certificate, key } : undefined
}

/** Only the person who runs the program may read it. Whole or not there. */
export function writePair(path: string, { certificate, key }: KeyPair): void {
  const part = `${path}.part`
  rmSync(part, { force: true })
  const file = openSync(part, 'wx', 0o600)
  try {
    writeSync(file, `${key.trimEnd()}\n${certificate.trimEnd()}\n`)
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
  renameSync(part, path)
}

/** The SHA-256 of the certificate, as browsers and tablets show it. */
export function fingerprint(certificate: string): string {
  return new X509Certificate(certificate).fingerprint256
}
