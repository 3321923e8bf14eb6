/**
 * The clinic's own authority may vouch for names and addresses of a local network only (RFC 5280, 4.2.1.10), so that
 * whoever steals its key cannot pretend to a tablet to be a bank.
 */
export type Permitted = { readonly names: readonly string[]; readonly networks: readonly Network[] }

/** An address and how many of its leading bits count. */
export type Network = { readonly bytes: readonly number[]; readonly bits: number }

export const nameConstraintsId = '2.5.29.30'

/** RFC 1918, RFC 6598, RFC 3927, loopback; RFC 4193 and loopback of IPv6. */
export const localNetworks: readonly Network[] = [
  { bytes: [10, 0, 0, 0], bits: 8 },
  { bytes: [172, 16, 0, 0], bits: 12 },
  { bytes: [192, 168, 0, 0], bits: 16 },
  { bytes: [100, 64, 0, 0], bits: 10 },
  { bytes: [169, 254, 0, 0], bits: 16 },
  { bytes: [127, 0, 0, 0], bits: 8 },
  { bytes: [0xfc, ...zeros(15)], bits: 7 },
  { bytes: [...zeros(15), 1], bits: 128 },
]

/** The network that holds one address and no other. */
export function onlyThis(address: string): Network {
  const bytes = bytesOf(address)
  return { bytes, bits: bytes.length * 8 }
}

/** How a network stands in the extension. */
export function subtreeOf({ bytes, bits }: Network): number[] {
  return der(0x30, der(0x87, [...bytes, ...mask(bytes.length, bits)]))
}

/** The extension's value in DER. */
export function nameConstraints({ names, networks }: Permitted): Uint8Array {
  const subtrees = [
    ...names.map((name) =>
      der(
        0x30,
        der(
          0x82,
          [...name].map((letter) => letter.charCodeAt(0)),
        ),
      ),
    ),
    ...networks.map(subtreeOf),
  ]
  return Uint8Array.from(der(0x30, der(0xa0, subtrees.flat())))
}

/** True when the address lies in one of the networks. */
export function isIn(networks: readonly Network[], address: string): boolean {
  const bytes = bytesOf(address)
  return networks.some((network) => {
    if (network.bytes.length !== bytes.length) return false
    const covered = mask(bytes.length, network.bits)
    return bytes.every((byte, at) => (byte & (covered[at] ?? 0)) === ((network.bytes[at] ?? 0) & (covered[at] ?? 0)))
  })
}

function bytesOf(address: string): number[] {
  if (address.includes('.')) return address.split('.').map(Number)
  const [head = '', tail] = address.split('::')
  const words = (text: string) => text.split(':').filter((word) => word !== '')
  const left = words(head)
  const right = words(tail ?? '')
  const middle = tail === undefined ? [] : Array<string>(8 - left.length - right.length).fill('0')
  return [...left, ...middle, ...right].flatMap((word) => [
    Number.parseInt(word, 16) >> 8,
    Number.parseInt(word, 16) & 255,
  ])
}

function mask(length: number, bits: number): number[] {
  return Array.from({ length }, (_, at) => 256 - 2 ** (8 - Math.min(8, Math.max(0, bits - at * 8)))).map(
    (byte) => byte & 255,
  )
}

function zeros(count: number): number[] {
  return Array<number>(count).fill(0)
}

function der(tag: number, value: readonly number[]): number[] {
  const { length } = value
  const size = length < 128 ? [length] : length < 256 ? [0x81, length] : [0x82, length >> 8, length & 255]
  return [tag, ...size, ...value]
}
