import { X509Certificate } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { request as plainRequest } from 'node:http'
import { request } from 'node:https'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { House } from '../house-for-tests.ts'
import { connectPage } from './page.ts'

describe('a clinic with its own authority', () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-tls-'))
  let house: House
  beforeAll(async () => {
    house = await House.open({ tls: { folder } })
  })
  afterAll(async () => {
    await house?.close()
    rmSync(folder, { recursive: true })
  })

  const portOf = (urls: readonly string[]) => Number(new URL(urls[0] ?? '').port)
  /** Asks over the encrypted door, trusting only what was downloaded. */
  const over = (ca: string | undefined, path: string) =>
    new Promise<{ status: number | undefined; text: string }>((resolve, reject) => {
      const port = portOf(house.serving.addresses.encrypted)
      const trust = ca === undefined ? {} : { ca }
      request({ host: '127.0.0.1', port, servername: 'localhost', path, ...trust, agent: false }, (response) => {
        let text = ''
        response.setEncoding('utf8')
        response.on('data', (chunk) => {
          text += chunk
        })
        response.on('end', () => resolve({ status: response.statusCode, text }))
      })
        .once('error', reject)
        .end()
    })
  const downloaded = async () => {
    const answer = await fetch(`${house.serving.url}/connect/quiet-ear.crt`)
    expect(answer.headers.get('content-type')).toBe('application/x-x509-ca-cert')
    return new X509Certificate(Buffer.from(await answer.arrayBuffer()))
  }

  it('offers the certificate over the plain door; whoever trusts it connects to the encrypted one', async () => {
    const authority = await downloaded()
    expect(authority.fingerprint256).toBe(house.serving.fingerprint)
    const health = await over(authority.toString(), '/api/health')
    expect([health.status, JSON.parse(health.text).clinics]).toEqual([200, 1])
    await expect(over(undefined, '/api/health')).rejects.toMatchObject({
      code: expect.stringMatching(/SELF_SIGNED|UNABLE/),
    })
  })

  it('says on the page which connection this is, and shows the fingerprint and the addresses', async () => {
    const answer = await fetch(`${house.serving.url}/connect`)
    const plain = (await answer.text()).replaceAll('<wbr>', '')
    expect(answer.headers.get('content-type')).toMatch(/^text\/html/)
    expect(plain).toContain('This connection: This machine')
    expect(plain).toContain(house.serving.fingerprint)
    for (const url of house.serving.addresses.encrypted) expect(plain).toContain(`href="${url}"`)
    const safe = await over((await downloaded()).toString(), '/connect')
    expect(safe.text).toContain('This connection: Clinic network, encrypted')
    // Nothing that the content-security policy would refuse.
    for (const page of [plain, safe.text]) expect(page).not.toMatch(/<script|<style|\sstyle=|\son\w+=|javascript:/)
    expect(answer.headers.get('content-security-policy')).toContain("style-src 'self'")
  })

  it('calls a connection this machine only under a name that browsers hold for secure', async () => {
    const under = (host: string) =>
      new Promise<string>((resolve, reject) => {
        plainRequest(`${house.serving.url}/connect`, { headers: { host } }, (response) => {
          let text = ''
          response.setEncoding('utf8').on('data', (chunk) => {
            text += chunk
          })
          response.on('end', () => resolve(/This connection: ([^<]+)/.exec(text)?.[1] ?? ''))
        })
          .once('error', reject)
          .end()
      })
    expect(await under('localhost:4280')).toBe('This machine')
    expect(await under('[::1]:4280')).toBe('This machine')
    expect(await under('clinic.lan:4280')).toBe('Clinic network, not encrypted')
  })

  it('hands out a secure cookie over the encrypted door only', async () => {
    const authority = (await downloaded()).toString()
    const cookie = await new Promise<string>((resolve, reject) => {
      const body = JSON.stringify({ login: 'mara', password: 'the password of mara', device: { id: 'd', name: 'd' } })
      const port = portOf(house.serving.addresses.encrypted)
      const headers = { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) }
      const asked = { host: '127.0.0.1', port, servername: 'localhost', ca: authority, agent: false, headers }
      request({ ...asked, method: 'POST', path: '/api/actions/sign-in' }, (response) => {
        response.resume()
        resolve(String(response.headers['set-cookie']))
      })
        .once('error', reject)
        .end(body)
    })
    expect(cookie).toMatch(/^__Host-quiet-ear-session=.*; Secure/)
    // The plain door has a cookie of another name, which the secure one does not shut out.
    expect(house.manager.cookie).toMatch(/^quiet-ear-session=/)
  })
})

describe('the page for connecting a tablet', () => {
  const page = {
    mode: 'plain' as const,
    addresses: { plain: ['http://192.168.1.20:4280'], encrypted: ['https://192.168.1.20:4281'] },
    authority: { name: 'Quiet Ear of <this> clinic', fingerprint: 'AB:CD' },
    here: 'http://localhost:4280/connect',
    styles: ['/connect.css'],
  }

  it('says of a plain connection that others can read along, and what does not work over it', () => {
    const text = connectPage(page)
    expect(text).toContain('This connection: Clinic network, not encrypted')
    expect(text).toContain('could read along')
    const row = (label: string) =>
      [
        ...(
          new RegExp(`<th role="rowheader" scope="row">${label}[^<]*</th>(.*?)</tr>`, 's').exec(text)?.[1] ?? ''
        ).matchAll(/>(yes|no)</g),
      ].map(([, word]) => word)
    // MDN, "Secure contexts": service workers, wake lock, persistent storage and camera need one; IndexedDB does not.
    expect(row('Opening Quiet Ear while the server is away')).toEqual(['yes', 'no', 'yes'])
    expect(row('The screen stays lit')).toEqual(['yes', 'no', 'yes'])
    expect(row('The browser promises')).toEqual(['yes', 'no', 'yes'])
    expect(row('Camera inside')).toEqual(['yes', 'no', 'yes'])
    expect(row('What is written while')).toEqual(['yes', 'yes', 'yes'])
  })

  it('puts nothing into the page unescaped', () => {
    expect(connectPage(page)).toContain('Quiet Ear of &#60;this&#62; clinic')
    expect(connectPage(page)).not.toContain('<this>')
  })

  it('says what holds when the clinic brought a certificate, and when there is none', () => {
    expect(connectPage({ ...page, authority: null })).toContain('nothing to install')
    const without = connectPage({ ...page, authority: undefined, addresses: { ...page.addresses, encrypted: [] } })
    expect(without).toContain('started without encryption')
    expect(without).not.toContain('Download the certificate')
  })
})
