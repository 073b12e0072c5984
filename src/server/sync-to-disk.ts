import { open } from 'node:fs/promises'

/** Until then a power cut can take back a file, or a name in a folder. Windows opens no folder as a file. */
export async function syncToDisk(path: string): Promise<void> {
  if (process.platform === 'win32') return
  const file = await open(path)
  try {
    await file.sync()
  } finally {
    await file.close()
  }
}
