import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'

export type StripRefusal =
  | { readonly because: 'not-what-it-says'; readonly mediaType: string }
  | { readonly because: 'cannot-strip'; readonly mediaType: string }

/** Kinds of file that carry no place and are kept as they are. */
const kept = new Set(['application/pdf', 'text/plain', 'text/csv'])

/**
 * A picture without the place, the device and the words that cameras write into it; how it is turned stays. Kinds we
 * cannot clean are refused, never kept with their location.
 *
 * Only what draws the picture stays. JPEG: of the application segments JFIF, colour profile and Adobe's colour
 * transform, no comments, and nothing after the end of the picture, where telephones put a second picture or a film with
 * a place of its own (ITU-T T.81 annex B; Exif 2.3). PNG: the critical chunks and those that say how colours are shown
 * (PNG specification, third edition, section 11.3). WebP: the chunks of RFC 9649 but EXIF and XMP.
 */
export function stripLocation(bytes: Uint8Array, mediaType: string): Outcome<Uint8Array, StripRefusal> {
  if (kept.has(mediaType)) return answer(bytes)
  const strip = Object.hasOwn(strippers, mediaType) ? strippers[mediaType] : undefined
  if (!strip) return refuse({ because: 'cannot-strip', mediaType })
  const stripped = strip(bytes)
  return stripped ? answer(stripped) : refuse({ because: 'not-what-it-says', mediaType })
}

const strippers: Readonly<Record<string, (bytes: Uint8Array) => Uint8Array | undefined>> = {
  'image/jpeg': stripJpeg,
  'image/png': stripPng,
  'image/webp': stripWebp,
}

function join(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0))
  let place = 0
  for (const part of parts) {
    whole.set(part, place)
    place += part.length
  }
  return whole
}

function view(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}

function ascii(bytes: Uint8Array, from: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(from, from + length))
}

function stripJpeg(bytes: Uint8Array): Uint8Array | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined
  const parts: Uint8Array[] = [bytes.subarray(0, 2)]
  let orientation = 1
  let drawn = false
  for (let place = 2; place < bytes.length; ) {
    const marker = bytes[place + 1] ?? 0
    if (bytes[place] !== 0xff) return undefined
    if (marker === 0xd9) {
      parts.push(bytes.subarray(place, place + 2))
      break
    }
    // Any number of 0xff may stand before a marker.
    if (marker === 0xff) {
      place += 1
      continue
    }
    const segment = segmentAt(bytes, place)
    if (!segment) return undefined
    if (marker === 0xe1 && ascii(segment, 4, 4) === 'Exif') orientation = orientationOf(segment.subarray(10))
    if (drawsJpeg(marker, segment)) parts.push(segment)
    place += segment.length
    if (marker !== 0xda) continue
    const end = endOfScan(bytes, place)
    parts.push(bytes.subarray(place, end))
    drawn = true
    place = end
  }
  if (orientation !== 1) parts.splice(1, 0, orientationSegment(orientation))
  return drawn ? join(parts) : undefined
}

function segmentAt(bytes: Uint8Array, place: number): Uint8Array | undefined {
  if (place + 4 > bytes.length) return undefined
  const length = view(bytes).getUint16(place + 2)
  const segment = bytes.subarray(place, place + 2 + length)
  return length < 2 || segment.length < 2 + length ? undefined : segment
}

function drawsJpeg(marker: number, segment: Uint8Array): boolean {
  if (marker === 0xfe) return false
  if (marker < 0xe0 || marker > 0xef) return true
  if (marker === 0xe0) return ascii(segment, 4, 4) === 'JFIF'
  if (marker === 0xe2) return ascii(segment, 4, 11) === 'ICC_PROFILE'
  return marker === 0xee && ascii(segment, 4, 5) === 'Adobe'
}

/** Where picture data ends: at the next marker that is neither a stuffed byte nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let place = from; place + 1 < bytes.length; place += 1) {
    const next = bytes[place + 1] ?? 0
    if (bytes[place] === 0xff && next !== 0x00 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return place
  }
  return bytes.length
}

/** Tag 0x0112 of the first directory of an Exif block; 1 ("not turned") when there is none. */
function orientationOf(tiff: Uint8Array): number {
  if (tiff.length < 14) return 1
  const little = ascii(tiff, 0, 2) === 'II'
  const data = view(tiff)
  const first = data.getUint32(4, little)
  if (first + 2 > tiff.length) return 1
  const count = data.getUint16(first, little)
  for (let index = 0; index < count; index += 1) {
    const field = first + 2 + index * 12
    if (field + 12 > tiff.length) return 1
    if (data.getUint16(field, little) !== 0x0112) continue
    const value = data.getUint16(field + 8, little)
    return value >= 1 && value <= 8 ? value : 1
  }
  return 1
}

/** An Exif block that says only how the picture is turned. */
function orientationSegment(orientation: number): Uint8Array {
  const exif = [0x45, 0x78, 0x69, 0x66, 0, 0]
  const header = [0x4d, 0x4d, 0, 0x2a, 0, 0, 0, 8, 0, 1]
  const field = [0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0]
  const length = 2 + exif.length + header.length + field.length
  return new Uint8Array([0xff, 0xe1, length >> 8, length & 0xff, ...exif, ...header, ...field])
}

/** Beside the critical chunks (capital first letter): colour, transparency, size of a dot, animation. */
const pngChunks = new Set('tRNS cHRM gAMA iCCP sBIT sRGB cICP mDCV cLLI bKGD hIST pHYs sPLT acTL fcTL fdAT'.split(' '))

function stripPng(bytes: Uint8Array): Uint8Array | undefined {
  if (ascii(bytes, 0, 8) !== '\x89PNG\r\n\x1a\n') return undefined
  const parts: Uint8Array[] = [bytes.subarray(0, 8)]
  let place = 8
  while (place + 12 <= bytes.length) {
    const length = view(bytes).getUint32(place)
    const type = ascii(bytes, place + 4, 4)
    const chunk = bytes.subarray(place, place + 12 + length)
    if (chunk.length < 12 + length) return undefined
    if (/^[A-Z]/.test(type) || pngChunks.has(type)) parts.push(chunk)
    if (type === 'IEND') return join(parts)
    place += 12 + length
  }
  return undefined
}

const webpChunks = new Set(['VP8X', 'VP8 ', 'VP8L', 'ALPH', 'ANIM', 'ANMF', 'ICCP'])

function stripWebp(whole: Uint8Array): Uint8Array | undefined {
  if (ascii(whole, 0, 4) !== 'RIFF' || ascii(whole, 8, 4) !== 'WEBP') return undefined
  const bytes = whole.subarray(0, view(whole).getUint32(4, true) + 8)
  const parts: Uint8Array[] = []
  let place = 12
  while (place + 8 <= bytes.length) {
    const type = ascii(bytes, place, 4)
    const length = view(bytes).getUint32(place + 4, true)
    const chunk = bytes.slice(place, place + 8 + length + (length % 2))
    if (chunk.length < 8 + length) return undefined
    // The extended header announces what follows: it must not announce what was taken out.
    if (type === 'VP8X' && chunk[8] !== undefined) chunk[8] &= ~0b0000_1100
    if (webpChunks.has(type)) parts.push(chunk)
    place += 8 + length + (length % 2)
  }
  const body = join(parts)
  const head = new Uint8Array(bytes.slice(0, 12))
  view(head).setUint32(4, body.length + 4, true)
  return join([head, body])
}
