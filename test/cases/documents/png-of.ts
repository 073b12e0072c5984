import { crc32, deflateSync } from 'node:zlib'

/** A grey picture of `width` by `height` pixels as PNG, each pixel from `grey`. */
export function pngOf(width: number, height: number, grey = (_x: number, _y: number): number => 128): Uint8Array {
  const rows = Buffer.alloc((width + 1) * height)
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) rows[y * (width + 1) + 1 + x] = grey(x, y)
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width, 0)
  head.writeUInt32BE(height, 4)
  head.writeUInt8(8, 8)
  const signature = Buffer.from('89504e470d0a1a0a', 'hex')
  return new Uint8Array(
    Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', deflateSync(rows)), chunk('IEND', Buffer.alloc(0))]),
  )
}

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'ascii'), data])
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)]
  length.writeUInt32BE(data.length)
  sum.writeUInt32BE(crc32(named))
  return Buffer.concat([length, named, sum])
}
