import 'reflect-metadata'
import { webcrypto } from 'node:crypto'
import * as x509 from '@peculiar/x509'
import type { MachineNames } from './machine-names.ts'
import { isIn, localNetworks, nameConstraints, nameConstraintsId, onlyThis } from './name-constraints.ts'
import type { KeyPair } from './pem-file.ts'

x509.cryptoProvider.set(webcrypto)

const algorithm = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' } as const
const day = 86_400_000
/** Ten years: a clinic installs it once for each tablet. */
const authorityDays = 3_650
/** Browsers refuse a certificate that is valid for more than 398 days. */
const serverDays = 396

/** A new authority for one clinic's network. It may vouch for local names and addresses and for this machine's own. */
export async function issueAuthority(title: string, machine: MachineNames, now: Date): Promise<KeyPair> {
  const keys = await newKeys()
  const names = [...new Set(['localhost', 'local', 'lan', ...machine.names])]
  const own = machine.addresses.filter((address) => !isIn(localNetworks, address)).map(onlyThis)
  const certificate = await x509.X509CertificateGenerator.createSelfSigned({
    ...validity(now, authorityDays),
    name: [{ CN: [title] }],
    serialNumber: serialNumber(),
    signingAlgorithm: algorithm,
    keys,
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign | x509.KeyUsageFlags.cRLSign, true),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
      new x509.Extension(
        nameConstraintsId,
        true,
        nameConstraints({ names, networks: [...localNetworks, ...own] }).slice().buffer,
      ),
    ],
  })
  return { certificate: `${certificate.toString('pem').trimEnd()}\n`, key: await pemOf(keys.privateKey) }
}

/** A server's certificate for these names and addresses, signed by the authority. */
export async function issueServer(authority: KeyPair, machine: MachineNames, now: Date): Promise<KeyPair> {
  const keys = await newKeys()
  const issuer = new x509.X509Certificate(authority.certificate)
  const signingKey = await webcrypto.subtle.importKey(
    'pkcs8',
    x509.PemConverter.decodeFirst(authority.key),
    algorithm,
    false,
    ['sign'],
  )
  const certificate = await x509.X509CertificateGenerator.create({
    ...validity(now, serverDays),
    subject: [{ CN: ['Quiet Ear'] }],
    issuer: issuer.subjectName,
    serialNumber: serialNumber(),
    signingAlgorithm: algorithm,
    publicKey: keys.publicKey,
    signingKey,
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature, true),
      new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
      new x509.SubjectAlternativeNameExtension([
        ...machine.names.map((value) => ({ type: 'dns' as const, value })),
        ...machine.addresses.map((value) => ({ type: 'ip' as const, value })),
      ]),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
      await x509.AuthorityKeyIdentifierExtension.create(issuer.publicKey),
    ],
  })
  return { certificate: `${certificate.toString('pem').trimEnd()}\n`, key: await pemOf(keys.privateKey) }
}

/** From a day ago, because the clock of a tablet may be behind. */
function validity(now: Date, days: number) {
  const notBefore = new Date(now.getTime() - day)
  return { notBefore, notAfter: new Date(notBefore.getTime() + days * day) }
}

async function newKeys(): Promise<webcrypto.CryptoKeyPair> {
  return (await webcrypto.subtle.generateKey(algorithm, true, ['sign', 'verify'])) as webcrypto.CryptoKeyPair
}

async function pemOf(key: webcrypto.CryptoKey): Promise<string> {
  const text = x509.PemConverter.encode(await webcrypto.subtle.exportKey('pkcs8', key), 'PRIVATE KEY')
  return `${text.trimEnd()}\n`
}

/** Positive and unpredictable. */
function serialNumber(): string {
  const bytes = webcrypto.getRandomValues(new Uint8Array(16))
  bytes[0] = ((bytes[0] ?? 0) & 0x7f) | 0x40
  return Buffer.from(bytes).toString('hex')
}
