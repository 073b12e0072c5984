import { test } from '@playwright/test'
import { dropFolder, preparedFolder, type RunningServer, startServer } from './serve.ts'

/** A server for all tests of the file that calls this, on a folder of its own with the demo run in it. */
export function serverOfFile() {
  let folder: string
  let server: RunningServer
  let run: string
  test.beforeAll(async () => {
    folder = await preparedFolder()
    server = await startServer(folder)
    run = (await (await fetch(`${server.address}/api/runs`)).json()).runs[0].id
  })
  test.afterAll(async () => {
    await server.stop()
    await dropFolder(folder)
  })
  return {
    /** Without a slash at its end. */
    get address(): string {
      return server.address
    },
    /** Id of the demo run. */
    get run(): string {
      return run
    },
  }
}
