import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'
import { openEmbedded } from '../../src/store/embedded/open-embedded.ts'
import { describeStore } from './behaviour.ts'
import { answered } from './sample-entries.ts'

const scratch = mkdtempSync(join(tmpdir(), 'lapwise-store-'))
afterAll(() => rmSync(scratch, { recursive: true, force: true }))

describeStore('a folder', async () => {
  const folder = join(scratch, 'behaviour')
  return { config: { kind: 'embedded', folder }, openDirectly: async () => answered(await openEmbedded(folder)) }
})
