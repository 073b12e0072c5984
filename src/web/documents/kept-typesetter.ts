/**
 * What documents are set with, from this device's disk, or fetched and kept there. It is apart from the page's own files:
 * who never makes a document never fetches it.
 * @throws TypeError when it is not here and cannot be fetched
 */
export async function keptTypesetter(): Promise<Uint8Array> {
  const address = new URL(file, import.meta.url).href
  const cache = await caches.open(new URL('../typesetter', address).pathname)
  const kept = await cache.match(address)
  if (kept !== undefined) return bytesOf(kept)
  const answer = await fetch(address)
  if (!answer.ok) throw new TypeError(`${address}: ${answer.status}`)
  for (const before of await cache.keys()) await cache.delete(before)
  await cache.put(address, answer.clone())
  return bytesOf(answer)
}

/** Beside this script, by a name that tells its content. */
const file: string = import.meta.env.TYPESETTER_FILE

const bytesOf = async (answer: Response): Promise<Uint8Array> => new Uint8Array(await answer.arrayBuffer())
