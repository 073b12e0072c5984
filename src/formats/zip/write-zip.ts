import { type Zippable, zipSync } from 'fflate'

interface NamedBytes {
  /** With `/` between folder and file. */
  readonly name: string
  readonly bytes: Uint8Array
}

/** What is packed already and would only cost time. */
const isPacked = (name: string): boolean => /\.(jpe?g|png|webp|pdf|xlsx)$/i.test(name)

/** `files` as one ZIP file under `folder`; the same files give the same bytes, whatever the time and the time zone. */
export function writeZip(folder: string, files: readonly NamedBytes[]): Uint8Array {
  const entries: Zippable = {}
  for (const { name, bytes } of files) entries[`${folder}/${name}`] = [bytes, { level: isPacked(name) ? 0 : 6 }]
  // The first day that ZIP can say, in the time of this machine, which is what ZIP writes.
  return zipSync(entries, { mtime: new Date(1980, 0, 1) })
}
