import { connectInEnglish as words } from '#content/wording/app-connect.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Html, html } from '#documents/render/markup.ts'

export type Mode = keyof typeof words.modes

export type ConnectPage = {
  readonly mode: Mode
  readonly addresses: { readonly plain: readonly string[]; readonly encrypted: readonly string[] }
  /** Undefined without encryption; null when the clinic brought its own certificate. */
  readonly authority: { readonly name: string; readonly fingerprint: string } | null | undefined
  /** This page as the machine itself opens it. */
  readonly here: string
  readonly styles: readonly string[]
}

type Row = keyof typeof words.table.rows

/** The rule of browsers: some things only work on the machine itself and over an encrypted connection. */
const works: Readonly<Record<Row, Readonly<Record<Mode, boolean>>>> = {
  everyday: { 'this-machine': true, plain: true, tls: true },
  unsent: { 'this-machine': true, plain: true, tls: true },
  offline: { 'this-machine': true, plain: false, tls: true },
  kept: { 'this-machine': true, plain: false, tls: true },
  awake: { 'this-machine': true, plain: false, tls: true },
  camera: { 'this-machine': true, plain: false, tls: true },
  private: { 'this-machine': true, plain: false, tls: true },
}
const modes = ['this-machine', 'plain', 'tls'] as const satisfies readonly Mode[]

/** The page /connect: says plainly what this connection is, what works over it, and how a device comes to trust it. */
export function connectPage(page: ConnectPage): string {
  const styles = page.styles.map((path) => html`<link rel="stylesheet" href="${path}">`)
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${words.title} – ${words.product}</title>
<link rel="icon" href="/mark.svg" type="image/svg+xml">
${styles}
</head>
<body>
<div class="connect">
<header><p class="product">${words.product}</p><a href="/">${words.toTheApp}</a></header>
<main>
<h1>${words.title}</h1>
${modeOf(page)}
${tableOf(page)}
${addressesOf(page)}
${trustOf(page)}
</main>
</div>
</body>
</html>
`.text
}

function modeOf({ mode }: ConnectPage): Html {
  const { name, says } = words.modes[mode]
  return html`<section class="mode ${mode}" aria-labelledby="mode">
<h2 id="mode">${words.thisConnection}: ${name}</h2>
<p>${says}</p>
</section>`
}

/** The roles are written out because on a phone the rows are arranged anew, and a browser then forgets what they are. */
function tableOf({ mode }: ConnectPage): Html {
  const { title, what, here, rows, yes, no } = words.table
  const heads = modes.map((one) => {
    const said = one === mode ? html`<span>${here}</span>` : html``
    return html`<th role="columnheader" scope="col" class="${one === mode ? 'here' : 'there'}">${words.modes[one].name}${said}</th>`
  })
  const lines = (Object.keys(rows) as Row[]).map((row) => {
    const cells = modes.map((one) => {
      const word = works[row][one] ? yes : no
      return html`<td role="cell" class="${one === mode ? 'here' : 'there'} ${word}">${word}</td>`
    })
    return html`<tr role="row"><th role="rowheader" scope="row">${rows[row]}</th>${cells}</tr>\n`
  })
  return html`<h2 id="works">${title}</h2>
<div class="scroll" role="region" aria-labelledby="works" tabindex="0">
<table role="table" aria-labelledby="works">
<thead role="rowgroup"><tr role="row"><th role="columnheader" scope="col">${what}</th>${heads}</tr></thead>
<tbody role="rowgroup">
${lines}</tbody>
</table>
</div>`
}

/** `localhost` means another machine on every device but this one. */
function usable(urls: readonly string[], mode: Mode): readonly string[] {
  return mode === 'this-machine' ? urls : urls.filter((url) => new URL(url).hostname !== 'localhost')
}

function addressesOf({ addresses, mode }: ConnectPage): Html {
  const { title, encrypted, plain, names, none } = words.addresses
  const listed = (all: readonly string[]) =>
    usable(all, mode).map((url) => html`<dd><a href="${url}">${url}</a></dd>\n`)
  const safe = addresses.encrypted.length > 0 ? html`<dt>${encrypted}</dt>\n${listed(addresses.encrypted)}` : html``
  return html`<h2>${title}</h2>
<dl>
${safe}<dt>${plain}</dt>
${listed(addresses.plain)}</dl>
<p>${addresses.encrypted.length > 0 ? names : none}</p>`
}

function trustOf({ authority, here, addresses, mode }: ConnectPage): Html {
  if (authority === undefined) return html``
  if (authority === null) {
    return html`<h2>${words.clinicCertificate.title}</h2>\n<p>${words.clinicCertificate.says}</p>`
  }
  const { title, why, compare, fingerprint, download, limits, afterwards, devices, menus } = words.trust
  const about = { authority: authority.name }
  const steps = Object.values(devices).map(
    ({ name, steps }) => html`<h3>${name}</h3>
<ol>${steps.map((step) => html`<li>${fill(step, about)}</li>`)}</ol>
`,
  )
  const next = usable(addresses.encrypted, mode)
    .slice(0, 1)
    .map((url) => html`<p>${afterwards} <a href="${url}">${url}</a>.</p>`)
  return html`<h2>${title}</h2>
<p>${why}</p>
<p>${fill(compare, { here })}</p>
<h3 id="fingerprint">${fingerprint}</h3>
<p class="fingerprint" aria-labelledby="fingerprint" role="group">${breakable(authority.fingerprint)}</p>
<p><a class="download" href="/connect/quiet-ear.crt" download>${download}</a></p>
<p>${limits}</p>
${steps}<p>${menus}</p>
${next}`
}

/** A line may end between two bytes, and nowhere else. */
function breakable(fingerprint: string): readonly Html[] {
  return fingerprint.split(':').map((byte, at) => (at === 0 ? html`${byte}` : html`:<wbr>${byte}`))
}
