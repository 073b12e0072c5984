import { openEmbedded } from '../../../src/store/embedded/open-embedded.ts'
import { copyEmpty, dropFolder, startServerProcess, temporaryFolder } from './serve.ts'

/**
 * Makes, once for all tests of a round, the folders that `copyEmpty` and `copyPrepared` copy: to make a database takes
 * longer than all else at the start of a server; and one for what tests write for other programs to read. Resolves to
 * what removes them.
 */
export default async function prepareFolder(): Promise<() => Promise<void>> {
  const empty = await temporaryFolder()
  const opened = await openEmbedded(empty)
  if (!opened.ok) throw new Error('no database can be made', { cause: opened.error })
  await opened.value.close()
  process.env.LAPWISE_TEST_EMPTY = empty

  const prepared = await temporaryFolder()
  await copyEmpty(prepared)
  // A process, as a person starts it: where the page is not built yet, it builds it.
  const server = await startServerProcess(prepared)
  await server.stop()
  process.env.LAPWISE_TEST_PREPARED = prepared

  const written = await temporaryFolder()
  process.env.LAPWISE_TEST_WRITTEN = written
  return async () => {
    for (const folder of [empty, prepared, written]) await dropFolder(folder)
  }
}
