import { X509Certificate } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { createServer, request } from 'node:https'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { readClinicTls } from './clinic-certificate.ts'
import { issueAuthority, issueServer } from './issue.ts'
import { addressesIn, type MachineNames, machineNames, namesFor } from './machine-names.ts'
import { isIn, localNetworks } from './name-constraints.ts'
import { openOwnTls, type Tls } from './open-tls.ts'

const now = new Date('2026-11-25T10:00:00Z')
const later = (days: number) => new Date(now.getTime() + days * 86_400_000)
const machine: MachineNames = { names: namesFor('Theatre-PC'), addresses: addressesIn(['192.168.1.20', 'fd00::5']) }

const folders: string[] = []
const newFolder = () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-tls-'))
  folders.push(folder)
  return folder
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true })
})

/** A real handshake with a server that shows `tls`, by a client that trusts `ca` and asks for `name`. */
async function handshake(tls: Pick<Tls, 'certificate' | 'key'>, ca: string | undefined, name: string): Promise<string> {
  const server = createServer({ cert: tls.certificate, key: tls.key }, (_, response) => response.end('heard'))
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address() as AddressInfo
  try {
    return await new Promise((resolve, reject) => {
      const asked = { host: '127.0.0.1', port, servername: name, ...(ca === undefined ? {} : { ca }), agent: false }
      request(asked, (response) => {
        response.setEncoding('utf8').on('data', resolve)
      })
        .once('error', reject)
        .end()
    })
  } finally {
    server.closeAllConnections()
    server.close()
  }
}

describe('the clinic’s own authority', () => {
  it('is made on first use, kept where only its owner reads it, and used again', async () => {
    const folder = newFolder()
    const first = await openOwnTls(folder, now, machine)
    const again = await openOwnTls(folder, later(1), machine)
    expect(again).toEqual(first)
    for (const file of ['authority.pem', 'server.pem']) {
      expect(statSync(join(folder, file)).mode & 0o777).toBe(0o600)
    }
    expect(first.authority?.fingerprint).toBe(new X509Certificate(first.authority?.certificate ?? '').fingerprint256)
    expect(first.authority?.fingerprint).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/)
  })

  it('lets a client that trusts it connect by name, and no client that does not', async () => {
    // A handshake happens now, whatever the tests pretend.
    const tls = await openOwnTls(newFolder(), new Date(), machine)
    for (const name of ['theatre-pc', 'theatre-pc.local', 'localhost', 'clinic.lan']) {
      expect(await handshake(tls, tls.authority?.certificate, name)).toBe('heard')
    }
    await expect(handshake(tls, undefined, 'localhost')).rejects.toMatchObject({
      code: expect.stringMatching(/SELF_SIGNED|UNABLE_TO/),
    })
    await expect(handshake(tls, tls.authority?.certificate, 'elsewhere.lan')).rejects.toMatchObject({
      code: 'ERR_TLS_CERT_ALTNAME_INVALID',
    })
  })

  it('signs a chain that verifies, for at most 397 days, for a server and nothing else', async () => {
    const tls = await openOwnTls(newFolder(), now, machine)
    const certificate = new X509Certificate(tls.certificate)
    const authority = new X509Certificate(tls.authority?.certificate ?? '')
    expect(certificate.verify(authority.publicKey)).toBe(true)
    expect(certificate.checkIssued(authority)).toBe(true)
    expect([certificate.ca, authority.ca]).toEqual([false, true])
    const days = (Date.parse(certificate.validTo) - Date.parse(certificate.validFrom)) / 86_400_000
    expect(days).toBeLessThanOrEqual(397)
    expect(certificate.checkIP('192.168.1.20')).toBe('192.168.1.20')
    expect(certificate.checkIP('fd00::5')).toBe('fd00::5')
    expect(certificate.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1'])
  })

  it('cannot vouch for anything outside a local network, even with its key stolen', async () => {
    const authority = await issueAuthority('Quiet Ear', machine, new Date())
    const forged = await issueServer(authority, { names: ['bank.example'], addresses: [] }, new Date())
    await expect(handshake(forged, authority.certificate, 'bank.example')).rejects.toMatchObject({
      message: 'permitted subtree violation',
    })
  })

  it('renews the server’s certificate in its last 30 days, or when the machine moved, with the same authority', async () => {
    const folder = newFolder()
    const first = await openOwnTls(folder, now, machine)
    expect((await openOwnTls(folder, later(364), machine)).certificate).toBe(first.certificate)
    const renewed = await openOwnTls(folder, later(366), machine)
    expect(renewed.certificate).not.toBe(first.certificate)
    expect(renewed.authority).toEqual(first.authority)
    const moved = await openOwnTls(folder, later(366), { ...machine, addresses: addressesIn(['192.168.1.21']) })
    expect(new X509Certificate(moved.certificate).checkIP('192.168.1.20')).toBeUndefined()
    expect(new X509Certificate(moved.certificate).checkIP('192.168.1.21')).toBe('192.168.1.21')
    expect(
      (await openOwnTls(folder, later(366), { ...machine, addresses: addressesIn(['192.168.1.21']) })).certificate,
    ).toBe(moved.certificate)
  })

  it('is replaced before a certificate could outlive it', async () => {
    const folder = newFolder()
    const first = await openOwnTls(folder, now, machine)
    expect((await openOwnTls(folder, later(3_200), machine)).authority).toEqual(first.authority)
    const second = await openOwnTls(folder, later(3_300), machine)
    expect(second.authority).not.toEqual(first.authority)
    expect(
      new X509Certificate(second.certificate).checkIssued(new X509Certificate(second.authority?.certificate ?? '')),
    ).toBe(true)
  })

  it('vouches for an address of the open internet only when it was this machine’s own when it was made', async () => {
    const folder = newFolder()
    const university = { ...machine, addresses: addressesIn(['203.0.113.7', '10.1.2.3']) }
    // Handshakes happen now, whatever the tests pretend.
    const first = await openOwnTls(folder, new Date(), university)
    expect(new X509Certificate(first.certificate).checkIP('203.0.113.7')).toBe('203.0.113.7')
    expect(await handshake(first, first.authority?.certificate, 'localhost')).toBe('heard')
    const moved = { ...machine, addresses: addressesIn(['203.0.113.8', '10.1.2.3']) }
    const second = await openOwnTls(folder, new Date(), moved)
    expect(second.authority).toEqual(first.authority)
    expect(new X509Certificate(second.certificate).checkIP('203.0.113.8')).toBeUndefined()
    expect(new X509Certificate(second.certificate).checkIP('10.1.2.3')).toBe('10.1.2.3')
    expect(await handshake(second, first.authority?.certificate, 'localhost')).toBe('heard')
  })
})

describe('this machine', () => {
  it('is called by names and addresses a browser can type', () => {
    expect(namesFor('Theatre-PC')).toEqual(['clinic.lan', 'localhost', 'theatre-pc', 'theatre-pc.local'])
    expect(namesFor('Bad_Name')).toEqual(['clinic.lan', 'localhost'])
    expect(addressesIn(['fe80::1', '192.168.1.20'])).toEqual(['127.0.0.1', '192.168.1.20', '::1'])
    expect(machineNames().addresses).toContain('127.0.0.1')
  })

  it.each([
    ['10.255.0.1', true],
    ['172.31.9.9', true],
    ['172.32.0.1', false],
    ['192.168.0.1', true],
    ['100.127.1.1', true],
    ['100.128.1.1', false],
    ['8.8.8.8', false],
    ['fd12:3456::1', true],
    ['2001:db8::1', false],
    ['::1', true],
    ['::2', false],
  ])('%s is of a local network: %s', (address, local) => {
    expect(isIn(localNetworks, address)).toBe(local)
  })
})

describe('a certificate that the clinic brings', () => {
  it('serves as it is, and is refused with a sentence when it cannot', async () => {
    const folder = newFolder()
    const tls = await openOwnTls(folder, now, machine)
    const other = await openOwnTls(newFolder(), now, machine)
    const [certificate, key, wrong] = ['clinic.crt', 'clinic.key', 'other.key'].map((name) => join(folder, name)) as [
      string,
      string,
      string,
    ]
    writeFileSync(certificate, tls.certificate)
    writeFileSync(key, tls.key)
    writeFileSync(wrong, other.key)
    expect(readClinicTls(certificate, key, now)).toEqual({
      certificate: readFileSync(certificate, 'utf8'),
      key: readFileSync(key, 'utf8'),
      authority: null,
    })
    const code = (doing: () => unknown) => {
      try {
        return doing()
      } catch (error) {
        return (error as { code?: string }).code
      }
    }
    expect(code(() => readClinicTls(certificate, wrong, now))).toBe('other-key')
    expect(code(() => readClinicTls(key, key, now))).toBe('not-a-certificate')
    expect(code(() => readClinicTls(certificate, certificate, now))).toBe('not-a-key')
    expect(code(() => readClinicTls(certificate, key, later(400)))).toBe('certificate-ended')
    expect(code(() => readClinicTls(join(folder, 'none'), key, now))).toBe('cannot-read')
  })
})
