import { hostname, networkInterfaces } from 'node:os'

/** What a tablet may type to reach this machine: names, and addresses of the local network. */
export type MachineNames = { readonly names: readonly string[]; readonly addresses: readonly string[] }

/** The names and addresses of this machine as they are now. */
export function machineNames(): MachineNames {
  const found = Object.values(networkInterfaces()).flatMap((all) => all ?? [])
  return { names: namesFor(hostname()), addresses: addressesIn(found.map(({ address }) => address)) }
}

/** `clinic.lan` is for the clinic whose router gives this machine that name. */
export function namesFor(host: string): string[] {
  const name = host.toLowerCase()
  const usable = /^[a-z0-9]([a-z0-9.-]*[a-z0-9])?$/.test(name) ? [name, `${name.split('.')[0]}.local`] : []
  return [...new Set(['localhost', 'clinic.lan', ...usable])].sort()
}

/** Without the addresses that a browser cannot type (IPv6 of one cable only). */
export function addressesIn(all: readonly string[]): string[] {
  return [...new Set(['127.0.0.1', '::1', ...all.filter((address) => !/^fe[89ab]/i.test(address))])].sort()
}
