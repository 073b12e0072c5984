import { describe, expect, test } from 'vitest'
import { readPicture } from './read-picture.ts'

const bytes = (hex: string): Uint8Array => Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))
const ascii = (text: string): string => [...text].map((letter) => letter.charCodeAt(0).toString(16)).join('')

// Built by hand from the markers and chunks of the standards; what they draw does not count here.
const pictures = {
  // SOI, APP0 of 4 bytes, SOS of 4 bytes, data with a stuffed zero and a restart marker, EOI
  'image/jpeg': bytes('ffd8 ffe0 0004 0102 ffda 0004 0102 11ff0022ffd033 ffd9'.replaceAll(' ', '')),
  // a second scan, as progressive pictures have, after fill bytes
  progressive: bytes('ffd8 ffda 0004 0102 1122 ffff c4 0003 00 ffda 0003 01 33 ffd9'.replaceAll(' ', '')),
  'image/png': bytes(
    `89504e470d0a1a0a 00000002${ascii('IHDR')}aabb01020304 00000000${ascii('IEND')}ae426082`.replaceAll(' ', ''),
  ),
  'image/webp': bytes(`${ascii('RIFF')}08000000${ascii('WEBP')}${ascii('VP8 ')}`),
} as const

describe('readPicture', () => {
  test.each(Object.entries(pictures))('finds the end of %s, also with something appended', (name, whole) => {
    const type = name === 'progressive' ? 'image/jpeg' : name
    const read = { ok: true, value: { type, length: whole.length } }
    expect(readPicture(whole)).toEqual(read)
    expect(readPicture(Uint8Array.from([...whole, ...whole]))).toEqual(read)
  })

  test.each(Object.entries(pictures))('finds %s cut short wherever it is cut', (_, whole) => {
    for (let length = 12; length < whole.length; length++)
      expect(readPicture(whole.subarray(0, length)), `${length}`).toEqual({
        ok: false,
        error: 'a picture that is cut short',
      })
  })

  test('says what is no picture', () => {
    expect(readPicture(new Uint8Array())).toEqual({ ok: false, error: 'an empty file' })
    for (const text of ['%PDF-1.7', 'RIFF....WAVE', 'a text'])
      expect(readPicture(bytes(ascii(text)))).toEqual({ ok: false, error: 'a file that begins like none of them' })
    // An end without anything drawn before.
    expect(readPicture(bytes('ffd8ffd9ffd9'))).toEqual({ ok: false, error: 'a picture that is cut short' })
  })
})
