import { readFile } from 'node:fs/promises'
import { pictureFault } from '../operations/packet-photos.ts'

/** Answers each path that is sent with why the file there is no picture that can be read, or null. */
export function lookAtPictures(): void {
  process.on('message', async (path: string) => process.send!(await pictureFault(await readFile(path))))
}
