import { open, stat } from 'node:fs/promises'

/** Until then a power cut can take back a file, or a name in a folder. Windows opens no folder as a file, and syncs only what may be written. */
export async function syncToDisk(path: string): Promise<void> {
  const isFolder = (await stat(path)).isDirectory()
  if (isFolder && process.platform === 'win32') return
  const file = await open(path, isFolder ? 'r' : 'r+')
  try {
    await file.sync()
  } finally {
    await file.close()
  }
}
