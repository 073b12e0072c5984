import { describe, expect, test } from 'vitest'
import { readPicture } from './read-picture.ts'

const bytes = (hex: string): Uint8Array => Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))
const ascii = (text: string): string => [...text].map((letter) => letter.charCodeAt(0).toString(16)).join('')

// Built by hand from the markers and chunks of the standards; what they draw does not count here.
const pictures = {
  // SOI, APP0 of 4 bytes, SOF0 of 3 by 2, SOS of 4 bytes, data with a stuffed zero and a restart marker, EOI
  'image/jpeg': bytes(
    'ffd8 ffe0 0004 0102 ffc0 0008 08 0002 0003 00 ffda 0004 0102 11ff0022ffd033 ffd9'.replaceAll(' ', ''),
  ),
  // a second scan, as progressive pictures have, after fill bytes
  progressive: bytes(
    'ffd8 ffc4 0003 00 ffc2 0008 08 0002 0003 00 ffda 0004 0102 1122 ffff c4 0003 00 ffda 0003 01 33 ffd9'.replaceAll(
      ' ',
      '',
    ),
  ),
  'image/png': bytes(
    `89504e470d0a1a0a 00000008${ascii('IHDR')}0000000300000002 01020304 00000000${ascii('IEND')}ae426082`.replaceAll(
      ' ',
      '',
    ),
  ),
  'image/webp': bytes(
    `${ascii('RIFF')}16000000${ascii('WEBP')}${ascii('VP8 ')}0a000000 300000 9d012a 0300 0200`.replaceAll(' ', ''),
  ),
} as const

describe('readPicture', () => {
  test.each(Object.entries(pictures))('finds the end of %s, also with something appended', (name, whole) => {
    const type = name === 'progressive' ? 'image/jpeg' : name
    const read = { ok: true, value: { type, length: whole.length, width: 3, height: 2 } }
    expect(readPicture(whole)).toEqual(read)
    expect(readPicture(Uint8Array.from([...whole, ...whole]))).toEqual(read)
  })

  test.each(Object.entries(pictures))('finds %s cut short wherever it is cut', (_, whole) => {
    for (let length = 12; length < whole.length; length++)
      expect(readPicture(whole.subarray(0, length)), `${length}`).toEqual({
        ok: false,
        error: { kind: 'picture cut short' },
      })
  })

  // 64 000 000 are read: 8000 x 8000 are, one row more is not.
  test.each([
    ['image/png', 16, '00001f40', 20, '00001f40', '00001f41'],
    ['image/jpeg', 15, '1f40', 13, '1f40', '1f41'],
    ['image/webp', 26, '401f', 28, '401f', '411f'],
  ] as const)('holds %s to a number of pixels before any is looked at', (type, x, width, y, most, more) => {
    const sized = (height: string): Uint8Array => {
      const picture = Uint8Array.from(pictures[type])
      picture.set(bytes(width), x)
      picture.set(bytes(height), y)
      return picture
    }
    expect(readPicture(sized(most))).toMatchObject({ ok: true, value: { width: 8000, height: 8000 } })
    expect(readPicture(sized(more))).toEqual({
      ok: false,
      error: { kind: 'picture of pixels', width: 8000, height: 8001 },
    })
    expect(readPicture(sized('00'.repeat(more.length / 2)))).toEqual({
      ok: false,
      error: { kind: 'picture without size' },
    })
  })

  test('finds the size of lossless and of extended WebP', () => {
    const webp = (rest: string) => bytes(`${ascii('RIFF')}${'16000000'}${ascii('WEBP')}${rest}`.replaceAll(' ', ''))
    // 14 bits each of width and height less one: 2 and 1
    expect(readPicture(webp(`${ascii('VP8L')}05000000 2f 02400000 0000000000`))).toMatchObject({
      value: { width: 3, height: 2 },
    })
    expect(readPicture(webp(`${ascii('VP8X')}0a000000 00000000 020000 010000`))).toMatchObject({
      value: { width: 3, height: 2 },
    })
  })

  test('says what is no picture', () => {
    expect(readPicture(new Uint8Array())).toEqual({ ok: false, error: { kind: 'empty file' } })
    for (const text of ['%PDF-1.7', 'RIFF....WAVE', 'a text'])
      expect(readPicture(bytes(ascii(text)))).toEqual({ ok: false, error: { kind: 'no picture' } })
    // An end without anything drawn before.
    expect(readPicture(bytes('ffd8ffd9ffd9'))).toEqual({ ok: false, error: { kind: 'picture cut short' } })
  })
})
