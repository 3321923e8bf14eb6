import { createPrivateKey, X509Certificate } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { InputError } from '#actions/input.ts'
import type { Tls } from './open-tls.ts'

/** The clinic's own certificate and key, from its files; refused with a sentence when they cannot serve. */
export function readClinicTls(certificateFile: string, keyFile: string, now: Date): Tls {
  const certificate = read(certificateFile, 'certificate')
  const key = read(keyFile, 'key')
  const first = parsed(
    () => new X509Certificate(certificate),
    'certificate',
    `${certificateFile} is not a certificate (PEM).`,
  )
  const secret = parsed(
    () => createPrivateKey(key),
    'key',
    `${keyFile} is not a private key (PEM, without a password).`,
  )
  if (!first.checkPrivateKey(secret)) {
    throw new InputError(
      'other-key',
      'key',
      `The key in ${keyFile} does not belong to the certificate in ${certificateFile}.`,
    )
  }
  if (Date.parse(first.validTo) <= now.getTime()) {
    throw new InputError(
      'certificate-ended',
      'certificate',
      `The certificate in ${certificateFile} ended on ${first.validTo}; renew it.`,
    )
  }
  return { certificate, key, authority: null }
}

function read(path: string, field: string): string {
  try {
    return readFileSync(path, 'utf8')
  } catch (error) {
    throw new InputError('cannot-read', field, `Cannot read ${path}: ${(error as Error).message}`)
  }
}

function parsed<Result>(parse: () => Result, field: string, sentence: string): Result {
  try {
    return parse()
  } catch {
    throw new InputError(`not-a-${field}`, field, sentence)
  }
}
