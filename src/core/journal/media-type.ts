/** The first bytes by which a file says itself what it is, whatever its name says. */
const signs: readonly (readonly [mediaType: string, at: number, bytes: string])[] = [
  ['image/jpeg', 0, '\xff\xd8\xff'],
  ['image/png', 0, '\x89PNG\r\n\x1a\n'],
  ['image/webp', 8, 'WEBP'],
  ['application/pdf', 0, '%PDF-'],
  ['image/heic', 4, 'ftyphei'],
  ['image/heic', 4, 'ftypmif1'],
  ['image/tiff', 0, 'II*\0'],
  ['image/tiff', 0, 'MM\0*'],
]

/**
 * What a file is: by its first bytes where they tell, else as whoever sent it says.
 *
 * @example mediaTypeOf(bytes, '') // 'image/jpeg'
 * Reference: ITU-T T.81; PNG specification, third edition; RFC 9649; ISO 32000-2; ISO 23008-12.
 */
export function mediaTypeOf(bytes: Uint8Array, said: string): string {
  const found = signs.find(([, at, sign]) => [...sign].every((letter, i) => bytes[at + i] === letter.charCodeAt(0)))
  return found?.[0] ?? (said === '' ? 'application/octet-stream' : said)
}
