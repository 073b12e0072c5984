import { dropFolder, startServer, temporaryFolder } from './serve.ts'

/**
 * Makes, once for all tests of a round, the data folder that `preparedFolder` copies: to make the database and the demo
 * run takes a server longer than all else at its start. Resolves to what removes it.
 */
export default async function prepareFolder(): Promise<() => Promise<void>> {
  const folder = await temporaryFolder()
  const server = await startServer(folder)
  await server.stop()
  process.env.LAPWISE_TEST_PREPARED = folder
  return () => dropFolder(folder)
}
