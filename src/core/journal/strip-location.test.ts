import { describe, expect, it } from 'vitest'
import { stripLocation } from './strip-location.ts'

const text = (words: string) => [...words].map((letter) => letter.charCodeAt(0))
const place = text('GPS 51.5N 0.1W')

function segment(marker: number, body: readonly number[]): number[] {
  return [0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 0xff, ...body]
}

/** An Exif block in little-endian order with an orientation and a place. */
function exif(orientation: number): number[] {
  const field = [0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0]
  return segment(0xe1, [
    ...text('Exif'),
    0,
    0,
    ...text('II'),
    0x2a,
    0,
    8,
    0,
    0,
    0,
    1,
    0,
    ...field,
    0,
    0,
    0,
    0,
    ...place,
  ])
}

const jpeg = (orientation: number) =>
  new Uint8Array([
    0xff,
    0xd8,
    ...segment(0xe0, text('JFIF')),
    ...exif(orientation),
    ...segment(0xfe, place),
    ...segment(0xdb, [1, 2, 3]),
    ...segment(0xda, [9]),
    7,
    7,
    0xff,
    0xd9,
  ])

const chunk = (type: string, body: readonly number[]) => [0, 0, 0, body.length, ...text(type), ...body, 1, 2, 3, 4]
const png = new Uint8Array([
  ...text('\x89PNG\r\n\x1a\n'),
  ...chunk('IHDR', [1]),
  ...chunk('eXIf', place),
  ...chunk('tEXt', place),
  ...chunk('IDAT', [5]),
  ...chunk('IEND', []),
])

const part = (type: string, body: readonly number[]) => [
  ...text(type),
  body.length,
  0,
  0,
  0,
  ...body,
  ...(body.length % 2 ? [0] : []),
]
const parts = [
  ...part('VP8X', [0b0000_1100, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
  ...part('VP8 ', [1, 2, 3]),
  ...part('EXIF', place),
]
const webp = new Uint8Array([...text('RIFF'), parts.length + 4, 0, 0, 0, ...text('WEBP'), ...parts])

function stripped(bytes: Uint8Array, mediaType: string): Uint8Array {
  const outcome = stripLocation(bytes, mediaType)
  if (outcome.kind === 'refusal') throw new Error(outcome.refusal.because)
  return outcome.answer
}

const words = (bytes: Uint8Array) => String.fromCharCode(...bytes)

describe('a picture that arrives', () => {
  it.each([
    ['image/jpeg', jpeg(1)],
    ['image/png', png],
    ['image/webp', webp],
  ])('%s loses its place and keeps its picture', (mediaType, bytes) => {
    expect(words(bytes)).toContain('GPS')
    const clean = stripped(bytes, mediaType)
    expect(words(clean)).not.toContain('GPS')
    expect(stripped(clean, mediaType)).toEqual(clean)
  })

  it('loses what a telephone hides elsewhere: a second picture behind the end, a maker note, an unknown chunk', () => {
    const behind = new Uint8Array([...jpeg(1), ...exif(1), ...place])
    expect(stripped(behind, 'image/jpeg')).toEqual(stripped(jpeg(1), 'image/jpeg'))
    const between = new Uint8Array([
      ...[0xff, 0xd8],
      ...segment(0xe2, text('MPF')),
      ...segment(0xe2, text('ICC_PROFILE')),
      ...segment(0xe5, place),
      ...segment(0xda, [9]),
      ...[7, 0xff, 0, 0xff, 0xd3, 7],
      ...exif(6),
      ...segment(0xda, [8]),
      ...[6, 0xff, 0xff, 0xd9],
    ])
    const clean = words(stripped(between, 'image/jpeg'))
    for (const gone of ['GPS', 'MPF', '51.5N']) expect(clean).not.toContain(gone)
    expect(clean).toContain('ICC_PROFILE')
    expect(clean).toContain('\x07\xff\x00\xff\xd3\x07\xff\xda')
    expect(clean.endsWith('\x06\xff\xff\xd9')).toBe(true)
    const unknown = new Uint8Array([
      ...png.slice(0, 8),
      ...chunk('IHDR', [1]),
      ...chunk('caBX', place),
      ...chunk('IEND', []),
    ])
    expect(words(stripped(unknown, 'image/png'))).not.toContain('GPS')
    const trailing = new Uint8Array([...webp, ...place])
    expect(stripped(trailing, 'image/webp')).toEqual(stripped(webp, 'image/webp'))
  })

  it.each(['constructor', '__proto__', 'toString'])('refuses %s, which no picture is', (mediaType) => {
    expect(stripLocation(jpeg(1), mediaType)).toMatchObject({ refusal: { because: 'cannot-strip' } })
  })

  it('keeps how a JPEG is turned and nothing else of its Exif block', () => {
    const clean = words(stripped(jpeg(6), 'image/jpeg'))
    expect(clean).toContain('Exif\0\0MM\0*\0\0\0\b\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06')
    expect(words(stripped(jpeg(1), 'image/jpeg'))).not.toContain('Exif')
    expect(clean).toContain('\x07\x07\xff\xd9')
  })

  it('announces no Exif in a WebP header and gives its true length', () => {
    const clean = stripped(webp, 'image/webp')
    expect(clean[20]).toBe(0)
    expect(clean[4]).toBe(clean.length - 8)
  })

  it('keeps a paper as it is, and refuses what it cannot clean or what is not what it says', () => {
    const paper = new Uint8Array(text('%PDF-1.7'))
    expect(stripped(paper, 'application/pdf')).toBe(paper)
    expect(stripLocation(paper, 'image/heic')).toMatchObject({ refusal: { because: 'cannot-strip' } })
    for (const mediaType of ['image/jpeg', 'image/png', 'image/webp']) {
      expect(stripLocation(paper, mediaType)).toMatchObject({ refusal: { because: 'not-what-it-says' } })
    }
    expect(stripLocation(jpeg(1).slice(0, 40), 'image/jpeg')).toMatchObject({
      refusal: { because: 'not-what-it-says' },
    })
  })
})
