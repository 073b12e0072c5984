/**
 * The ZIP file `bytes` with every entry dated 1980-01-01 00:00, the earliest that the format knows; otherwise its
 * entries carry the time at which they were packed.
 * @source APPNOTE.TXT of the ZIP format, 4.3.7, 4.3.12 and 4.3.16
 */
export function fixZipTimes(bytes: Uint8Array): Uint8Array {
  const fixed = bytes.slice()
  const view = new DataView(fixed.buffer)
  const end = findEnd(view)
  const count = view.getUint16(end + 10, true)
  let at = view.getUint32(end + 16, true)
  for (let i = 0; i < count; i++) {
    expectSignature(view, at, 0x02014b50)
    setTime(view, at + 12)
    const local = view.getUint32(at + 42, true)
    expectSignature(view, local, 0x04034b50)
    setTime(view, local + 10)
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true)
  }
  return fixed
}

/** Time 00:00:00, then date: day 1, month 1, year 0 after 1980. */
function setTime(view: DataView, at: number): void {
  view.setUint16(at, 0, true)
  view.setUint16(at + 2, (1 << 5) | 1, true)
}

function findEnd(view: DataView): number {
  for (let at = view.byteLength - 22; at >= 0; at--) if (view.getUint32(at, true) === 0x06054b50) return at
  throw new RangeError('the file has no end of a ZIP directory')
}

function expectSignature(view: DataView, at: number, signature: number): void {
  if (view.getUint32(at, true) !== signature) throw new RangeError(`no entry of a ZIP file at byte ${at}`)
}
