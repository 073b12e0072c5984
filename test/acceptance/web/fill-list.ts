/** In a page: `count` summaries of runs, as the device keeps them, made after that of the first run that is there. */
export async function fillList(count: number): Promise<void> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open('lapwise')
    opening.onsuccess = () => resolve(opening.result)
    opening.onerror = () => reject(opening.error)
  })
  const transaction = database.transaction(['summaries', 'kept'], 'readwrite')
  const summaries = transaction.objectStore('summaries')
  // The page puts summaries there only with entries, which make the list that it keeps old.
  transaction.objectStore('kept').delete('listShown')
  const first = await new Promise<{ made: { summary: object } }>((resolve) => {
    const reading = summaries.getAll()
    reading.onsuccess = () => resolve(reading.result[0])
  })
  for (let i = 0; i < count; i++) {
    const summary = { ...first.made.summary, id: `run-${i}`, name: `Run ${i}`, project: `project-${i % 5}` }
    summaries.put({ run: `run-${i}`, upTo: 0, made: { ...first.made, summary } })
  }
  await new Promise((resolve) => {
    transaction.oncomplete = resolve
  })
  database.close()
}
