import { X509Certificate } from 'node:crypto'
import { isIP } from 'node:net'
import { networkInterfaces } from 'node:os'
import { machineNames } from './tls/machine-names.ts'

/** What to type to reach this server, without and with encryption; the most useful first. */
export type Addresses = { readonly plain: readonly string[]; readonly encrypted: readonly string[] }

/** Bridges of programs on this machine itself: no tablet is behind them. */
const notOfTheClinic = /^(docker|br-|veth|virbr|podman|cni|lxc)/

type Secure = { readonly port: number; readonly certificate: string }

/** The addresses of this machine in the clinic network, or only its own when it listens to nobody else. */
export function addressesOf(host: string | undefined, port: number, secure: Secure | undefined): Addresses {
  const places = isLoopback(host) ? ['localhost'] : placesOf(host)
  return {
    plain: places.map((place) => `http://${place}:${port}`),
    encrypted: secure ? places.filter(covered(secure)).map((place) => `https://${place}:${secure.port}`) : [],
  }
}

/** A browser refuses the certificate under a name or address that does not stand in it. */
function covered({ certificate }: Secure): (place: string) => boolean {
  const read = new X509Certificate(certificate)
  return (place) => (isIP(place) === 0 ? read.checkHost(place) : read.checkIP(place)) !== undefined
}

function isLoopback(host: string | undefined): boolean {
  return host !== undefined && /^(127\.|::1$|localhost$)/.test(host)
}

function placesOf(host: string | undefined): string[] {
  if (host !== undefined && !/^(0\.0\.0\.0|::)$/.test(host)) return [host.includes(':') ? `[${host}]` : host]
  const own = Object.entries(networkInterfaces())
    .filter(([name]) => !notOfTheClinic.test(name))
    .flatMap(([, all]) => all ?? [])
    .filter(({ internal, family }) => !internal && family === 'IPv4')
    .map(({ address }) => address)
  const names = machineNames().names.filter((name) => name.endsWith('.local'))
  return [...own, ...names, 'localhost']
}
