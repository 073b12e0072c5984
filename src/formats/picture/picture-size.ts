interface Size {
  readonly width: number
  readonly height: number
}

/**
 * Width and height in pixels as a whole picture states them; null where it does not, or states 0.
 * @source ITU-T T.81, B.2.2 (frame header); PNG specification, 11.2.2 (IHDR); RFC 9649, 2.5 to 2.7; RFC 6386, 9.1
 */
export function pictureSize(type: 'image/jpeg' | 'image/png' | 'image/webp', bytes: Uint8Array): Size | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const size = sizes[type](view)
  return size === null || size.width === 0 || size.height === 0 ? null : size
}

const sizes = { 'image/jpeg': ofJpeg, 'image/png': ofPng, 'image/webp': ofWebp } as const

/** From the first frame header, SOF0 to SOF15 without DHT, JPG and DAC, which lie between them. */
function ofJpeg(view: DataView): Size | null {
  for (let at = 2; at + 9 <= view.byteLength; ) {
    const marker = view.getUint8(at + 1)
    if (marker === 0xff) at += 1
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7)) at += 2
    else if (marker === 0xda || marker === 0xd9) return null
    else if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc)
      return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) }
    else at += 2 + view.getUint16(at + 2)
  }
  return null
}

const nameAt = (view: DataView, at: number): string =>
  String.fromCharCode(...Array.from({ length: 4 }, (_, i) => view.getUint8(at + i)))

function ofPng(view: DataView): Size | null {
  if (view.byteLength < 24 || nameAt(view, 12) !== 'IHDR') return null
  return { width: view.getUint32(16), height: view.getUint32(20) }
}

function ofWebp(view: DataView): Size | null {
  if (view.byteLength < 30) return null
  switch (nameAt(view, 12)) {
    case 'VP8 ':
      return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff }
    case 'VP8L': {
      const bits = view.getUint32(21, true)
      return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 }
    }
    case 'VP8X': {
      const less = (at: number): number => view.getUint16(at, true) + 65_536 * view.getUint8(at + 2)
      return { width: less(24) + 1, height: less(27) + 1 }
    }
    default:
      return null
  }
}
