import { randomUUID } from 'node:crypto'
import { mkdir, rename, rm, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

/** Packets that wait to be fetched. Each can be made again from what is stored, so none is kept for long. */
export interface PacketFolder {
  /** The id under which `zip` can be fetched until a few others were made after it. */
  keep(zip: Uint8Array): Promise<string>
  find(id: string): Promise<{ readonly path: string; readonly bytes: number } | null>
}

/** How many wait at most: our judgement. */
const most = 10

/** Empties the folder: nobody waits for a packet of an earlier start. */
export async function openPacketFolder(folder: string): Promise<PacketFolder> {
  await rm(folder, { recursive: true, force: true })
  await mkdir(folder, { recursive: true })
  const kept: string[] = []
  const pathOf = (id: string): string => join(folder, `${id}.zip`)
  return {
    async keep(zip) {
      const id = randomUUID()
      await writeFile(`${pathOf(id)}.partial`, zip)
      await rename(`${pathOf(id)}.partial`, pathOf(id))
      kept.push(id)
      for (const old of kept.splice(0, kept.length - most)) await rm(pathOf(old), { force: true })
      return id
    },
    async find(id) {
      if (!kept.includes(id)) return null
      return { path: pathOf(id), bytes: (await stat(pathOf(id))).size }
    },
  }
}
