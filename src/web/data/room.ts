/** Bytes that a photo must leave free, so that readings always have room: some ten thousand of them. */
const reserve = 10 * 1024 * 1024

/** Browsers that show a page which came without encryption from another machine have no such thing. */
const storage = (): StorageManager | undefined => navigator.storage as StorageManager | undefined

/** Bytes that the browser lets this page use, and those in use; null when it does not say. */
export async function roomHere(): Promise<{ readonly quota: number | null; readonly used: number | null }> {
  const { quota, usage } = (await storage()?.estimate()) ?? {}
  return { quota: quota ?? null, used: usage ?? null }
}

/** Whether a photo of so many bytes leaves room for readings. */
export async function hasRoomFor(bytes: number): Promise<boolean> {
  const { quota, used } = await roomHere()
  return quota === null || used === null || quota - used >= bytes + reserve
}
