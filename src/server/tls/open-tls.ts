import { X509Certificate } from 'node:crypto'
import { join } from 'node:path'
import { makeFolder } from '#storage/sqlite/folder.ts'
import { type MachineNames, machineNames } from './machine-names.ts'
import { isIn, localNetworks, onlyThis, subtreeOf } from './name-constraints.ts'
import { fingerprint, type KeyPair, readPair, writePair } from './pem-file.ts'

/** What the server shows on the encrypted port, and what a tablet has to trust for it. */
export type Tls = KeyPair & {
  /** The clinic's own authority; null when the clinic brought a certificate of its own. */
  readonly authority: { readonly certificate: string; readonly fingerprint: string } | null
}

const day = 86_400_000
const renewWithin = 30 * day
/** No certificate of the server may outlive its authority. */
const replaceAuthorityWithin = 400 * day

/**
 * The certificate of this machine, signed by the clinic's own authority. Both are made on first use; the server's is
 * made anew when it ends within 30 days or the machine has other names or addresses than it says.
 */
export async function openOwnTls(folder: string, now: Date, machine: MachineNames = machineNames()): Promise<Tls> {
  makeFolder(folder)
  const authority = await authorityIn(join(folder, 'authority.pem'), now, machine)
  const permitted = within(authority, machine)
  const path = join(folder, 'server.pem')
  const known = readPair(path)
  const pair = known && fits(known, authority, permitted, now) ? known : await renewed(path, authority, permitted, now)
  const trusted = { certificate: authority.certificate, fingerprint: fingerprint(authority.certificate) }
  return { ...pair, authority: trusted }
}

async function authorityIn(path: string, now: Date, machine: MachineNames): Promise<KeyPair> {
  const known = readPair(path)
  if (known && endsAt(known) - now.getTime() > replaceAuthorityWithin) return known
  const { issueAuthority } = await import('./issue.ts')
  const host = machine.names.find((name) => name.endsWith('.local'))?.replace(/\.local$/, '') ?? 'clinic'
  const made = await issueAuthority(`Quiet Ear of this clinic (${host})`, machine, now)
  writePair(path, made)
  return made
}

/** An authority vouches for the names it was made for and for local addresses; anything else it would sign in vain. */
function within(authority: KeyPair, { names, addresses }: MachineNames): MachineNames {
  const raw = new X509Certificate(authority.certificate).raw.toString('latin1')
  const permitted = (name: string) => /(^localhost|\.local|\.lan)$/.test(name) || raw.includes(name)
  const own = (address: string) => raw.includes(String.fromCharCode(...subtreeOf(onlyThis(address))))
  return {
    names: names.filter(permitted),
    addresses: addresses.filter((address) => isIn(localNetworks, address) || own(address)),
  }
}

async function renewed(path: string, authority: KeyPair, machine: MachineNames, now: Date): Promise<KeyPair> {
  const { issueServer } = await import('./issue.ts')
  const made = await issueServer(authority, machine, now)
  writePair(path, made)
  return made
}

function fits(pair: KeyPair, authority: KeyPair, { names, addresses }: MachineNames, now: Date): boolean {
  const certificate = new X509Certificate(pair.certificate)
  const said = (certificate.subjectAltName ?? '').split(', ').length
  return (
    endsAt(pair) - now.getTime() > renewWithin &&
    certificate.verify(new X509Certificate(authority.certificate).publicKey) &&
    said === names.length + addresses.length &&
    names.every((name) => certificate.checkHost(name) !== undefined) &&
    addresses.every((address) => certificate.checkIP(address) !== undefined)
  )
}

function endsAt({ certificate }: KeyPair): number {
  return Date.parse(new X509Certificate(certificate).validTo)
}
