import { describe, expect, test } from 'vitest'
import { withExif } from '../../../test/fixtures/exif-photo.ts'
import { photoOrigin } from './photo-origin.ts'

/** The beginnings of two JPEGs as an image library from outside the project (Pillow 12.3.0) writes them, in either byte order. */
const withOffset =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/4QB+RXhpZgAASUkqAAgAAAADAA8BAgAJAAAAMgAAABIBAwABAAAABgAAAGmHBAABAAAAPAAAAAAAAABJbnZlbnRlZAAAAgADkAIAFAAAAFoAAAARkAIABwAAAG4AAAAAAAAAMjAyNjowNTowNCAxMDozMDoxNQAtMDY6MDAAAP/bAEMA'
const withoutOffset =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/4QBqRXhpZgAATU0AKgAAAAgAAwEPAAIAAAAJAAAAMgESAAMAAAABAAYAAIdpAAQAAAABAAAAPAAAAABJbnZlbnRlZAAAAAGQAwACAAAAFAAAAE4AAAAAMjAyNjowNTowNCAxMDozMDoxNQD/2wBD'

const bytesOf = (base64: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))

describe('photoOrigin', () => {
  test('is the time that the camera wrote, with its offset where it wrote one', async () => {
    const position = null
    expect(await photoOrigin(bytesOf(withOffset).buffer)).toEqual({ takenAt: '2026-05-04T10:30:15-06:00', position })
    expect(await photoOrigin(bytesOf(withoutOffset).buffer)).toEqual({ takenAt: '2026-05-04T10:30:15', position })
  })

  test('is the place that the camera wrote, west and south negative', async () => {
    const { takenAt, position } = await photoOrigin(withExif(bytesOf(withOffset)).buffer)
    expect(takenAt).toBe('2026-05-04T10:30:15-06:00')
    // 43 + 7/60 + 24.42/3600 and 89 + 32/60 + 35.556/3600.
    expect(position!.latitude).toBeCloseTo(43.12345, 9)
    expect(position!.longitude).toBeCloseTo(-89.54321, 9)
  })

  test('is not known of a file that is cut off before it, or is no picture of a camera', async () => {
    const nothing = { takenAt: null, position: null }
    const whole = withExif(bytesOf(withOffset)).buffer
    for (let length = 0; length < 200; length += 7) expect(await photoOrigin(whole.slice(0, length))).toEqual(nothing)
    expect(await photoOrigin(bytesOf('iVBORw0KGgoAAAANSUhEUgAAAAEAAAAB').buffer)).toEqual(nothing)
    expect(await photoOrigin(new TextEncoder().encode('no picture').buffer)).toEqual(nothing)
  })
})
