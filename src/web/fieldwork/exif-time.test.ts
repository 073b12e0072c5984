import { describe, expect, test } from 'vitest'
import { exifTime } from './exif-time.ts'

/** The beginnings of two JPEGs as an image library from outside the project (Pillow 12.3.0) writes them, in either byte order. */
const withOffset =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/4QB+RXhpZgAASUkqAAgAAAADAA8BAgAJAAAAMgAAABIBAwABAAAABgAAAGmHBAABAAAAPAAAAAAAAABJbnZlbnRlZAAAAgADkAIAFAAAAFoAAAARkAIABwAAAG4AAAAAAAAAMjAyNjowNTowNCAxMDozMDoxNQAtMDY6MDAAAP/bAEMA'
const withoutOffset =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/4QBqRXhpZgAATU0AKgAAAAgAAwEPAAIAAAAJAAAAMgESAAMAAAABAAYAAIdpAAQAAAABAAAAPAAAAABJbnZlbnRlZAAAAAGQAwACAAAAFAAAAE4AAAAAMjAyNjowNTowNCAxMDozMDoxNQD/2wBD'

const bytesOf = (base64: string): ArrayBuffer => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0)).buffer

describe('exifTime', () => {
  test('is the time that the camera wrote, with its offset where it wrote one', () => {
    expect(exifTime(bytesOf(withOffset))).toBe('2026-05-04T10:30:15-06:00')
    expect(exifTime(bytesOf(withoutOffset))).toBe('2026-05-04T10:30:15')
  })

  test('is not known of a file that is cut off before it, or is no JPEG', () => {
    const whole = bytesOf(withOffset)
    // The text of the time ends 140 bytes in: Exif header at 30, text at 90 from there, 20 long.
    for (let length = 0; length < 140; length++) expect(exifTime(whole.slice(0, length))).toBeNull()
    expect(exifTime(whole.slice(0, 140))).toBe('2026-05-04T10:30:15')
    expect(exifTime(bytesOf('iVBORw0KGgoAAAANSUhEUgAAAAEAAAAB'))).toBeNull()
  })
})
