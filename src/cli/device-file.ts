import { theirs } from '../core/theirs.ts'
import { type DeviceFile, readDeviceFile } from '../formats/entry/device-file.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { pinsOf } from '../operations/pin-entry.ts'
import type { NamedPhoto } from '../operations/record-photos.ts'
import { landedSheets } from '../sheets/landed-sheets.ts'
import { sha256 } from '../store/sha256.ts'
import { BadInput } from './command.ts'
import { readText, shownName, soundValue } from './io.ts'

/** The file that a device exports; what is recorded in it without a layout is pinned, as everywhere. */
export async function loadDevice(file: string): Promise<DeviceFile> {
  const device = soundValue(readDeviceFile(shownName(file), await readText(file)))
  return { ...device, entries: [...device.entries, ...(await pinsOf(device.entries, landedSheets, sha256))] }
}

const endings = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' } as const

/** The photos in a device's file, each under its SHA-256, which its bytes have to have. */
export function photosOfDevice(file: string, { photos }: DeviceFile): readonly NamedPhoto[] {
  const problems: InputProblem[] = []
  const found = photos.map(({ sha256: photo, type, base64 }, i) => {
    const bytes = Buffer.from(base64, 'base64')
    const hash = sha256(bytes)
    if (hash !== photo)
      problems.push({
        file: shownName(file),
        place: `photos[${i}].base64`,
        expected: { kind: 'bytes with hash', sha256: photo },
        found: theirs(hash),
      })
    return { photo, file: `${photo}.${endings[type]}`, bytes }
  })
  if (problems.length > 0) throw new BadInput(problems)
  return found
}
