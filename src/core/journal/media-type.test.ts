import { describe, expect, it } from 'vitest'
import { mediaTypeOf } from './media-type.ts'

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0))

describe('what a file is', () => {
  it.each([
    ['\xff\xd8\xff\xe0\0\x10JFIF', 'image/jpeg'],
    ['\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'image/png'],
    ['RIFF\x24\0\0\0WEBPVP8 ', 'image/webp'],
    ['%PDF-1.7\n', 'application/pdf'],
    ['\0\0\0\x18ftypheic\0\0', 'image/heic'],
    ['\0\0\0\x18ftypmif1\0\0', 'image/heic'],
    ['II*\0\x08', 'image/tiff'],
  ])('is told by its first bytes, not by its name: %j', (start, mediaType) => {
    expect(mediaTypeOf(bytes(start), 'image/png')).toBe(mediaType)
  })

  it('is what the sender says when the bytes do not tell, and unknown when nobody says', () => {
    expect(mediaTypeOf(bytes('date;result'), 'text/csv')).toBe('text/csv')
    expect(mediaTypeOf(bytes(''), '')).toBe('application/octet-stream')
  })
})
