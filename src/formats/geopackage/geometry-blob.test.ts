import { describe, expect, it } from 'vitest'
import { geometryBlob } from './geometry-blob.ts'

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex')

describe('a GeoPackage geometry', () => {
  it('is header and well-known binary of a point, byte by byte', () => {
    // GP, version 0, flags 1, srs 4326, then WKB: little-endian, type 1, x 1.0, y 2.0 (IEEE 754)
    expect(hex(geometryBlob(4326, 'point', [[1, 2]]))).toBe(
      '47500001e6100000' + '0101000000' + '000000000000f03f' + '0000000000000040',
    )
  })

  it('carries the envelope of a line: least and greatest x, then y', () => {
    const blob = geometryBlob(-1, 'line', [
      [2, 1],
      [1, 2],
    ])
    const one = '000000000000f03f'
    const two = '0000000000000040'
    expect(hex(blob)).toBe(`47500003ffffffff${one}${two}${one}${two}010200000002000000${two}${one}${one}${two}`)
  })
})
